// Words of a readings file: what may stand at a place, and the sheet to fill in.
import { countText, sentence } from "@lamplane/parameters/words";

interface Limits {
  readonly what: string;
  readonly min: string;
  readonly max: string;
}
const LIMITS: Limits = { what: "height", min: "-500 mm", max: "500 mm" };

export const READING_FAULT = {
  fault: sentence(
    ({ read, allowed }: { read: string | undefined; allowed: string }) =>
      `read ${read === undefined ? "nothing" : `"${read}"`}; allowed: ${allowed}`,
    {
      read: "ells",
      allowed: "mm or in",
    },
    { read: undefined, allowed: "each key once" },
  ),
  yaml: sentence(({ problem }: { problem: string }) => `valid YAML; ${problem}`, {
    problem: "a quote, bracket or comma is missing",
  }),
  keys: sentence(({ keys }: { keys: readonly string[] }) => `the keys ${keys.join(", ")}`, {
    keys: ["from", "to", "gaps"],
  }),
  keyOnce: "each key once",
  list: sentence(
    ({ fewest, most, items, count }: { fewest: number; most: number; items: string; count: number | undefined }) =>
      `a list of ${fewest === most ? fewest : `${fewest} to ${most}`} ${items}${count === undefined ? "" : `; this one has ${count}`}`,
    { fewest: 3, most: 200, items: "stations, at both ends and between", count: 2 },
  ),
  length: sentence(({ what, min, max }: Limits) => `${what}, ${min} to ${max}`, LIMITS),
  lengthBecause: sentence(
    ({ what, min, max, reason }: Limits & { reason: string }) => `${what}, ${min} to ${max} (${reason})`,
    {
      ...LIMITS,
      reason: "feet are not read; write inches or mm: 18 in",
    },
  ),
  someReadings: "gaps under a straightedge, or heights, or both",
  fewerReadings: sentence(
    ({ most, count }: { most: number; count: number }) =>
      `at most ${countText(most, "reading")}; this file has ${count}`,
    {
      most: 200,
      count: 204,
    },
  ),
  anotherEnd: "a place other than `from`",
  thickerLeaf: "a thicker leaf than the one that fits",
  errorOverZero: "more than 0: every gauge has an error",
  oneReading: sentence(
    ({ line, column }: { line: number; column: number }) =>
      `one reading at a station; ${line}:${column} is at the same one`,
    {
      line: 12,
      column: 9,
    },
  ),
} as const;

/** What a list or a length of the file holds. */
export const READING_NAMES = {
  placements: "placements of the straightedge",
  stations: "stations, at both ends and between",
  points: "points [along, across, height]",
  place: "numbers: along, across",
  point: "numbers: along, across, height",
  at: "distance from `from`, up to `to`",
  fits: "thickest leaf that goes in, 0 for none",
  refuses: "thinnest leaf that does not go in",
  error: "reading error, plus or minus",
  height: "height",
  along: "on the bed, up from its tip",
  across: "on the bed, from its left edge",
} as const;

/** The sheet to fill in: comments over its lists, and where the straightedge is laid. */
export const SHEET = {
  head: sentence(({ name }: { name: string }) => `Bed survey of ${name}: bed sawn and trued, recess not yet routed.`, {
    name: "apprentice-smoother",
  }),
  bed: sentence(
    ({ length, width }: { length: string; width: string }) =>
      `Bed ${length} up from its tip, ${width} wide. Stations from its left edge, as you stand behind the heel and look to the toe.`,
    { length: "83.41 mm", width: "49.6 mm" },
  ),
  lay: "Lay the straightedge as each entry says. Over a hollow it rests at both ends; where it rocks, let it down on one end.",
  try: "Hold it still and try the leaves at each station: `fits` is the thickest leaf that goes in (0 for none),",
  refuses: "`refuses` the thinnest that does not. Delete an entry that you do not read.",
  leaf: sentence(
    ({ thinnest }: { thinnest: string }) =>
      `Thinnest leaf ${thinnest} or less: thicker ones can miss a hump on which the iron rocks.`,
    {
      thinnest: "0.02 mm",
    },
  ),
  middle: "up the middle of the bed, from the tip",
  nearTip: "across the bed near its tip, from the left",
  nearTop: "across the bed near its top, from the left",
  leftDiagonal: "diagonal, from left corner of tip to right corner of top",
  rightDiagonal: "diagonal, from right corner of tip to left corner of top",
  numbered: sentence(({ number, where }: { number: number; where: string }) => `${number}: ${where}`, {
    number: 1,
    where: "up the middle of the bed, from the tip",
  }),
  start: "start",
  end: "end",
  station: sentence(({ number }: { number: number }) => `station ${number}`, { number: 2 }),
} as const;
