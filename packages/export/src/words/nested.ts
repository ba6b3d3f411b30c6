// Sentences of sheets that several parts and jigs are cut from. Lengths come as texts in the maker's unit.
import { countText, sentence } from "@lamplane/parameters/words";

const SIZE = { width: "600 mm", depth: "400 mm" };

/** A sheet's page, and the list of all sheets. */
export const NESTED = {
  title: sentence(({ plane }: { plane: string }) => `${plane}: nested sheets`, { plane: "my-plane" }),
  subject: "A page for each sheet that parts and jigs are cut from",
  list: sentence(({ plane }: { plane: string }) => `Sheets of ${plane}`, { plane: "my-plane" }),
  sheet: sentence(
    ({ number, name, thickness }: { number: number; name: string; thickness: string }) =>
      `Sheet ${number}: ${name}, ${thickness} thick`,
    { number: 1, name: "ply-12", thickness: "11.6 mm" },
  ),
  sawn: sentence(
    ({ width, depth, from }: { width: string; depth: string; from: string }) =>
      `Saw a piece ${width} along the grain by ${depth} off the sheet of ${from}: the router travels no farther.`,
    { ...SIZE, from: "1220 × 610 mm" },
  ),
  caliper: sentence(
    ({ thickness }: { thickness: string }) =>
      `Measure the sheet's thickness: the program cuts through ${thickness}. Enter another as \`measured\`.`,
    { thickness: "11.6 mm" },
  ),
  grain: {
    wood: "Lay the grain along x, as the arrow points.",
    ply: "Lay the sheet's length along x. Jigs lie as they fit; their grain does not matter.",
  },
  used: sentence(
    ({ count, share, end }: { count: number; share: string; end: string }) =>
      `${countText(count, "piece")} on it: they cover ${share} of the sheet and take up ${end} of its length.`,
    { count: 9, share: "31 %", end: "277 mm" },
  ),
  stack: sentence(
    ({ jigs }: { jigs: readonly (readonly string[])[] }) =>
      `Glue face to face, holes in line: ${jigs.map((plates) => plates.join(" on ")).join("; ")}.`,
    { jigs: [["bed-cradle-1", "bed-cradle-2"]] },
  ),
  plateElsewhere: sentence(
    ({ name, sheet }: { name: string; sheet: number | undefined }) =>
      `${name} (${sheet === undefined ? "on no sheet: cut it by hand" : `on sheet ${sheet}`})`,
    { name: "bed-cradle-3", sheet: 3 },
  ),
  noRouter: "No router given: cut by the DXF file. Layer CUT goes through, DRILL is bored, NOTE is only to be read.",
  draws:
    "Heavy lines: parts and openings. Thin lines: the way of the cutter. Crosses: tabs. Dashes: the sheet. Grey: where the cutter goes; clamp outside it. Circle: zero.",
  drawsPlain: "Heavy lines: parts and openings. Dashes: the sheet. Circle: zero of the file.",
  noPlace: "On no sheet, and why:",
  laidOut: sentence(
    ({ sheets, left }: { sheets: number; left: number }) =>
      `Sheets: ${countText(sheets, "sheet")} laid out, ${left === 0 ? "nothing left over." : `${left} left over:`}`,
    { sheets: 3, left: 2 },
  ),
  grainArrow: "grain",
} as const;

const TWO_SIZES = { needs: "275 × 101 mm", largest: "240 × 90 mm" };

/** Why a part or jig lies on no sheet, and what would change that. */
export const NO_PLACE = {
  thickness: sentence(
    ({ value, nearest }: { value: string; nearest: string }) =>
      `It is ${value} thick; the nearest sheet is ${nearest}. Surface a board to ${value}, and list it in \`sheets\`.`,
    { value: "15.3 mm", nearest: "18 mm" },
  ),
  plate: sentence(
    ({ least, most }: { least: string; most: string }) =>
      `It must be ${least} to ${most} thick; no plate, nor a few glued together, is. Add one to \`sheets\`, or print it.`,
    { least: "13.3 mm", most: "19.3 mm" },
  ),
  sheet: sentence(
    ({ thickness }: { thickness: string }) =>
      `Its plate of ${thickness} is in \`jigs.plate\`, but no sheet is so thick. Add one to \`sheets\`.`,
    { thickness: "9 mm" },
  ),
  size: sentence(
    ({ needs, largest }: typeof TWO_SIZES) =>
      `It needs ${needs} with its margins; the largest sheet that serves is ${largest}. Use a larger sheet, or a smaller \`router.margin\`.`,
    TWO_SIZES,
  ),
  room: sentence(
    ({ needs }: { needs: string }) =>
      `No room is left for its ${needs} on the sheets of its thickness. Add one more to \`sheets\`.`,
    { needs: "275 × 101 mm" },
  ),
} as const;

export const NO_PLACE_SOURCE = "the shop's sheets and boards, as entered";

/** What each reason is, for whoever asks what its name means. */
export const NO_PLACE_HELP = {
  thickness: "Sheets: a part is cut from wood of its own thickness.",
  sheet: "Sheets: a jig's plate, listed in `jigs.plate`, must be among the sheets.",
  plate: "Sheets: a jig needs a plate, or a few glued together, between its least and greatest thickness.",
  size: "Sheets: a part with its margins must fit on the largest sheet that serves.",
  room: "Sheets: there must be room left for a part beside the others.",
} as const;
