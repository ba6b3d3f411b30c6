// Flat shapes seen from outside the project: manifold-3d's cross sections, which rest on the Clipper2 library.
import type { Point } from "@lamplane/geometry";
import Module from "manifold-3d";

const wasm = await Module();
wasm.setup();

const section = (corners: readonly Point[]) => new wasm.CrossSection([corners.map((p) => [p.x, p.y])]);

/** Area of a polygon, counter-clockwise, mm². */
export function areaOf(corners: readonly Point[]): number {
  const shape = section(corners);
  const area = shape.area();
  shape.delete();
  return area;
}

/** Area of the first polygon that lies outside the second, mm². Both counter-clockwise. */
export function areaOutside(inner: readonly Point[], outer: readonly Point[]): number {
  const [a, b] = [section(inner), section(outer)];
  const rest = a.subtract(b);
  const area = rest.area();
  for (const shape of [a, b, rest]) shape.delete();
  return area;
}

/** Area that two polygons share, mm². Both counter-clockwise. */
export function areaShared(one: readonly Point[], other: readonly Point[]): number {
  const [a, b] = [section(one), section(other)];
  const both = a.intersect(b);
  const area = both.area();
  for (const shape of [a, b, both]) shape.delete();
  return area;
}

/** Area of a polygon grown by a distance, its corners sharp, mm². Counter-clockwise. */
export function areaGrown(corners: readonly Point[], by: number): number {
  const shape = section(corners);
  const larger = shape.offset(by, "Miter", 50);
  const area = larger.area();
  for (const each of [shape, larger]) each.delete();
  return area;
}

/** Area of a convex polygon's erosion by another, mm²: what its copies, each shifted back by a corner of the other, share. */
export function erosionArea(container: readonly Point[], part: readonly Point[]): number {
  const pieces = part.map((v) => section(container.map((p) => ({ x: p.x - v.x, y: p.y - v.y }))));
  const left = wasm.CrossSection.intersection(pieces);
  const area = left.area();
  for (const shape of [...pieces, left]) shape.delete();
  return area;
}
