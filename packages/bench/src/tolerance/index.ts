// The tolerances' door: a design in, which step decides and how well it must be done out; all pure.

export { type TolerancePlan, tolerancePlan } from "../plan/plan.ts";
export {
  type ErrorKey,
  type Errors,
  errorSources,
  NO_ERRORS,
  type SourceOfError,
  type ToleratedError,
} from "../plan/sources-of-error.ts";
export { TOLERANCE_NOTES } from "../words/tolerance.ts";
export {
  type Budget,
  type BudgetAssumption,
  type BudgetLine,
  type BudgetShare,
  COVERAGE,
  errorBudget,
  type RequiredTolerance,
  requiredTolerance,
} from "./budget.ts";
export { type Gradient, type Gradients, gradients } from "./derivatives.ts";
export { type Distribution, summarizeValues } from "./distribution.ts";
export { applyErrors, type ResultKey, type Results } from "./made-plane.ts";
export { LEAST_RUNS, MOST_RUNS, RUNS, runTrial, type Trial, type TrialResult } from "./monte-carlo.ts";
export { assumptionCaption, mouthWords, toleranceText } from "./tolerance-text.ts";
export { type NoTolerance, type ResultTolerance, type ToleranceReport, toleranceReport } from "./tolerances.ts";
