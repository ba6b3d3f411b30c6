// Builds the page into dist/, when anything that it is made of is newer than what stands there.
import { copyFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { isUpToDate } from "./build-age.js";
import { openingPlaneJson } from "./opening-plane-json.js";
import { writeServiceWorker } from "./write-service-worker.js";

const here = fileURLToPath(new URL(".", import.meta.url));
const MADE_OF = [
  "src",
  "public",
  "index.html",
  "vite.config.ts",
  "build.js",
  "library-parts.js",
  "opening-plane-json.js",
  "write-service-worker.js",
  "package.json",
  "THIRD-PARTY.md",
  "../cli/package.json",
  "../geometry/src",
  "../parameters/src",
  "../bench/src",
  "../sheets/src",
  "../sheets/typefaces",
  "../export/src",
  "../../examples",
  "../../pnpm-lock.yaml",
];

if (
  !isUpToDate(
    `${here}dist/service-worker.js`,
    MADE_OF.map((path) => here + path),
  )
) {
  const { build } = await import("vite");
  const OPENING_PLANE = JSON.stringify(await openingPlaneJson(build, here));
  for (const mode of ["production", "body", "guide", "bench", "class", "router", "share", "pack"])
    await build({ root: here, mode, configFile: `${here}vite.config.ts`, logLevel: "warn", define: { OPENING_PLANE } });
  copyFileSync(`${here}THIRD-PARTY.md`, `${here}dist/licences.txt`);
  writeServiceWorker(`${here}dist/`, `${here}src/offline/service-worker.js`);
}
