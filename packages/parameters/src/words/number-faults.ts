// What is wrong with a text that should be a number or a length, and what to write instead.
import { sentence } from "./sentence.ts";

const EXAMPLE = { example: "47 or 47°" };

export const NUMBER_FAULT = {
  severalNumbers: "this is more than one number or unit; write one length, such as 44.5 mm or 1 3/4 in",
  unknownUnit: sentence(({ unit }: { unit: string }) => `unit "${unit}" is not known; write mm, cm or in`, {
    unit: "ells",
  }),
  singleMarks: "two single marks are not read; write in, such as 1 3/4 in",
  feet: "feet are not read; write inches or mm: 18 in",
  slope: "a slope in % is not read; write degrees, such as 45",
  minutes: "minutes are not read; write decimal degrees: 47.5, not 47° 30'",
  empty: sentence(({ example }: typeof EXAMPLE) => `nothing stands here; write a number such as ${example}`, EXAMPLE),
  tooLong: sentence(
    ({ longest, example }: { longest: number; example: string }) =>
      `longer than ${longest} characters; write a number such as ${example}`,
    { longest: 60, ...EXAMPLE },
  ),
  exponent: sentence(
    ({ example }: typeof EXAMPLE) => `exponents are not read; write the number out, such as ${example}`,
    EXAMPLE,
  ),
  commaInFraction: "a comma has no place in a fraction; write one such as 1 3/4 in",
  thousands: sentence(
    ({ without, decimal }: { without: string; decimal: string }) =>
      `a comma may mean two things; write ${without}, or ${decimal}`,
    { without: "1500", decimal: "1.500" },
  ),
  decimalComma: sentence(({ point }: { point: string }) => `the decimal sign is a point; write ${point}`, {
    point: "44.5",
  }),
  overZero: "a fraction over zero is no number; write one such as 3/4 in",
  bareFraction: sentence(
    ({ figures }: { figures: string }) => `a fraction needs its unit in a file in mm; write ${figures} in`,
    { figures: "1 3/4" },
  ),
  bareFeed: sentence(
    ({ figures }: { figures: string }) =>
      `a feed needs its unit in a file in inches; write ${figures} in/min, or ${figures} mm/min if that is meant`,
    { figures: "47" },
  ),
  metricFraction: sentence(({ decimal }: { decimal: string }) => `fractions are of inches; write ${decimal}`, {
    decimal: "0.75 cm",
  }),
  topHeavy: sentence(
    ({ fraction, decimal }: { fraction: string; decimal: string }) =>
      `${fraction} beside a whole number looks like a slip; if it is right, write ${decimal} in`,
    { fraction: "5/4", decimal: "2.25" },
  ),
  notRead: sentence(({ example }: typeof EXAMPLE) => `this is not a number; write one such as ${example}`, EXAMPLE),
} as const;

export const UNIT_SLIP = {
  outOfLimits: sentence(({ other }: { other: string }) => `; if ${other} is meant, write ${other}`, {
    other: "44.5 mm",
  }),
  question: sentence(
    ({ path, own, usual, other }: Record<"path" | "own" | "usual" | "other", string>) =>
      `${path}: read ${own}, where ${usual} is usual; write ${other} if that is meant, else ${own}`,
    { path: "iron.width", own: "1.75 mm", usual: "48 mm", other: "1.75 in" },
  ),
} as const;
