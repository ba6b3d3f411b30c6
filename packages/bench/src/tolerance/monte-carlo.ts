// The plane made many times over, each time with other errors: exact geometry, nothing linear. Same seed, same figures.

import { normalGenerator, uniformGenerator } from "@lamplane/geometry/numerics";
import type { TolerancePlan } from "../plan/plan.ts";
import { type Errors, NO_ERRORS, type SourceOfError } from "../plan/sources-of-error.ts";
import { COVERAGE } from "./budget.ts";
import { type Distribution, summarizeValues } from "./distribution.ts";
import { applyErrors, type MadePlane, type ResultKey } from "./made-plane.ts";

export interface Trial {
  readonly seed: number;
  readonly runs: number;
}

/** Enough that a 95 % range repeats to about a hundredth of its width. */
export const RUNS = 100_000;
export const LEAST_RUNS = 100;
/** What fits in memory with room to spare. */
export const MOST_RUNS = 2_000_000;

export interface TrialResult extends Trial {
  readonly results: Readonly<Record<ResultKey, Distribution>>;
  /** The mouth after set, read and repeat. */
  readonly mouthAfterRepeat: Distribution;
  /** Share of the runs in which the blocks' tips collide at glue-up, feather chamfer counted. */
  readonly collide: number;
  /** Share of the runs in which the mouth is still closed once the planned allowance is off. */
  readonly closed: number;
  /** Share of the runs in which set, read and repeat comes too late: the mouth is wider than wanted after the first truing. */
  readonly tooLate: number;
}

/**
 * @param stopShort mm that the first truing leaves standing before set, read and repeat
 * @see JCGM 101:2008 (GUM supplement 1), 7: propagation of distributions by a Monte Carlo method
 */
export function runTrial(
  plan: TolerancePlan,
  sources: readonly SourceOfError[],
  stopShort: number,
  { seed, runs }: Trial,
): TrialResult {
  const normal = normalGenerator(uniformGenerator(seed));
  const errors: Errors = { ...NO_ERRORS };
  const values = {
    mouthOpening: new Float64Array(runs),
    mouthUneven: new Float64Array(runs),
    glueGap: new Float64Array(runs),
    pinToRamp: new Float64Array(runs),
    wedgeAtPin: new Float64Array(runs),
    wedgeTipFromEdge: new Float64Array(runs),
  };
  const keys = Object.keys(values) as ResultKey[];
  const repeated = new Float64Array(runs);
  let [collide, closed, tooLate] = [0, 0, 0];
  for (let run = 0; run < runs; run++) {
    for (const { key, tolerance } of sources) errors[key] = (normal() * tolerance) / COVERAGE;
    const made = applyErrors(plan, errors);
    for (const key of keys) values[key][run] = made[key];
    if (made.roomAtTips < 0) collide++;
    if (made.mouthOpening <= 0) closed++;
    const first = made.mouthOpening - stopShort * made.mouthGrowth;
    if (first > plan.opening) tooLate++;
    repeated[run] = afterRepeat(plan, made, first, normal);
  }
  return {
    seed,
    runs,
    results: summarizeResults(values),
    mouthAfterRepeat: summarizeValues(repeated),
    collide: collide / runs,
    closed: closed / runs,
    tooLate: tooLate / runs,
  };
}

const summarizeResults = (values: Readonly<Record<ResultKey, Float64Array>>) =>
  Object.fromEntries(Object.entries(values).map(([key, all]) => [key, summarizeValues(all)])) as Record<
    ResultKey,
    Distribution
  >;

/**
 * The mouth once it has been read, and (wanted − seen) / mouthGrowth taken off by the plan's growth. Nothing is taken off
 * where it is read as wide as wanted or wider. A mouth that is still shut is read as the wood that keeps it so.
 */
function afterRepeat(
  { design, opening, mouthGrowth }: TolerancePlan,
  made: MadePlane,
  first: number,
  normal: () => number,
): number {
  const { mouthReading, planing } = design.hand;
  const seen = first + (normal() * mouthReading) / COVERAGE;
  const off = (opening - seen) / mouthGrowth;
  const planed = off + (normal() * planing) / COVERAGE;
  return off <= 0 ? first : first + Math.max(0, planed) * made.mouthGrowth;
}
