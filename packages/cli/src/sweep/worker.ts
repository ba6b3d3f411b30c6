// A worker thread of a sweep: takes a range of designs, gives back their lines.
import { parentPort, workerData } from "node:worker_threads";
import { computeSweepLines, type Sweep } from "./rows.ts";

parentPort!.on("message", ({ from, to }: { from: number; to: number }) => {
  parentPort!.postMessage({ from, lines: computeSweepLines(workerData as Sweep, from, to) });
});
