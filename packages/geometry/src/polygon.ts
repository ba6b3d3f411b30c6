// Polygons by their corners alone.
import { type Point, point } from "./outline.ts";
import { ringPairs } from "./ring.ts";

/** Area within corners; negative where they run clockwise. */
export const polygonArea = (corners: readonly Point[]): number =>
  ringPairs(corners).reduce((sum, [p, q]) => sum + p.x * q.y - q.x * p.y, 0) / 2;

/**
 * What of a polygon lies on one side of a line.
 * @param room distance of a place to the line, negative on the side that is cut off
 * @see I. E. Sutherland and G. W. Hodgman, "Reentrant polygon clipping", Communications of the ACM 17 (1974) 32–42 (from memory)
 */
export const clipPolygon = (corners: readonly Point[], room: (place: Point) => number): Point[] =>
  ringPairs(corners).flatMap(([here, next]) => {
    const [before, after] = [room(here), room(next)];
    const kept = before >= 0 ? [here] : [];
    const share = before / (before - after);
    return before * after < 0
      ? [...kept, point(here.x + (next.x - here.x) * share, here.y + (next.y - here.y) * share)]
      : kept;
  });
