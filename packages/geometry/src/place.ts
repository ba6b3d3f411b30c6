// Moving flat things about: a place is a turn, then a mirror, then a shift. Lengths never change.

import { type Circle, type Outline, type Point, point, reversed, type Segment } from "./outline.ts";
import { cosDeg, sinDeg } from "./trig.ts";

/** Where a flat thing is put: turned by `turn` degrees counter-clockwise, mirrored left to right, then shifted. */
export interface Place {
  readonly turn?: number;
  readonly mirrored?: boolean;
  readonly shift?: Point;
}

export function placedPoint(p: Point, { turn = 0, mirrored = false, shift }: Place): Point {
  const x = p.x * cosDeg(turn) - p.y * sinDeg(turn);
  const y = p.x * sinDeg(turn) + p.y * cosDeg(turn);
  return point((mirrored ? -x : x) + (shift?.x ?? 0), y + (shift?.y ?? 0));
}

export function placedSegment(segment: Segment, place: Place): Segment {
  const from = placedPoint(segment.from, place);
  const to = placedPoint(segment.to, place);
  if (segment.kind === "line") return { kind: "line", from, to };
  const sweep = place.mirrored ? -segment.sweep : segment.sweep;
  return { ...segment, from, to, centre: placedPoint(segment.centre, place), sweep };
}

/** A mirrored outline is run backwards, so that it stays counter-clockwise. */
export function placedOutline(outline: Outline, place: Place): Outline {
  const placed = outline.map((segment) => placedSegment(segment, place));
  return place.mirrored ? reversed(placed) : placed;
}

export const placedCircle = ({ centre, radius }: Circle, place: Place): Circle => ({
  centre: placedPoint(centre, place),
  radius,
});
