// A worker thread of a sweep: takes a range of designs, gives back their lines.
import { parentPort, workerData } from "node:worker_threads";
import { type Sweep, sweepLines } from "./rows.ts";

parentPort!.on("message", ({ from, to }: { from: number; to: number }) => {
  parentPort!.postMessage({ from, lines: sweepLines(workerData as Sweep, from, to) });
});
