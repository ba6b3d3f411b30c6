// Door: the plane from the side.
export { type Blocks, blocksAt, cheekShape, pegHoles, pegWaste, ROUND_A_PEG, type Stage, stockAt } from "./blocks.ts";
export { type Elevation, elevation, mouthGrowth, type Points } from "./elevation.ts";
export {
  chamferWins,
  FIGURES,
  type Figure,
  type FigureKey,
  type FigureRow,
  figure,
  figuresBy,
  figuresOf,
  glueGap,
} from "./figures.ts";
export { bedXAt, type Frame, fromIron, toIron } from "./frame.ts";
export { capIronOutline, screwHeadOutline } from "./iron-parts.ts";
export {
  ROOM_WANTED,
  SHEAR_OUT_PER_TENON,
  WEDGE_ABOVE_WANTED,
  WEDGE_BELOW_WANTED,
  WOOD_OVER_HOLE_PER_TENON,
} from "./pin-place.ts";
export { pinLengths } from "./pin-section.ts";
export {
  curvedRamp,
  distanceToRamp,
  nearestOfRamp,
  type Ramp,
  rampAngleAt,
  rampPath,
  rampShape,
  rampXAt,
} from "./ramp.ts";
export { type Recess, recessEdge } from "./recess.ts";
export { bedLineMeets, capIronSurface, pinAxisOffset, wedgeOutline, wedgeThickness } from "./stack.ts";
export {
  type Choke,
  type ThroatNeighbour,
  type ThroatSides,
  type ThroatWidth,
  throatChokes,
  throatSeries,
} from "./throat.ts";
export { archRoom, flatTop } from "./top-outline.ts";
