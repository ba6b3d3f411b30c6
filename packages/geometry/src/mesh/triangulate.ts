// A flat area between rings as triangles: every corner stays a corner, however many lie in line, and no triangle is needlessly thin.

import cdt2d from "cdt2d";
import type { Point } from "../outline.ts";
import { ringPairs } from "../ring.ts";

/** Three corners by their numbers, counter-clockwise. */
export type Numbers = [number, number, number];

/**
 * Triangles of the area within rings of points (an odd number of them round it), each ring by the numbers of its points.
 * @see L. P. Chew, "Constrained Delaunay triangulations", Algorithmica 4 (1989)
 */
export function triangulate(points: readonly Point[], rings: readonly (readonly number[])[]): Numbers[] {
  const [only, second] = rings;
  const simple = only && !second && only.length <= 4 ? triangulateSmall(points, only) : undefined;
  if (simple) return simple;
  const edges = rings.flatMap((ring) => ringPairs(ring).map(([a, b]): [number, number] => [a, b]));
  // The library's own refinement sums exactly, which takes ten times as long; only its triangulation need be exact.
  const raw = cdt2d(
    points.map(({ x, y }) => [x, y] as const),
    edges,
    { exterior: false, delaunay: false },
  );
  // All run the same way; which way, their sum says: a triangle whose corners lie in line has no sign of its own.
  const sum = raw.reduce((area, [a, b, c]) => area + twiceArea(points[a]!, points[b]!, points[c]!), 0);
  const turned = raw.map(([a, b, c]): Numbers => (sum > 0 ? [a, b, c] : [a, c, b]));
  return flipToDelaunay(points, turned, edges);
}

/** A triangle, or four corners that are convex; undefined for what needs more thought. */
function triangulateSmall(points: readonly Point[], ring: readonly number[]): Numbers[] | undefined {
  const [a, b, c, d] = ring as [number, number, number, number?];
  if (d === undefined) return [[a, b, c]];
  const [p, q, r, s] = [a, b, c, d].map((k) => points[k]!) as [Point, Point, Point, Point];
  const corners = [twiceArea(p, q, r), twiceArea(q, r, s), twiceArea(r, s, p), twiceArea(s, p, q)];
  if (!corners.every((area) => area > 0)) return undefined;
  return shouldFlip(p, r, s, q)
    ? [
        [a, b, d],
        [b, c, d],
      ]
    : [
        [a, b, c],
        [a, c, d],
      ];
}

const twiceArea = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Sides are turned over, fixed ones never, until no triangle's circle holds its neighbour's far corner. */
function flipToDelaunay(
  points: readonly Point[],
  triangles: Numbers[],
  fixed: readonly (readonly [number, number])[],
): Numbers[] {
  const n = points.length;
  const owner = new Map<number, number>(); // side a → b, as a·n + b → its triangle
  const kept = new Set<number>();
  for (const [a, b] of fixed) kept.add(a * n + b).add(b * n + a);
  const own = (t: number, [a, b, c]: Numbers) =>
    owner
      .set(a * n + b, t)
      .set(b * n + c, t)
      .set(c * n + a, t);
  for (let t = 0; t < triangles.length; t++) own(t, triangles[t]!);
  const waiting = [...owner.keys()];
  for (let turns = 40 * n; waiting.length > 0 && turns > 0; turns--) {
    const side = waiting.pop()!;
    if (kept.has(side)) continue;
    const [a, b] = [Math.floor(side / n), side % n];
    const [t, u] = [owner.get(side), owner.get(b * n + a)];
    if (t === undefined || u === undefined) continue;
    const [c, d] = [apexOf(triangles[t]!, a, b), apexOf(triangles[u]!, a, b)];
    if (!shouldFlip(points[a]!, points[b]!, points[c]!, points[d]!)) continue;
    owner.delete(side);
    owner.delete(b * n + a);
    triangles[t] = [a, d, c];
    triangles[u] = [d, b, c];
    own(t, triangles[t]);
    own(u, triangles[u]);
    waiting.push(a * n + d, d * n + b, b * n + c, c * n + a);
  }
  return triangles;
}

/** The corner of a triangle that is neither a nor b. */
function apexOf([p, q, r]: Numbers, a: number, b: number): number {
  if (p !== a && p !== b) return p;
  return q !== a && q !== b ? q : r;
}

/**
 * Whether a–b, between the triangles a b c and b a d, is better turned into c–d: where the angles over it sum to more than
 * half a turn, by more than arithmetic, and both new triangles have an area.
 */
function shouldFlip(a: Point, b: Point, c: Point, d: Point): boolean {
  if (!(twiceArea(a, d, c) > 0 && twiceArea(d, b, c) > 0)) return false;
  const [sineC, sineD] = [twiceArea(a, b, c), twiceArea(b, a, d)];
  const [cosineC, cosineD] = [spread(a, b, c), spread(a, b, d)];
  const sum = sineC * cosineD + cosineC * sineD;
  const size = Math.sqrt((sineC * sineC + cosineC * cosineC) * (sineD * sineD + cosineD * cosineD));
  return sum < -1e-9 * size;
}

/** Cosine of the angle under which a and b are seen from o, times both distances. */
const spread = (a: Point, b: Point, o: Point): number => (a.x - o.x) * (b.x - o.x) + (a.y - o.y) * (b.y - o.y);
