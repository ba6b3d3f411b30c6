// Door: what the maker meets at the bench: steps, the plane as built, hold, strength, seasons and the bed's survey.

export * from "./cautions/caution.ts";
export * from "./cautions/cautions.ts";
export * from "./figures.ts";
export { asBuilt, designAt, planeAt, planeOf, planned } from "./history/as-built.ts";
export {
  type BenchState,
  benchState,
  type StepFigure,
  settledValues,
  type Unread,
  unreadOf,
} from "./history/bench-state.ts";
export { type Change, isWorthAWord } from "./history/changes.ts";
export { expectedOf, MEASURED } from "./history/expected.ts";
export { figuresAsBuilt } from "./history/figures-as-built.ts";
export { lossText } from "./history/loss-text.ts";
export { type Loss, lossesOf } from "./history/losses.ts";
export { type Doubt, doubtOf, doubtText } from "./history/plausible.ts";
export * from "./mouth/mouth.ts";
export * from "./mouth/mouth-life.ts";
export * from "./mouth/mouth-opening.ts";
export type { MouthPatch } from "./mouth/mouth-patch.ts";
export * from "./mouth/mouth-text.ts";
export type { Packing } from "./mouth/packing.ts";
export { comparedTold, figureTold, finishedWay, measuredTold, readOf, SAFE_WAYS } from "./safe-ways.ts";
export * from "./seasons/seasons.ts";
export * from "./seasons/seasons-of-plane.ts";
export * from "./steps.ts";
export * from "./stock/index.ts";
export * from "./strength/friction-hold.ts";
export * from "./strength/hold-of-plane.ts";
export { type PinSeat, pinSeat } from "./strength/pin-seat.ts";
export * from "./strength/pin-strength.ts";
export * from "./strength/strength-of-pin.ts";
export * from "./survey/index.ts";
export * from "./tolerance/index.ts";
export { wantedText } from "./wanted.ts";
export * from "./woods-of-plane.ts";
