// A script of its own, fetched once the plane is drawn: it holds the worker that may take its time.
import GuideWorker from "./guide-worker.ts?worker&inline";

declare global {
  /** Starts that worker; there once this script has run. */
  var startGuideWorker: (() => Worker) | undefined;
}

globalThis.startGuideWorker = () => new GuideWorker();
