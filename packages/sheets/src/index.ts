// Door: pictures for the sheets, the plots and the page.

export { boardPicture } from "./boards/board-picture.ts";
export { type BoardSheet, boardSheet } from "./boards/board-sheet.ts";
export { type ClassBoards, classBoards } from "./class/class-boards.ts";
export { type ClassSheet, classSheet } from "./class/class-sheet.ts";
export type { PupilSheet } from "./class/pupil-sheet.ts";
export { layoutPictures } from "./layout/index.ts";
export { LINE_STYLES, type LineStyle } from "./line-styles.ts";
export { drawArrowHead, drawDimension, drawGrainArrow, drawLeader } from "./picture/dimensions.ts";
export { drawingPicture } from "./picture/drawing-picture.ts";
export { LETTERING, Marks, SHADES } from "./picture/marks.ts";
export type { AxisPlace, LineKind, Picture, PictureMark, Shade, TextMark } from "./picture/picture.ts";
export { framePicture, textCorners, translateMark } from "./picture/picture-frame.ts";
export { textWidth } from "./picture/text-metrics.ts";
export { type Axis, type AxisRequest, lengthAxis, niceStep, numberAxis, type Tick } from "./plots/axis.ts";
export { type BarPlot, barPicture, type ShareRow } from "./plots/bars.ts";
export { type Plot, type PlotStretch, plotPicture, type Series } from "./plots/plot.ts";
export { PLOT_SIZE } from "./plots/plot-frame.ts";
export type { Band, MarkedPoint } from "./plots/plot-words.ts";
export {
  mouthPlot,
  type SeasonGaps,
  type SeasonsPlotOptions,
  type SharesPlotOptions,
  seasonsPlot,
  sharesPlot,
  throatPlot,
} from "./plots/plots.ts";
export { type SweptFigure, type SweptLine, type SweptPoint, sweepPlot } from "./plots/sweep-plot.ts";
export { pictureSvg } from "./svg.ts";
export {
  type Blank,
  type Caution,
  type SetUp,
  type StepNumber,
  type StockTable,
  type Traveller,
  type TravellerKey,
  traveller,
  travellerSteps,
} from "./traveller/index.ts";
export type { JigInUse, TravellerStep } from "./traveller/step.ts";
export { type PictureRoom, STEP_ROOM } from "./traveller/views.ts";
export { escapeXml, unescapeXml } from "./xml-text.ts";
