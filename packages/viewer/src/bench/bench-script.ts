// A script of its own, fetched when the build is followed at the bench: it holds the screens.

import { startOffline } from "../offline/offline.ts";
import { BenchPage } from "./bench-page.ts";
import "./open-bench.ts";

globalThis.startBench = (page) => {
  void startOffline();
  return new BenchPage(page).begin();
};
