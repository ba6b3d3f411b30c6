// Joins what `tsc -b` compiled into few files in bundle/, so that the command starts quickly: a hundred small modules, each found
// and read by itself, take longer than their work. Each command's share stays a file of its own, loaded when it is asked for.
import { renameSync, rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { isUpToDate } from "../viewer/build-age.js";
import { noWoff2, solidsOnly } from "../viewer/library-parts.js";

const here = fileURLToPath(new URL(".", import.meta.url));
const BUNDLE = `${here}bundle`;
const yamlModule = fileURLToPath(new URL("../parameters/node_modules/yaml/browser/dist/index.js", import.meta.url));
const MADE_OF = [
  "build.js",
  "text-width.js",
  "../viewer/library-parts.js",
  "dist",
  ...["geometry", "parameters", "bench", "sheets", "export"].map((p) => `../${p}/dist`),
];

/** What the licences of the packages within ask for. */
const NOTICE =
  "/*! lamplane, MIT licence. Packages by others within, and their licences: THIRD-PARTY.md of this package. */";

if (
  !isUpToDate(
    `${BUNDLE}/lamplane.js`,
    MADE_OF.map((path) => here + path),
  )
) {
  const { rolldown } = await import("rolldown");
  const fresh = `${BUNDLE}.${process.pid}`; // whole, then in place: another process may be starting the command
  const bundle = await rolldown({
    input: {
      lamplane: `${here}dist/index.js`,
      worker: `${here}dist/sweep/worker.js`,
      "pack-worker": `${here}dist/class/pack-worker.js`,
      "sheets-worker": `${here}dist/pack/sheets-worker.js`,
    },
    platform: "node",
    plugins: [noWoff2, solidsOnly],
    // yaml as ES modules, as in the page: a hundred small CommonJS ones take twice as long to start.
    resolve: { alias: { "string-width": `${here}text-width.js`, yaml: yamlModule } },
  });
  await bundle.write({
    dir: fresh,
    format: "esm",
    entryFileNames: "[name].js",
    minify: true,
    postBanner: NOTICE,
    comments: { legal: true, annotation: false, jsdoc: false },
  });
  await bundle.close();
  rmSync(BUNDLE, { recursive: true, force: true });
  renameSync(fresh, BUNDLE);
}
