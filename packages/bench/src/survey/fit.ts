// How well one plain curve explains the readings, and so how far the ranges given to the maker must reach.

import {
  chiSquare99,
  dotProduct,
  NORMAL_95,
  NORMAL_95_ALL_DIRECTIONS,
  type Solution,
  student95,
  student95AllDirections,
} from "@lamplane/geometry/numerics";
import type { Equation } from "./bed-equations.ts";
import type { BoundedReading } from "./readings.ts";

export interface Fit {
  /** How many readings there are. */
  readonly readings: number;
  /** Readings beyond those needed to fix the surface and the placements. */
  readonly spare: number;
  /** Sum of squared residuals in units of the readings' own error; about `spare` for honest readings of a plain curve. */
  readonly chiSquare: number;
  /** Honest readings of a plain curve exceed this once in a hundred surveys; absent without spare readings. */
  readonly chiSquareLimit?: number;
  /** `normal`: the readings' own error holds. `student`: they scatter more than they say, and the scatter is used instead. */
  readonly errors: "normal" | "student";
  /** Whether some plain curve lies within every reading, the feel allowed for: then none is doubtful, however they scatter. */
  readonly allWithin: boolean;
  /** Readings that lie more than three of their standard deviations off the surface. */
  readonly doubtful: readonly DoubtfulReading[];
}

export interface DoubtfulReading extends BoundedReading {
  readonly kind: "gap" | "height";
  /** What the fitted surface gives at the station, mm. */
  readonly fitted: number;
  /** How far the wood stands over the fitted surface there, if the reading is true, mm; negative under it. */
  readonly proud: number;
}

/** How many standard deviations a 95 % range reaches. */
export interface ErrorReach {
  readonly inOneDirection: number;
  readonly inAllDirections: number;
}

const DOUBTFUL = 3; // standard deviations: 1.7 half-widths off the middle of the interval

/**
 * The readings' own error is taken as known, and the normal distribution with it, unless they scatter so much that honest
 * ones do so once in a hundred surveys; then their scatter counts, with Student's t.
 * @param solution of the equations, each divided by its reading's standard deviation
 * @param deviations those standard deviations, mm
 */
export function assessFit(
  equations: readonly Equation[],
  solution: Solution,
  deviations: readonly number[],
  allWithin: boolean,
): Fit & ErrorReach {
  const { residuals, unknowns, unseen } = solution;
  const spare = equations.length - unknowns.length + unseen.length;
  const chiSquare = dotProduct(residuals, residuals);
  const far = equations.flatMap((equation, i) => doubtfulReading(equation, residuals[i]!, deviations[i]!) ?? []);
  const counted = { readings: equations.length, spare, chiSquare, allWithin, doubtful: allWithin ? [] : far };
  const normal = { errors: "normal", inOneDirection: NORMAL_95, inAllDirections: NORMAL_95_ALL_DIRECTIONS } as const;
  if (spare === 0) return { ...counted, ...normal };
  const chiSquareLimit = chiSquare99(spare);
  if (chiSquare <= chiSquareLimit) return { ...counted, ...normal, chiSquareLimit };
  const scatter = Math.sqrt(chiSquare / spare);
  return {
    ...counted,
    chiSquareLimit,
    errors: "student",
    inOneDirection: student95(spare) * scatter,
    inAllDirections: student95AllDirections(spare) * scatter,
  };
}

function doubtfulReading(
  { kind, reading }: Equation,
  residual: number,
  deviation: number,
): DoubtfulReading | undefined {
  if (Math.abs(residual) <= DOUBTFUL || kind === "contact") return;
  const off = residual * deviation;
  return { ...reading, kind, fitted: (reading.high + reading.low) / 2 - off, proud: kind === "gap" ? -off : off };
}
