// Door: every sentence of parameters, and what the words of all packages are made with.
export * from "./figures.ts";
export * from "./sentence.ts";
