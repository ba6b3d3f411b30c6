// Text ⇄ millimetres and degrees; the only file that knows 25.4. What could be misread is refused, never guessed.

/** Unit in which a maker's file gives bare lengths. */
export type Units = "mm" | "in";
/** A length that was read, or what is wrong with the text and what to write instead. */
export type LengthRead = { readonly mm: number; readonly fault?: never } | { readonly fault: string; readonly mm?: never };
/** An angle that was read, or what is wrong with the text and what to write instead. */
export type AngleRead =
  | { readonly degrees: number; readonly fault?: never }
  | { readonly fault: string; readonly degrees?: never };
/** A bare number that was read, or what is wrong with the text. */
export type NumberRead =
  | { readonly value: number; readonly fault?: never }
  | { readonly fault: string; readonly value?: never };

const INCH = 25.4; // mm, exactly: the international inch of 1959 (NIST SP 811, appendix B; ISO 31-1)
const REMAINDER = 0.05; // mm: what is left beside a fraction and smaller than this cannot be marked with a knife
const HOLDABLE = 0.1; // mm: what a maker can hold; a translation further off than this is called "about"
const HAIR = 1e-9; // parts: lets a half that arithmetic left a hair short still round up

const UNIT_MM: Readonly<Record<string, number>> = {
  ...Object.fromEntries(["mm", "millimetre", "millimetres", "millimeter", "millimeters"].map((word) => [word, 1])),
  ...Object.fromEntries(["cm", "centimetre", "centimetres", "centimeter", "centimeters"].map((word) => [word, 10])),
  ...Object.fromEntries(["in", "in.", "inch", "inches", '"'].map((word) => [word, INCH])),
};
const DEGREE_WORDS = ["°", "deg", "degs", "degree", "degrees"];
const LENGTH = /^([+-]?)(?:(?:(\d+)[ -])?(\d+)\/(\d+)|(\d+\.?\d*|\.\d+)) ?([^\d ].*)?$/u;
const NUMBER = /^([+-]?(?:\d+\.?\d*|\.\d+)) ?([^\d ].*)?$/u;

export const inchesToMm = (inches: number): number => inches * INCH;
export const mmToInches = (mm: number): number => mm / INCH;

/** A length rounded to a nanometre, so that 1 3/4 in is 44.45 and nothing else; mm in, mm out. */
export const toNanometre = (mm: number): number => (Math.abs(mm) < 1e9 ? Math.round(mm * 1e6) / 1e6 + 0 : mm);

/**
 * Reads a length as makers write it: `44.5`, `44.5 mm`, `4.45 cm`, `1.75"`, `1 3/4 in`, `1-3/4"`, `¾ in`.
 * @param units unit of a text that carries none
 */
export function readLength(text: string, units: Units): LengthRead {
  const plain = plainText(text);
  const mistake = lengthMistake(plain);
  if (mistake !== undefined) return { fault: `${quoted(text)} ${mistake}` };
  const parts = LENGTH.exec(plain);
  if (!parts) return { fault: `${quoted(text)} is not one length: write it like 44.5 mm, 1.75 in or 1 3/4 in` };
  const [, sign, whole, top, bottom, decimal, word] = parts;
  const perUnit = word === undefined ? UNIT_MM[units]! : unitMm(word);
  if (perUnit === undefined) return { fault: `${quoted(text)} ${unitMistake(word!)}` };
  const fraction = top === undefined ? undefined : { whole: whole ?? "", top, bottom: bottom!, word };
  const fault = fraction && fractionMistake(fraction, perUnit);
  if (fault !== undefined) return { fault: `${quoted(text)} ${fault}` };
  const size = fraction ? Number(fraction.whole) + Number(top) / Number(bottom) : Number(decimal);
  const mm = toNanometre((sign === "-" ? -size : size) * perUnit);
  return Number.isFinite(mm) ? { mm } : { fault: `${quoted(text)} is too large to be a length` };
}

/** Reads an angle in decimal degrees: `47`, `47°`, `47.5 deg`. */
export function readAngle(text: string): AngleRead {
  const plain = plainText(text);
  if (/\d ?(?:°|deg\w*)? ?\d* ?(?:'|min)/iu.test(plain))
    return { fault: `${quoted(text)} has minutes: write decimal degrees, 47.5 for 47° 30'` };
  if (/%/u.test(plain)) return { fault: `${quoted(text)} is a slope: write the angle in degrees, such as 45` };
  const read = readNumber(text, DEGREE_WORDS, "47 or 47.5°");
  return read.fault === undefined ? { degrees: read.value } : { fault: read.fault };
}

/**
 * Reads a plain decimal number that may carry its own unit, and no other.
 * @param ownUnits the unit's spellings, none for a bare number
 * @param example what to write instead, for the message
 */
export function readNumber(text: string, ownUnits: readonly string[], example: string): NumberRead {
  const plain = plainText(text);
  const mistake = numberMistake(plain);
  if (mistake !== undefined) return { fault: `${quoted(text)} ${mistake}` };
  const [, number, word] = NUMBER.exec(plain) ?? [];
  if (number === undefined) return { fault: `${quoted(text)} is not one number: write ${example}` };
  if (word !== undefined && !ownUnits.some((own) => own.toLowerCase() === word.toLowerCase()))
    return { fault: `${quoted(text)}: the unit ${quoted(word)} is not read here: write ${example}` };
  const value = Number(number) + 0;
  return Number.isFinite(value) ? { value } : { fault: `${quoted(text)} is too large a number` };
}

/**
 * A length in the maker's unit: `44.45 mm`, or `1 3/4 in` with what the fraction leaves over, `1 3/4 in + 0.12 mm`.
 * @param smallestFraction of an inch, such as `1/64`
 */
export function formatLength(mm: number, units: Units, smallestFraction: string): string {
  if (units === "mm") return `${decimal(mm)} mm`;
  const { text, over } = inInches(mm, smallestFraction);
  return Math.abs(over) > REMAINDER ? `${text} ${over < 0 ? "-" : "+"} ${decimal(Math.abs(over))} mm` : text;
}

/** A length in the maker's unit and, in brackets, in the other: `8 mm (5/16 in)`. */
export function lengthBoth(mm: number, units: Units, smallestFraction: string): string {
  if (units === "in") return `${formatLength(mm, units, smallestFraction)} (${decimal(mm)} mm)`;
  const { text, over } = inInches(mm, smallestFraction);
  return `${decimal(mm)} mm (${Math.abs(over) > HOLDABLE ? "about " : ""}${text})`;
}

/** A number with at most so many decimals and no idle nought behind, never "-0". */
export const decimal = (value: number, places = 2): string => String(Number(value.toFixed(places)) + 0);

/** What somebody typed, fit for a message: on one line, not too long, nothing in it invisible. */
export function quoted(text: string): string {
  const short = text.length > 60 ? `${text.slice(0, 59)}…` : text;
  const visible = short.replace(/[\p{C}\p{Zl}\p{Zp}]/gu, (mark) => `\\u{${mark.codePointAt(0)!.toString(16)}}`);
  return `"${visible}"`;
}

/** One spelling for each mark: single spaces, plain quotes and slashes, `¾` as 3/4 set apart from its neighbours. */
function plainText(text: string): string {
  return text
    .replace(/-?[¼-¾⅐-⅞]/gu, (mark) =>
      mark.startsWith("-") ? `-${mark.slice(1).normalize("NFKC")} ` : ` ${mark.normalize("NFKC")} `,
    )
    .replace(/\u2044/gu, "/")
    .replace(/[″”“]/gu, '"')
    .replace(/[′’‘]/gu, "'")
    .replace(/\u2212/gu, "-")
    .replace(/\s+/gu, " ")
    .trim();
}

const unitMm = (word: string): number | undefined =>
  Object.hasOwn(UNIT_MM, word.toLowerCase()) ? UNIT_MM[word.toLowerCase()] : undefined;

function lengthMistake(plain: string): string | undefined {
  if (/''/u.test(plain)) return `has two single marks: write ${plain.replace(/ ?''/u, " in")}`;
  if (/'|\b(?:ft|feet|foot)\b/iu.test(plain))
    return "is in feet: write the whole length in inches, such as 14 in for 1 ft 2 in";
  return numberMistake(plain);
}

function numberMistake(plain: string): string | undefined {
  if (plain === "") return "is empty: write a number";
  if ((plain.match(/,/gu) ?? []).length > 1) return "has commas in it: write the number without them";
  if (/\d,\d{3}(?!\d)/u.test(plain))
    return `has a comma, for thousands or for decimals? Write ${plain.replace(",", "")} or ${plain.replace(",", ".")}`;
  if (plain.includes(",")) return `has a decimal comma: write ${plain.replace(/ ?, ?/u, ".")}`;
  if (/[\d.]e[+-]?\d/iu.test(plain)) return "has an exponent: write the number out in full";
  return undefined;
}

function unitMistake(word: string): string {
  const known = word.split(/[^a-z."]+/iu).filter((part) => part !== "" && unitMm(part) !== undefined);
  if (known.length > 1 || /\d|(?:mm|in|")["a-z]*"/iu.test(word) || (known.length === 1 && /[ (/]/u.test(word)))
    return "has more than one value or unit in it: write one, such as 44.5 mm or 1 3/4 in";
  return `is in a unit that is not read here, ${quoted(word)}: write mm, cm or in`;
}

interface Fraction {
  readonly whole: string;
  readonly top: string;
  readonly bottom: string;
  readonly word: string | undefined;
}

function fractionMistake({ whole, top, bottom, word }: Fraction, perUnit: number): string | undefined {
  const [upper, lower] = [Number(top), Number(bottom)];
  if (lower === 0) return "is a fraction over 0, which is no number";
  const asTyped = `${whole === "" ? "" : `${whole} `}${top}/${bottom}`;
  if (perUnit !== INCH && word === undefined)
    return `is a fraction without a unit, and bare lengths here are mm: is it inches? Write ${asTyped} in`;
  if (perUnit !== INCH) {
    const written = decimal(Number(whole) + upper / lower, 4);
    return `is a fraction of a metric unit: write ${written} ${word}, or ${asTyped} in if inches are meant`;
  }
  if (whole === "" || upper < lower) return undefined;
  return `has a whole number beside a fraction that is not below one: write ${top}/${bottom} in, or the sum as one number`;
}

/** The nearest fraction, half away from nought, in lowest terms; `over` is what it leaves, in mm. */
function inInches(mm: number, smallestFraction: string): { text: string; over: number } {
  const parts = partsOf(smallestFraction);
  const count = Math.round((Math.abs(mm) / INCH) * parts + HAIR);
  const sign = mm < 0 && count > 0 ? "-" : "";
  const common = greatestCommon(count % parts, parts);
  const fraction = count % parts === 0 ? "" : `${(count % parts) / common}/${parts / common}`;
  const whole = count >= parts || fraction === "" ? String(Math.floor(count / parts)) : "";
  const over = mm - (Math.sign(mm) * count * INCH) / parts;
  return { text: `${sign}${[whole, fraction].filter((part) => part !== "").join(" ")} in`, over };
}

function partsOf(smallestFraction: string): number {
  const parts = Number(/^1\/([1-9]\d{0,3})$/u.exec(smallestFraction)?.[1]);
  if (Number.isNaN(parts)) throw new Error(`${quoted(smallestFraction)} is not a fraction such as 1/64`);
  return parts;
}

const greatestCommon = (a: number, b: number): number => (b === 0 ? a : greatestCommon(b, a % b));
