// Builds the page into dist/, when anything that it is made of is newer than what stands there.
import { copyFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { isUpToDate } from "../build-age.js";

const here = fileURLToPath(new URL(".", import.meta.url));
const MADE_OF = [
  "src",
  "public",
  "index.html",
  "vite.config.ts",
  "package.json",
  "THIRD-PARTY.md",
  "../cli/package.json",
  "../geometry/src",
  "../parameters/src",
  "../bench/src",
  "../sheets/src",
  "../export/src",
  "../../examples",
  "../../pnpm-lock.yaml",
];

if (
  !isUpToDate(
    `${here}dist/pack.js`,
    MADE_OF.map((path) => here + path),
  )
) {
  const { build } = await import("vite");
  for (const mode of ["production", "body", "guide", "pack"])
    await build({ root: here, mode, configFile: `${here}vite.config.ts`, logLevel: "warn" });
  copyFileSync(`${here}THIRD-PARTY.md`, `${here}dist/licences.txt`);
}
