// Lengths as text for people: one text for one length, in the maker's unit. Each form without brackets of mm can be read back.
import { type Fraction, fromMillimetres, INCH, type Units } from "./inch.ts";
import { formatDecimal, formatNumber, formatQuantity, type NumberFormat } from "./number.ts";
import { readOnRule } from "./rule.ts";

/** How a maker reads lengths; a design is one. */
export interface LengthStyle {
  readonly units: Units;
  readonly shop: {
    /** Smallest division on the shop's rules. */
    readonly smallestFraction: Fraction;
    /** Whether the other unit stands behind each length, in brackets. */
    readonly bothUnits: "no" | "yes";
  };
}

const SMALL = INCH / 8; // mm: under it a caliper is read, not a rule
const NOTHING = 1e-6; // mm: what arithmetic leaves of 0

/**
 * A length in the maker's unit: "44.45 mm", "1 3/4 in", "0.012 in", "3 15/32 in (3.471)" where the rule's nearest division
 * does not say the thousandths, "3 15/32+ in (3.474)" where the length is over it by more than a quarter of a division;
 * "under 0.01 mm" for one that is not nothing but less than is shown.
 */
export function formatLength(mm: number, style: LengthStyle): string {
  const { units, shop } = style;
  if (shop.bothUnits === "no") return units === "mm" ? metricText(mm) : inchText(mm, shop.smallestFraction);
  if (units === "mm")
    return `${metricText(mm)} (${inchText(mm, shop.smallestFraction).replace(/ in \((.*)\)$/, ", $1 in")})`;
  const [, text, thousandths] = /^(.*? in)(?: \((.*)\))?$/.exec(inchText(mm, shop.smallestFraction))!;
  return `${text} (${thousandths === undefined ? "" : `${thousandths}, `}${metricText(mm)})`;
}

/** The same without its unit: "44.45", "1 3/4", "3 15/32 (3.471)". */
export function formatBareLength(mm: number, { units, shop }: LengthStyle): string {
  return units === "mm" ? fineFigure(mm, 2) : inchText(mm, shop.smallestFraction).replace(" in", "");
}

/** The same beside a dimension line, where room is short: bare mm, as the sheet says once; inches with their unit. */
export const formatDimension = (mm: number, style: LengthStyle): string =>
  style.units === "mm" ? formatBareLength(mm, style) : inchText(mm, style.shop.smallestFraction);

const metricText = (mm: number): string => `${fineFigure(mm, 2)} mm`;

function inchText(mm: number, smallestFraction: Fraction): string {
  const size = Math.abs(mm);
  const { text, heavy, thousandths, isWhole } = readOnRule(size, smallestFraction);
  if (mm < 0 && Number(thousandths) === 0) return "0 in";
  const sign = mm < 0 ? "-" : "";
  if (isWhole) return `${sign}${text} in`;
  if (size < SMALL || text === "0") return `${sign}${fineFigure(size / INCH, 3, true)} in`;
  return `${sign}${text}${heavy} in (${sign}${thousandths})`;
}

/** Decimals without zeros at their end (with them where `fixed`), or "under 0.01" for what would be shown as 0. */
function fineFigure(value: number, decimals: number, fixed = false): string {
  const figure = formatDecimal(value, decimals);
  if (figure !== "0") return fixed ? formatNumber(value, { decimals, fixed }) : figure;
  return value > NOTHING ? `under ${10 ** -decimals}` : figure;
}

/** How a length is written in decimals. */
export interface DecimalLengthFormat extends Omit<NumberFormat, "decimals"> {
  readonly units: Units;
  /** Most decimals in either unit. */
  readonly decimals: Readonly<Record<Units, number>>;
  /** Without the unit. */
  readonly bare?: boolean;
}

/** A reading finer than a rule or a caliper gives, in decimals of the maker's unit: "0.004 mm", "0.0002 in". */
export function formatDecimalLength(mm: number, format: DecimalLengthFormat): string {
  const { units, decimals, bare = false } = format;
  const figure = formatNumber(fromMillimetres(mm, units), { ...format, decimals: decimals[units] });
  return bare ? figure : `${figure} ${units}`;
}

/** A hard limit as a message gives it: mm, and before it decimal inches where the file is in inches. */
export function formatLimit(mm: number, units: Units): string {
  const metric = `${formatDecimal(mm, 3)} mm`;
  return units === "mm" ? metric : `${formatDecimal(mm / INCH, 3)} in (${metric})`;
}

/** A value with its unit: a length in the maker's unit, anything else as it is kept inside. */
export const formatValue = (value: number, unit: string, style: LengthStyle): string =>
  unit === "mm" ? formatLength(value, style) : formatQuantity(value, unit);
