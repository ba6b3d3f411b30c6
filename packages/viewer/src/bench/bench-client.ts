// The bench's side of the worker that holds the steps: one request after the other, each with its answer.
import { loadScript } from "../load-script.ts";
import type { BenchAnswer, BenchEntry } from "../protocol/bench-build.ts";
import type { BenchRequest, WorkerResponse } from "../protocol/messages.ts";
import { BENCH } from "../words/bench.ts";

export interface BenchClient {
  /** The build's screens, once the entry is made in its text. @throws Error in words where the script cannot be had */
  ask(text: string, file: string, entry?: BenchEntry): Promise<BenchAnswer>;
}

/** @param drawingWidth mm that a step's drawing has now */
export function createBenchClient(drawingWidth: () => number): BenchClient {
  let worker: Promise<Worker> | undefined;
  let requestId = 0;
  const waiting = new Map<number, (answer: BenchAnswer) => void>();
  const receive = ({ data }: MessageEvent<WorkerResponse>) => {
    const resolve = waiting.get(data.requestId);
    waiting.delete(data.requestId);
    if (data.kind === "bench") resolve?.(data.answer);
    if (data.kind === "bug") resolve?.({ kind: "refused", words: [BENCH.bug(data.message)] });
  };
  const start = async () => {
    await loadScript("guide.js");
    const started = globalThis.startGuideWorker!();
    started.onmessage = receive;
    return started;
  };
  return {
    async ask(text, file, entry) {
      worker ??= start();
      const ready = await worker.catch((error: unknown) => {
        worker = undefined; // the next request tries again
        throw error;
      });
      requestId += 1;
      const request: BenchRequest = {
        kind: "bench",
        requestId,
        width: drawingWidth(),
        text,
        file,
        ...(entry ? { entry } : {}),
      };
      return new Promise((resolve) => {
        waiting.set(request.requestId, resolve);
        ready.postMessage(request);
      });
    },
  };
}
