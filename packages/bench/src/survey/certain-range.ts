// What no true reading allows the bed to be: ranges by linear programming, along, across and on both diagonals.

import type { Interval } from "@lamplane/geometry/numerics";
import { type Direction, sagittaWeights } from "./direction.ts";
import { type FeasibleCurves, rangeOf } from "./feasible-curves.ts";

/** Ranges of the sagitta, mm; absent where the readings do not tell it, or contradict each other. */
export interface CertainRanges {
  readonly along: Interval | undefined;
  readonly across: Interval | undefined;
  readonly rising: Interval | undefined;
  readonly falling: Interval | undefined;
}

/** @param isDetermined whether the readings tell a direction at all */
export function certainRanges(
  curves: FeasibleCurves,
  isDetermined: (direction: Direction) => boolean,
): CertainRanges {
  const range = (direction: Direction) =>
    isDetermined(direction) ? rangeOf(curves, sagittaWeights(direction)) : undefined;
  return { along: range([1, 0]), across: range([0, 1]), rising: range([1, 1]), falling: range([1, -1]) };
}

/**
 * Interval in any direction, by writing its sagitta with the four: with n the smaller share without its sign, it is
 * (1 − n)·main + n·diagonal − (n − n²)·other, main and other being along and across or the reverse.
 * @returns undefined where one of the three is missing; never too narrow, at most a quarter of `other` too wide
 */
export function certainRangeIn(ranges: CertainRanges, [along, across]: Direction): Interval | undefined {
  const n = Math.min(Math.abs(along), Math.abs(across));
  const lengthwise = Math.abs(along) >= Math.abs(across);
  const main = lengthwise ? ranges.along : ranges.across;
  const other = lengthwise ? ranges.across : ranges.along;
  const diagonal = along * across >= 0 ? ranges.rising : ranges.falling;
  if (n === 0) return main;
  if (n === 1) return diagonal;
  if (!main || !other || !diagonal) return;
  const sum = (main: number, diagonal: number, other: number) => (1 - n) * main + n * diagonal - (n - n * n) * other;
  return { low: sum(main.low, diagonal.low, other.high), high: sum(main.high, diagonal.high, other.low) };
}
