// The page's side of file making: fetches the script when it is first needed, requests one thing after the other.
import { loadScript } from "../load-script.ts";
import type { PackRequest, PackResponse } from "./pack-protocol.ts";

export interface PackClient {
  /** @throws Error in words for the maker where the plane may not be built */
  list(text: string, folder: string): Promise<readonly string[]>;
  /** @param path "" for the whole pack as a zip */
  file(text: string, folder: string, path: string): Promise<Uint8Array<ArrayBuffer>>;
}

export function packClient(progress: (words: string) => void): PackClient {
  let worker: Promise<Worker> | undefined;
  let last: Promise<unknown> = Promise.resolve();
  const request = (message: PackRequest): Promise<PackResponse> => {
    worker ??= startWorker().catch((error: unknown) => {
      worker = undefined; // the next request tries again
      throw error;
    });
    const one = last.then(async () => requestFrom(await worker!, message, progress));
    last = one.catch(() => {});
    return one;
  };
  return {
    async list(text, folder) {
      const response = await request({ text, folder });
      return response.kind === "list" ? response.paths : [];
    },
    async file(text, folder, path) {
      const response = await request({ text, folder, path });
      return response.kind === "file" ? response.bytes : new Uint8Array();
    },
  };
}

function requestFrom(worker: Worker, message: PackRequest, progress: (words: string) => void): Promise<PackResponse> {
  return new Promise((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<PackResponse>) => {
      if (data.kind === "progress") progress(data.words);
      else if (data.kind === "failed") reject(new Error(data.words));
      else resolve(data);
    };
    worker.postMessage(message);
  });
}

async function startWorker(): Promise<Worker> {
  await loadScript("pack.js");
  return globalThis.startPackWorker!();
}
