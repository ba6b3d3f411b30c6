// A mouth's reading and its life as lines and cells for a terminal: words and figures only, the maker's unit first.
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatBareLength, formatDecimal, formatLength, type LengthStyle } from "@lamplane/parameters/units";
import type { MouthReading } from "./mouth.ts";
import { LIFE, type MouthLifeRow } from "./mouth-life.ts";
import type { MouthPatch } from "./mouth-patch.ts";
import type { Packing } from "./packing.ts";

/** Where the rules and figures of a mouth's reading come from. */
export const MOUTH_SOURCES: readonly string[] = [
  "Wood to take off: plane geometry, (wanted − seen) / (cot β + cot ρ), by the curve beyond a curved ramp's wear.",
  "Packing: plane geometry, by·sin β. Patch: plane geometry; the joint's length and what must hold are estimates.",
  "Stopping short, setting the iron, reading and going on: common practice, no published source.",
];

/** Of what the mouth opens by, for what comes off the sole: in the unit that the maker reads both in. */
const PER = { mm: "mm for each mm", in: "thousandths for each thousandth" } as const;

/** What was read, what to do, and what it costs. */
export function mouthText(reading: MouthReading, { design }: Pick<Elevation, "design">): string[] {
  const { units } = design;
  const fine = (mm: number) => formatLength(mm, design);
  const { seen, wanted, takeOff, growth } = reading;
  const head = `Mouth seen ${fine(seen)}, wanted ${fine(wanted)}; it opens ${formatDecimal(growth, 3)} ${PER[units]} off the sole.`;
  if (reading.verdict === "as-wanted")
    return [head, `LEAVE IT: ${seen - wanted > 0 ? "wider than wanted by less than one shaving opens" : "as wanted"}.`];
  if (reading.verdict === "wide") return [head, ...wideText(reading, design)];
  const shut = reading.verdict === "shut";
  return [
    head,
    `TAKE OFF ${shut ? "at least " : ""}${fine(takeOff)} of the sole${shavingsText(reading, design)}.`,
    ...(shut ? ["No light is seen, so the mouth may be shut by more than that: true on, and read again."] : []),
    "Stop short of it, set the edge to the new sole, read the mouth again, and go on from there.",
    "True it with iron and wedge at working tension and the edge drawn back above the sole.",
  ];
}

function shavingsText({ shaving, shavings, opensPerShaving }: MouthReading, design: Design): string {
  const size = formatLength(shaving, design);
  if (shavings === 0) return `, which is less than one shaving of ${size}`;
  const count = shavings === 1 ? "one whole shaving" : `${shavings} whole shavings`;
  return `: ${count} of ${size}, each opening the mouth by ${formatLength(opensPerShaving, design)}`;
}

function wideText({ tooWide, packing, patch, growth }: MouthReading, design: Design): string[] {
  return [
    `TOO WIDE by ${formatLength(tooWide, design)}: every truing opens it further. Live with it, or close it in one of two ways.`,
    ...(packing ? [packingText(packing, design)] : []),
    ...(patch ? patchText(patch, growth, design) : []),
  ];
}

function packingText({ thickness, wedgeOut, roomUnderPin, wedgeBelowPin }: Packing, design: Design): string {
  const what = `Packing: ${formatLength(thickness, design)} of card or veneer on the bed, even, under the whole iron`;
  const room =
    roomUnderPin < 0
      ? `; but then the ${design.capIron.thickness > 0 ? "cap iron's hump" : "iron"} no longer passes under the cross pin`
      : wedgeBelowPin < 0
        ? `; but then the wedge no longer reaches under the cross pin: make one thinner by ${formatLength(thickness, design)}`
        : `; it costs no wood, and the wedge then stands ${formatLength(wedgeOut, design)} further out`;
  return `${what}${room}.`;
}

function patchText(patch: MouthPatch, before: number, design: Design) {
  const { thickness, width, endAngle, growth, fits } = patch;
  const length = (mm: number) => formatLength(mm, design);
  return [
    `Patch: a slip let into the sole before the mouth, at least ${length(thickness)} thick and ` +
      `${length(patch.length)} long, ${length(width)} wide, grain along the plane, its end at the mouth at ` +
      `${formatDecimal(endAngle, 1)}° from the sole so that it fades into the ramp.`,
    `It costs that much of the front block's sole; while it lasts the mouth opens ${formatDecimal(growth, 3)} ${PER[design.units]} off ` +
      `instead of ${formatDecimal(before, 3)}, and it is gone after ${length(thickness)}.`,
    ...(fits ? [] : ["The front block is too short for it: face its whole sole instead."]),
    "Cut it with the iron out; keep hands clear of chisel and router, and follow the machine's manual and trained practice.",
  ];
}

/** The life's table as cells, head first; every length in the maker's unit. */
export function mouthLifeCells(rows: readonly MouthLifeRow[], style: LengthStyle): string[][] {
  const columns: readonly Column[] = [
    [`off, ${style.units}`, (row) => row.takenOff],
    ["mouth", (row) => row.opening],
    ["edge from toe", (row) => row.edgeFromToe],
    ["bed below heel", (row) => row.bedBelowHeel],
    ["bed to recess", (row) => row.bedToRecess],
    ["edge to wedge", (row) => row.wedgeTipFromEdge],
    ["wear left", (row) => row.wearLeft],
    ["pin height", (row) => row.pinHeight],
    ["height", (row) => row.height],
  ];
  const filled = columns.filter(([, of]) => rows.some((row) => of(row) !== undefined));
  return [
    filled.map(([head]) => head),
    ...rows.map((row) => filled.map(([, of]) => formatBareLength(of(row)!, style))),
  ];
}

/** Head of a column, and its figure; undefined where the design has no such thing. */
type Column = readonly [head: string, of: (row: MouthLifeRow) => number | undefined];

/** What the table tells, and where it ends. */
export const mouthLifeHead = (style: LengthStyle): string =>
  `What each later truing costs, the edge set to the new sole, to ${formatLength(LIFE.depth, style)} off or a mouth ${LIFE.times} times the one wanted:`;
