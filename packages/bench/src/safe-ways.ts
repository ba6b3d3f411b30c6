// Which way each figure may be rounded: what can still be mended. Read by the traveller and the bench's commands alike.
import type { FigureKey } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import {
  comparedText,
  fineText,
  lengthBoth,
  lengthText,
  onRule,
  type SafeWay,
  trimmed,
  valueText,
} from "@lamplane/parameters/units";

/** How a figure is read: on a rule and which way that is safely rounded, or finer than a rule shows. */
export type Read = SafeWay | "fine";

/**
 * What is sawn or milled later is rounded up, what takes wood away for good is rounded down, the way that can still be
 * mended; a place on the wood is the nearest division. Common practice, no published source.
 */
export const SAFE_WAYS = {
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
} as const satisfies Readonly<Partial<Record<FigureKey, Read>>>;

/** How a finished piece's size is rounded in a stock list: a wedge's as its step has it. */
export function finishedWay(piece: string, side: "length" | "width" | "thickness"): SafeWay {
  if (piece !== "wedge") return "nearest";
  const read = readOf({ length: "wedgeLength", width: "wedgeWidth", thickness: "wedgeButt" }[side]);
  return read === "fine" ? "nearest" : read;
}

/** How a figure is read; a place on the wood where nothing else is said. */
export const readOf = (key: string): Read =>
  (SAFE_WAYS as Readonly<Record<string, Read | undefined>>)[key] ?? "nearest";

/** A step's figure in words for the bench: both units, the maker's first, rounded the way that can still be mended. */
export function figureTold({ units, shop }: Design, key: string, value: number, unit: string): string {
  const way = readOf(key);
  if (unit !== "mm") return valueText(value, unit, units, shop.smallestFraction);
  return way === "fine" ? fineText(value, units) : lengthBoth(value, units, shop.smallestFraction, way);
}

/** A value beside another that it is compared with. */
export const comparedTold = ({ units, shop }: Design, value: number, unit: string): string =>
  unit === "mm" ? comparedText(value, units) : valueText(value, unit, units, shop.smallestFraction);

/**
 * A measured value, or what is expected of one: as the rule shows it where a division does, else as a caliper has it. Inches
 * with mm beside them.
 */
export function measuredTold({ units, shop }: Design, value: number, unit: "mm" | "°"): string {
  if (value === 0) return "0";
  if (unit === "°") return `${trimmed(value, 2)}°`;
  if (units === "mm") return lengthText(value, units);
  const { over } = onRule(value, units, shop.smallestFraction, "nearest");
  return over === 0 ? lengthBoth(value, units, shop.smallestFraction) : fineText(value, units);
}
