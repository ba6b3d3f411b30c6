// A readings file to fill in at the bench: where the straightedge is laid on this bed, and at which stations the gaps are read.

import { sinDeg } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { formatLength, toMillimetres, type Units } from "@lamplane/parameters/units";
import { SHEET } from "../words/readings.ts";
import type { BedPoint } from "./readings.ts";
import { bedExtent } from "./surveyed-bed.ts";

/** Stations are given in whole steps of the maker's rule, mm. */
const STEP: Record<Units, number> = { mm: 1, in: toMillimetres(1 / 16, "in") };
/** With these, all the sheet's stations reading tight rule out HUMP_THAT_MATTERS on the beds of usual planes. */
const THINNEST: Record<Units, string> = { mm: "0.02 mm", in: "0.001 in" };
/** Off the bed's edges, mm, but no more than a share of its width: a leaf laid half over an edge reads nothing. */
const OFF_EDGE = 3;
const SHARE_OFF_EDGE = 1 / 5;
const STATIONS = 5; // for each placement: both ends, the middle and the quarters

/** Where the straightedge is laid once, and what that is called on the sheet. */
export interface StraightedgePlacement {
  readonly words: string;
  readonly from: BedPoint;
  readonly to: BedPoint;
}

/** The sheet as text, in the readings file's own format; `refuses` is left open, so that a sheet half filled in is refused. */
export function blankSheet(plane: Elevation): string {
  const { units, name } = plane.design;
  const station = (mm: number) => formatStation(mm, units);
  const ruled = (mm: number) => formatLength(mm, plane.design);
  const bed = bedExtent(plane);
  return [
    ...[
      SHEET.head({ name }),
      SHEET.bed({ length: ruled(bed.length), width: ruled(bed.width) }),
      SHEET.lay,
      SHEET.try,
      SHEET.refuses,
      SHEET.leaf({ thinnest: THINNEST[units] }),
    ].map((line) => `# ${line}`),
    `units: ${units}`,
    "straightedge:",
    ...straightedgePlacements(plane).flatMap((placement) => placementLines(placement, units, station)),
    "",
  ].join("\n");
}

/** Once up the middle, across near tip and top, both diagonals: curve and wind are determined, with one line to spare. */
export function straightedgePlacements(plane: Elevation): StraightedgePlacement[] {
  const step = STEP[plane.design.units];
  const bed = bedExtent(plane);
  const off = Math.min(OFF_EDGE, bed.width * SHARE_OFF_EDGE);
  // The feather chamfer may have been taken off the tip already.
  const low = roundUpTo(Math.max(off, plane.design.bed.featherChamfer / sinDeg(plane.frame.bedAngle)), step);
  const left = roundUpTo(off, step);
  const [top, right] = [roundDownTo(bed.length - off, step), roundDownTo(bed.width - off, step)];
  const half = roundDownTo((left + right) / 2, step);
  const place = (along: number, across: number): BedPoint => ({ along, across });
  const over = (words: string, along: number) => ({ words, from: place(along, left), to: place(along, right) });
  return [
    { words: SHEET.middle, from: place(low, half), to: place(top, half) },
    over(SHEET.nearTip, low),
    over(SHEET.nearTop, top),
    { words: SHEET.leftDiagonal, from: place(low, left), to: place(top, right) },
    { words: SHEET.rightDiagonal, from: place(low, right), to: place(top, left) },
  ].map((placement, i) => ({ ...placement, words: SHEET.numbered({ number: i + 1, where: placement.words }) }));
}

/** Where the gaps are read along a placement, mm from where it begins, in whole steps of the maker's rule. */
export function placementStations({ from, to }: Pick<StraightedgePlacement, "from" | "to">, units: Units): number[] {
  const reach = Math.hypot(to.along - from.along, to.across - from.across);
  const even = Array.from({ length: STATIONS }, (_, i) => roundDownTo((reach * i) / (STATIONS - 1), STEP[units]));
  return [...new Set(even)]; // a narrow bed has fewer
}

/** A place or a station as the sheet has it: bare mm, or inches to the 1/16. */
export const formatStation = (mm: number, units: Units): string =>
  units === "mm" ? String(mm) : formatLength(mm, { units, shop: { smallestFraction: "1/16", bothUnits: "no" } });

function placementLines(
  { words, from, to }: StraightedgePlacement,
  units: Units,
  format: (mm: number) => string,
): string[] {
  const stations = placementStations({ from, to }, units);
  const last = stations.length - 1;
  const where = (i: number) => (i === 0 ? SHEET.start : i === last ? SHEET.end : SHEET.station({ number: i + 1 }));
  return [
    `  # ${words}`,
    `  - from: [${format(from.along)}, ${format(from.across)}]`,
    `    to: [${format(to.along)}, ${format(to.across)}]`,
    "    gaps:",
    ...stations.map((at, i) => `      - { at: ${format(at)}, fits: 0, refuses: }  # ${where(i)}`),
  ];
}

const ROUNDING = 1e-9; // of a step: a length that is a whole number of steps stays it
const roundUpTo = (mm: number, step: number): number => Math.ceil(mm / step - ROUNDING) * step;
const roundDownTo = (mm: number, step: number): number => Math.floor(mm / step + ROUNDING) * step;
