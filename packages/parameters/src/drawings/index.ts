// Door: the parts as flat drawings.
export type { Drawing, DrawingEntry, WorkKind } from "./drawing.ts";
export * from "./part-drawings.ts";
