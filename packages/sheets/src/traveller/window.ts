// What of an outline lies within an upright window, and upright rectangles.
import { type Point, point, polygon, type Segment, tessellate } from "@lamplane/geometry";

/** What lies within upright bounds. */
export interface Window {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** An outline cut off by a window, arcs as chords: what is shown so is near enough to straight. */
export function clipToWindow(outline: readonly Segment[], { left, right, low, high }: Window) {
  const sides: readonly ((p: Point) => number)[] = [
    (p) => p.x - left,
    (p) => right - p.x,
    (p) => p.y - low,
    (p) => high - p.y,
  ];
  const corners = sides.reduce(clipHalfPlane, tessellate(outline, CHORDS));
  return polygon(...corners);
}
const CHORDS = 0.05; // mm: a tenth of a line's width, drawn true size

/** Sutherland and Hodgman's clipping by one side. */
const clipHalfPlane = (corners: readonly Point[], inside: (p: Point) => number): Point[] =>
  corners.flatMap((here, i) => {
    const next = corners[(i + 1) % corners.length]!;
    const [a, b] = [inside(here), inside(next)];
    const own = a >= 0 ? [here] : [];
    const share = a / (a - b);
    return a * b < 0 ? [...own, point(here.x + (next.x - here.x) * share, here.y + (next.y - here.y) * share)] : own;
  });

/** An upright rectangle. */
export const boxPolygon = (left: number, low: number, right: number, high: number) =>
  polygon(point(left, low), point(right, low), point(right, high), point(left, high));
