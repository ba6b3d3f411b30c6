// A design's pack, made by two threads: its sheets are half of the work and need nothing of parts and jigs.
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { makePackContent, type PackContent, type PackInput, type Progress, SECTIONS } from "@lamplane/export/content";

/** The files that one thread makes, in the same order. */
export async function makePackOnThreads(of: PackInput, progress: Progress): Promise<PackContent> {
  const { design, version, only = SECTIONS } = of;
  const isSource = import.meta.url.endsWith(".ts"); // a worker cannot load TypeScript: then this thread does the work
  const hasOtherWork = only.includes("sheets") && only.length > 1;
  if (isSource || !hasOtherWork || availableParallelism() < 2) return makePackContent(of, progress);
  const worker = new Worker(new URL("./sheets-worker.js", import.meta.url), { workerData: { design, version } });
  const sheets = new Promise<PackContent>((resolve, reject) => {
    worker.on("message", resolve);
    worker.on("error", reject);
    worker.on("exit", (code) => reject(new Error(`the worker of the sheets ended by itself, with ${code}`)));
  });
  sheets.catch(() => undefined); // heard of where the sheets are waited for
  try {
    return await makePackContent(of, progress, sheets);
  } finally {
    await worker.terminate();
  }
}
