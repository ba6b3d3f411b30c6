// Door: the parts as flat drawings.
export type { Drawing, DrawingEntry, WorkKind } from "./drawing.ts";
export { drawingBounds, polarAngle } from "./drawing-bounds.ts";
export { moveToOrigin, scaleDrawing } from "./drawing-transform.ts";
export * from "./part-drawings.ts";
