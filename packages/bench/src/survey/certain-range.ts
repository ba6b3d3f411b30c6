// What no true reading allows the bed to be: ranges by linear programming.

import type { Interval } from "@lamplane/geometry/numerics";
import { type Direction, sagittaWeights } from "./direction.ts";
import { type FeasibleCurves, rangeOf } from "./feasible-curves.ts";

/** Range of the sagitta in a direction, mm; absent where the readings do not tell it, or contradict each other. */
export type CertainRange = (direction: Direction) => Interval | undefined;

/** Shares of the smaller side at which a linear program is solved; between them the range is interpolated. */
const KNOTS = [0, 0.5, 1] as const;

/**
 * Ranges in every direction, by writing each one's sagitta with three that are solved for: along a side of the bed the sagitta
 * is a quadratic in the share n of the other side (Lagrange's interpolation). Never too narrow, at most an eighth of the
 * third range too wide.
 * @param isDetermined whether the readings tell a direction at all
 */
export function certainRanges(curves: FeasibleCurves, isDetermined: (direction: Direction) => boolean): CertainRange {
  const solved = new Map<string, Interval | undefined>();
  const solve = (direction: Direction) => {
    const key = direction.join();
    if (!solved.has(key))
      solved.set(key, isDetermined(direction) ? rangeOf(curves, sagittaWeights(direction)) : undefined);
    return solved.get(key);
  };
  return ([along, across]) => {
    const n = Math.min(Math.abs(along), Math.abs(across));
    const sign = along * across < 0 ? -1 : 1;
    const knots = KNOTS.includes(n as 0) ? [n] : KNOTS;
    const ranges = knots.map((share) =>
      solve(Math.abs(along) >= Math.abs(across) ? [1, sign * share] : [sign * share, 1]),
    );
    return ranges.every((range) => range !== undefined) ? combine(ranges, lagrange(knots, n)) : undefined;
  };
}

const lagrange = (knots: readonly number[], n: number) =>
  knots.map((knot) =>
    knots.reduce((product, other) => (other === knot ? product : (product * (n - other)) / (knot - other)), 1),
  );

/** The range of a weighted sum, as if each could be anywhere in its own. */
function combine(ranges: readonly Interval[], weights: readonly number[]): Interval {
  const sum = (side: "low" | "high", other: "low" | "high") =>
    ranges.reduce((total, range, k) => total + weights[k]! * range[weights[k]! < 0 ? other : side], 0);
  return { low: sum("low", "high"), high: sum("high", "low") };
}
