// Jigs seen from outside the project: rays through their walls, faces by their directions, places moved about.
import type { Jig } from "@lamplane/parameters/solids";
import { solidTriangles, type Vertex } from "./meshes.ts";

type Triangle = readonly Vertex[];

export const subtract = (a: Vertex, b: Vertex): Vertex => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const dot = (a: Vertex, b: Vertex): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vertex, b: Vertex): Vertex => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Outward direction of a triangle, of length 1, and its area. */
export function triangleNormal([a, b, c]: Triangle): { normal: Vertex; area: number } {
  const n = cross(subtract(b!, a!), subtract(c!, a!));
  const size = Math.hypot(...n);
  return { normal: [n[0] / size, n[1] / size, n[2] / size], area: size / 2 };
}

/** Steepest overhang, degrees from upright, of faces that look down and do not lie on the table; 0 where none does. */
export function worstOverhang(triangles: readonly Triangle[]): number {
  return triangles.reduce((worst, t) => {
    if (t.every((p) => p[2] < 1e-6)) return worst;
    const down = -triangleNormal(t).normal[2];
    return down <= 1e-6 ? worst : Math.max(worst, (Math.asin(Math.min(1, down)) * 180) / Math.PI);
  }, 0);
}

/**
 * Thinnest wall met by rays from places on the surface straight into the solid, mm. A wall has two faces that look apart;
 * where a ray meets a face that does not look away from where it began, it has met an edge, not a wall.
 * @param skip places that belong to no wall (letters)
 */
export function thinnestWall(
  triangles: readonly Triangle[],
  samples: number,
  random: () => number,
  skip: (p: Vertex) => boolean,
): number {
  const faces = triangles.map((t) => ({ t, ...triangleNormal(t) }));
  const ends: number[] = [];
  faces.reduce((sum, { area }, i) => {
    ends[i] = sum + area;
    return ends[i]!;
  }, 0);
  let thinnest = Number.POSITIVE_INFINITY;
  for (let k = 0; k < samples; k++) {
    const at = random() * ends.at(-1)!;
    const from = faces[ends.findIndex((end) => end >= at)]!;
    const [u, v] = [random(), random()];
    const [r, s] = u + v > 1 ? [1 - u, 1 - v] : [u, v];
    const [a, b, c] = from.t as [Vertex, Vertex, Vertex];
    const place = [0, 1, 2].map((i) => a[i]! + r * (b[i]! - a[i]!) + s * (c[i]! - a[i]!)) as unknown as Vertex;
    if (skip(place)) continue;
    const into: Vertex = [-from.normal[0], -from.normal[1], -from.normal[2]];
    for (const face of faces) {
      if (face === from || dot(face.normal, from.normal) > -0.8) continue;
      const far = hit(place, into, face.t);
      if (far !== undefined && far < thinnest) thinnest = far;
    }
  }
  return thinnest;
}

/** How far along a ray a triangle is met. @see T. Möller and B. Trumbore, "Fast, minimum storage ray/triangle intersection", 1997 */
function hit(from: Vertex, way: Vertex, [a, b, c]: Triangle): number | undefined {
  const [e1, e2] = [subtract(b!, a!), subtract(c!, a!)];
  const p = cross(way, e2);
  const det = dot(e1, p);
  if (Math.abs(det) < 1e-12) return undefined;
  const t = subtract(from, a!);
  const u = dot(t, p) / det;
  if (u < 0 || u > 1) return undefined;
  const q = cross(t, e1);
  const v = dot(way, q) / det;
  if (v < 0 || u + v > 1) return undefined;
  const far = dot(e2, q) / det;
  return far > 1e-6 ? far : undefined;
}

/** Area of a solid's faces that look in a direction, within an angle of it. mm², degrees */
export function areaFacing(triangles: readonly Triangle[], way: Vertex, within: number): number {
  const least = Math.cos((within * Math.PI) / 180);
  return triangles
    .map(triangleNormal)
    .reduce((sum, { normal, area }) => (dot(normal, way) >= least ? sum + area : sum), 0);
}

export const linesOf = (jig: Jig): string => jig.reads.join(" ");
export const trianglesInUse = (jig: Jig): Vertex[][] => solidTriangles(jig.inUse);
export const trianglesLying = (jig: Jig): Vertex[][] => solidTriangles(jig.lying);
