// Door: every sentence of the page, each from data with an example. The page itself imports the files, so that each script holds its own.
export * from "./bench.ts";
export * from "./class.ts";
export * from "./page.ts";
export * from "./router.ts";
export * from "./share.ts";
export * from "./views.ts";
