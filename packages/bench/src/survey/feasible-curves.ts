// Which plain curves the readings allow: gaps that may be misjudged by the feel, and straightedges that rest on a hollow's rim.
import { EPSILON } from "@lamplane/geometry";
import { type Interval, reachableRange } from "@lamplane/geometry/numerics";
import { bedEquations, type Equation, endStations, toCentred } from "./bed-equations.ts";
import type { Bed, BedPoint, Straightedge, SurveyReadings } from "./readings.ts";

/** A set of curves as linear limits: each equation's row lies within its range. */
export interface FeasibleCurves {
  readonly equations: readonly Equation[];
  readonly ranges: readonly Interval[];
  /** Limits on the sagitta under placements where no leaf goes in, as sums of the curve's a, b, c. */
  readonly rocking: readonly { readonly weights: readonly number[]; readonly range: Interval }[];
  /** Least amount by which every reading must be off for some curve to explain them all, mm. */
  readonly misread: number;
}

/** In `hand.feel`, two standard deviations: two and a half of them, so that one gap in 80 lies beyond. */
const FEEL_REACH = 1.25;
const LARGEST = 1e3; // mm: no limit
const HALVINGS = 14; // of the search for `misread`: a part in 16 000

/**
 * The curves that explain the readings, each gap off by no more than two and a half standard deviations of the feel on top of what
 * the readings contradict each other by. A straightedge rests on its first and last station where every curve left is hollow
 * under it; elsewhere it may rock on a hump. Heights are taken as stated, unless no curve explains them.
 * @param feel two standard deviations of a gap's misjudging, mm
 */
export function feasibleCurves(readings: SurveyReadings, bed: Bed, feel: number): FeasibleCurves {
  const free = bedEquations(readings, bed);
  const misread = readings.straightedges.length > 0 ? leastMisread(free, feel) : 0;
  const reach = misread + FEEL_REACH * feel;
  const rangesOf = (equations: readonly Equation[]) => equations.map((equation) => widen(equation, reach, misread));
  let resting: ReadonlySet<Straightedge> = new Set();
  for (;;) {
    const equations = bedEquations(readings, bed, resting);
    const rocking = readings.straightedges.flatMap((edge) => rockingLimit(edge, bed, reach) ?? []);
    const curves: FeasibleCurves = { equations, ranges: rangesOf(equations), rocking, misread };
    const more = readings.straightedges.filter((edge) => !resting.has(edge) && isHollowUnder(edge, bed, curves));
    if (more.length === 0) return curves;
    const next = new Set([...resting, ...more]);
    const restingEquations = bedEquations(readings, bed, next);
    if (!isFeasible(restingEquations, rangesOf(restingEquations))) return curves; // a leaf went in where it should rest
    resting = next;
  }
}

/** Least and greatest value of a sum of the curve's a, b, c; absent where no curve explains the readings. */
export function rangeOf(
  { equations, ranges, rocking }: FeasibleCurves,
  weights: readonly number[],
): Interval | undefined {
  const rows = equations.map(({ row }) => row);
  const curve = (parts: readonly number[]) => [...rows[0]!.slice(3).map(() => 0), ...parts];
  const cuts = rocking.map(({ weights }) => curve(weights));
  return reachableRange(curve(weights), [...rows, ...cuts], [...ranges, ...rocking.map(({ range }) => range)]);
}

function isHollowUnder(edge: Straightedge, bed: Bed, curves: FeasibleCurves): boolean {
  const range = rangeOf(curves, sagittaUnder(edge, bed));
  return range !== undefined && range.low > EPSILON;
}

/** How much of a, b, c is in the sagitta between the first and the last station. */
function sagittaUnder(edge: Straightedge, bed: Bed): readonly number[] {
  const [first, last] = endStations(edge);
  const [from, to] = [toCentred(first.place, bed), toCentred(last.place, bed)];
  const [u, v] = [to[0] - from[0], to[1] - from[1]];
  return [(u * u) / 4, (u * v) / 4, (v * v) / 4];
}

/**
 * Least sagitta (a hump's, below 0) under a placement where no leaf goes in. On a hump the straightedge is let down on one
 * side, so that it lies on two neighbouring stations, and the far end stands off by more than the sagitta: with stations at
 * t from 0 to 1, resting on t₁ and t₂, the gap at t is 4·hump·(t − t₁)·(t − t₂). Where leaves do go in, it may have been held.
 */
function rockingLimit(edge: Straightedge, bed: Bed, reach: number): FeasibleCurves["rocking"][number] | undefined {
  if (edge.gaps.some(({ low }) => low > 0)) return;
  const [first, last] = endStations(edge);
  const distance = (a: BedPoint, b: BedPoint) => Math.hypot(a.along - b.along, a.across - b.across);
  const whole = distance(first.place, last.place);
  const stations = edge.gaps
    .map(({ place, high }) => ({ t: distance(first.place, place) / whole, high: high + reach }))
    .toSorted((a, b) => a.t - b.t);
  const humps = stations.slice(1).map((upper, i) => {
    const gapOf = (t: number) => 4 * (t - stations[i]!.t) * (t - upper.t);
    return Math.min(...stations.map(({ t, high }) => (gapOf(t) > EPSILON ? high / gapOf(t) : Infinity)));
  });
  return { weights: sagittaUnder(edge, bed), range: { low: -Math.max(...humps), high: LARGEST } };
}

/** A gap is never under 0. */
function widen({ kind, reading: { low, high } }: Equation, reach: number, misread: number): Interval {
  if (kind === "height") return { low: low - misread, high: high + misread };
  return { low: Math.max(0, low - reach), high: high + reach };
}

function leastMisread(equations: readonly Equation[], feel: number): number {
  const explains = (off: number) =>
    isFeasible(
      equations,
      equations.map((equation) => widen(equation, off, off)),
    );
  if (explains(EPSILON)) return 0;
  let enough = Math.max(feel, EPSILON);
  while (!explains(enough)) enough *= 2;
  let short = 0;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (short + enough) / 2;
    if (explains(middle)) enough = middle;
    else short = middle;
  }
  return enough;
}

/** Whether some unknowns keep every equation within its range. */
export const isFeasible = (equations: readonly Equation[], ranges: readonly Interval[]) =>
  reachableRange(
    equations[0]!.row.map(() => 0),
    equations.map(({ row }) => row),
    ranges,
  ) !== undefined;
