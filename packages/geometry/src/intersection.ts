// Where exact segments meet: lines and arcs, in closed form.

import { degreesAlong } from "./nearest-point.ts";
import { type Arc, distance, type Line, type Point, point, pointAlong, type Segment } from "./outline.ts";
import { EPSILON } from "./tolerances.ts";

/** Where two segments meet, and the share of each at which they do. */
export interface Intersection {
  readonly at: Point;
  readonly shareOfFirst: number;
  readonly shareOfSecond: number;
}

/** Where two segments meet, in order along the first; touching ends count. */
export function intersections(a: Segment, b: Segment): Intersection[] {
  const met: Intersection[] = [];
  for (const at of intersectionPoints(a, b)) {
    const [shareOfFirst, shareOfSecond] = [shareAlong(a, at), shareAlong(b, at)];
    if (isOnSegment(shareOfFirst, a) && isOnSegment(shareOfSecond, b)) met.push({ at, shareOfFirst, shareOfSecond });
  }
  return met.length > 1 ? met.sort((c, d) => c.shareOfFirst - d.shareOfFirst) : met;
}

const isOnSegment = (share: number, s: Segment): boolean => {
  const slack = EPSILON / Math.max(distance(s.from, s.to), EPSILON);
  return share >= -slack && share <= 1 + slack;
};

function intersectionPoints(a: Segment, b: Segment): Point[] {
  if (a.kind === "line") return b.kind === "line" ? intersectLines(a, b) : intersectLineCircle(a, b);
  return b.kind === "line" ? intersectLineCircle(b, a) : intersectCircles(a, b);
}

function intersectLines(a: Line, b: Line): Point[] {
  const [ax, ay] = [a.to.x - a.from.x, a.to.y - a.from.y];
  const [bx, by] = [b.to.x - b.from.x, b.to.y - b.from.y];
  const cross = ax * by - ay * bx;
  if (Math.abs(cross) < EPSILON * EPSILON) return [];
  const t = ((b.from.x - a.from.x) * by - (b.from.y - a.from.y) * bx) / cross;
  return [point(a.from.x + ax * t, a.from.y + ay * t)];
}

function intersectLineCircle(a: Line, { centre, radius }: Arc): Point[] {
  const length = distance(a.from, a.to);
  const [ux, uy] = [(a.to.x - a.from.x) / length, (a.to.y - a.from.y) / length];
  const along = (centre.x - a.from.x) * ux + (centre.y - a.from.y) * uy;
  const off = (centre.x - a.from.x) * uy - (centre.y - a.from.y) * ux;
  const half = radius * radius - off * off;
  if (half < 0) return [];
  return [along - Math.sqrt(half), along + Math.sqrt(half)].map((t) => point(a.from.x + ux * t, a.from.y + uy * t));
}

function intersectCircles(a: Arc, b: Arc): Point[] {
  const apart = distance(a.centre, b.centre);
  if (apart < EPSILON) return [];
  const [ux, uy] = [(b.centre.x - a.centre.x) / apart, (b.centre.y - a.centre.y) / apart];
  const along = (apart * apart + a.radius ** 2 - b.radius ** 2) / (2 * apart);
  const half = a.radius ** 2 - along ** 2;
  if (half < 0) return [];
  const h = Math.sqrt(half);
  return [h, -h].map((k) => point(a.centre.x + ux * along - uy * k, a.centre.y + uy * along + ux * k));
}

/**
 * How far from a point in a direction of length 1 a segment is first met, mm; touching ends count. Infinite where it is not.
 */
export function distanceAlongRay(from: Point, direction: Point, segment: Segment): number {
  return segment.kind === "line" ? rayToLine(from, direction, segment) : rayToArc(from, direction, segment);
}

function rayToLine(from: Point, direction: Point, segment: Line): number {
  const [bx, by] = [segment.to.x - segment.from.x, segment.to.y - segment.from.y];
  const cross = direction.x * by - direction.y * bx;
  if (Math.abs(cross) < EPSILON * EPSILON) return Infinity;
  const [dx, dy] = [segment.from.x - from.x, segment.from.y - from.y];
  const along = (dx * by - dy * bx) / cross;
  const share = (dx * direction.y - dy * direction.x) / cross;
  return along >= -EPSILON && isOnSegment(share, segment) ? Math.abs(along) : Infinity;
}

function rayToArc(from: Point, { x, y }: Point, segment: Arc): number {
  const { centre, radius } = segment;
  const along = (centre.x - from.x) * x + (centre.y - from.y) * y;
  const off = (centre.x - from.x) * y - (centre.y - from.y) * x;
  const half = radius * radius - off * off;
  if (half < 0) return Infinity;
  const root = Math.sqrt(half);
  const isMetAt = (t: number) =>
    t >= -EPSILON && isOnSegment(shareAlong(segment, point(from.x + x * t, from.y + y * t)), segment);
  return isMetAt(along - root) ? Math.abs(along - root) : isMetAt(along + root) ? Math.abs(along + root) : Infinity;
}

function shareAlong(segment: Segment, p: Point): number {
  const { from, to } = segment;
  if (segment.kind === "line") {
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    return ((p.x - from.x) * dx + (p.y - from.y) * dy) / (dx * dx + dy * dy);
  }
  const ahead = degreesAlong(segment, p);
  return (ahead > 360 - 1e-7 ? ahead - 360 : ahead) / Math.abs(segment.sweep);
}

/** The part of a segment between two shares, exact at both ends. */
export function subsegment(segment: Segment, first: number, last: number): Segment {
  const from = pointAlong(segment, first);
  const to = pointAlong(segment, last);
  return segment.kind === "line"
    ? { kind: "line", from, to }
    : { ...segment, from, to, sweep: segment.sweep * (Math.min(last, 1) - Math.max(first, 0)) };
}

/** A chain of segments split where another chain first meets it, both ending in the very same point. */
export function splitAtIntersection(
  chain: readonly Segment[],
  other: readonly Segment[],
): { before: Segment[]; after: Segment[]; at: Point } | undefined {
  for (const [i, segment] of chain.entries()) {
    const met = other.flatMap((o) => intersections(segment, o)).sort((a, b) => a.shareOfFirst - b.shareOfFirst)[0];
    if (!met) continue;
    const before = [...chain.slice(0, i), { ...subsegment(segment, 0, met.shareOfFirst), to: met.at }];
    const after = [{ ...subsegment(segment, met.shareOfFirst, 1), from: met.at }, ...chain.slice(i + 1)];
    return { before: before.filter(hasLength), after: after.filter(hasLength), at: met.at };
  }
  return undefined;
}

const hasLength = (s: Segment): boolean => distance(s.from, s.to) > EPSILON;
