// Numbers as the shop reads them: off a rule, off a caliper, in both units. What is told can be read back.
import { BENCH_TOLERANCE } from "@lamplane/geometry";
import { type Fraction, formatDecimal, INCH, type Units } from "./inch.ts";

const SMALLEST_REMAINDER = BENCH_TOLERANCE / 2; // mm: a smaller remainder cannot be held apart

/** Which way a length may be rounded without harm: a rough width up, what is planed off a sole down. */
export type RoundingDirection = "up" | "down" | "nearest";

/** A length as a rule shows it, and by how much that is over the length itself; below 0 it is under. mm. */
export interface RuleReading {
  readonly text: string;
  readonly over: number;
}

/**
 * The division of the maker's rule that lies on the safe side of a length. A division that the length reaches to half of
 * what a maker can hold counts as the length itself. Metric lengths are told to 0.01 mm, finer than any rule; inches under
 * the first division in thousandths, as a caliper or a feeler leaf has them.
 */
export function roundToRule(mm: number, units: Units, smallestFraction: Fraction, way: RoundingDirection): RuleReading {
  if (units === "mm") return { text: `${formatDecimal(mm, 2)} mm`, over: 0 };
  const parts = Number(smallestFraction.slice(2));
  const exact = (mm / INCH) * parts;
  const near = Math.round(exact);
  const held = Math.abs(exact - near) * (INCH / parts) <= SMALLEST_REMAINDER;
  const count = held || way === "nearest" ? near : way === "up" ? Math.ceil(exact) : Math.floor(exact);
  if (count === 0) return { text: formatThousandths(mm), over: 0 };
  return { text: `${formatFraction(count, parts)} in`, over: held ? 0 : ((count - exact) * INCH) / parts };
}

/** A length in inches as a caliper has it, to the thousandth: "3.293 in", "0.650 in"; "0 in" for one that is less. */
export const formatThousandths = (mm: number): string => `${formatThousandthsFigure(mm)} in`;

function formatThousandthsFigure(mm: number): string {
  const figure = formatDecimal(mm / INCH, 3);
  return figure === "0" ? figure : Number(figure).toFixed(3);
}

/**
 * An inch length in the trade's two forms: the rule's division, and what a caliper is set to where that differs by more
 * than can be held. A small length is told in thousandths alone: a remainder is too large a share of it.
 */
function formatInches(
  mm: number,
  smallestFraction: Fraction,
  way: RoundingDirection,
): { readonly text: string; readonly caliper?: string } {
  const { text, over } = roundToRule(mm, "in", smallestFraction, way);
  if (over === 0) return { text };
  return Math.abs(mm) < CALIPER_ALONE ? { text: formatThousandths(mm) } : { text, caliper: formatThousandths(mm) };
}

/** mm, 1/8 in: under it thousandths are told alone. */
const CALIPER_ALONE = INCH / 8;

/**
 * A length in the maker's unit, for a sentence: "44.45 mm", "1 3/4 in", "3 9/32 in (3.293 in)" where the rule's division
 * is not the length itself, "0.012 in" where it is small.
 */
export function formatLength(
  mm: number,
  units: Units,
  smallestFraction: Fraction = "1/64",
  way: RoundingDirection = "nearest",
): string {
  if (units === "mm") return `${formatDecimal(mm, 2)} mm`;
  const { text, caliper } = formatInches(mm, smallestFraction, way);
  return caliper === undefined ? text : `${text} (${caliper})`;
}

/** A length beside a dimension line, where room is short: bare mm; "1 3/4 in", "3 9/32 in (3.293)", "0.012 in". */
export function formatDimension(
  mm: number,
  units: Units,
  smallestFraction: Fraction,
  way: RoundingDirection = "nearest",
): string {
  if (units === "mm") return formatDecimal(mm, 2);
  const { text, caliper } = formatInches(mm, smallestFraction, way);
  return caliper === undefined ? text : `${text} (${caliper.replace(/ in$/, "")})`;
}

/** A length beside another that it is compared with, in the maker's unit: "49.6 mm", "1.953 in", which fractions would hide. */
export const formatForComparison = (mm: number, units: Units): string =>
  units === "mm" ? `${formatDecimal(mm, 2)} mm` : formatThousandths(mm);

/** A length as one figure that can be typed back: bare mm; inches as a fraction where a rule shows it, else "3.293 in". */
export function formatTypeable(mm: number, units: Units, smallestFraction: Fraction): string {
  if (units === "mm") return formatDecimal(mm, 2);
  const { text, caliper } = formatInches(mm, smallestFraction, "nearest");
  return caliper ?? text;
}

/**
 * The same in both units, the maker's first: "44.45 mm (1 3/4 in)", "3 9/32 in (3.293 in, 83.64 mm)". Beside exact mm, the
 * fraction of an inch is only the nearest one, and "about" where a maker could hold the difference.
 */
export function formatLengthInBoth(
  mm: number,
  units: Units,
  smallestFraction: Fraction = "1/64",
  way: RoundingDirection = "nearest",
): string {
  const metric = `${formatDecimal(mm, 2)} mm`;
  if (units === "in") {
    const { text, caliper } = formatInches(mm, smallestFraction, way);
    return caliper === undefined ? `${text} (${metric})` : `${text} (${caliper}, ${metric})`;
  }
  const parts = Number(smallestFraction.slice(2));
  const count = Math.round((mm / INCH) * parts);
  if (count === 0 && metric !== "0 mm") return metric;
  const about = Math.abs(mm - (count * INCH) / parts) > BENCH_TOLERANCE ? "about " : "";
  return `${metric} (${about}${formatFraction(count, parts)} in)`;
}

/** Decimals worth showing, by unit; two for the rest. Forces and stresses rest on estimates. */
const DECIMALS: Readonly<Record<string, number>> = { "": 4, N: 0, MPa: 1 };
/**
 * A small length as feelers and dials give it, the maker's unit first: "0.15 mm", "0.006 in (0.15 mm)"; "under 0.01 mm" for
 * one that is not nothing, but less than is shown.
 */
export function formatFineLength(mm: number, units: Units): string {
  const metric = `${formatFineFigure(mm, 2)} mm`;
  if (units === "mm") return metric;
  const figure = formatThousandthsFigure(mm);
  return `${figure === "0" && mm > 0 ? "under 0.001" : figure} in (${metric})`;
}

function formatFineFigure(value: number, decimals: number): string {
  const figure = formatDecimal(value, decimals);
  return figure === "0" && value > 0 ? `under ${10 ** -decimals}` : figure;
}

/** A value with its unit: a length in both units, the maker's first; anything else as it is kept inside. */
export function formatValue(value: number, unit: string, units: Units, smallestFraction: Fraction): string {
  if (unit === "mm") return formatLengthInBoth(value, units, smallestFraction);
  const apart = /^(|°|×)$/.test(unit) ? "" : " "; // only degrees and times stand close to their number
  return `${formatDecimal(value, DECIMALS[unit] ?? 2)}${apart}${unit}`;
}

/** A hard limit as a message gives it: mm, and before it decimal inches where the file is in inches. */
export function formatLimit(mm: number, units: Units): string {
  return units === "mm"
    ? `${formatDecimal(mm, 3)} mm`
    : `${formatDecimal(mm / INCH, 3)} in (${formatDecimal(mm, 3)} mm)`;
}

function formatFraction(count: number, parts: number): string {
  const sign = count < 0 ? "-" : "";
  const whole = Math.floor(Math.abs(count) / parts);
  let [top, bottom] = [Math.abs(count) % parts, parts];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  if (top === 0) return `${sign}${whole}`;
  return `${sign}${whole > 0 ? `${whole} ` : ""}${top}/${bottom}`;
}
