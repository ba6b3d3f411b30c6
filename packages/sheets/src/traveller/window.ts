// What of an outline lies within an upright window, and upright rectangles.
import { clipPolygon, type Point, point, polygon, type Segment, tessellate } from "@lamplane/geometry";

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
  const corners = sides.reduce(clipPolygon, tessellate(outline, CHORDS));
  return polygon(...corners);
}
const CHORDS = 0.05; // mm: a tenth of a line's width, drawn true size

/** An upright rectangle. */
export const boxPolygon = (left: number, low: number, right: number, high: number) =>
  polygon(point(left, low), point(right, low), point(right, high), point(left, high));
