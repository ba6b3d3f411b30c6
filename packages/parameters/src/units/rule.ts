// Inches on a rule: the division on the safe side of a length, and its fraction.
import { BENCH_TOLERANCE } from "@lamplane/geometry";
import { type Fraction, INCH, type Units } from "./inch.ts";
import { formatDecimal } from "./number.ts";

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

/** The same without its unit. */
export function formatThousandthsFigure(mm: number): string {
  const figure = formatDecimal(mm / INCH, 3);
  return figure === "0" ? figure : Number(figure).toFixed(3);
}

/** The nearest division of a rule to a length, and how far it is off it, mm. */
export function nearestFraction(mm: number, smallestFraction: Fraction): { text: string; count: number; off: number } {
  const parts = Number(smallestFraction.slice(2));
  const count = Math.round((mm / INCH) * parts);
  return { text: formatFraction(count, parts), count, off: Math.abs(mm - (count * INCH) / parts) };
}

function formatFraction(count: number, parts: number): string {
  const sign = count < 0 ? "-" : "";
  const whole = Math.floor(Math.abs(count) / parts);
  let [top, bottom] = [Math.abs(count) % parts, parts];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  if (top === 0) return `${sign}${whole}`;
  return `${sign}${whole > 0 ? `${whole} ` : ""}${top}/${bottom}`;
}
