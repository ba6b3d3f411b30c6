// Door: what the maker meets at the bench: steps, the plane as built, hold, strength, seasons and the bed's survey.

export { AUTO_PATHS, type AutoPath, autoValue, solvedValues } from "./auto-values.ts";
export { expectationText, firstMouth } from "./expectation.ts";
export { formatFigure, formatStepFigure, oneWayText, readingMode } from "./figure-text.ts";
export * from "./figures.ts";
export {
  asBuiltDesign,
  asBuiltPlane,
  designBeforeStep,
  planeBeforeStep,
  plannedDesign,
  plannedPlane,
} from "./history/as-built.ts";
export { type BuildNews, buildNews, earlierLosses } from "./history/build-news.ts";
export {
  type BuildState,
  buildState,
  type StepFigure,
  type UnreadValue,
  unreadValues,
} from "./history/build-state.ts";
export { type FigureChange, isSignificant, isSignificantLength } from "./history/changes.ts";
export { expectedValue } from "./history/expected.ts";
export { figureAsBuilt, figuresAsBuilt } from "./history/figures-as-built.ts";
export { history, type StepRecord } from "./history/history.ts";
export { lossText } from "./history/loss-text.ts";
export { findLosses, type Loss } from "./history/losses.ts";
export { type Doubt, doubtText, findDoubt } from "./history/plausibility.ts";
export { skippedSteps } from "./history/skipped-steps.ts";
export { isMeasuredKey, MEASURED_ROWS, measuredUnit } from "./measured-values.ts";
export * from "./mouth/mouth.ts";
export * from "./mouth/mouth-life.ts";
export type { MouthPatch } from "./mouth/mouth-patch.ts";
export * from "./mouth/mouth-skew.ts";
export * from "./mouth/mouth-text.ts";
export type { Packing } from "./mouth/packing.ts";
export * from "./mouth/skew-text.ts";
export * from "./plane-woods.ts";
export * from "./seasons/plane-seasons.ts";
export * from "./seasons/plane-shape.ts";
export * from "./seasons/seasons.ts";
export * from "./steps.ts";
export * from "./stock/index.ts";
export * from "./strength/friction-hold.ts";
export { type PinSeat, pinSeat } from "./strength/pin-seat.ts";
export * from "./strength/pin-strength.ts";
export * from "./strength/plane-hold.ts";
export * from "./strength/plane-pin-strength.ts";
export * from "./survey/index.ts";
export * from "./tolerance/index.ts";
export * from "./words/cautions.ts";
export * from "./words/strength-caution.ts";
