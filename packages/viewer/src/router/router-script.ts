// A script of its own, fetched when the router's path is wanted: it holds the dialog and the worker that plans the paths.
import hobbyRouter from "../../../../examples/shops/hobby-router.yaml?raw";
import { openRouterDialog } from "./router-dialog.ts";
import type { RouterRequest, RouterResponse } from "./router-protocol.ts";
import "./router-source.ts";
import RouterWorker from "./router-worker.ts?worker&inline";

/** Asks a worker of its own, which ends with its answer. */
function planPaths(request: RouterRequest): Promise<RouterResponse> {
  const worker = new RouterWorker();
  return new Promise<RouterResponse>((resolve) => {
    worker.onmessage = ({ data }: MessageEvent<RouterResponse>) => resolve(data);
    worker.onerror = ({ message }) => resolve({ kind: "failed", words: message });
    worker.postMessage(request);
  }).finally(() => worker.terminate());
}

globalThis.openRouter = (text) => openRouterDialog(text, planPaths, hobbyRouter);
