// Text → numbers with units, at the border only; what is not understood is answered with what to write instead.
import type { Quantity } from "../parameter.ts";
import { NUMBER_FAULT } from "../words/number-faults.ts";
import { INCH, roundToNanometre, type Units } from "./inch.ts";
import { formatDecimal } from "./number.ts";

/** A number that was understood, or what to write instead. */
export type ParsedNumber = { readonly value: number } | { readonly fault: string };

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
  feed: { pattern: /\s*(mm|in)\/min$/, example: "1500 mm/min or 60 in/min" },
  turns: { pattern: /\s*rpm$/i, example: "16000 or 16000 rpm" },
  time: { pattern: /\s*s$/, example: "3 or 3 s" },
  "force per length": { pattern: /\s*N\/mm$/, example: "5 or 5 N/mm" },
};

/**
 * Length in mm, rounded to a nanometre.
 * @param units unit of a number that carries none
 * @see international yard and pound agreement, 1959: 1 in = 25.4 mm exactly
 */
export function parseLength(text: string, units: Units): ParsedNumber {
  const plain = thousandthsOf(text) ?? normalizeFigures(text);
  const refused = rejectText(plain, "44.5 mm or 1 3/4 in") ?? rejectFeet(plain);
  if (refused !== undefined) return { fault: refused };
  const parts = /^([-+]?[\d./\s-]*)(.*)$/.exec(plain);
  const figures = (parts?.[1] ?? "").trim();
  const unit = (parts?.[2] ?? "").trim().toLowerCase();
  const factor = IN_MM.get(unit === "" ? units : unit);
  if (factor === undefined && (/\d/.test(unit) || IN_MM.has(/^\p{L}+(?=\P{L})/u.exec(unit)?.[0] ?? "")))
    return { fault: NUMBER_FAULT.severalNumbers };
  if (factor === undefined) return { fault: NUMBER_FAULT.unknownUnit({ unit: shortenText(unit) }) };
  if (!figures.includes("/")) return scaleNumber(parseDecimal(figures), factor, "44.5 mm or 1 3/4 in");
  return parseFraction(figures, unit, factor);
}

/** The thousandths of a length as it is shown beside a rule's division: "3.474 in" of "3 15/32+ in (3.474)". */
function thousandthsOf(text: string): string | undefined {
  const match = /^-?[\d /]+[+−]?\s*(?:in|″)\s*\((-?\d+\.\d{3})\)$/.exec(text.trim());
  return match ? `${match[1]} in` : undefined;
}

/** Whether a text is figures without a unit, such as `1 3/4`. */
export const isBareLength = (text: string): boolean => /^[\d\s./⁄¼-¾⅐-⅞+-]+$/.test(text.trim());

/** Number of any quantity in its inside unit; only a length may be bare in the file's own unit. */
export function parseNumber(text: string, quantity: Quantity, units: Units): ParsedNumber {
  if (quantity === "length") return parseLength(text, units);
  const suffix = SUFFIX[quantity];
  const example = suffix?.example ?? (quantity === "count" ? "2" : "0.25");
  const plain = normalizeFigures(text);
  const refused = rejectText(plain, example) ?? (quantity === "angle" ? rejectDegrees(plain) : undefined);
  if (refused !== undefined) return { fault: refused };
  if (quantity === "feed" && units === "in" && !/[a-z]/i.test(plain))
    return { fault: NUMBER_FAULT.bareFeed({ figures: shortenText(plain) }) };
  const number = parseDecimal(suffix ? plain.replace(suffix.pattern, "") : plain);
  const isInches = quantity === "feed" && /in\/min$/.test(plain);
  const value = number === undefined || !isInches ? number : roundToNanometre(number * INCH);
  return value === undefined || !Number.isFinite(value) ? { fault: NUMBER_FAULT.notRead({ example }) } : { value };
}

/** One sign for each meaning; `¾` becomes 3/4, set apart from digits beside it, so that `¾5` is no 3/45. */
function normalizeFigures(text: string): string {
  return text
    .replace(/(-?)([¼-¾⅐-⅞])/g, (_, dash: string, sign: string) => `${dash || " "}${sign.normalize("NFKC")} `)
    .replaceAll("⁄", "/")
    .replace("−", "-")
    .trim();
}

function rejectFeet(text: string): string | undefined {
  if (/\d\s*('|′|’){2}/.test(text)) return NUMBER_FAULT.singleMarks;
  return /\d\s*('|′|’|ft\b|foot|feet)/i.test(text) ? NUMBER_FAULT.feet : undefined;
}

function rejectDegrees(text: string): string | undefined {
  if (text.includes("%")) return NUMBER_FAULT.slope;
  return /\d\s*('|′|’|min)/i.test(text) ? NUMBER_FAULT.minutes : undefined;
}

/** What is wrong with a text whatever its quantity. */
function rejectText(text: string, example: string): string | undefined {
  if (text === "") return NUMBER_FAULT.empty({ example });
  if (text.length > LONGEST) return NUMBER_FAULT.tooLong({ longest: LONGEST, example });
  if (/^[-+]?[\d.]+e[-+]?\d/i.test(text)) return NUMBER_FAULT.exponent({ example });
  if (!text.includes(",")) return undefined;
  if (text.includes("/")) return NUMBER_FAULT.commaInFraction;
  if (/^\d{1,3}(,\d{3})+(?!\d)/.test(text))
    return NUMBER_FAULT.thousands({ without: text.replaceAll(",", ""), decimal: text.replace(",", ".") });
  return NUMBER_FAULT.decimalComma({ point: shortenText(text.replace(",", ".")) });
}

function parseDecimal(text: string): number | undefined {
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) + 0 : undefined;
}

function parseFraction(figures: string, unit: string, factor: number): ParsedNumber {
  const match = /^([-+]?)(?:(\d+)(?:\s+|-))?(\d+)\s*\/\s*(\d+)$/.exec(figures);
  if (!match) return { fault: NUMBER_FAULT.notRead({ example: "1 3/4 in" }) };
  const [, sign, whole, top, bottom] = match;
  const [above, below] = [Number(top), Number(bottom)];
  if (below === 0) return { fault: NUMBER_FAULT.overZero };
  if (factor !== INCH && unit === "") return { fault: NUMBER_FAULT.bareFraction({ figures }) };
  const value = Number(whole ?? 0) + above / below;
  if (factor !== INCH) return { fault: NUMBER_FAULT.metricFraction({ decimal: `${formatDecimal(value, 4)} ${unit}` }) };
  if (whole !== undefined && above >= below)
    return {
      fault: NUMBER_FAULT.topHeavy({ fraction: `${top}/${bottom}`, decimal: formatDecimal(value, 4) }),
    };
  return scaleNumber(sign === "-" ? -value : value, factor, "1 3/4 in");
}

function scaleNumber(value: number | undefined, factor: number, example: string): ParsedNumber {
  if (value === undefined || !Number.isFinite(value * factor)) return { fault: NUMBER_FAULT.notRead({ example }) };
  return { value: roundToNanometre(value * factor) };
}

const shortenText = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
