// Door: every sentence of this package, each from data with an example.
export * from "./nested.ts";
export * from "./router.ts";
export * from "./writing.ts";
