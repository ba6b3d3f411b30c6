// Door: every sentence of this package, each from data with an example.
export * from "./router.ts";
