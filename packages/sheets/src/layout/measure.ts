// Lengths as the maker reads them off a rule, in the design's own unit.
import type { Design } from "@lamplane/parameters/table";
import { dimensionText, lengthText, type SafeWay, trimmed } from "@lamplane/parameters/units";
import { wordsWidth } from "../picture/words-width.ts";

/** A length beside a dimension: bare mm in a metric design, as the sheet says; inches on the rule or as a caliper has them otherwise. */
export const ruled = (mm: number, { units, shop }: Design, way?: SafeWay): string =>
  dimensionText(mm, units, shop.smallestFraction, way);

/** A length in a sentence, with its unit. */
export const told = (mm: number, { units, shop }: Design, way?: SafeWay): string =>
  lengthText(mm, units, shop.smallestFraction, way);

export const degreesTold = (degrees: number): string => `${trimmed(degrees, 2)}°`;

/** Smallest lettering that is still read at the bench, mm. */
export const SMALLEST = 2;

/** Size at which words fit a room, at most the one wanted; undefined where they would be too small to read. */
export function sizeFor(words: string, room: number, wanted: number, bold = false): number | undefined {
  const size = Math.min(wanted, room / wordsWidth(words, 1, bold));
  return size >= SMALLEST ? size : undefined;
}
