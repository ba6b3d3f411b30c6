// The quadratic surface through the readings. Tilt is no fault: each placement keeps its own, and only curvature is shared.
import { dot, leastSquares } from "./least-squares.ts";
import { chiSquare99, NORMAL_95, NORMAL_95_ALL_DIRECTIONS, student95, student95AllDirections } from "./probability.ts";
import type { Bed, BedPlace, Reading, Readings } from "./readings.ts";

/**
 * A direction through the bed's centre, from edge to edge: `along` and `across` as shares of the bed's length and width,
 * the larger of them 1. [1, 0] is along, [0, 1] across, [1, 1] and [1, −1] the diagonals.
 */
export type Direction = readonly [along: number, across: number];

/** What the readings say about the bed's shape in one direction; mm over the bed's whole extent there. */
export interface Sagitta {
  /** Middle of the chord from edge to edge, less the bed under it: positive hollow, negative hump. */
  readonly hollow: number;
  /**
   * 95 % confidence for this direction alone, the readings' errors taken as independent of each other, and stretched to where
   * it lies if every gap that no leaf goes into is 0: a straightedge in contact errs to that side everywhere at once.
   */
  readonly likely: Range;
  /** 95 % confidence that holds for all directions at once, as the worst one is only picked afterwards (Scheffé). */
  readonly likelyAnywhere: Range;
  /** Cannot lie outside, if every reading is true and the bed is a plain curve: all errors on the same side. */
  readonly certain: Range;
}

export interface Range {
  readonly low: number;
  readonly high: number;
}

/** How well one smooth surface explains the readings. */
export interface Fit {
  readonly readings: number;
  /** Readings beyond those needed to fix the surface and the placements. */
  readonly spare: number;
  /** Sum of squared residuals in units of the readings' own error; about `spare` for honest readings of a plain curve. */
  readonly chiSquare: number;
  /** The same honest readings exceed this once in a hundred surveys; absent without spare readings. */
  readonly chiSquareLimit?: number;
  /** `normal`: the readings' own error holds. `student`: they scatter more than they say, and the scatter is used instead. */
  readonly errors: "normal" | "student";
  /** A reading that lies more than three of its standard deviations off the surface. */
  readonly doubtful: readonly DoubtfulReading[];
}

export interface DoubtfulReading extends Reading {
  readonly kind: "gap" | "height";
  /** What the fitted surface gives at the station, mm. */
  readonly fitted: number;
}

export interface BedCurvature {
  /** z = a·u² + b·u·v + c·v² over the bed, u and v from −½ to ½ along and across; mm. A share that cannot be told is 0. */
  readonly coefficients: readonly [number, number, number];
  readonly fit: Fit;
  /** Absent where the readings cannot tell. */
  sagitta(direction: Direction): Sagitta | undefined;
}

interface Equation {
  readonly kind: "gap" | "height";
  readonly reading: Reading;
  readonly row: readonly number[];
}

const SPREAD = Math.sqrt(3); // a uniform error of half-width h has the standard deviation h/√3 (variance w²/12, w = 2h)
const DOUBTFUL = 3; // standard deviations; 1.7 half-widths off the middle of the interval
const UNSEEN = 1e-6; // share of a direction that no reading sees, above which nothing is told of it

/**
 * Fits the surface. Model, with u and v the station's place from the bed's centre in bed lengths and widths:
 * - a gap under the straightedge: gap = p + q·t − (a·u² + b·u·v + c·v²), t the share of the straightedge's length;
 *   p and q are free for each placement, as a straightedge rests on a hollow bed's two ends but rocks on a hump, where
 *   nobody knows how it was held; the surface's own tilt is in them. The straightedge is taken as straight, and a gap is
 *   never less than 0, which is the lower bound where no leaf goes in;
 * - a height: height = p + q·u + r·v + (a·u² + b·u·v + c·v²), p, q, r free: the bed need not lie level to the gauge.
 * Each reading counts with the middle of its interval and the weight 12/w², w its width.
 */
export function bedCurvature(readings: Readings, bed: Bed): BedCurvature {
  const equations = bedEquations(readings, bed);
  const sigma = equations.map(({ reading }) => (reading.high - reading.low) / 2 / SPREAD);
  const solution = leastSquares(
    equations.map(({ row }, i) => row.map((part) => part / sigma[i]!)),
    equations.map(({ reading }, i) => (reading.high + reading.low) / 2 / sigma[i]!),
  );
  const [a, b, c] = solution.unknowns.slice(-3);
  const sensitivity = solution.sensitivity.slice(-3);
  const unseen = solution.unseen.map((direction) => direction.slice(-3));
  const spare = equations.length - solution.unknowns.length + unseen.length;
  const reach = reaches(dot(solution.residuals, solution.residuals), spare);
  return {
    coefficients: [a!, b!, c!],
    fit: {
      readings: equations.length,
      ...reach.fit,
      doubtful: equations.flatMap((equation, i) => doubtful(equation, solution.residuals[i]!, sigma[i]!) ?? []),
    },
    sagitta(direction) {
      const share = shares(direction);
      if (unseen.some((blind) => Math.abs(dot(blind, share)) > UNSEEN)) return;
      const weights = sensitivity[0]!.map((_, i) =>
        dot(
          share,
          [0, 1, 2].map((k) => sensitivity[k]![i]!),
        ),
      );
      const error = Math.sqrt(dot(weights, weights));
      const hollow = dot(share, [a!, b!, c!]);
      const contact = -SPREAD * weights.reduce((sum, weight, i) => sum + (touching(equations[i]!) ? weight : 0), 0);
      const around = (half: number) => ({
        low: hollow + Math.min(0, contact) - half,
        high: hollow + Math.max(0, contact) + half,
      });
      const worst = SPREAD * weights.reduce((sum, weight) => sum + Math.abs(weight), 0);
      return {
        hollow,
        likely: around(reach.one * error),
        likelyAnywhere: around(reach.all * error),
        certain: { low: hollow - worst, high: hollow + worst },
      };
    },
  };
}

/** A gap that not even the smallest leaf goes into: perhaps 0. */
const touching = ({ kind, reading }: Equation) => kind === "gap" && reading.low === 0;

/** Height of the fitted surface's curve over its level plane through the centre, mm. */
export function curveHeight([a, b, c]: BedCurvature["coefficients"], bed: Bed, place: BedPlace): number {
  const [u, v] = fromCentre(place, bed);
  return a * u * u + b * u * v + c * v * v;
}

/** How much of each coefficient is in the sagitta of a chord from edge to edge through the centre. */
const shares = ([along, across]: Direction) => [along ** 2 / 4, (along * across) / 4, across ** 2 / 4];

const fromCentre = ({ along, across }: BedPlace, bed: Bed) =>
  [along / bed.length - 0.5, across / bed.width - 0.5] as const;

/** One row for each reading: the placements' own unknowns first, then the three of the curve. */
function bedEquations({ straightedges, heights }: Readings, bed: Bed): Equation[] {
  const own = 2 * straightedges.length + (heights.length > 0 ? 3 : 0);
  const row = (at: number, placement: readonly number[], curve: readonly number[]) => {
    const parts = new Array<number>(own).fill(0);
    placement.forEach((part, k) => {
      parts[at + k] = part;
    });
    return [...parts, ...curve];
  };
  const gaps = straightedges.flatMap(({ from, to, gaps }, i) =>
    gaps.map((reading): Equation => {
      const [u, v] = fromCentre(reading.place, bed);
      return { kind: "gap", reading, row: row(2 * i, [1, shareOf(reading.place, from, to)], [-u * u, -u * v, -v * v]) };
    }),
  );
  const levels = heights.map((reading): Equation => {
    const [u, v] = fromCentre(reading.place, bed);
    return { kind: "height", reading, row: row(own - 3, [1, u, v], [u * u, u * v, v * v]) };
  });
  return [...gaps, ...levels];
}

function shareOf(place: BedPlace, from: BedPlace, to: BedPlace): number {
  const reach = Math.hypot(to.along - from.along, to.across - from.across);
  return Math.hypot(place.along - from.along, place.across - from.across) / reach;
}

/** How many of the stated errors the ranges reach, and on what grounds. */
function reaches(chiSquare: number, spare: number) {
  const known = { spare, chiSquare, errors: "normal" as const };
  if (spare === 0) return { one: NORMAL_95, all: NORMAL_95_ALL_DIRECTIONS, fit: known };
  const chiSquareLimit = chiSquare99(spare);
  if (chiSquare <= chiSquareLimit)
    return { one: NORMAL_95, all: NORMAL_95_ALL_DIRECTIONS, fit: { ...known, chiSquareLimit } };
  const scatter = Math.sqrt(chiSquare / spare);
  return {
    one: student95(spare) * scatter,
    all: student95AllDirections(spare) * scatter,
    fit: { ...known, chiSquareLimit, errors: "student" as const },
  };
}

function doubtful({ kind, reading }: Equation, residual: number, sigma: number): DoubtfulReading | undefined {
  if (Math.abs(residual) <= DOUBTFUL) return;
  return { ...reading, kind, fitted: (reading.high + reading.low) / 2 - residual * sigma };
}
