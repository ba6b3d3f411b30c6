// Moving flat things about: a place is a turn, then a mirror, then a shift. Lengths never change.

import { type Circle, type Outline, type Point, point, reverseOutline, type Segment } from "./outline.ts";
import { cosDeg, sinDeg } from "./trig.ts";

/** Where a flat thing is put: turned by `turn` degrees counter-clockwise, mirrored left to right, then shifted. */
export interface Transform2 {
  readonly turn?: number;
  readonly mirrored?: boolean;
  readonly shift?: Point;
}

export function transformPoint(p: Point, { turn = 0, mirrored = false, shift }: Transform2): Point {
  const x = p.x * cosDeg(turn) - p.y * sinDeg(turn);
  const y = p.x * sinDeg(turn) + p.y * cosDeg(turn);
  return point((mirrored ? -x : x) + (shift?.x ?? 0), y + (shift?.y ?? 0));
}

export function transformSegment(segment: Segment, transform: Transform2): Segment {
  const from = transformPoint(segment.from, transform);
  const to = transformPoint(segment.to, transform);
  if (segment.kind === "line") return { kind: "line", from, to };
  const sweep = transform.mirrored ? -segment.sweep : segment.sweep;
  return { ...segment, from, to, centre: transformPoint(segment.centre, transform), sweep };
}

/** A mirrored outline is run backwards, so that it stays counter-clockwise. */
export function transformOutline(outline: Outline, transform: Transform2): Outline {
  const placed = outline.map((segment) => transformSegment(segment, transform));
  return transform.mirrored ? reverseOutline(placed) : placed;
}

export const transformCircle = ({ centre, radius }: Circle, transform: Transform2): Circle => ({
  centre: transformPoint(centre, transform),
  radius,
});
