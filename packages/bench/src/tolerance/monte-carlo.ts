// The plane made many times over, each time with other errors: exact geometry, nothing linear. Same seed, same figures.

import { type Block, blockArithmetic, normalGenerator, uniformGenerator } from "@lamplane/geometry/numerics";
import type { TolerancePlan } from "../plan/plan.ts";
import { type ErrorKey, NO_ERRORS, type SourceOfError } from "../plan/sources-of-error.ts";
import { COVERAGE } from "./budget.ts";
import { type Distribution, summarizeValues } from "./distribution.ts";
import { type MadePlaneOf, madePlaneOver, type ResultKey } from "./made-plane.ts";

export interface Trial {
  readonly seed: number;
  readonly runs: number;
}

/** Enough that a 95 % range repeats to about a hundredth of its width. */
export const RUNS = 100_000;
export const LEAST_RUNS = 100;
/** What fits in memory with room to spare. */
export const MOST_RUNS = 2_000_000;
/** Runs worked out at once: their numbers fit in a processor's cache. */
const BLOCK_RUNS = 256;

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
  const on = blockArithmetic(BLOCK_RUNS);
  const makePlanes = madePlaneOver(on);
  const sample = errorSampler(sources, seed);
  const outcome = emptyOutcome(runs);
  for (let from = 0; from < runs; from += BLOCK_RUNS) {
    const count = Math.min(BLOCK_RUNS, runs - from);
    const drawn = sample(count);
    recordBlock(outcome, { from, count, drawn, made: makePlanes(plan, drawn.errors) }, plan, stopShort);
    on.reuse();
  }
  const { values, mouthAfterRepeat, collide, closed, tooLate } = outcome;
  return {
    seed,
    runs,
    results: summarizeResults(values),
    mouthAfterRepeat: summarizeValues(mouthAfterRepeat),
    collide: collide / runs,
    closed: closed / runs,
    tooLate: tooLate / runs,
  };
}

/** What a block of runs has drawn: the errors, mm and degrees; reading and planing of the mouth in standard deviations. */
interface Drawn {
  readonly errors: Readonly<Record<ErrorKey, Block>>;
  readonly reading: Block;
  readonly planing: Block;
}

/** Draws the errors of so many runs, run by run, so that the block's length changes no number. Each call writes over the last. */
function errorSampler(sources: readonly SourceOfError[], seed: number): (count: number) => Drawn {
  const normal = normalGenerator(uniformGenerator(seed));
  const keys = Object.keys(NO_ERRORS) as ErrorKey[];
  const errors = Object.fromEntries(
    keys.map((key) => [key, new Float64Array(BLOCK_RUNS).fill(NO_ERRORS[key])]),
  ) as Record<ErrorKey, Block>;
  const drawn = { errors, reading: new Float64Array(BLOCK_RUNS), planing: new Float64Array(BLOCK_RUNS) };
  const targets = sources.map(({ key, tolerance }) => ({ block: errors[key], tolerance }));
  return (count) => {
    for (let run = 0; run < count; run++) {
      for (const { block, tolerance } of targets) block[run] = (normal() * tolerance) / COVERAGE;
      drawn.reading[run] = normal();
      drawn.planing[run] = normal();
    }
    return drawn;
  };
}

interface Outcome {
  readonly values: Readonly<Record<ResultKey, Float64Array>>;
  readonly mouthAfterRepeat: Float64Array;
  collide: number;
  closed: number;
  tooLate: number;
}

const emptyOutcome = (runs: number): Outcome => ({
  values: {
    mouthOpening: new Float64Array(runs),
    mouthUneven: new Float64Array(runs),
    glueGap: new Float64Array(runs),
    pinToRamp: new Float64Array(runs),
    wedgeAtPin: new Float64Array(runs),
    wedgeTipFromEdge: new Float64Array(runs),
  },
  mouthAfterRepeat: new Float64Array(runs),
  collide: 0,
  closed: 0,
  tooLate: 0,
});

/** Runs from one of them on, what they drew and the planes that came of it. */
interface RunBlock {
  readonly from: number;
  readonly count: number;
  readonly drawn: Drawn;
  readonly made: MadePlaneOf<Block>;
}

/** Writes a block's results into those of all runs. */
function recordBlock(
  outcome: Outcome,
  { from, count, drawn: { reading, planing }, made }: RunBlock,
  plan: TolerancePlan,
  stopShort: number,
): void {
  const { mouthOpening, mouthGrowth, roomAtTips } = made;
  for (const [key, values] of Object.entries(outcome.values) as [ResultKey, Float64Array][])
    values.set(made[key].subarray(0, count), from);
  for (let run = 0; run < count; run++) {
    const [mouth, growth] = [mouthOpening[run]!, mouthGrowth[run]!];
    if (roomAtTips[run]! < 0) outcome.collide++;
    if (mouth <= 0) outcome.closed++;
    const first = mouth - stopShort * growth;
    if (first > plan.opening) outcome.tooLate++;
    outcome.mouthAfterRepeat[from + run] = afterRepeat(plan, growth, first, reading[run]!, planing[run]!);
  }
}

const summarizeResults = (values: Readonly<Record<ResultKey, Float64Array>>) =>
  Object.fromEntries(Object.entries(values).map(([key, all]) => [key, summarizeValues(all)])) as Record<
    ResultKey,
    Distribution
  >;

/**
 * The mouth once it has been read, and (wanted − seen) / mouthGrowth taken off by the plan's growth. Nothing is taken off
 * where it is read as wide as wanted or wider. A mouth that is still shut is read as the wood that keeps it so.
 * @param growth of the plane as made
 * @param first mouth where the sole is trued until `stopShort`, before it is read
 * @param reading and planing: how far off, in standard deviations
 */
function afterRepeat(
  { design, opening, mouthGrowth }: TolerancePlan,
  growth: number,
  first: number,
  reading: number,
  planing: number,
): number {
  const seen = first + (reading * design.hand.mouthReading) / COVERAGE;
  const off = (opening - seen) / mouthGrowth;
  const planed = off + (planing * design.hand.planing) / COVERAGE;
  return off <= 0 ? first : first + Math.max(0, planed) * growth;
}
