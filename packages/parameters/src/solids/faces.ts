// The faces that solids are made of, as triangles. Neighbours share the very same corners, so that a solid closes to the last bit.
import modeling from "@jscad/modeling";
import { EPSILON, type Point } from "@lamplane/geometry";
import { removeSlivers } from "./slivers.ts";
import { cross, dot, norm, subtract, type Vec3, vectorsEqual } from "./vectors.ts";

export type { Vec3 } from "./vectors.ts";

export type Triangle = readonly [Vec3, Vec3, Vec3];
/** A closed loop of corners, counter-clockwise seen from outside the solid; clockwise round a hole. */
export type Loop = readonly Vec3[];

const { slice } = modeling.extrusions;

/** A corner of the elevation at a place across the width. */
export const atWidth = ({ x, y }: Point, z: number): Vec3 => [x, y, z];

/** An edge that runs across the width: a point of the elevation and every z at which a corner lies on it, ascending. */
export interface Rib {
  readonly at: Point;
  readonly zs: readonly number[];
}
export const rib = (p: Point, ...zs: number[]): Rib => ({ at: p, zs: [...new Set(zs)].sort((a, b) => a - b) });

/**
 * The face between two ribs from z = low to high. Its outside lies to the right of the way from `a` to `b`.
 * Each triangle has one side on one rib and its point on the other, so none is flat.
 */
export function strip(a: Rib, b: Rib, low: number, high: number): Triangle[] {
  const as = a.zs.filter((z) => z >= low && z <= high);
  const bs = b.zs.filter((z) => z >= low && z <= high);
  const triangles: Triangle[] = [];
  let [i, j] = [0, 0];
  while (i < as.length - 1 || j < bs.length - 1) {
    const corner = [atWidth(a.at, as[i]!), atWidth(b.at, bs[j]!)] as const;
    const [nextA, nextB] = [as[i + 1] ?? Number.POSITIVE_INFINITY, bs[j + 1] ?? Number.POSITIVE_INFINITY];
    if (nextB <= nextA) triangles.push([...corner, atWidth(b.at, bs[++j]!)]);
    else triangles.push([...corner, atWidth(a.at, as[++i]!)]);
  }
  return triangles;
}

/** Faces along a chain of ribs, as `strip`. */
export const strips = (ribs: readonly Rib[], low: number, high: number): Triangle[] =>
  ribs.slice(1).flatMap((b, i) => strip(ribs[i]!, b, low, high));

/** A flat four-sided face, its corners counter-clockwise seen from outside. */
export const quad = (a: Vec3, b: Vec3, c: Vec3, d: Vec3): Triangle[] => [
  [a, b, c],
  [a, c, d],
];

/**
 * A flat face within loops. Corners in the middle of a straight side are kept: the triangulation would drop them,
 * so they are taken out before it and put back into the triangles after it.
 */
export function planarFace(loops: readonly Loop[]): Triangle[] {
  const reduced = loops.map(dropStraightCorners);
  const edges = reduced.flatMap((loop) => loop.map((p, i) => [p, loop[(i + 1) % loop.length]!]));
  const polygons = slice.toPolygons(slice.create(edges as never));
  let triangles = polygons.map(({ vertices }) => vertices as unknown as Triangle);
  loops.forEach((loop, k) => {
    triangles = restoreCorners(triangles, loop, new Set(reduced[k]));
  });
  return removeSlivers(triangles, faceSize(loops));
}

/** Longest side of the box about a face, mm. */
function faceSize(loops: readonly Loop[]): number {
  const spans = [0, 1, 2].map((k) => {
    const along = loops.flatMap((loop) => loop.map((p) => p[k]!));
    return Math.max(...along) - Math.min(...along);
  });
  return Math.max(...spans);
}

function dropStraightCorners(loop: Loop): Vec3[] {
  const kept: Vec3[] = [];
  loop.forEach((p, i) => {
    const before = kept.at(-1) ?? loop[(i + loop.length - 1) % loop.length]!;
    if (!isBetween(before, p, loop[(i + 1) % loop.length]!)) kept.push(p);
  });
  return kept;
}

/** Whether p lies on the straight way from a to b, within arithmetic. */
function isBetween(a: Vec3, p: Vec3, b: Vec3): boolean {
  const [u, w] = [subtract(p, a), subtract(b, p)];
  const [lu, lw] = [norm(u), norm(w)];
  return norm(cross(u, w)) <= EPSILON * 1e-3 * Math.max(lu, lw) && dot(u, w) > 0;
}

function restoreCorners(triangles: Triangle[], loop: Loop, kept: ReadonlySet<Vec3>): Triangle[] {
  const result = [...triangles];
  const start = loop.findIndex((p) => kept.has(p));
  const around = [...loop.slice(start), ...loop.slice(0, start)];
  let from = around[0]!;
  around.forEach((p, i) => {
    if (kept.has(p)) {
      from = p;
      return;
    }
    const to = [...around.slice(i + 1), around[0]!].find((q) => kept.has(q))!;
    const found = result.findIndex((t) => sideOf(t, from, to) >= 0);
    if (found < 0) throw new Error("a corner on a straight side found no triangle to go into");
    const side = sideOf(result[found]!, from, to);
    const apex = result[found]![(side + 2) % 3]!;
    result.splice(found, 1, [from, p, apex], [p, to, apex]);
    from = p;
  });
  return result;
}

const sideOf = (t: Triangle, from: Vec3, to: Vec3): number =>
  t.findIndex((p, i) => vectorsEqual(p, from) && vectorsEqual(t[(i + 1) % 3]!, to));
