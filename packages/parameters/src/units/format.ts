// Lengths as text for people: off a rule, off a caliper, in decimals, in one unit or both. Each form can be read back.
import { BENCH_TOLERANCE } from "@lamplane/geometry";
import { type Fraction, fromMillimetres, INCH, type Units } from "./inch.ts";
import { formatDecimal, formatFineDecimal, formatNumber, formatQuantity, type NumberFormat } from "./number.ts";
import {
  formatThousandths,
  formatThousandthsFigure,
  nearestFraction,
  type RoundingDirection,
  roundToRule,
} from "./rule.ts";

/** How a length is written where a maker reads it off a rule. */
export interface RuleFormat {
  readonly units: Units;
  readonly smallestFraction?: Fraction;
  readonly rounding?: RoundingDirection | undefined;
  /** What a caliper is set to, where the rule's division is not the length itself: beside it, instead of it, or left out. */
  readonly caliper?: "beside" | "instead" | "none";
  /** Thousandths alone for a length under 1/8 in that is no division: a remainder is too large a share of it. */
  readonly smallInThousandths?: boolean;
  /** Without the unit on mm and on a caliper's thousandths, for where room is short. */
  readonly bare?: boolean;
  /** The other unit behind it, in brackets. */
  readonly bothUnits?: boolean;
}

const SMALL = INCH / 8; // mm

/** A length in the maker's unit as a rule shows it: "44.45 mm", "1 3/4 in", "3 9/32 in (3.293 in)", "0.012 in". */
export function formatOnRule(mm: number, format: RuleFormat): string {
  const { units, smallestFraction = "1/64", bare = false, bothUnits = false } = format;
  const metric = bare ? formatDecimal(mm, 2) : `${formatDecimal(mm, 2)} mm`;
  if (units === "mm") return bothUnits ? withNearestInches(mm, metric, smallestFraction) : metric;
  const { text, caliper } = inchesOnRule(mm, format);
  const figure = bare ? caliper?.replace(/ in$/, "") : caliper;
  const beside = [figure, bothUnits ? metric : undefined].filter((part) => part !== undefined);
  return beside.length === 0 ? text : `${text} (${beside.join(", ")})`;
}

/** An inch length as the rule's division, and what a caliper is set to where that differs by more than can be held. */
function inchesOnRule(mm: number, format: RuleFormat): { readonly text: string; readonly caliper?: string } {
  const { smallestFraction = "1/64", rounding = "nearest", caliper = "beside", smallInThousandths = true } = format;
  const { text, over } = roundToRule(mm, "in", smallestFraction, rounding);
  if (over === 0 || caliper === "none") return { text };
  const alone = caliper === "instead" || (smallInThousandths && Math.abs(mm) < SMALL);
  return alone ? { text: formatThousandths(mm) } : { text, caliper: formatThousandths(mm) };
}

/** Beside exact mm the fraction of an inch is only the nearest one, and "about" where a maker could hold the difference. */
function withNearestInches(mm: number, metric: string, smallestFraction: Fraction): string {
  const { text, count, off } = nearestFraction(mm, smallestFraction);
  if (count === 0 && metric !== "0 mm") return metric;
  return `${metric} (${off > BENCH_TOLERANCE ? "about " : ""}${text} in)`;
}

/** A length in the maker's unit, for a sentence: "44.45 mm", "1 3/4 in", "3 9/32 in (3.293 in)", "0.012 in". */
export const formatLength = (
  mm: number,
  units: Units,
  smallestFraction: Fraction = "1/64",
  rounding: RoundingDirection = "nearest",
): string => formatOnRule(mm, { units, smallestFraction, rounding });

/** A length beside a dimension line, where room is short: bare mm; "1 3/4 in", "3 9/32 in (3.293)", "0.012 in". */
export const formatDimension = (
  mm: number,
  units: Units,
  smallestFraction: Fraction,
  rounding: RoundingDirection = "nearest",
): string => formatOnRule(mm, { units, smallestFraction, rounding, bare: true });

/** A length as one figure that can be typed back: bare mm; inches as a fraction where a rule shows it, else "3.293 in". */
export const formatTypeable = (mm: number, units: Units, smallestFraction: Fraction): string =>
  formatOnRule(mm, { units, smallestFraction, caliper: "instead", bare: true });

/** The same in both units, the maker's first: "44.45 mm (1 3/4 in)", "3 9/32 in (3.293 in, 83.64 mm)". */
export const formatLengthInBoth = (
  mm: number,
  units: Units,
  smallestFraction: Fraction = "1/64",
  rounding: RoundingDirection = "nearest",
): string => formatOnRule(mm, { units, smallestFraction, rounding, bothUnits: true });

/** How a length is written in decimals. */
export interface DecimalLengthFormat extends Omit<NumberFormat, "decimals"> {
  readonly units: Units;
  /** Most decimals in either unit. */
  readonly decimals: Readonly<Record<Units, number>>;
  /** Without the unit. */
  readonly bare?: boolean;
}

/** A length in decimals of the maker's unit: "0.15 mm", "0.006 in". */
export function formatDecimalLength(mm: number, format: DecimalLengthFormat): string {
  const { units, decimals, bare = false } = format;
  const figure = formatNumber(fromMillimetres(mm, units), { ...format, decimals: decimals[units] });
  return bare ? figure : `${figure} ${units}`;
}

/** A length beside another that it is compared with, in the maker's unit: "49.6 mm", "1.953 in", which fractions would hide. */
export const formatForComparison = (mm: number, units: Units): string =>
  units === "mm" ? `${formatDecimal(mm, 2)} mm` : formatThousandths(mm);

/**
 * A small length as feelers and dials give it, the maker's unit first: "0.15 mm", "0.006 in (0.15 mm)"; "under 0.01 mm" for
 * one that is not nothing, but less than is shown.
 */
export function formatFineLength(mm: number, units: Units): string {
  const metric = `${formatFineDecimal(mm, 2)} mm`;
  if (units === "mm") return metric;
  const figure = formatThousandthsFigure(mm);
  return `${figure === "0" && mm > 0 ? "under 0.001" : figure} in (${metric})`;
}

/** A hard limit as a message gives it: mm, and before it decimal inches where the file is in inches. */
export function formatLimit(mm: number, units: Units): string {
  const metric = `${formatDecimal(mm, 3)} mm`;
  return units === "mm" ? metric : `${formatDecimal(mm / INCH, 3)} in (${metric})`;
}

/** A value with its unit: a length in both units, the maker's first; anything else as it is kept inside. */
export const formatValue = (value: number, unit: string, units: Units, smallestFraction: Fraction): string =>
  unit === "mm" ? formatLengthInBoth(value, units, smallestFraction) : formatQuantity(value, unit);
