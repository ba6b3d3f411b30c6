// All packs of a class, over all cores.
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { Design } from "@lamplane/parameters/table";
import type { PackOutcome } from "./pack-job.ts";

/**
 * How each design's pack ended, in their order.
 * @param parent folder that the packs go into
 * @param finished is called after each
 */
export async function makePacks(
  designs: readonly Design[],
  parent: string,
  finished: (done: number) => void,
): Promise<PackOutcome[]> {
  const isSource = import.meta.url.endsWith(".ts"); // a worker cannot load TypeScript: then this thread does the work
  const count = Math.min(availableParallelism(), designs.length);
  const outcomes: PackOutcome[] = [];
  let [asked, done] = [0, 0];
  const take = () => (asked < designs.length ? asked++ : undefined);
  const note = (index: number, outcome: PackOutcome) => {
    outcomes[index] = outcome;
    done += 1;
    finished(done);
  };
  if (isSource || count < 2) {
    const { makePlanePack } = await import("./pack-job.ts");
    for (let index = take(); index !== undefined; index = take())
      note(index, await makePlanePack(designs[index]!, parent));
    return outcomes;
  }
  const ends = await Promise.allSettled(
    Array.from({ length: count }, () =>
      feedWorker(new Worker(new URL("./pack-worker.js", import.meta.url), { workerData: parent }), designs, take, note),
    ),
  );
  for (const end of ends) if (end.status === "rejected") throw end.reason;
  return outcomes;
}

/** Feeds a worker designs until there are no more; ends it, whatever happens. */
async function feedWorker(
  worker: Worker,
  designs: readonly Design[],
  take: () => number | undefined,
  note: (index: number, outcome: PackOutcome) => void,
) {
  try {
    await new Promise<void>((resolve, reject) => {
      const ask = () => {
        const index = take();
        if (index === undefined) resolve();
        else worker.postMessage({ index, design: designs[index] });
      };
      worker.on("error", reject);
      worker.on("exit", (code) => reject(new Error(`a worker of the class ended by itself, with ${code}`)));
      worker.on("message", ({ index, outcome }: { index: number; outcome: PackOutcome }) => {
        note(index, outcome);
        ask();
      });
      ask();
    });
  } finally {
    await worker.terminate();
  }
}
