// Text ⇄ numbers with units, at the border only; the one file that knows 25.4. Inside, every length is mm.
import type { Quantity } from "./parameter.ts";
import { SHOP } from "./tolerances.ts";

/** Unit of a maker's file. */
export type Units = "mm" | "in";
/** Smallest division on the shop's rules. */
export type Fraction = "1/8" | "1/16" | "1/32" | "1/64";
/** A number that was understood, or what to write instead. */
export type Reading = { readonly value: number } | { readonly fault: string };

const INCH = 25.4; // mm, exactly: the international inch, agreed by six standards laboratories in 1959
const PER_MM = 1e6; // nanometres: far below what any tool measures, far above a double's noise
const WORTH_TELLING = SHOP / 2; // mm: a smaller remainder cannot be held apart
const LONGEST = 60; // characters: no number is written longer

const IN_MM = new Map<string, number>([
  ...["mm", "millimetre", "millimetres", "millimeter", "millimeters"].map((name) => [name, 1] as const),
  ...["cm", "centimetre", "centimetres", "centimeter", "centimeters"].map((name) => [name, 10] as const),
  ...["in", "in.", "inch", "inches", '"', "″", "”"].map((name) => [name, INCH] as const),
]);

const SUFFIX: Partial<Record<Quantity, { readonly pattern: RegExp; readonly example: string }>> = {
  angle: { pattern: /\s*(°|deg|degs|degree|degrees)$/i, example: "47 or 47°" },
  temperature: { pattern: /\s*(°\s?C|℃|C)$/i, example: "21 or 21 °C" },
  humidity: { pattern: /\s*%(\s?RH)?$/i, example: "30 or 30 %" },
  percent: { pattern: /\s*%$/, example: "30 or 30 %" },
  "force per length": { pattern: /\s*N\/mm$/, example: "5 or 5 N/mm" },
};

/**
 * Length in mm, rounded to a nanometre.
 * @param units unit of a number that carries none
 * @see international yard and pound agreement, 1959: 1 in = 25.4 mm exactly
 */
export function readLength(text: string, units: Units): Reading {
  const plain = plainFigures(text);
  const refused = refusal(plain, "44.5 mm or 1 3/4 in") ?? feetIn(plain);
  if (refused !== undefined) return { fault: refused };
  const parts = /^([-+]?[\d./\s-]*)(.*)$/.exec(plain);
  const figures = (parts?.[1] ?? "").trim();
  const unit = (parts?.[2] ?? "").trim().toLowerCase();
  const factor = IN_MM.get(unit === "" ? units : unit);
  if (factor === undefined && (/\d/.test(unit) || IN_MM.has(/^\p{L}+(?=\P{L})/u.exec(unit)?.[0] ?? "")))
    return { fault: "this is more than one number or unit; write one length, such as 44.5 mm or 1 3/4 in" };
  if (factor === undefined) return { fault: `unit "${shortened(unit)}" is not known; write mm, cm or in` };
  if (!figures.includes("/")) return scaled(decimal(figures), factor, "44.5 mm or 1 3/4 in");
  return fraction(figures, unit, factor);
}

/** Number of any quantity in its inside unit; only a length may be bare in the file's own unit. */
export function readNumberText(text: string, quantity: Quantity, units: Units): Reading {
  if (quantity === "length") return readLength(text, units);
  const suffix = SUFFIX[quantity];
  const example = suffix?.example ?? (quantity === "count" ? "2" : "0.25");
  const plain = plainFigures(text);
  const refused = refusal(plain, example) ?? (quantity === "angle" ? noDegrees(plain) : undefined);
  if (refused !== undefined) return { fault: refused };
  const value = decimal(suffix ? plain.replace(suffix.pattern, "") : plain);
  return value === undefined || !Number.isFinite(value) ? { fault: notRead(example) } : { value };
}

/** Which way a length may be rounded without harm: a rough width up, what is planed off a sole down. */
export type SafeWay = "up" | "down" | "nearest";

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
export function onRule(mm: number, units: Units, smallestFraction: Fraction, way: SafeWay): RuleReading {
  if (units === "mm") return { text: `${trimmed(mm, 2)} mm`, over: 0 };
  const parts = Number(smallestFraction.slice(2));
  const exact = (mm / INCH) * parts;
  const near = Math.round(exact);
  const held = Math.abs(exact - near) * (INCH / parts) <= WORTH_TELLING;
  const count = held || way === "nearest" ? near : way === "up" ? Math.ceil(exact) : Math.floor(exact);
  if (count === 0) return { text: thousandths(mm), over: 0 };
  return { text: `${fractionText(count, parts)} in`, over: held ? 0 : ((count - exact) * INCH) / parts };
}

/** A length in inches as a caliper has it, to the thousandth: "3.293 in", "0.650 in"; "0 in" for one that is less. */
export const thousandths = (mm: number): string => `${thousandthsFigure(mm)} in`;

function thousandthsFigure(mm: number): string {
  const figure = trimmed(mm / INCH, 3);
  return figure === "0" ? figure : Number(figure).toFixed(3);
}

/**
 * An inch length in the trade's two forms: the rule's division, and what a caliper is set to where that differs by more
 * than can be held. A small length is told in thousandths alone: a remainder is too large a share of it.
 */
function inches(
  mm: number,
  smallestFraction: Fraction,
  way: SafeWay,
): { readonly text: string; readonly caliper?: string } {
  const { text, over } = onRule(mm, "in", smallestFraction, way);
  if (over === 0) return { text };
  return Math.abs(mm) < CALIPER_ALONE ? { text: thousandths(mm) } : { text, caliper: thousandths(mm) };
}

/** mm, 1/8 in: under it thousandths are told alone. */
const CALIPER_ALONE = INCH / 8;

/**
 * A length in the maker's unit, for a sentence: "44.45 mm", "1 3/4 in", "3 9/32 in (3.293 in)" where the rule's division
 * is not the length itself, "0.012 in" where it is small.
 */
export function lengthText(
  mm: number,
  units: Units,
  smallestFraction: Fraction = "1/64",
  way: SafeWay = "nearest",
): string {
  if (units === "mm") return `${trimmed(mm, 2)} mm`;
  const { text, caliper } = inches(mm, smallestFraction, way);
  return caliper === undefined ? text : `${text} (${caliper})`;
}

/** A length beside a dimension line, where room is short: bare mm; "1 3/4 in", "3 9/32 in (3.293)", "0.012 in". */
export function dimensionText(mm: number, units: Units, smallestFraction: Fraction, way: SafeWay = "nearest"): string {
  if (units === "mm") return trimmed(mm, 2);
  const { text, caliper } = inches(mm, smallestFraction, way);
  return caliper === undefined ? text : `${text} (${caliper.replace(/ in$/, "")})`;
}

/** A length beside another that it is compared with, in the maker's unit: "49.6 mm", "1.953 in", which fractions would hide. */
export const comparedText = (mm: number, units: Units): string =>
  units === "mm" ? `${trimmed(mm, 2)} mm` : thousandths(mm);

/** A length as one figure that can be typed back: bare mm; inches as a fraction where a rule shows it, else "3.293 in". */
export function oneFigure(mm: number, units: Units, smallestFraction: Fraction): string {
  if (units === "mm") return trimmed(mm, 2);
  const { text, caliper } = inches(mm, smallestFraction, "nearest");
  return caliper ?? text;
}

/**
 * The same in both units, the maker's first: "44.45 mm (1 3/4 in)", "3 9/32 in (3.293 in, 83.64 mm)". Beside exact mm, the
 * fraction of an inch is only the nearest one, and "about" where a maker could hold the difference.
 */
export function lengthBoth(
  mm: number,
  units: Units,
  smallestFraction: Fraction = "1/64",
  way: SafeWay = "nearest",
): string {
  const metric = `${trimmed(mm, 2)} mm`;
  if (units === "in") {
    const { text, caliper } = inches(mm, smallestFraction, way);
    return caliper === undefined ? `${text} (${metric})` : `${text} (${caliper}, ${metric})`;
  }
  const parts = Number(smallestFraction.slice(2));
  const count = Math.round((mm / INCH) * parts);
  if (count === 0 && metric !== "0 mm") return metric;
  const about = Math.abs(mm - (count * INCH) / parts) > SHOP ? "about " : "";
  return `${metric} (${about}${fractionText(count, parts)} in)`;
}

/** Decimals worth showing, by unit; two for the rest. Forces and stresses rest on estimates. */
const DECIMALS: Readonly<Record<string, number>> = { "": 4, N: 0, MPa: 1 };
/**
 * A small length as feelers and dials give it, the maker's unit first: "0.15 mm", "0.006 in (0.15 mm)"; "under 0.01 mm" for
 * one that is not nothing, but less than is shown.
 */
export function fineText(mm: number, units: Units): string {
  const metric = `${fineFigure(mm, 2)} mm`;
  if (units === "mm") return metric;
  const figure = thousandthsFigure(mm);
  return `${figure === "0" && mm > 0 ? "under 0.001" : figure} in (${metric})`;
}

function fineFigure(value: number, decimals: number): string {
  const figure = trimmed(value, decimals);
  return figure === "0" && value > 0 ? `under ${10 ** -decimals}` : figure;
}

/** A value with its unit: a length in both units, the maker's first; anything else as it is kept inside. */
export function valueText(value: number, unit: string, units: Units, smallestFraction: Fraction): string {
  if (unit === "mm") return lengthBoth(value, units, smallestFraction);
  const apart = /^(|°|×)$/.test(unit) ? "" : " "; // only degrees and times stand close to their number
  return `${trimmed(value, DECIMALS[unit] ?? 2)}${apart}${unit}`;
}

/** A hard limit as a message gives it: mm, and before it decimal inches where the file is in inches. */
export function limitText(mm: number, units: Units): string {
  return units === "mm" ? `${trimmed(mm, 3)} mm` : `${trimmed(mm / INCH, 3)} in (${trimmed(mm, 3)} mm)`;
}

/** A length in mm as a bare number of the file's unit. */
export const inUnits = (mm: number, units: Units): number => (units === "mm" ? mm : mm / INCH);

/** Points of a printer's page (72 to the inch) in a mm. @see ISO 32000-1:2008, 8.3.2.3: the default unit of user space */
export const POINTS_PER_MM = 72 / INCH;

/** A bare number of the file's unit in mm, rounded to a nanometre. */
export const inMillimetres = (value: number, units: Units): number => rounded(units === "mm" ? value : value * INCH);

/** Decimal number without trailing zeros and without a minus on zero. */
export function trimmed(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  const shown = Math.round(Math.abs(value) * scale + 1e-7) / scale; // 1e-7: 0.125 is a half, also after a sum
  return `${value < 0 && shown > 0 ? "-" : ""}${shown}`;
}

function rounded(mm: number): number {
  const nanometres = Math.round(mm * PER_MM);
  return Number.isFinite(nanometres) ? nanometres / PER_MM + 0 : mm;
}

/** One sign for each meaning; `¾` becomes 3/4, set apart from digits beside it, so that `¾5` is no 3/45. */
function plainFigures(text: string): string {
  return text
    .replace(/(-?)([¼-¾⅐-⅞])/g, (_, dash: string, sign: string) => `${dash || " "}${sign.normalize("NFKC")} `)
    .replaceAll("⁄", "/")
    .replace("−", "-")
    .trim();
}

function feetIn(text: string): string | undefined {
  if (/\d\s*('|′|’){2}/.test(text)) return "two single marks are not read; write in, such as 1 3/4 in";
  return /\d\s*('|′|’|ft\b|foot|feet)/i.test(text) ? "feet are not read; write inches or mm: 18 in" : undefined;
}

function noDegrees(text: string): string | undefined {
  if (text.includes("%")) return "a slope is no angle here; write degrees, such as 45";
  return /\d\s*('|′|’|min)/i.test(text) ? "minutes are not read; write decimal degrees: 47.5, not 47° 30'" : undefined;
}

/** What is wrong with a text whatever its quantity. */
function refusal(text: string, example: string): string | undefined {
  if (text === "") return `nothing is written here; write a number such as ${example}`;
  if (text.length > LONGEST) return `more than ${LONGEST} characters are no number; write one such as ${example}`;
  if (/^[-+]?[\d.]+e[-+]?\d/i.test(text)) return `exponents are not read; write the number out, such as ${example}`;
  if (!text.includes(",")) return undefined;
  if (text.includes("/")) return "a comma has no place in a fraction; write one such as 1 3/4 in";
  if (/^\d{1,3}(,\d{3})+(?!\d)/.test(text))
    return `a comma may mean two things; write ${text.replaceAll(",", "")}, or ${text.replace(",", ".")}`;
  return `the decimal sign is a point; write ${shortened(text.replace(",", "."))}`;
}

function decimal(text: string): number | undefined {
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) + 0 : undefined;
}

function fraction(figures: string, unit: string, factor: number): Reading {
  const match = /^([-+]?)(?:(\d+)(?:\s+|-))?(\d+)\s*\/\s*(\d+)$/.exec(figures);
  if (!match) return { fault: notRead("1 3/4 in") };
  const [, sign, whole, top, bottom] = match;
  const [above, below] = [Number(top), Number(bottom)];
  if (below === 0) return { fault: "a fraction over zero is no number; write one such as 3/4 in" };
  if (factor !== INCH && unit === "")
    return { fault: `a fraction needs its unit in a file in mm; write ${figures} in` };
  const value = Number(whole ?? 0) + above / below;
  if (factor !== INCH) return { fault: `fractions are of inches; write ${trimmed(value, 4)} ${unit}` };
  if (whole !== undefined && above >= below)
    return {
      fault: `${top}/${bottom} beside a whole number is a slip; write ${trimmed(value, 4)} in, if that is meant`,
    };
  return scaled(sign === "-" ? -value : value, factor, "1 3/4 in");
}

function scaled(value: number | undefined, factor: number, example: string): Reading {
  if (value === undefined || !Number.isFinite(value * factor)) return { fault: notRead(example) };
  return { value: rounded(value * factor) };
}

const notRead = (example: string): string => `this is not a number that can be read; write one such as ${example}`;

function fractionText(count: number, parts: number): string {
  const sign = count < 0 ? "-" : "";
  const whole = Math.floor(Math.abs(count) / parts);
  let [top, bottom] = [Math.abs(count) % parts, parts];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  if (top === 0) return `${sign}${whole}`;
  return `${sign}${whole > 0 ? `${whole} ` : ""}${top}/${bottom}`;
}

const shortened = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
