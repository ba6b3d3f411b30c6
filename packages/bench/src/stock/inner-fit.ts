// Convex shapes within convex shapes, without a turn: the shifts that put a part inside. Exact but for rounding.
import {
  boundsOf,
  clipPolygon,
  distance,
  EPSILON,
  type Point,
  point,
  ringPairs,
  ringTriples,
} from "@lamplane/geometry";

/** Part of a convex polygon, counter-clockwise, that lies to the left of the line from `a` to `b`. Empty where none does. */
export function clipToLeft(polygon: readonly Point[], a: Point, b: Point): Point[] {
  const length = distance(a, b);
  const room = (p: Point) => ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / length;
  return clipPolygon(polygon, room);
}

/**
 * The inner-fit polygon: every shift with which a convex part lies in a convex container, itself convex; empty where the
 * part does not go in without a turn. Each edge of the container moves in by how far the part reaches past its origin.
 * @param container corners, counter-clockwise. @param part corners in any order. mm.
 * @see M. de Berg and others, Computational Geometry (3rd edition, 2008), chapters 4 (half-planes) and 13 (Minkowski sums);
 *   J. A. Bennell and X. Song, Computers & Operations Research 35 (2008) 267-281 (inner-fit polygon). Both from memory.
 */
export function innerFitPolygon(container: readonly Point[], part: readonly Point[]): Point[] {
  if (container.length < 3) return [];
  const shifts = boxShifts(container, part);
  return ringPairs(container).reduce((left, [a, b]) => {
    const [ex, ey] = [(b.x - a.x) / distance(a, b), (b.y - a.y) / distance(a, b)];
    const reach = Math.min(...part.map((v) => ex * v.y - ey * v.x));
    return clipPolygon(left, (t) => ex * (t.y - a.y) - ey * (t.x - a.x) + reach);
  }, shifts);
}

/** Shifts that keep the part within the container's box; only a first bound for the clipping. */
function boxShifts(container: readonly Point[], part: readonly Point[]): Point[] {
  const [outer, inner] = [boundsOf(container), boundsOf(part)];
  const low = point(outer.min.x - inner.min.x - EPSILON, outer.min.y - inner.min.y - EPSILON);
  const high = point(outer.max.x - inner.max.x + EPSILON, outer.max.y - inner.max.y + EPSILON);
  if (low.x > high.x || low.y > high.y) return [];
  return [low, point(high.x, low.y), high, point(low.x, high.y)];
}

/** A convex polygon with every edge moved out by the same distance and its corners kept sharp. Counter-clockwise, mm. */
export function offsetPolygon(polygon: readonly Point[], by: number): Point[] {
  return ringTriples(polygon).map(([before, here, after]) => {
    const [into, out] = [edgeNormal(before, here), edgeNormal(here, after)];
    const scale = by / (1 + into.x * out.x + into.y * out.y);
    return point(here.x + (into.x + out.x) * scale, here.y + (into.y + out.y) * scale);
  });
}

/** Square off an edge, outward of a counter-clockwise polygon; length 1. */
const edgeNormal = (a: Point, b: Point): Point => point((b.y - a.y) / distance(a, b), (a.x - b.x) / distance(a, b));
