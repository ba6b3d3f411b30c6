// Door: pictures for the sheets, the plots and the page.
export { type Axis, type AxisNeed, lengthAxis, niceStep, numberAxis, type Tick } from "./axis.ts";
export { type BarPlot, barPicture, type ShareRow } from "./bars.ts";
export { arrowHead, dimension, grainArrow, leader } from "./dimensions.ts";
export { drawingPicture } from "./drawing-picture.ts";
export { framed, shiftedMark, textCorners } from "./framed.ts";
export { layoutPictures } from "./layout/index.ts";
export { LETTERING, Marks, SHADES } from "./marks.ts";
export type {
  LineKind,
  Picture,
  PictureMark,
  Shade,
  TextMark,
} from "./picture.ts";
export { type Band, type MarkedPoint, PLOT_SIZE, type Plot, plotPicture, type Series, type Stretch } from "./plot.ts";
export {
  mouthPlot,
  type SeasonGaps,
  type SeasonsPlotOptions,
  type SharesPlotOptions,
  seasonsPlot,
  sharesPlot,
  throatPlot,
} from "./plots.ts";
export { type SweptFigure, type SweptLine, type SweptPoint, sweepPlot } from "./sweep-plot.ts";
export {
  type Blank,
  type Caution,
  type NumberRow,
  SAFE_WAYS,
  type StockTable,
  type Traveller,
  type TravellerKey,
  type TravellerStep,
  traveller,
  travellerSteps,
} from "./traveller/index.ts";
export { wordsWidth } from "./words-width.ts";
