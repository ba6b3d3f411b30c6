// Door: what the maker meets at the bench: steps, the plane as built, hold, strength, seasons and the bed's survey.
export { asBuilt, designAt, planeAt, planeOf, planned } from "./as-built/as-built.ts";
export {
  type BenchState,
  benchState,
  type StepFigure,
  settledValues,
  type Unread,
  unreadOf,
} from "./as-built/bench-state.ts";
export { type Change, isWorthAWord } from "./as-built/changes.ts";
export { expectedOf, MEASURED } from "./as-built/expected.ts";
export { figuresAsBuilt } from "./as-built/figures-as-built.ts";
export { lossText } from "./as-built/loss-text.ts";
export { type Loss, lossesOf } from "./as-built/losses.ts";
export { type Doubt, doubtOf, doubtText } from "./as-built/plausible.ts";
export * from "./caution.ts";
export * from "./cautions.ts";
export * from "./figures.ts";
export * from "./friction-hold.ts";
export * from "./hold-of-plane.ts";
export * from "./mouth.ts";
export * from "./mouth-life.ts";
export * from "./mouth-opening.ts";
export type { MouthPatch } from "./mouth-patch.ts";
export * from "./mouth-text.ts";
export type { Packing } from "./packing.ts";
export { type PinSeat, pinSeat } from "./pin-seat.ts";
export * from "./pin-strength.ts";
export { comparedTold, figureTold, finishedWay, measuredTold, SAFE_WAYS } from "./safe-ways.ts";
export * from "./seasons.ts";
export * from "./seasons-of-plane.ts";
export * from "./steps.ts";
export * from "./stock/index.ts";
export * from "./strength-of-pin.ts";
export * from "./survey/index.ts";
export * from "./tolerance/index.ts";
export { wantedText } from "./wanted.ts";
export * from "./woods-of-plane.ts";
