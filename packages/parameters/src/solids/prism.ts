// A prism: an outline with rings, run across the width.
import {
  type Circle,
  circleOutline,
  type Outline,
  type Point,
  reverseOutline,
  type Shape,
  tessellate,
} from "@lamplane/geometry";
import { atWidth, planarFace, rib, strips, type Triangle } from "./faces.ts";

/** Area within corner points, mm²; negative where they run clockwise. */
export const polygonArea = (points: readonly Point[]): number =>
  points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!;
    return sum + p.x * q.y - q.x * p.y;
  }, 0) / 2;

/** Corner points of a shape's rings: its boundary counter-clockwise, holes clockwise. */
export const shapeRings = ({ boundary, holes, circles }: Shape): Point[][] => [
  tessellate(boundary),
  ...holes.map((hole) => tessellate(reverseOutline(hole))),
  ...circles.map(circleRing),
];

/** A round hole's corners, clockwise. */
export const circleRing = (circle: Circle): Point[] => tessellate(reverseOutline(circleOutline(circle)));

/** A plain shape without holes. */
export const plainShape = (boundary: Outline): Shape => ({ boundary, holes: [], circles: [] });

/** Faces of a prism between z = low and high, and its volume from the same corners, mm³. */
export function prism(shape: Shape, low: number, high: number): { triangles: Triangle[]; volume: number } {
  const rings = shapeRings(shape);
  const walls = rings.flatMap((ring) => prismWalls(ring, low, high));
  const caps = [
    ...planarFace(rings.map((ring) => ring.map((p) => atWidth(p, high)))),
    ...planarFace(rings.map((ring) => [...ring].reverse().map((p) => atWidth(p, low)))),
  ];
  const area = rings.reduce((sum, ring) => sum + polygonArea(ring), 0);
  return { triangles: [...walls, ...caps], volume: area * (high - low) };
}

/** Upright faces round a ring of corners; the outside lies to the right of the way round. */
export function prismWalls(ring: readonly Point[], low: number, high: number): Triangle[] {
  return strips(
    [...ring, ring[0]!].map((p) => rib(p, low, high)),
    low,
    high,
  );
}
