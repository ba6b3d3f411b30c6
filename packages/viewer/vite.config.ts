// How the sheet is built: classic scripts with relative addresses, so that it also works from a folder without a server.
import { defineConfig, type Plugin } from "vite";

/** Chromium loads no module script from a file: address; the one script of this page is classic and waits for the page. */
const classicScript: Plugin = {
  name: "classic-script",
  enforce: "post",
  transformIndexHtml: (html) =>
    html
      .replace(/<script type="module" crossorigin src=/g, "<script defer src=")
      .replace(/<link rel="stylesheet" crossorigin href=/g, '<link rel="stylesheet" href='),
};

export default defineConfig({
  root: import.meta.dirname,
  base: "./",
  resolve: { conditions: ["@lamplane/source", "module", "browser", "production"] },
  worker: { format: "iife" },
  plugins: [classicScript],
  build: {
    outDir: "dist",
    emptyOutDir: true,
    target: "es2022",
    modulePreload: false,
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 2000,
    rolldownOptions: {
      checks: { pluginTimings: false },
      output: {
        format: "iife",
        entryFileNames: "sheet.js",
        assetFileNames: "sheet[extname]",
      },
    },
  },
});
