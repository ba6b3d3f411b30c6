// The tolerances' door: a design in, which step decides and how well it must be done out; all pure.

export { type Plan, planOf } from "../plan/plan.ts";
export {
  type ErrorKey,
  type Errors,
  type Held,
  NO_ERRORS,
  type SourceOfError,
  sourcesOfError,
} from "../plan/sources-of-error.ts";
export { type AsMade, asMade, type ResultKey, type Results } from "./as-made.ts";
export { type Budget, type BudgetLine, budget, COVERAGE, type Needed, needed, type ShareRow } from "./budget.ts";
export { type Gradient, type Gradients, gradients } from "./derivatives.ts";
export { type Distribution, distributionOf } from "./distribution.ts";
export { LEAST_RUNS, MOST_RUNS, RUNS, type Trial, type TrialResult, trial } from "./monte-carlo.ts";
export { mouthWords, TOLERANCE_NOTES, toleranceText } from "./tolerance-text.ts";
export { type NoTolerance, type ResultTolerance, type ToleranceReport, tolerances } from "./tolerances.ts";
