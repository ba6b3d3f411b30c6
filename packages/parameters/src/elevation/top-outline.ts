// The top of the body from the side: flat, or two arcs that meet level at the crown. Chains run from heel to toe.

import {
  arc,
  BENCH_TOLERANCE,
  EPSILON,
  line,
  type Point,
  point,
  reverseSegment,
  type Segment,
} from "@lamplane/geometry";
import type { Design } from "../table/index.ts";

/** Heights and crown of the top once `auto` is settled, mm. */
export interface Top {
  readonly outline: "flat" | "arched";
  readonly height: number;
  readonly length: number;
  readonly crownX: number;
  readonly toeHeight: number;
  readonly heelHeight: number;
}

/** Shares of the height at the ends of an arched top: low enough for the hand, high enough for the pegs' waste. */
const TOE_SHARE = 0.7;
const HEEL_SHARE = 0.6;

/** The top that a design asks for. `crownByBed` is where the crown stands when the maker leaves it open. */
export function topOf({ body }: Design, crownByBed: number): Top {
  const { height, length, outline } = body;
  return {
    outline,
    height,
    length,
    crownX: outline === "flat" || body.crown === "auto" ? crownByBed : body.crown,
    toeHeight: outline === "flat" ? height : body.toeHeight === "auto" ? height * TOE_SHARE : body.toeHeight,
    heelHeight: outline === "flat" ? height : body.heelHeight === "auto" ? height * HEEL_SHARE : body.heelHeight,
  };
}

/** What an arched top's shorter arc has in length over its fall, and in fall at all; below 0 there is no such arch. mm. */
export const archClearance = ({ crownX, length, height, toeHeight, heelHeight }: Top): number =>
  Math.min(arcClearance(crownX, height - toeHeight), arcClearance(length - crownX, height - heelHeight));

/** An arc level at the crown falls no more than it is long; one shorter than a maker can hold is none. */
const arcClearance = (run: number, drop: number): number => Math.min(drop, run - drop, run - BENCH_TOLERANCE);

/** The finished top from heel to toe. An impossible arch is drawn flat; the checks say so. */
export function finishedTop(top: Top): Segment[] {
  const { outline, crownX, length, height, toeHeight, heelHeight } = top;
  if (outline === "flat" || archClearance(top) < 0) return flatTop(0, length, height);
  const crown = point(crownX, height);
  return [topArc(point(length, heelHeight), crown), topArc(point(0, toeHeight), crown)].map((s, i) =>
    i === 0 ? s : reverseSegment(s),
  );
}

/** A flat top at the full height from heel to toe, as the blank has it. */
export const flatTop = (toeX: number, heelX: number, height: number): Segment[] => [
  line(point(heelX, height), point(toeX, height)),
];

function topArc(end: Point, crown: Point): Segment {
  const [run, drop] = [crown.x - end.x, crown.y - end.y];
  if (drop < EPSILON) return line(end, crown);
  const radius = (run * run + drop * drop) / (2 * drop);
  return arc(end, crown, point(crown.x, crown.y - radius));
}
