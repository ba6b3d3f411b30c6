// Lengths as the maker reads them off a rule, in the design's own unit.
import type { Design } from "@lamplane/parameters/table";
import { formatDimension, formatLength, type RoundingDirection } from "@lamplane/parameters/units";
import { textWidth } from "../picture/text-metrics.ts";

/** A length beside a dimension: bare mm in a metric design, as the sheet says; inches on the rule or as a caliper has them otherwise. */
export const formatDimensionLength = (mm: number, { units, shop }: Design, way?: RoundingDirection): string =>
  formatDimension(mm, units, shop.smallestFraction, way);

/** A length in a sentence, with its unit. */
export const formatSentenceLength = (mm: number, { units, shop }: Design, way?: RoundingDirection): string =>
  formatLength(mm, units, shop.smallestFraction, way);

/** Smallest lettering that is still read at the bench, mm. */
export const SMALLEST_LETTERS = 2;

/** Size at which words fit a room, at most the one wanted; undefined where they would be too small to read. */
export function fittingTextSize(words: string, room: number, wanted: number, bold = false): number | undefined {
  const size = Math.min(wanted, room / textWidth(words, 1, bold));
  return size >= SMALLEST_LETTERS ? size : undefined;
}
