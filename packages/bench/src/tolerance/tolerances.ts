// Which step decides, and how well it must be done: the whole answer for one design, as plain data.

import { rowAt, withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import { type Design, isAssumption } from "@lamplane/parameters/table";
import { asBuiltPlane } from "../history/as-built.ts";
import { type TolerancePlan, tolerancePlan } from "../plan/plan.ts";
import { errorSources, NO_ERRORS, type SourceOfError } from "../plan/sources-of-error.ts";
import { stepIndex, stepsDone } from "../steps.ts";
import { ERROR_LABELS, MOUTH_READING_LABEL, RESULT_LABELS } from "../words/steps.ts";
import { TOLERANCE } from "../words/tolerance.ts";
import {
  type Budget,
  type BudgetAssumption,
  type BudgetLine,
  type BudgetShare,
  budgetAssumptions,
  budgetShares,
  dominantError,
  errorBudget,
  type RequiredTolerance,
  requiredTolerance,
  stepShares,
} from "./budget.ts";
import { gradients } from "./derivatives.ts";
import { applyErrors, type ResultKey } from "./made-plane.ts";
import { RUNS, runTrial, type Trial, type TrialResult } from "./monte-carlo.ts";

/** One result: planned, and how far off it may come out. mm. */
export interface ResultTolerance extends Budget {
  readonly key: ResultKey;
  readonly label: string;
  readonly planned: number;
  readonly deciding: BudgetLine | undefined;
  readonly steps: readonly { readonly step: string; readonly share: number }[];
  readonly shares: readonly BudgetShare[];
  /** What of it is an assumption of ours, largest share first. */
  readonly assumptions: readonly BudgetAssumption[];
}

/** A result that has no derivatives here, and why; the runs tell it all the same. */
export interface NoTolerance {
  readonly key: ResultKey;
  readonly label: string;
  readonly planned: number;
  readonly undefinedBecause: string;
}

export interface ToleranceReport {
  readonly placing: TolerancePlan["placing"];
  /** Why the front block is set to its mark although contact was asked for. */
  readonly placingNote?: string;
  readonly results: readonly (ResultTolerance | NoTolerance)[];
  readonly mouth: {
    /** Wood still to come off the sole as the plane stands, mm. */
    readonly allowance: number;
    /** ±, mm, that the maker wants it within. */
    readonly target: number;
    readonly needed: RequiredTolerance | undefined;
    /** ±, mm, were the front block placed the other way; absent where it cannot be, or is glued. */
    readonly placedOtherwise?: number;
    readonly mouthGrowth: number;
    /** ±, mm, left by set, read and repeat: the planing error times the growth, and the reading's. */
    readonly afterRepeat: Budget;
    /** mm to leave standing at first, so that 39 mouths in 40 are not yet wider than wanted; never more than the allowance. */
    readonly stopShort: number;
  };
  readonly trial: TrialResult;
}

/**
 * What the maker's tolerances do to the plane, by derivatives and by seeded runs. Works for every design, whatever its findings.
 * @param options seed 0 to 2^32 − 1; runs LEAST_RUNS to MOST_RUNS
 */
export function toleranceReport(design: Design, { seed = 1, runs = RUNS }: Partial<Trial> = {}): ToleranceReport {
  const plan = tolerancePlan(asBuiltPlane(design));
  const sources = errorSources(plan, design.measured);
  const results = resultTolerances(plan, sources);
  const mouth = results.find(({ key }) => key === "mouthOpening") as ResultTolerance;
  const stopShort = Math.min(plan.allowance, mouth.within / plan.mouthGrowth);
  const target = design.hand.mouthWithin;
  const note = placingNote(design, plan);
  return {
    placing: plan.placing,
    ...(note === undefined ? {} : { placingNote: note }),
    results,
    mouth: {
      allowance: plan.allowance,
      target,
      needed: mouth.deciding && requiredTolerance(mouth, mouth.deciding, target),
      ...(stepsDone(design) > stepIndex("glue-up") ? {} : withOtherPlacing(plan, design.measured)),
      mouthGrowth: plan.mouthGrowth,
      afterRepeat: repeatBudget(plan),
      stopShort,
    },
    trial: runTrial(plan, sources, stopShort, { seed, runs }),
  };
}

function resultTolerances(plan: TolerancePlan, sources: readonly SourceOfError[]): (ResultTolerance | NoTolerance)[] {
  const planned = applyErrors(plan, NO_ERRORS);
  const all = gradients(plan);
  return (Object.keys(RESULT_LABELS) as ResultKey[]).map((key) => {
    const named = { key, label: RESULT_LABELS[key], planned: planned[key] };
    const gradient = all[key];
    if (!gradient) return { ...named, undefinedBecause: TOLERANCE.pinOnCentre };
    const moving = sources.flatMap((source) => {
      const derivative = gradient[source.key];
      return derivative === undefined || derivative === 0 ? [] : [{ ...source, derivative }];
    });
    const whole = errorBudget(moving);
    return {
      ...named,
      ...whole,
      deciding: dominantError(whole),
      steps: stepShares(whole),
      shares: budgetShares(whole),
      assumptions: budgetAssumptions(whole, isAssumed),
    };
  });
}

/** Whether a tolerance is no more than a default of ours that nothing outside bears out; the maker's own number is none. */
function isAssumed({ parameter, tolerance }: BudgetLine): boolean {
  const row = rowAt(parameter);
  return row.kind === "number" && isAssumption(row) && row.default === tolerance;
}

function placingNote({ hand }: Design, { placing }: TolerancePlan): string | undefined {
  if (hand.placing === placing) return undefined;
  return TOLERANCE.setToMark;
}

/** The mouth with the front block placed the other way, all else alike. */
function withOtherPlacing(plan: TolerancePlan, measured: Design["measured"]): { placedOtherwise?: number } {
  if (plan.edgeHeight < 0) return {};
  const placing = plan.placing === "contact" ? "marks" : "contact";
  const other = tolerancePlan(elevation(withValue(plan.design, "hand.placing", placing)));
  const mouth = resultTolerances(other, errorSources(other, measured)).find(({ key }) => key === "mouthOpening");
  return { placedOtherwise: (mouth as ResultTolerance).within };
}

/** What set, read and repeat leaves: the last planing, and the last reading. */
function repeatBudget({ design, mouthGrowth }: TolerancePlan): Budget {
  const { planing, mouthReading } = design.hand;
  const at = { step: "mouth", unit: "mm" };
  const planed = { ...at, key: "soleTaken", label: ERROR_LABELS.soleTaken, parameter: "hand.planing" };
  const read = { ...at, key: "mouthReading", label: MOUTH_READING_LABEL, parameter: "hand.mouthReading" };
  return errorBudget(
    [
      { ...planed, tolerance: planing, derivative: mouthGrowth },
      { ...read, tolerance: mouthReading, derivative: 1 },
    ].filter(({ tolerance }) => tolerance > 0),
  );
}
