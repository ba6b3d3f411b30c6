// Errors put together: root-sum-square, worst case, and each error's share. What is ± two standard deviations stays so.
import type { ToleratedError } from "../plan/sources-of-error.ts";

/**
 * Standard deviations in a tolerance: a ± holds about 95 of 100 pieces (95.45 % for normal errors).
 * @see JCGM 100:2008 (GUM), 6.2 and 6.3: expanded uncertainty with coverage factor 2
 */
export const COVERAGE = 2;

/** One error's part in a result. */
export interface BudgetLine extends ToleratedError {
  /** mm of the result for each mm or degree of the error; the sign says which way. */
  readonly derivative: number;
  /** ±, mm, that this error alone would make, two standard deviations. */
  readonly effect: number;
  /** Part of the result's variance, 0 to 1; all of a budget's make 1. */
  readonly share: number;
}

export interface Budget {
  /** In the order of the work. */
  readonly lines: readonly BudgetLine[];
  /** ±, mm, two standard deviations, for errors that do not know of each other. */
  readonly within: number;
  /** ±, mm, with every error at its tolerance, each to the worse side. */
  readonly worst: number;
}

/**
 * Puts errors together that do not know of each other.
 * @see JCGM 100:2008 (GUM), 5.1.2: u² = Σ (∂f/∂x·u)²; with one coverage factor throughout, tolerances combine alike
 */
export function errorBudget(errors: readonly (ToleratedError & { readonly derivative: number })[]): Budget {
  const effects = errors.map(({ derivative, tolerance }) => Math.abs(derivative) * tolerance);
  const within = Math.hypot(...effects);
  const lines = errors.map((error, i) => ({
    ...error,
    effect: effects[i]!,
    share: within > 0 ? (effects[i]! / within) ** 2 : 0,
  }));
  return { lines, within, worst: effects.reduce((total, effect) => total + effect, 0) };
}

/** The error with the largest share; undefined where there is none at all. */
export const dominantError = ({ lines, within }: Budget): BudgetLine | undefined =>
  within > 0 ? lines.reduce((most, line) => (line.effect > most.effect ? line : most)) : undefined;

/** How well one error must be held, all others as they are. */
export interface RequiredTolerance {
  /** ±, in the error's unit; absent where the others alone are already too much. */
  readonly tolerance?: number;
  /** ±, mm, that is left with that error gone altogether. */
  readonly others: number;
  /** By what every tolerance would have to be multiplied, were all tightened alike. */
  readonly allTimes: number;
}

/** @param target ±, mm, two standard deviations */
export function requiredTolerance({ lines, within }: Budget, line: BudgetLine, target: number): RequiredTolerance {
  const others = Math.hypot(...lines.filter(({ key }) => key !== line.key).map(({ effect }) => effect));
  const rest = target ** 2 - others ** 2;
  const shared = { others, allTimes: target / within };
  return rest > 0 ? { tolerance: Math.sqrt(rest) / Math.abs(line.derivative), ...shared } : shared;
}

/** What a result rests on that is an assumption of ours, and what it would be were that half as much, or twice. ±, mm. */
export interface BudgetAssumption {
  readonly key: string;
  readonly label: string;
  readonly parameter: string;
  readonly tolerance: number;
  readonly unit: string;
  readonly share: number;
  readonly withinAtHalf: number;
  readonly withinAtDouble: number;
}

/** Assumptions that make less of a result than this are not worth a word. */
const LEAST_SHARE = 0.01;

/** Largest share first; empty where a result rests on none. @param isAssumed whether a line's tolerance is no more than our default */
export function budgetAssumptions(
  { lines, within }: Budget,
  isAssumed: (line: BudgetLine) => boolean,
): BudgetAssumption[] {
  const scaled = (effect: number, times: number) => Math.sqrt(within ** 2 + (times ** 2 - 1) * effect ** 2);
  return lines
    .filter((line) => line.share >= LEAST_SHARE && isAssumed(line))
    .toSorted(compareShares)
    .map(({ key, label, parameter, tolerance, unit, share, effect }) => ({
      ...{ key, label, parameter, tolerance, unit, share },
      withinAtHalf: scaled(effect, 1 / 2),
      withinAtDouble: scaled(effect, 2),
    }));
}

/** Share of each step of the work, in its order. */
export function stepShares({ lines }: Budget): { readonly step: string; readonly share: number }[] {
  const steps = new Map<string, number>();
  for (const { step, share } of lines) steps.set(step, (steps.get(step) ?? 0) + share);
  return [...steps].map(([step, share]) => ({ step, share }));
}

/** Shares nearer to each other than this are one, whatever their last digits. */
const SAME_SHARE = 1e-12;

/** Largest share first; equal ones stay in the order of the work. */
export const compareShares = (a: { readonly share: number }, b: { readonly share: number }): number =>
  Math.abs(a.share - b.share) < SAME_SHARE ? 0 : b.share - a.share;

/** What a plot of the shares needs, largest first. */
export interface BudgetShare {
  readonly label: string;
  readonly share: number;
  readonly tolerance: number;
  readonly unit: string;
}

export const budgetShares = ({ lines }: Budget): BudgetShare[] =>
  lines.map(({ label, share, tolerance, unit }) => ({ label, share, tolerance, unit })).toSorted(compareShares);
