// Straight-sided shapes beside each other: whether they overlap, and how far one may slide before it touches another.

import { boundsOf, type Point, point } from "./outline.ts";
import { ringTriples } from "./ring.ts";
import { cosDeg, sinDeg } from "./trig.ts";

/** Corners in order, with the upright box about them. mm */
export interface BoxedPolygon {
  readonly corners: readonly Point[];
  readonly min: Point;
  readonly max: Point;
}

export const boxedPolygon = (corners: readonly Point[]): BoxedPolygon => ({ corners, ...boundsOf(corners) });

export const movePolygon = ({ corners, min, max }: BoxedPolygon, by: Point): BoxedPolygon => ({
  corners: corners.map((p) => point(p.x + by.x, p.y + by.y)),
  min: point(min.x + by.x, min.y + by.y),
  max: point(max.x + by.x, max.y + by.y),
});

/** Whether a polygon holds a point. @see W. R. Franklin, PNPOLY: crossings of a ray */
export function polygonHolds(corners: readonly Point[], p: Point): boolean {
  let inside = false;
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
    const [a, b] = [corners[i]!, corners[j]!];
    if (a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
  }
  return inside;
}

/** Whether sides of two polygons cross, or one holds the other. Sides that only touch are none that cross. @param shift of the first */
export function polygonsOverlap(a: BoxedPolygon, b: BoxedPolygon, shift: Point): boolean {
  const { x, y } = shift;
  if (a.min.x + x >= b.max.x || a.max.x + x <= b.min.x || a.min.y + y >= b.max.y || a.max.y + y <= b.min.y)
    return false;
  const moved = movePolygon(a, shift);
  return sidesCross(moved, b) || holdsCorner(moved, b) || holdsCorner(b, moved);
}

const holdsCorner = (a: BoxedPolygon, { corners }: BoxedPolygon): boolean =>
  corners.some((p) => p.x > a.min.x && p.x < a.max.x && p.y > a.min.y && p.y < a.max.y && polygonHolds(a.corners, p));

function sidesCross(a: BoxedPolygon, b: BoxedPolygon): boolean {
  const near = sidesWithin(b, a);
  return sidesWithin(a, b).some(([p, q]) =>
    near.some(([r, s]) => turn(p, q, r) * turn(p, q, s) < 0 && turn(r, s, p) * turn(r, s, q) < 0),
  );
}

type Side = readonly [from: Point, to: Point];

/** Sides of a polygon whose boxes reach into another's. */
function sidesWithin({ corners }: BoxedPolygon, { min, max }: BoxedPolygon): Side[] {
  const sides: Side[] = [];
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
    const [p, q] = [corners[j]!, corners[i]!];
    const isOff =
      (p.x < min.x && q.x < min.x) ||
      (p.x > max.x && q.x > max.x) ||
      (p.y < min.y && q.y < min.y) ||
      (p.y > max.y && q.y > max.y);
    if (!isOff) sides.push([p, q]);
  }
  return sides;
}

const turn = (p: Point, q: Point, r: Point): number => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);

/** The corner that lies farthest in each of a number of directions, spread evenly from +x on. */
export const extremeCorners = (corners: readonly Point[], directions: number): Point[] =>
  Array.from({ length: directions }, (_, i) => {
    const [x, y] = [cosDeg((360 * i) / directions), sinDeg((360 * i) / directions)];
    return corners.reduce((a, b) => (b.x * x + b.y * y > a.x * x + a.y * y + TOUCHING ? b : a));
  });

/** Corners at which a counter-clockwise polygon turns right: the bottoms of its notches. */
export const notchCorners = (corners: readonly Point[]): Point[] =>
  ringTriples(corners).flatMap(([before, at, after]) => (turn(before, at, after) < -TOUCHING ? [at] : []));

/** How far a polygon moves left, or down, before it touches another; endless where it never does. mm */
export function slideRoom(moving: BoxedPolygon, fixed: BoxedPolygon, way: "left" | "down"): number {
  const isLevel = way === "left";
  const [low, high, from, to] = isLevel
    ? [moving.min.y, moving.max.y, fixed.min.y, fixed.max.y]
    : [moving.min.x, moving.max.x, fixed.min.x, fixed.max.x];
  const isBehind = isLevel ? fixed.min.x >= moving.max.x : fixed.min.y >= moving.max.y;
  if (low >= to || from >= high || isBehind) return Number.POSITIVE_INFINITY;
  const along = isLevel ? (p: Point): Point => p : ({ x, y }: Point): Point => point(y, x);
  const [a, b] = [moving, fixed].map(({ corners }) => corners.map(along)) as [Point[], Point[]];
  return Math.min(roomBefore(a, b, 1), roomBefore(b, a, -1));
}

/** Least distance along −x from the corners of a shape to the sides of another; with sign −1 along +x. */
function roomBefore(corners: readonly Point[], sides: readonly Point[], sign: 1 | -1): number {
  let room = Number.POSITIVE_INFINITY;
  for (const p of corners)
    for (let i = 0, j = sides.length - 1; i < sides.length; j = i++) {
      const [a, b] = [sides[i]!, sides[j]!];
      if (a.y > p.y === b.y > p.y) continue;
      const off = sign * (p.x - (a.x + ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y)));
      if (off > -TOUCHING && off < room) room = off;
    }
  return Math.max(0, room);
}

/** Sides no farther over each other than this touch, mm. */
const TOUCHING = 1e-6;
