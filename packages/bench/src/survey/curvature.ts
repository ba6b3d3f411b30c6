// The plain (quadratic) curve of the bed by its readings, and how well each direction is known. Tilt is no fault.

import { EPSILON } from "@lamplane/geometry";
import { around, dotProduct, hull, type Interval, type Solution, solveLeastSquares } from "@lamplane/geometry/numerics";
import { type Equation, toCentred } from "./bed-equations.ts";
import { certainRanges } from "./certain-range.ts";
import { type Direction, sagittaWeights } from "./direction.ts";
import { feasibleCurves, isFeasible } from "./feasible-curves.ts";
import { assessFit, type Fit } from "./fit.ts";
import type { Bed, BedPoint, SurveyReadings } from "./readings.ts";

/** What the readings say about the bed's shape in one direction; mm over the bed's whole extent there. */
export interface Sagitta {
  /** Middle of the chord from edge to edge, less the bed under it: positive hollow, negative hump. */
  readonly hollow: number;
  /**
   * At least 95 % confidence for this direction alone: from the fit's covariance for heights; where gaps are read, the
   * certain range, as leaves err to the same side everywhere at once.
   */
  readonly likely: Interval;
  /** The same for all directions at once, as the worst one is only picked afterwards (Scheffé). */
  readonly likelyAnywhere: Interval;
  /**
   * Cannot lie outside, if every reading is true within two and a half standard deviations of the feel and the bed is a plain curve.
   * Where no plain curve lies within all readings: with gaps among them, each is off by the least that makes one; with
   * heights alone the fitted value, plus or minus all errors on the same side.
   */
  readonly certain: Interval;
}

/** Coefficients of z = a·u² + b·u·v + c·v² over the bed, u and v from −½ to ½ along and across; mm. */
export type Coefficients = readonly [a: number, b: number, c: number];

export interface BedCurvature {
  /** One that the readings do not tell is 0; ask `sagitta` which directions they tell. */
  readonly coefficients: Coefficients;
  readonly fit: Fit;
  /** Absent where the readings cannot tell. */
  sagitta(direction: Direction): Sagitta | undefined;
}

const SPREAD = Math.sqrt(3); // a uniform error of half-width h has the standard deviation h/√3 (variance w²/12, w = 2h)
const MISREAD_AT_MOST = 2; // in `hand.feel`, four standard deviations: honest gaps contradict each other by less
const UNSEEN = 1e-6; // share of a direction that no reading sees, above which nothing is known of it

/**
 * Least squares through the middles of the readings' intervals, each with the variance of an even spread over its width
 * and, for a gap, that of the feel. Where a straightedge rests, its gap is 0 and its reading has no part.
 * @param feel two standard deviations of a gap's misjudging, mm
 * @throws Error (our bug) where a reading has no width: a readings file with one is refused
 */
export function bedCurvature(readings: SurveyReadings, bed: Bed, feel: number): BedCurvature {
  const curves = feasibleCurves(readings, bed, feel);
  if (!curves.equations.every(({ reading }) => reading.high > reading.low))
    throw new Error("a reading lies between two values, low and high");
  const equations = curves.equations.filter(({ kind }) => kind !== "contact");
  const deviations = equations.map((equation) => standardDeviation(equation, feel));
  const solution = solveLeastSquares(
    equations.map(({ row }, i) => row.map((part) => part / deviations[i]!)),
    equations.map(({ reading }, i) => (reading.high + reading.low) / 2 / deviations[i]!),
  );
  const [a, b, c] = solution.unknowns.slice(-3);
  const isKnown = (direction: Direction) => isDetermined(solution, direction);
  const certainRange = certainRanges(curves, isKnown);
  const explained = isFeasible(curves.equations, curves.ranges);
  const allWithin = explained && curves.misread <= MISREAD_AT_MOST * feel + EPSILON;
  const { inOneDirection, inAllDirections, ...fit } = assessFit(equations, solution, deviations, allWithin);
  const byGaps = readings.straightedges.length > 0;
  return {
    coefficients: [a!, b!, c!],
    fit: { ...fit, readings: curves.equations.length },
    sagitta(direction) {
      if (!isKnown(direction)) return;
      const hollow = dotProduct(sagittaWeights(direction), [a!, b!, c!]);
      const { error, worst } = errorsOf(solution, direction);
      const certain = certainRange(direction) ?? around(hollow, worst);
      const likely = (reach: number) => (byGaps ? hull(certain, around(hollow, 0)) : around(hollow, reach * error));
      return {
        hollow,
        likely: likely(inOneDirection),
        likelyAnywhere: likely(inAllDirections),
        certain,
      };
    },
  };
}

function standardDeviation({ kind, reading }: Equation, feel: number): number {
  const even = (reading.high - reading.low) / 2 / SPREAD;
  return kind === "gap" ? Math.hypot(even, feel / 2) : even;
}

/** Height of the curve over its level plane through the centre, mm. */
export function curveHeight([a, b, c]: Coefficients, bed: Bed, place: BedPoint): number {
  const [u, v] = toCentred(place, bed);
  return a * u * u + b * u * v + c * v * v;
}

const isDetermined = ({ unseen }: Solution, direction: Direction) =>
  unseen.every((blind) => Math.abs(dotProduct(blind.slice(-3), sagittaWeights(direction))) <= UNSEEN);

/** Standard deviation of the fitted sagitta, and its error if each reading is off by its half-width to the worse side; mm. */
function errorsOf({ sensitivity }: Solution, direction: Direction): { error: number; worst: number } {
  const [byA, byB, byC] = sensitivity.slice(-3);
  const share = sagittaWeights(direction);
  const weights = byA!.map((weight, i) => dotProduct(share, [weight, byB![i]!, byC![i]!]));
  const sum = weights.reduce((total, weight) => total + Math.abs(weight), 0);
  return { error: Math.sqrt(dotProduct(weights, weights)), worst: SPREAD * sum };
}
