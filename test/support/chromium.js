// Where a Chromium is, and how it is started for pictures and tests of the page: headless, drawing 3D in software.
import { existsSync } from "node:fs";

const CANDIDATES = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

export const CHROMIUM = CANDIDATES.find((path) => existsSync(path));
export const CHROMIUM_FLAGS = [
  "--no-sandbox",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--enable-unsafe-swiftshader",
];
export const TO_GET_CHROMIUM = "no browser was found; to have one: apt-get install chromium";
