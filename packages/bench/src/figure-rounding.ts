// Figures in words, rounded the way that each one's row allows. Read by the traveller and the bench's commands alike.
import { FIGURES, type FigureKey, type FigureRow, figureRow, type ReadingMode } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import {
  formatAngle,
  formatFineLength,
  formatForComparison,
  formatLength,
  formatLengthInBoth,
  formatValue,
  type RoundingDirection,
  roundToRule,
} from "@lamplane/parameters/units";

type RoundedKey = {
  [Key in FigureKey]: (typeof FIGURES)[Key] extends { readonly readingMode: ReadingMode } ? Key : never;
}[FigureKey];

/** Reading modes of the figures whose rows have one, by key. */
export const FIGURE_ROUNDING = Object.fromEntries(
  Object.entries<FigureRow>(FIGURES).flatMap(([key, row]) => (row.readingMode ? [[key, row.readingMode]] : [])),
) as { readonly [Key in RoundedKey]: (typeof FIGURES)[Key]["readingMode"] };

/** How a finished piece's size is rounded in a stock list: a wedge's as its step has it. */
export function finishedRounding(piece: string, side: "length" | "width" | "thickness"): RoundingDirection {
  if (piece !== "wedge") return "nearest";
  const read = readingMode({ length: "wedgeLength", width: "wedgeWidth", thickness: "wedgeButt" }[side]);
  return read === "fine" ? "nearest" : read;
}

/** How a figure is read; a place on the wood where nothing else is said. */
export const readingMode = (key: string): ReadingMode => figureRow(key)?.readingMode ?? "nearest";

/** A step's figure in words for the bench: both units, the maker's first, rounded the way that can still be mended. */
export function formatFigure({ units, shop }: Design, key: string, value: number, unit: string): string {
  const way = readingMode(key);
  if (unit !== "mm") return formatValue(value, unit, units, shop.smallestFraction);
  return way === "fine" ? formatFineLength(value, units) : formatLengthInBoth(value, units, shop.smallestFraction, way);
}

/** A value beside another that it is compared with. */
export const formatComparedValue = ({ units, shop }: Design, value: number, unit: string): string =>
  unit === "mm" ? formatForComparison(value, units) : formatValue(value, unit, units, shop.smallestFraction);

/**
 * A measured value, or what is expected of one: as the rule shows it where a division does, else as a caliper has it. Inches
 * with mm beside them.
 */
export function formatMeasuredValue({ units, shop }: Design, value: number, unit: "mm" | "°"): string {
  if (value === 0) return "0";
  if (unit === "°") return formatAngle(value);
  if (units === "mm") return formatLength(value, units);
  const { over } = roundToRule(value, units, shop.smallestFraction, "nearest");
  return over === 0 ? formatLengthInBoth(value, units, shop.smallestFraction) : formatFineLength(value, units);
}
