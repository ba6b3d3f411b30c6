// Polygons and meshes in libraries that we do not ship: Clipper2, polyclip, earcut and three; manifold-3d stands in support/.
import type { Point } from "@lamplane/geometry";
import {
  area,
  EndType,
  FillRule,
  inflatePaths,
  intersect,
  JoinType,
  type Path64,
  PointInPolygonResult,
  pointInPolygon,
} from "clipper2-ts";
import earcut from "earcut";
import { difference, type Geom, intersection, union } from "polyclip-ts";

/** Clipper2 counts in whole numbers: as many to a mm. */
const GRID = 1e6;
const path = (corners: readonly Point[]): Path64 =>
  corners.map(({ x, y }) => ({ x: Math.round(x * GRID), y: Math.round(y * GRID) }));

/** Area by Clipper2, mm²; positive where the corners run counter-clockwise. */
export const clipperArea = (corners: readonly Point[]): number => area(path(corners)) / GRID ** 2;

/** Area that two polygons share by Clipper2, mm². */
export const clipperShared = (one: readonly Point[], other: readonly Point[]): number =>
  intersect([path(one)], [path(other)], FillRule.NonZero).reduce((sum, each) => sum + area(each), 0) / GRID ** 2;

/** Area of a polygon grown by a distance by Clipper2, its corners sharp or round, mm². */
export const clipperGrown = (corners: readonly Point[], by: number, corner: "sharp" | "round" = "sharp"): number =>
  inflatePaths(
    [path(corners)],
    by * GRID,
    corner === "sharp" ? JoinType.Miter : JoinType.Round,
    EndType.Polygon,
    50,
    0.0005 * GRID,
  ).reduce((sum, each) => sum + area(each), 0) /
  GRID ** 2;

/**
 * Distance of a point from a polygon's boundary by Clipper2: how far the polygon must be grown (or shrunk, for a point inside) for its
 * edge to reach the point. mm, never negative.
 */
export function clipperDistance(p: Point, corners: readonly Point[], reach: number): number {
  const place = { x: Math.round(p.x * GRID), y: Math.round(p.y * GRID) };
  const isIn = (paths: readonly Path64[]) =>
    paths.some((each) => pointInPolygon(place, each) !== PointInPolygonResult.IsOutside);
  const polygon = [path(corners)];
  const inside = isIn(polygon);
  let [near, far] = [0, reach];
  while (far - near > 1e-4) {
    const middle = (near + far) / 2;
    const moved = inflatePaths(
      polygon,
      (inside ? -middle : middle) * GRID,
      JoinType.Round,
      EndType.Polygon,
      2,
      0.0005 * GRID,
    );
    if (isIn(moved) === inside) near = middle;
    else far = middle;
  }
  return (near + far) / 2;
}

type Ring = [number, number][];
const ring = (corners: readonly Point[]): Ring => corners.map(({ x, y }) => [x, y]);
const shoelace = (corners: Ring): number =>
  corners.reduce((sum, [x, y], i) => {
    const [u, v] = corners[(i + 1) % corners.length]!;
    const [ox, oy] = corners[0]!;
    return sum + (x - ox) * (v - oy) - (u - ox) * (y - oy);
  }, 0) / 2;
const areaOf = (shapes: Geom): number =>
  (shapes as Ring[][]).reduce(
    (sum, [outer, ...holes]) =>
      sum + Math.abs(shoelace(outer!)) - holes.reduce((h, hole) => h + Math.abs(shoelace(hole)), 0),
    0,
  );

/** Area that is left of a polygon without others, by polyclip, mm². */
export const polyclipRest = (whole: readonly Point[], ...less: (readonly Point[])[]): number =>
  areaOf(difference([ring(whole)], ...less.map((each): Geom => [ring(each)])));

/** Area that two polygons share by polyclip, mm². */
export const polyclipShared = (one: readonly Point[], other: readonly Point[]): number =>
  areaOf(intersection([ring(one)], [ring(other)]));

/** Area of several polygons as one by polyclip, mm². */
export const polyclipUnion = (first: readonly Point[], ...more: (readonly Point[])[]): number =>
  areaOf(union([ring(first)], ...more.map((each): Geom => [ring(each)])));

/** Area of the triangles into which earcut cuts a polygon with holes, mm². */
export function earcutArea(boundary: readonly Point[], holes: readonly (readonly Point[])[] = []): number {
  const corners = [boundary, ...holes].flat();
  const starts = holes.map((_, i) => boundary.length + holes.slice(0, i).reduce((sum, hole) => sum + hole.length, 0));
  const triangles = earcut(
    corners.flatMap(({ x, y }) => [x, y]),
    starts,
  );
  let sum = 0;
  for (let i = 0; i < triangles.length; i += 3)
    sum += Math.abs(shoelace(ring([0, 1, 2].map((k) => corners[triangles[i + k]!]!))));
  return sum;
}
