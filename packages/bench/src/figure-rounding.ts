// Which way each figure may be rounded: what can still be mended. Read by the traveller and the bench's commands alike.
import type { FigureKey } from "@lamplane/parameters/elevation";
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

/** How a figure is read: on a rule and which way that is safely rounded, or finer than a rule shows. */
export type ReadingMode = RoundingDirection | "fine";

/**
 * What is sawn or milled later is rounded up, what takes wood away for good is rounded down, the way that can still be
 * mended; a place on the wood is the nearest division. Common practice, no published source.
 */
export const FIGURE_ROUNDING = {
  billetWidth: "up",
  billetWidthByRule: "up",
  roughCore: "up",
  roughCheek: "up",
  coreWidth: "up",
  blankLength: "up",
  blankHeight: "up",
  rampMark: "up",
  bedMark: "down",
  recessWidth: "up",
  recessDepth: "down",
  recessFromBedTip: "up",
  pinHoleDiameter: "up",
  wedgeTip: "up",
  wedgeButt: "up",
  wedgeLength: "up",
  wedgeWidth: "down",
  wedgeAtPin: "up",
  bodyHeight: "up",
  bodyWidth: "up",
  edgeHeightAtContact: "fine",
  soleToTake: "fine",
  mouthOpening: "fine",
  glueGap: "fine",
} as const satisfies Readonly<Partial<Record<FigureKey, ReadingMode>>>;

/** How a finished piece's size is rounded in a stock list: a wedge's as its step has it. */
export function finishedRounding(piece: string, side: "length" | "width" | "thickness"): RoundingDirection {
  if (piece !== "wedge") return "nearest";
  const read = readingMode({ length: "wedgeLength", width: "wedgeWidth", thickness: "wedgeButt" }[side]);
  return read === "fine" ? "nearest" : read;
}

/** How a figure is read; a place on the wood where nothing else is said. */
export const readingMode = (key: string): ReadingMode =>
  (FIGURE_ROUNDING as Readonly<Record<string, ReadingMode | undefined>>)[key] ?? "nearest";

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
