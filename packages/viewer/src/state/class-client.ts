// The class screen's side of the worker that reads rosters and makes files: one request after the other.
import { loadScript } from "../load-script.ts";
import type { ClassFileName, ClassRequest, ClassResponse, ClassText, ClassView } from "../protocol/class-view.ts";

export interface ClassClient {
  /** @throws Error in words where the script cannot be had */
  view(files: readonly ClassText[], groups?: number): Promise<ClassView>;
  /** @throws Error in words */
  file(files: readonly ClassText[], file: ClassFileName, groups?: number): Promise<Uint8Array<ArrayBuffer>>;
}

export function createClassClient(): ClassClient {
  let worker: Promise<Worker> | undefined;
  let last: Promise<unknown> = Promise.resolve();
  const request = (message: ClassRequest): Promise<ClassResponse> => {
    worker ??= startWorker().catch((error: unknown) => {
      worker = undefined; // the next request tries again
      throw error;
    });
    const one = last.then(async () => requestFrom(await worker!, message));
    last = one.catch(() => {});
    return one;
  };
  return {
    async view(files, groups) {
      const response = await request({ files, groups });
      if (response.kind !== "class") throw new Error("the worker answered something else");
      return response.view;
    },
    async file(files, file, groups) {
      const response = await request({ files, file, groups });
      if (response.kind !== "class-file") throw new Error("the worker answered something else");
      return response.bytes;
    },
  };
}

function requestFrom(worker: Worker, message: ClassRequest): Promise<ClassResponse> {
  return new Promise((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<ClassResponse>) => {
      if (data.kind === "failed") reject(new Error(data.words));
      else resolve(data);
    };
    worker.postMessage(message);
  });
}

async function startWorker(): Promise<Worker> {
  await loadScript("pack.js");
  return globalThis.startPackWorker!();
}
