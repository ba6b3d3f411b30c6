// The throat: how wide the shaving's way is from the mouth to the top, and where it narrows.

import {
  BENCH_TOLERANCE,
  type Circle,
  distance,
  distanceToSegment,
  line,
  type Point,
  point,
  pointAlong,
  type Segment,
  segmentLength,
  splitAtIntersection,
} from "@lamplane/geometry";
import type { Design } from "../table/index.ts";
import { type Frame, ironToPlane } from "./frame.ts";
import { ROOM_WANTED } from "./pin-placement.ts";
import type { PinSize } from "./pin-size.ts";
import { type Ramp, rampPath } from "./ramp.ts";
import { type PinPosition, type StackPart, stackSurface } from "./stack.ts";

/** What lies across the throat from the ramp. */
export type ThroatNeighbour = StackPart | "pin";

/** Width of the throat at a place on the ramp: to the nearest of iron, cap iron, wedge and pin, square to them. mm. */
export interface ThroatWidth {
  /** Path along the ramp from the mouth, mm. */
  readonly along: number;
  readonly at: Point;
  readonly width: number;
  readonly nearest: ThroatNeighbour;
}

/** What the throat lies between: all that an elevation knows of it. */
export interface ThroatSides {
  readonly design: Design;
  readonly frame: Frame;
  readonly ramp: Ramp;
  readonly topChain: readonly Segment[];
  readonly pin: PinPosition;
  readonly pinSize: PinSize;
  readonly wedgeLength: number;
}

/** Stations along the ramp: a shaving is long beside their spacing of about half a millimetre. */
const STATIONS = 120;

/** The ramp from the mouth as far as it meets the finished top; to the top's height where it passes before the toe. */
export function rampToTop({ design, ramp, topChain }: Pick<ThroatSides, "design" | "ramp" | "topChain">) {
  const chain = rampPath(ramp, 0, design.body.height);
  return splitAtIntersection(chain, topChain)?.before ?? chain;
}

/** The throat's width at even stations up the ramp, mouth first; an elevation is what it asks for. */
export function throatSeries(sides: ThroatSides): ThroatWidth[] {
  const { design, frame, pin, pinSize } = sides;
  const chain = rampToTop(sides);
  const lengths = chain.map(segmentLength);
  const total = lengths.reduce((sum, length) => sum + length, 0);
  const inPlace = (p: Point) => ironToPlane(frame, p.x, p.y);
  const stackDownwards = stackSurface(design, sides.wedgeLength)
    .map(({ part, line: { from, to } }) => ({ part, line: line(inPlace(from), inPlace(to)) }))
    .reverse();
  const pinCircle = { centre: pin.centre, radius: pinSize.diameter / 2 };
  return Array.from({ length: STATIONS + 1 }, (_, i) => {
    const along = (total * i) / STATIONS;
    return throatWidth(along, pointAtLength(chain, lengths, along), stackDownwards, pinCircle);
  });
}

function throatWidth(
  along: number,
  at: Point,
  stackDownwards: readonly { readonly part: StackPart; readonly line: Segment }[],
  pin: Circle,
): ThroatWidth {
  let nearest: ThroatNeighbour = "pin";
  let width = distance(at, pin.centre) - pin.radius;
  // Where two are as near, the lower one on the iron is named: a shaving meets it first.
  for (const { part, line } of stackDownwards) {
    const toPart = distanceToSegment(at, line);
    if (toPart <= width) [nearest, width] = [part, toPart];
  }
  return { along, at, width, nearest };
}

/** The point of a chain so far along it. @param lengths of its segments, mm */
function pointAtLength(chain: readonly Segment[], lengths: readonly number[], along: number): Point {
  let left = along;
  for (let i = 0; i < chain.length; i++) {
    const length = lengths[i]!;
    if (left <= length) return pointAlong(chain[i]!, left / length);
    left -= length;
  }
  return chain.at(-1)?.to ?? point(0, 0);
}

/**
 * The narrowing that a shaving minds most: the one that takes the largest share of what width there was, where fingers do
 * not reach if there is such a one. Its narrowing, what is left there, and where.
 */
export function worstNarrowing(widths: readonly Pick<ThroatWidth, "at" | "width">[]): {
  by: number;
  left: number;
  at: Point;
} {
  let [widest, worstShare, isWorstInReach] = [0, 0, true];
  let worst = { by: 0, left: widths[0]?.width ?? 0, at: widths[0]?.at ?? point(0, 0) };
  for (const { at, width } of widths) {
    widest = Math.max(widest, width);
    const by = widest - width;
    const share = widest > 0 ? by / widest : 0;
    const isInReach = width >= ROOM_WANTED || by <= BENCH_TOLERANCE;
    if (isInReach === isWorstInReach ? share > worstShare : isWorstInReach)
      [worst, worstShare, isWorstInReach] = [{ by, left: width, at }, share, isInReach];
  }
  return worst;
}

/** A place at which the throat is narrower than before it, and by how much. mm. */
export interface Choke {
  readonly station: ThroatWidth;
  readonly by: number;
}

/** Every place at which the throat, once wider, is narrowest again by more than a maker can hold; mouth first. */
export function throatChokes(series: readonly ThroatWidth[]): Choke[] {
  const chokes: Choke[] = [];
  let widest = 0;
  let inside = false;
  for (const station of series) {
    widest = Math.max(widest, station.width);
    const by = widest - station.width;
    if (by > BENCH_TOLERANCE && (!inside || by > chokes.at(-1)!.by))
      chokes.splice(inside ? -1 : chokes.length, 1, { station, by });
    inside = by > BENCH_TOLERANCE;
  }
  return chokes;
}
