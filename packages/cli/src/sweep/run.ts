// All designs of a sweep over all cores, their lines handed on in order as they come.
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { computeSweepLines, type Sweep } from "./rows.ts";

/** Designs handed to a worker at once: little work, so that progress shows and no core waits long for the last. */
const AT_ONCE = 40;
/** Designs for which one more worker is worth its start. */
const WORTH_A_WORKER = 250;

/** Calls `write` with the lines of designs `first` to `count`, in order; resolves when the last is written. */
export async function runSweep(
  sweep: Sweep,
  first: number,
  count: number,
  write: (lines: string, done: number) => void,
) {
  const isSource = import.meta.url.endsWith(".ts"); // a worker cannot load TypeScript: then this thread does the work
  const workers = Math.min(availableParallelism(), Math.ceil((count - first) / WORTH_A_WORKER));
  if (isSource || workers < 2) return runInThisThread(sweep, first, count, write);
  const ready = new Map<number, string>();
  let [asked, written, failed] = [first, first, false];
  const ends = await Promise.allSettled(
    Array.from({ length: workers }, () =>
      feedWorker(
        new Worker(new URL("./worker.js", import.meta.url), { workerData: sweep }),
        () => {
          if (failed || asked >= count) return undefined;
          const from = asked;
          asked = Math.min(count, asked + AT_ONCE);
          return { from, to: asked };
        },
        (from, lines) => {
          if (failed) return; // the table may be closed by now
          ready.set(from, lines);
          for (let next = ready.get(written); next !== undefined; next = ready.get(written)) {
            ready.delete(written);
            written = Math.min(count, written + AT_ONCE);
            write(next, written);
          }
        },
      ).catch((error: unknown) => {
        failed = true;
        throw error;
      }),
    ),
  );
  for (const end of ends) if (end.status === "rejected") throw end.reason;
}

function runInThisThread(
  sweep: Sweep,
  first: number,
  count: number,
  write: (lines: string, done: number) => void,
): void {
  for (let from = first; from < count; from += AT_ONCE) {
    const to = Math.min(count, from + AT_ONCE);
    write(computeSweepLines(sweep, from, to), to);
  }
}

interface IndexRange {
  readonly from: number;
  readonly to: number;
}

/** Feeds a worker ranges until there are no more; ends it, whatever happens. */
async function feedWorker(
  worker: Worker,
  next: () => IndexRange | undefined,
  onLines: (from: number, lines: string) => void,
) {
  try {
    await new Promise<void>((resolve, reject) => {
      const ask = () => {
        const range = next();
        if (range) worker.postMessage(range);
        else resolve();
      };
      worker.on("error", reject);
      worker.on("exit", (code) => reject(new Error(`a worker of the sweep ended by itself, with ${code}`)));
      worker.on("message", ({ from, lines }: { from: number; lines: string }) => {
        try {
          onLines(from, lines);
          ask();
        } catch (error) {
          reject(error);
        }
      });
      ask();
    });
  } finally {
    await worker.terminate();
  }
}
