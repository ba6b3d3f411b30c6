// A worker thread of a class: takes one design after the other, makes its pack, and says how that ended.
import { parentPort, workerData } from "node:worker_threads";
import type { Design } from "@lamplane/parameters/table";
import { makePlanePack } from "./pack-job.ts";

parentPort!.on("message", async ({ index, design }: { index: number; design: Design }) => {
  parentPort!.postMessage({ index, outcome: await makePlanePack(design, workerData as string) });
});
