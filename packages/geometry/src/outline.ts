// Exact outlines: points, lines and true arcs. An outline is closed; its boundary runs counter-clockwise.

import { ringPairs } from "./ring.ts";
import { EPSILON } from "./tolerances.ts";
import { acosDeg, arcLength, atan2Deg, cosDeg, sinDeg } from "./trig.ts";

export interface Point {
  readonly x: number;
  readonly y: number;
}
export interface Line {
  readonly kind: "line";
  readonly from: Point;
  readonly to: Point;
}
/** Part of a circle; `sweep` in degrees, positive counter-clockwise, never 0, at most 360 either way. */
export interface Arc {
  readonly kind: "arc";
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly radius: number;
  readonly sweep: number;
}
export type Segment = Line | Arc;
export interface Circle {
  readonly centre: Point;
  readonly radius: number;
}
/** A closed chain of segments: each begins where the one before it ends. */
export type Outline = readonly Segment[];
/** A boundary with holes in it. */
export interface Shape {
  readonly boundary: Outline;
  readonly holes: readonly Outline[];
  readonly circles: readonly Circle[];
}

/** Further than any plane reaches, mm: where a ray ends. */
export const FAR = 1e4;
/** How far a facet may lie off its arc, mm: a tenth of what a maker can feel. */
export const CHORD_ERROR = 0.005;

export const point = (x: number, y: number): Point => ({ x, y });
export const line = (from: Point, to: Point): Line => ({ kind: "line", from, to });
/** Distance between two points. A root, not `hypot`: lengths here neither over- nor underflow, and it is asked most of all. */
export function distance(a: Point, b: Point): number {
  const [dx, dy] = [a.x - b.x, a.y - b.y];
  return Math.sqrt(dx * dx + dy * dy);
}
export const pointsEqual = (a: Point, b: Point): boolean => distance(a, b) < EPSILON;

/** Arc about `centre` from one point to another, by the shorter way unless `sweep` is given. */
export function arc(from: Point, to: Point, centre: Point, sweep = shorterSweep(from, to, centre)): Arc {
  return { kind: "arc", from, to, centre, radius: distance(from, centre), sweep };
}

function shorterSweep(from: Point, to: Point, centre: Point): number {
  const turn = atan2Deg(to.y - centre.y, to.x - centre.x) - atan2Deg(from.y - centre.y, from.x - centre.x);
  return turn > 180 ? turn - 360 : turn <= -180 ? turn + 360 : turn;
}

/** Straight-sided outline through the points given, in order; repeated points are dropped. */
export function polygon(...points: Point[]): Outline {
  const kept = ringPairs(points).flatMap(([p, after]) => (pointsEqual(p, after) ? [] : [p]));
  return ringPairs(kept).map(([from, to]) => line(from, to));
}

/** Point part of the way along a segment; `share` 0 is its beginning, 1 its end. */
export function pointAlong(segment: Segment, share: number): Point {
  if (share <= 0) return segment.from;
  if (share >= 1) return segment.to;
  const { from, to } = segment;
  if (segment.kind === "line") return point(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
  const { centre, sweep } = segment;
  const [c, s] = [cosDeg(sweep * share), sinDeg(sweep * share)];
  const [dx, dy] = [from.x - centre.x, from.y - centre.y];
  return point(centre.x + dx * c - dy * s, centre.y + dx * s + dy * c);
}

/** Length of a segment, mm. */
export const segmentLength = (s: Segment): number =>
  s.kind === "line" ? distance(s.from, s.to) : arcLength(s.radius, s.sweep);

/** Area enclosed, mm², exact for arcs; negative where the outline runs clockwise. */
export function outlineArea(outline: Outline): number {
  return outline.reduce((sum, s) => {
    const triangle = (s.from.x * s.to.y - s.to.x * s.from.y) / 2;
    return s.kind === "line" ? sum + triangle : sum + triangle + circularSegmentArea(s.radius, s.sweep);
  }, 0);
}

/** Area between an arc and its chord, mm²; negative where the sweep is. */
export const circularSegmentArea = (radius: number, sweep: number): number =>
  (radius * radius * ((sweep * Math.PI) / 180 - sinDeg(sweep))) / 2;

/** Area of a shape, mm²: its boundary's less its holes' and circles'. */
export const shapeArea = (shape: Shape): number =>
  Math.abs(outlineArea(shape.boundary)) -
  shape.holes.reduce((sum, hole) => sum + Math.abs(outlineArea(hole)), 0) -
  shape.circles.reduce((sum, circle) => sum + Math.PI * circle.radius ** 2, 0);

/** How many chords an arc needs for every one of them to lie within `chordError` of it. */
export function chordCount(radius: number, sweep: number, chordError = CHORD_ERROR): number {
  const largestTurn = radius <= chordError ? 90 : 2 * acosDeg(1 - chordError / radius);
  return Math.max(1, Math.ceil(Math.abs(sweep) / Math.min(largestTurn, 45) - 1e-9));
}

/** Corner points of the outline with its arcs in chords; each point once, closing point left out. */
export function tessellate(outline: Outline, chordError = CHORD_ERROR): Point[] {
  const corners: Point[] = [];
  for (const segment of outline) {
    const chords = segment.kind === "line" ? 1 : chordCount(segment.radius, segment.sweep, chordError);
    for (let i = 0; i < chords; i++) corners.push(pointAlong(segment, i / chords));
  }
  return corners;
}

/** A circle as an outline of two half turns, counter-clockwise from its right. */
export function circleOutline({ centre, radius }: Circle): Outline {
  const right = point(centre.x + radius, centre.y);
  const left = point(centre.x - radius, centre.y);
  return [arc(right, left, centre, 180), arc(left, right, centre, 180)];
}

/** The same segment run the other way. */
export const reverseSegment = (s: Segment): Segment =>
  s.kind === "line" ? line(s.to, s.from) : { ...s, from: s.to, to: s.from, sweep: -s.sweep };

/** The same outline run the other way. */
export const reverseOutline = (outline: Outline): Outline => outline.map(reverseSegment).reverse();

/** Positive where b lies counter-clockwise of a, seen from the centre. */
export const orientation = (a: Point, b: Point, centre: Point): number =>
  (a.x - centre.x) * (b.y - centre.y) - (a.y - centre.y) * (b.x - centre.x);

/** Smallest upright box about points: its lower left and upper right corners. */
export function boundsOf(points: readonly Point[]): { min: Point; max: Point } {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    low = Math.min(low, y);
    right = Math.max(right, x);
    high = Math.max(high, y);
  }
  return { min: point(left, low), max: point(right, high) };
}
