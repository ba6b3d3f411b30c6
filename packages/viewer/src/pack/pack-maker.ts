// A script of its own, fetched when the first file is wanted: it holds the worker that makes files, and its typefaces.
import PackWorker from "./pack-worker.ts?worker&inline";

declare global {
  /** Starts the worker that makes files; there once this script has run. */
  var startPackWorker: (() => Worker) | undefined;
}

globalThis.startPackWorker = () => new PackWorker();
