// Door: the plane from the side.
export {
  type Blocks,
  blocksAt,
  cheekShape,
  pegHoles,
  pegWaste,
  ROUND_A_PEG,
  type Stage,
  stageExtent,
} from "./blocks.ts";
export { type Elevation, elevation, mouthGrowth, type Points } from "./elevation.ts";
export {
  chamferGain,
  elevationFigures,
  evaluateFigures,
  FIGURES,
  type Figure,
  type FigureKey,
  type FigureRow,
  figureValue,
  glueGap,
  tipGap,
} from "./figures.ts";
export { bedXAt, type Frame, ironToPlane, planeToIron } from "./frame.ts";
export { capIronOutline, screwHeadOutline } from "./iron-parts.ts";
export {
  ROOM_WANTED,
  SHEAR_OUT_PER_TENON,
  WEDGE_ABOVE_WANTED,
  WEDGE_BELOW_WANTED,
  WOOD_OVER_HOLE_PER_TENON,
} from "./pin-placement.ts";
export { pinLengths } from "./pin-section.ts";
export {
  closestOnRamp,
  curvedRamp,
  distanceToRamp,
  type Ramp,
  rampAngleAt,
  rampPath,
  rampShape,
  rampXAt,
} from "./ramp.ts";
export { type Recess, recessEdge } from "./recess.ts";
export { bedLineTopS, capIronSurface, pinAxisOffset, wedgeOutline, wedgeThickness } from "./stack.ts";
export {
  type Choke,
  type ThroatNeighbour,
  type ThroatSides,
  type ThroatWidth,
  throatChokes,
  throatSeries,
} from "./throat.ts";
export { archClearance, flatTop } from "./top-outline.ts";
