// Where to mark the billet so that its pieces can be put together again: on top, square across, outside every kerf.
// x from the toe end of core and cheeks, which are of one length; z from the reference face.
import { cotDeg, splitAtIntersection } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { flatTop, rampPath } from "@lamplane/parameters/elevation";
import { toMillimetres } from "@lamplane/parameters/units";
import type { Span } from "../span.ts";
import type { CoreSawing } from "./core-sawing.ts";
import type { RipLayout, RipStrip } from "./rip-layout.ts";

/** One stroke or two, drawn square across the billet's top over all three strips at once. */
export interface Mark {
  readonly over: "front block" | "bed block";
  /** 1 toward the toe, 2 toward the heel: front and back are told apart on every piece. */
  readonly strokes: 1 | 2;
  /** Each stroke's distance from the toe end. mm. */
  readonly at: readonly number[];
}

export type MarkedPiece = "left cheek" | "front block" | "bed block" | "right cheek";

export interface PieceMarks {
  readonly piece: MarkedPiece;
  readonly face: "top";
  readonly marks: readonly Mark[];
  /** Part of each stroke that no saw, pass or milling reaches, from the reference face. mm. */
  readonly keeps: Span;
}

export interface MarkPlan {
  readonly marks: readonly Mark[];
  readonly pieces: readonly PieceMarks[];
  /** Top of each block that outlasts every cut, from the toe end; `undefined` where nothing is left of it. */
  readonly room: Readonly<Record<Mark["over"], Span | undefined>>;
  /** Blocks that have no room for both marks. */
  readonly lacking: readonly Mark["over"][];
  /** At glue-up the block's strokes stand so much nearer to the heel than the cheeks'. mm. */
  readonly shift: Readonly<Record<Mark["over"], number>>;
}

/** A stroke stays so far from every cut, mm: a saw wanders, and so does a pencil. */
export const CLEAR_OF_CUTS = 2;
/** Strokes stand on divisions that a rule shows. */
const DIVISION = { mm: 1, in: toMillimetres(1 / 16, "in") } as const;
/** Between the two strokes of a double mark, in divisions. */
const DOUBLE = 2;
/** Least room between a single and a double mark, mm: less, and they read as three strokes. */
const LEAST_SEPARATION = 4;

/**
 * The marks of a plane, as far as there is room. They are drawn once the top is surfaced, before the first cut, and last
 * until the top is shaped.
 */
export function planMarks(plane: Elevation, { cuts, setInToe, setInHeel }: CoreSawing, rip: RipLayout): MarkPlan {
  const { trim, length } = plane.design.body;
  const [ramp, bed] = cuts;
  // The cheeks are trimmed where the finished plane ends; the blocks, set in, reach further. Both must keep the stroke.
  const [toe, heel] = [trim / 2, trim / 2 + length];
  const room = {
    "front block": spanBetween(toe, Math.min(ramp.kerfAtTop.from, rampTopAt(plane) + trim / 2 - setInToe)),
    "bed block": spanBetween(bed.kerfAtTop.to, heel),
  };
  const over = (block: Mark["over"]) => marksIn(block, room[block], DIVISION[plane.design.units]);
  const [front, back] = [over("front block"), over("bed block")];
  const [left, core, right] = rip.strips;
  const on = (piece: MarkedPiece, marks: readonly Mark[], { keeps }: RipStrip): PieceMarks => ({
    piece,
    face: "top",
    marks,
    keeps,
  });
  return {
    marks: [...front, ...back],
    pieces: [
      on("left cheek", [...front, ...back], left),
      on("front block", front, core),
      on("bed block", back, core),
      on("right cheek", [...front, ...back], right),
    ],
    room,
    lacking: [
      ...(front.length < 2 ? ["front block" as const] : []),
      ...(back.length < 2 ? ["bed block" as const] : []),
    ],
    shift: { "front block": setInToe, "bed block": 0 - setInHeel },
  };
}

const spanBetween = (from: number, to: number): Span | undefined => (to > from ? { from, to } : undefined);

/** x, in the plane's frame, at which the finished ramp comes out of the blank's top: a curved one goes beyond its saw cut. */
function rampTopAt({ ramp, design }: Elevation): number {
  const { height, length } = design.body;
  const top = flatTop(-length, 2 * length, height);
  const met = splitAtIntersection(rampPath(ramp, -design.sole.allowance, 2 * height), top);
  return met?.at.x ?? ramp.foot.x - height * cotDeg(ramp.angle);
}

/** Two marks a quarter in from either end of the room; one in its middle where they would run together; or none. */
function marksIn(over: Mark["over"], room: Span | undefined, division: number): Mark[] {
  if (!room) return [];
  const from = Math.ceil((room.from + CLEAR_OF_CUTS) / division);
  const to = Math.floor((room.to - CLEAR_OF_CUTS) / division);
  const spare = to - from - DOUBLE - Math.ceil(LEAST_SEPARATION / division);
  const at = (...divisions: number[]) => divisions.map((count) => count * division);
  if (spare < 0) return to < from ? [] : [{ over, strokes: 1, at: at(Math.floor((from + to) / 2)) }];
  const inward = Math.floor(spare / 4);
  return [
    { over, strokes: 1, at: at(from + inward) },
    { over, strokes: 2, at: at(to - inward - DOUBLE, to - inward) },
  ];
}
