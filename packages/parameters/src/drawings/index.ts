// Door: the parts as flat drawings.
export type { Drawing, DrawingEntry, WorkKind } from "./drawing.ts";
export { drawingBounds, polarAngle } from "./drawing-bounds.ts";
export { moveDrawing, moveToOrigin, scaleDrawing } from "./drawing-transform.ts";
export { layerDrawing, layLayer } from "./layer-drawing.ts";
export {
  bedBlockDrawing,
  cheekDrawing,
  crossPinDrawing,
  type FlatPart,
  frontBlockDrawing,
  layBedBlock,
  layCheek,
  layFrontBlock,
  layWedge,
  wedgeDrawing,
} from "./part-drawings.ts";
