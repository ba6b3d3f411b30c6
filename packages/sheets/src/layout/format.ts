// Lettering that fits its room.
import { textWidth } from "../picture/text-metrics.ts";

/** Smallest lettering that is still read at the bench, mm. */
export const SMALLEST_LETTERS = 2;

/** Size at which words fit a room, at most the one wanted; undefined where they would be too small to read. */
export function fittingTextSize(words: string, room: number, wanted: number, bold = false): number | undefined {
  const size = Math.min(wanted, room / textWidth(words, 1, bold));
  return size >= SMALLEST_LETTERS ? size : undefined;
}
