// Door: the parts as flat drawings.
export type { Drawing, Entry, Work } from "./drawing.ts";
export * from "./part-drawings.ts";
