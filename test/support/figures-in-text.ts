// Sentences taken apart again into what they were made of, and the figures in them read back and held against what they speak of.
import type { Units } from "@lamplane/parameters/units";
import { expect } from "vitest";

const MM: Readonly<Record<Units, number>> = { mm: 1, in: 25.4 };

type Texts = Readonly<Record<string, unknown>>;

/** A figure with its unit, or words. */
const PART = String.raw`.+?(?: mm| in(?: \([^)]*\))?| %)?`;

/**
 * The texts that a sentence was made of, by their names; undefined for a line that is not of this sentence.
 * @param fixed what is known of it: words that nothing but a space parts from what follows must be
 */
export function partsOf<Key extends string>(
  sentence: (data: never) => string,
  keys: readonly Key[],
  line: string,
  fixed: Texts = {},
): Readonly<Record<Key, string>> | undefined {
  const marked = Object.fromEntries(keys.map((key) => [key, `\u0000${key}\u0000`]));
  const pieces = sentence({ ...fixed, ...marked } as never).split("\u0000");
  const pattern = pieces.map((piece, i) => (i % 2 === 0 ? escapeForPattern(piece) : `(?<${piece}>${PART})`)).join("");
  return new RegExp(`^${pattern}$`).exec(line)?.groups as Readonly<Record<Key, string>> | undefined;
}

const escapeForPattern = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** How a figure is to be written. */
export interface FigureFormat {
  /** Most decimals. */
  readonly decimals: number;
  /** All of them, zeros too. */
  readonly fixed?: boolean;
  /** What stands behind the figure. */
  readonly unit?: string;
}

/** The text holds the value to the format's decimals, as near as they allow, and its unit. */
export function expectFigure(text: string, value: number, { decimals, fixed = false, unit = "" }: FigureFormat) {
  const [, under, figure = "", rest] = /^(under )?[±+]?(-?[\d.]+)(.*)$/.exec(text) ?? [];
  expect(rest?.trim(), text).toBe(unit);
  const printed = figure.split(".")[1]?.length ?? 0;
  if (under) {
    expect(value, text).toBeGreaterThan(0);
    expect(value, text).toBeLessThan(Number(figure));
    return;
  }
  expect(Math.abs(Number(figure) - value), `${text} for ${value}`).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-6);
  if (fixed) expect(printed, text).toBe(decimals);
  else {
    expect(printed, text).toBeLessThanOrEqual(decimals);
    expect(figure, text).not.toMatch(/\.\d*0$|\.$|^-0$/);
  }
}

/** A length in decimals of the unit: hundredths of a millimetre or what is asked. */
export const expectDecimalLength = (
  text: string,
  mm: number,
  units: Units,
  decimals: Readonly<Record<Units, number>>,
  fixed = false,
): void => expectFigure(text, mm / MM[units], { decimals: decimals[units], fixed, unit: units });

/** A length as the maker reads it: hundredths of a millimetre, or what a rule and a caliper in thousandths of an inch show. */
export function expectLength(text: string, mm: number, units: Units) {
  if (units === "mm") return expectFigure(text, mm, { decimals: 2, unit: "mm" });
  const [, caliper] = /\((-?[\d.]+)\)$/.exec(text) ?? [];
  const [, sign, whole, top, bottom] = /^(-?)(?:(\d+) )?(\d+)\/(\d+) in$/.exec(text) ?? [];
  if (bottom) {
    const inches = (Number(whole ?? 0) + Number(top) / Number(bottom)) * (sign ? -1 : 1);
    expect(Math.abs(inches - mm / MM.in), text).toBeLessThan(0.001);
    return;
  }
  if (caliper) return expectFigure(caliper, mm / MM.in, { decimals: 3, fixed: true });
  const { figure = "" } = /^(?<figure>(?:under )?-?[\d.]+) in$/.exec(text)?.groups ?? {};
  const isWhole = /^-?\d+$/.test(figure);
  expectFigure(figure, mm / MM.in, { decimals: 3, fixed: !isWhole });
}
