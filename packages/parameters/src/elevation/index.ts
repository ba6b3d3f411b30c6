// Door: the plane from the side.
export type { Stage } from "../table/index.ts";
export { type BlankSize, billetAsItLies, fitsInto, hasThirdCut } from "./billet.ts";
export {
  type Blocks,
  bedLowerEdge,
  blocksAt,
  cheekShape,
  fromToeEnd,
  pegHoles,
  pegWaste,
  ROUND_A_PEG,
  stageExtent,
} from "./blocks.ts";
export { type Elevation, elevation, frameOf, type Points } from "./elevation.ts";
export {
  evaluateFigure,
  evaluateFigures,
  type Figure,
  type FigureFormula,
  type FigureRow,
  type FigureUse,
  type ReadingMode,
  withWords,
} from "./figure-row.ts";
export { elevationFigures, FIGURES, type FigureKey, figureRow, figureValue } from "./figures.ts";
export {
  bedToIron,
  bedToPlane,
  bedXAt,
  type Frame,
  type FrameOf,
  frameOver,
  ironToBed,
  ironToPlane,
  type PointOf,
  planeToBed,
  planeToIron,
} from "./frame.ts";
export { glueGap, tipGap } from "./glue-gap.ts";
export { edgeHeightAtContact, GLUE_FREE, glueFreeArea, isPlacedByContact } from "./glue-up.ts";
export { capIronOutline, screwHeadOutline } from "./iron-parts.ts";
export { bevelToBack, gaugeLength, ironTaper, thicknessAt, topFromEdge } from "./iron-taper.ts";
export {
  type CoreBlock,
  type LayerOutlines,
  type LayerPegs,
  type LayerShape,
  layerOutlines,
  layerPegLength,
  layerPegs,
  layerPegWood,
  layerShapes,
  layersOf,
  setBackLayers,
  wantedRecess,
} from "./layer-shapes.ts";
export {
  type Layer,
  LEAST_LAYER,
  layerFromBoard,
  layersOfRecess,
  layersOfStack,
  layerThickness,
  type RecessLayers,
} from "./layers.ts";
export { memoizeByDesign, memoizeByPlane } from "./memoize.ts";
export { type MouthSides, mouthGrowth, mouthGrowthAt, mouthOpeningAt, removalForOpening } from "./mouth-opening.ts";
export {
  ROOM_WANTED,
  SHEAR_OUT_PER_TENON,
  WEDGE_ABOVE_WANTED,
  WEDGE_BELOW_WANTED,
  WOOD_OVER_HOLE_PER_TENON,
} from "./pin-placement.ts";
export { pinLengths } from "./pin-section.ts";
export { humpHeight, PIN_LIMITS, type PinSize, pinShoulder, roomOverHump } from "./pin-size.ts";
export {
  type Ramp,
  type RampOf,
  rampAngle,
  rampAngleAt,
  rampAtOpening,
  rampPath,
  rampShape,
  rampXAt,
} from "./ramp.ts";
export { curvedRamp, distanceToRamp, rampOver } from "./ramp-formulas.ts";
export { type Recess, recessEdge, recessOf } from "./recess.ts";
export { recessProfile } from "./recess-profile.ts";
export { bedLineTopS, capIronSurface, ironCorners, pinAxisOffset, wedgeOutline, wedgeThickness } from "./stack.ts";
export {
  type Choke,
  type ThroatNeighbour,
  type ThroatSides,
  type ThroatWidth,
  throatChokes,
  throatSeries,
} from "./throat.ts";
export { archClearance, flatTop } from "./top-outline.ts";
export { BILLET_OVER_IRON } from "./widths.ts";
