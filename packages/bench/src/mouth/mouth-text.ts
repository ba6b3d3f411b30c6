// A mouth's reading and its life as lines and cells for a terminal: words and figures only, the maker's unit first.
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import {
  formatBareLength,
  formatDecimal,
  formatLength,
  type LengthStyle,
  type Units,
} from "@lamplane/parameters/units";
import { LIFE_HEADS, MOUTH } from "../words/mouth.ts";
import type { MouthReading } from "./mouth.ts";
import { LIFE, type MouthLifeRow } from "./mouth-life.ts";
import type { MouthPatch } from "./mouth-patch.ts";
import type { Packing } from "./packing.ts";

export { MOUTH_SOURCES } from "../words/mouth.ts";

/** What to do, what was read, and what it costs. */
export function mouthText(reading: MouthReading, { design }: Pick<Elevation, "design">): string[] {
  const { units } = design;
  const fine = (mm: number) => formatLength(mm, design);
  const { seen, wanted, takeOff, growth } = reading;
  const head = MOUTH.seen({ seen: fine(seen), wanted: fine(wanted), growth: growthText(growth, units) });
  if (reading.verdict === "as-wanted")
    return [seen - wanted > 0 ? MOUTH.leaveWide({ by: fine(seen - wanted) }) : MOUTH.leave, head];
  if (reading.verdict === "wide") return wideText(reading, head, design);
  const shut = reading.verdict === "shut";
  return [
    MOUTH.takeOff({ amount: fine(takeOff), atLeast: shut, shavings: shavingsText(reading, design) }),
    head,
    ...(shut ? [MOUTH.shut] : []),
    MOUTH.stopShort,
    MOUTH.tension,
  ];
}

/** What the mouth opens by for what comes off the sole, in the unit that the maker reads both in. */
const growthText = (growth: number, units: Units): string => MOUTH.growth({ growth: formatDecimal(growth, 3), units });

function shavingsText({ shaving, shavings, opensPerShaving }: MouthReading, design: Design): string {
  const size = formatLength(shaving, design);
  if (shavings === 0) return MOUTH.lessThanShaving({ size });
  return MOUTH.shavings({ count: shavings, size, opens: formatLength(opensPerShaving, design) });
}

function wideText({ tooWide, packing, patch, growth }: MouthReading, head: string, design: Design): string[] {
  return [
    MOUTH.tooWide({ by: formatLength(tooWide, design) }),
    head,
    ...(packing ? [packingText(packing, design)] : []),
    ...(patch ? patchText(patch, growth, design) : []),
  ];
}

function packingText({ thickness, wedgeOut, roomUnderPin, wedgeBelowPin }: Packing, design: Design): string {
  const slip = formatLength(thickness, design);
  const effect =
    roomUnderPin < 0
      ? design.capIron.thickness > 0
        ? MOUTH.packingHump
        : MOUTH.packingIron
      : wedgeBelowPin < 0
        ? MOUTH.packingWedge({ thickness: slip })
        : MOUTH.packingFits({ out: formatLength(wedgeOut, design) });
  return MOUTH.packing({ thickness: slip, effect });
}

function patchText(patch: MouthPatch, before: number, design: Design): string[] {
  const { thickness, width, endAngle, growth, fits } = patch;
  const length = (mm: number) => formatLength(mm, design);
  const angle = `${formatDecimal(endAngle, 1)}°`;
  return [
    MOUTH.patch({ thick: length(thickness), long: length(patch.length), wide: length(width), angle }),
    MOUTH.patchLife({
      growth: growthText(growth, design.units),
      before: formatDecimal(before, 3),
      thick: length(thickness),
    }),
    ...(fits ? [] : [MOUTH.patchTooLong]),
    MOUTH.patchCaution,
  ];
}

/** What a truing uses up, and the rest that it moves: columns of the life's table in their order. */
const DECIDING = ["takenOff", "opening", "bedToRecess", "wedgeTipFromEdge", "wearLeft"] as const;
const FOLLOWING = ["edgeFromToe", "bedBelowHeel", "pinHeight", "height"] as const;

/**
 * The life's table as cells, head first; every length in the maker's unit.
 * @param all what merely follows from the wood taken off too
 */
export function mouthLifeCells(rows: readonly MouthLifeRow[], style: LengthStyle, all = true): string[][] {
  const columns = [...DECIDING, ...(all ? FOLLOWING : [])].map((key): Column => [LIFE_HEADS[key], (row) => row[key]]);
  const filled = columns.filter(([, of]) => rows.some((row) => of(row) !== undefined));
  return [
    filled.map(([head]) => head),
    ...rows.map((row) => filled.map(([, of]) => formatBareLength(of(row)!, style))),
  ];
}

/** Head of a column, and its figure; undefined where the design has no such thing. */
type Column = readonly [head: string, of: (row: MouthLifeRow) => number | undefined];

/** What the table shows. */
export const mouthLifeHead = ({ units }: LengthStyle): string => MOUTH.life({ units });

/** Where the table ends. */
export const mouthLifeEnd = (style: LengthStyle): string =>
  MOUTH.lifeEnd({ depth: formatLength(LIFE.depth, style), times: LIFE.times });
