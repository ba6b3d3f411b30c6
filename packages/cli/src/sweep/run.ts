// All designs of a sweep over all cores, their lines handed on in order as they come.
import { availableParallelism } from "node:os";
import { setImmediate } from "node:timers/promises";
import { Worker } from "node:worker_threads";
import { computeSweepLines, type Sweep } from "./rows.ts";

/** Designs handed to a worker at once: little work, so that progress shows and no core waits long for the last. */
const AT_ONCE = 40;
/** Designs for which one more worker is worth its start. */
const WORTH_A_WORKER = 250;

interface IndexRange {
  readonly from: number;
  readonly to: number;
}

/** Gives the next range to be worked out; undefined when there are no more. */
type NextRange = () => IndexRange | undefined;
type TakeLines = (from: number, lines: string) => void;

/**
 * Calls `write` with the lines of designs `first` to `count`, in order; resolves when the last is written. This thread does its
 * share beside the workers.
 */
export async function runSweep(
  sweep: Sweep,
  first: number,
  count: number,
  write: (lines: string, done: number) => void,
) {
  const ready = new Map<number, string>();
  let [asked, written, failed] = [first, first, false];
  const next: NextRange = () => {
    if (failed || asked >= count) return undefined;
    const from = asked;
    asked = Math.min(count, asked + AT_ONCE);
    return { from, to: asked };
  };
  const take: TakeLines = (from, lines) => {
    if (failed) return; // the table may be closed by now
    ready.set(from, lines);
    for (let next = ready.get(written); next !== undefined; next = ready.get(written)) {
      ready.delete(written);
      written = Math.min(count, written + AT_ONCE);
      write(next, written);
    }
  };
  const workers = Array.from({ length: workersFor(count - first) }, () =>
    feedWorker(new Worker(new URL("./worker.js", import.meta.url), { workerData: sweep }), next, take),
  );
  const ends = await Promise.allSettled(
    [...workers, workHere(sweep, next, take)].map((work) =>
      work.catch((error: unknown) => {
        failed = true;
        throw error;
      }),
    ),
  );
  for (const end of ends) if (end.status === "rejected") throw end.reason;
}

/** Workers beside this thread; none from the sources, since a worker cannot load TypeScript. */
function workersFor(designs: number): number {
  if (import.meta.url.endsWith(".ts")) return 0;
  return Math.max(0, Math.min(availableParallelism(), Math.ceil(designs / WORTH_A_WORKER)) - 1);
}

/** Works ranges out in this thread; what the workers have done is taken between two of them. */
async function workHere(sweep: Sweep, next: NextRange, take: TakeLines): Promise<void> {
  for (let range = next(); range; range = next()) {
    take(range.from, computeSweepLines(sweep, range.from, range.to));
    await setImmediate();
  }
}

/** Ranges that a worker has at hand: it goes on with the second while this thread is busy. */
const AT_HAND = 2;

/** Feeds a worker ranges until there are no more; ends it, whatever happens. */
async function feedWorker(worker: Worker, next: NextRange, take: TakeLines): Promise<void> {
  try {
    await new Promise<void>((resolve, reject) => {
      let atHand = 0;
      const ask = () => {
        const range = next();
        if (range) {
          worker.postMessage(range);
          atHand++;
        } else if (atHand === 0) resolve();
      };
      worker.on("error", reject);
      worker.on("exit", (code) => reject(new Error(`a worker of the sweep ended by itself, with ${code}`)));
      worker.on("message", ({ from, lines }: { from: number; lines: string }) => {
        try {
          atHand--;
          take(from, lines);
          ask();
        } catch (error) {
          reject(error);
        }
      });
      for (let i = 0; i < AT_HAND; i++) ask();
    });
  } finally {
    await worker.terminate();
  }
}
