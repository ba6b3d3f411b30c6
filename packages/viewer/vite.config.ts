// How the sheet is built: classic scripts with relative addresses, so that it also works from a folder without a server.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";
import { noWoff2, solidsOnly } from "./library-parts.js";

const here = fileURLToPath(new URL(".", import.meta.url));
/** Packs say which version made them: the command's. */
const { version } = JSON.parse(readFileSync(`${here}../cli/package.json`, "utf8"));

/** Chromium loads no module script from a file: address; the one script of this page is classic and waits for the page. */
const classicScript: Plugin = {
  name: "classic-script",
  enforce: "post",
  transformIndexHtml: (html) =>
    html
      .replace(/<script type="module" crossorigin src=/g, "<script defer src=")
      .replace(/<link rel="stylesheet" crossorigin href=/g, '<link rel="stylesheet" href='),
};

/**
 * The PDF library holds the address of a colour profile, beside its own file, for archives' PDFs: none is made here, and in
 * a worker that is no file there is no such address.
 */
const noColourProfile: Plugin = {
  name: "no-colour-profile",
  enforce: "pre",
  transform: (code, id) =>
    /[\\/]pdfkit\.browser\.mjs$/.test(id)
      ? code.replace(/new URL\((["'`])[^"'`]+\.icc\1,\s*import\.meta\.url\)(\.href)?/g, '""')
      : undefined,
};

/** Scripts that are fetched later, by the mode that builds them: classic scripts, so a build for each. */
const LATER: Readonly<Record<string, string>> = {
  body: "src/body/body-script.ts",
  guide: "src/worker/guide-script.ts",
  pack: "src/pack/pack-maker.ts",
  bench: "src/bench/bench-script.ts",
  class: "src/class/class-script.ts",
  router: "src/router/router-script.ts",
  share: "src/share/share-script.ts",
};

/** What the licences of the packages within ask for: each script says where they stand, and keeps the notices in its sources. */
const NOTICES = {
  postBanner:
    "/*! lamplane, MIT licence. Packages by others within, and their licences: licences.txt beside this file. */",
  comments: { legal: true, annotation: false, jsdoc: false },
} as const;

export default defineConfig(({ mode }) => ({
  root: import.meta.dirname,
  base: "./",
  resolve: {
    alias: Object.fromEntries(["node:fs", "node:module"].map((name) => [name, `${here}src/pack/typeface-files.ts`])),
    conditions: ["@lamplane/source", "module", "browser", "production"],
  },
  define: { LAMPLANE_VERSION: JSON.stringify(version) },
  worker: {
    format: "iife",
    plugins: () => [noColourProfile, noWoff2, solidsOnly],
    rolldownOptions: { output: { codeSplitting: false, comments: NOTICES.comments }, checks: { pluginTimings: false } },
  },
  plugins: [classicScript],
  build: {
    outDir: "dist",
    emptyOutDir: !(mode in LATER),
    copyPublicDir: !(mode in LATER),
    target: "es2022",
    modulePreload: false,
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 4000,
    rolldownOptions: {
      checks: { pluginTimings: false },
      ...(mode in LATER ? { input: LATER[mode]! } : {}),
      output: {
        ...NOTICES,
        format: "iife",
        entryFileNames: mode in LATER ? `${mode}.js` : "sheet.js",
        assetFileNames: "sheet[extname]",
      },
    },
  },
}));
