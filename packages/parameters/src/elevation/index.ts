// Door: the plane from the side.
export { type Blocks, blocksAt, cheekShape, pegHoles, pegWaste, type Stage, stockAt } from "./blocks.ts";
export { type Elevation, elevation, mouthGrowth, type Points } from "./elevation.ts";
export { FIGURES, type Figure, type FigureKey, type FigureRow, figure, figuresBy, figuresOf } from "./figures.ts";
export { fromIron, toIron } from "./frame.ts";
export { capIronOutline, screwHeadOutline } from "./iron-parts.ts";
export * from "./outline.ts";
export { pinLengths } from "./pin-section.ts";
export * from "./place.ts";
export { rampAngleAt, rampXAt } from "./ramp.ts";
export { recessEdge } from "./recess.ts";
export { bedLineMeets } from "./stack.ts";
export {
  type Choke,
  type ThroatNeighbour,
  type ThroatSides,
  type ThroatWidth,
  throatChokes,
  throatSeries,
} from "./throat.ts";
