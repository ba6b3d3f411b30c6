// What has moved against the plan, and whether it has moved so far that the maker should know.

import { BENCH_TOLERANCE } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { elevationFigures, type Figure, figureRow } from "@lamplane/parameters/elevation";
import { isInterim, isMeasuredKey } from "../measured-values.ts";

/** A figure that is no longer what was planned. */
export interface FigureChange {
  readonly key: string;
  readonly name: string;
  readonly help: string;
  readonly unit: string;
  readonly planned: number;
  readonly now: number;
}

/** Smaller changes are not worth a word: half of what a maker can hold, and what a saw's scale shows. */
const SIGNIFICANCE: Readonly<Record<string, number>> = { mm: BENCH_TOLERANCE / 2, "°": 0.05, "": 0.005 };
const isFine = (key: string): boolean =>
  (isMeasuredKey(key) && isInterim(key)) || figureRow(key)?.readingMode === "fine";
/** What is worth a word of those: a hundredth is seen at the mouth. mm */
export const FINE_SIGNIFICANCE = 0.005;

/** Whether a figure has moved so far that the maker should know. */
export const isSignificant = (key: string, unit: string, difference: number): boolean =>
  Math.abs(difference) > (isFine(key) ? FINE_SIGNIFICANCE : SIGNIFICANCE[unit]!);

/** Whether a length that is no figure has moved so far, mm. */
export const isSignificantLength = (difference: number): boolean => Math.abs(difference) > SIGNIFICANCE.mm!;

export const figuresByKey = (plane: Elevation): ReadonlyMap<string, Figure> =>
  new Map(elevationFigures(plane).map((each) => [each.key, each]));

/** Figures that differ between two states of a plane so far that it is reportable. */
export function findChanges(
  before: ReadonlyMap<string, Figure>,
  after: Elevation,
  counts: (key: string) => boolean,
  isReportable: (key: string, unit: string, difference: number) => boolean = isSignificant,
): readonly FigureChange[] {
  return elevationFigures(after).flatMap(({ key, name, help, unit, value }) => {
    const was = before.get(key)?.value;
    if (was === undefined || !counts(key) || !isReportable(key, unit, value - was)) return [];
    return [{ key, name, help, unit, planned: was, now: value }];
  });
}
