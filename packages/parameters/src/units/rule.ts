// Inches on a rule: the division nearest to a length, and what a caliper shows of it.
import { type Fraction, INCH } from "./inch.ts";
import { formatNumber } from "./number.ts";

/** Share of a division from which a length is plainly over or under it. */
const PLAINLY_OFF = 1 / 4;
const BLUR = 1e-9; // of a division: what arithmetic adds to a quarter of one

/** A length of 0 or more as a rule and a caliper show it. */
export interface RuleReading {
  /** Nearest division in lowest terms: "3 15/32". */
  readonly text: string;
  /** "+" or "−" where the length is over or under the division by more than a quarter of one. */
  readonly heavy: "" | "+" | "−";
  /** Inches to the thousandth: "3.471". */
  readonly thousandths: string;
  /** Whether the division says the thousandths already. */
  readonly isWhole: boolean;
}

/** @param mm 0 or more */
export function readOnRule(mm: number, smallestFraction: Fraction): RuleReading {
  const parts = Number(smallestFraction.slice(2));
  const exact = (mm / INCH) * parts;
  const count = Math.round(exact);
  const off = exact - count;
  const thousandths = formatThousandths(mm / INCH);
  return {
    text: formatFraction(count, parts),
    heavy: Math.abs(off) <= PLAINLY_OFF + BLUR ? "" : off > 0 ? "+" : "−",
    thousandths,
    isWhole: Math.abs(off) <= BLUR || (count > 0 && formatThousandths(count / parts) === thousandths),
  };
}

const formatThousandths = (inches: number): string => formatNumber(inches, { decimals: 3, fixed: true });

function formatFraction(count: number, parts: number): string {
  const whole = Math.floor(count / parts);
  let [top, bottom] = [count % parts, parts];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  if (top === 0) return `${whole}`;
  return `${whole > 0 ? `${whole} ` : ""}${top}/${bottom}`;
}
