// Exact volume within a face list: the divergence theorem over planes, cylinders and cones, arcs as arcs.
import { circularSegmentArea } from "../outline.ts";
import { cosDeg, sinDeg } from "../trig.ts";
import type { ArcEdge, ConeSurface, CylinderSurface, Face, Loop } from "./face.ts";
import { add, cross, dot, norm, scale, subtract, type Vec3 } from "./vectors.ts";

/** Volume enclosed by faces that close, mm³. */
export function facesVolume(faces: readonly Face[]): number {
  const origin = faces[0]?.loops[0]?.[0]?.from ?? [0, 0, 0];
  return faces.reduce((sum, face) => sum + faceFlux(face, origin) / 3, 0);
}

/** Flux of the position, seen from an origin, out through a face. */
function faceFlux({ surface, loops }: Face, origin: Vec3): number {
  if (surface.kind === "plane") return planeFlux(loops, origin);
  return surface.kind === "cylinder" ? cylinderFlux(surface, loops[0]!, origin) : coneFlux(surface, loops[0]!, origin);
}

/** Flux of the position through a plane: its distance times its area. */
function planeFlux(loops: readonly Loop[], origin: Vec3): number {
  return dot(subtract(loops[0]![0]!.from, origin), loops.map((loop) => loopArea(loop, origin)).reduce(add));
}

/** Area within a flat loop as a vector square to it. */
function loopArea(loop: Loop, origin: Vec3): Vec3 {
  return loop.reduce<Vec3>(
    (sum, edge) => {
      const triangle = scale(cross(subtract(edge.from, origin), subtract(edge.to, origin)), 1 / 2);
      const bulge = edge.kind === "arc" ? scale(edge.axis, circularSegmentArea(edge.radius, edge.sweep)) : [0, 0, 0];
      return add(sum, add(triangle, bulge as Vec3));
    },
    [0, 0, 0],
  );
}

/** Flux of the position through a cylinder's face: r·∫(c·n + r) dθ times its height, where n runs from arc's end to arc's end. */
function cylinderFlux({ convex, radius }: CylinderSurface, loop: Loop, origin: Vec3): number {
  const [near, far] = arcsOf(loop);
  const height = norm(subtract(far.centre, near.centre));
  const { normals, turned } = sumOfNormals(near);
  const flux = height * radius * (dot(subtract(near.centre, origin), normals) + radius * turned);
  return convex ? flux : -flux;
}

/**
 * Flux of the position through a cone's face. Along a ruling the position's part square to the surface stays the same, so that
 * it is ∫(o·(n·cos α − a·sin α) + r·cos α) dθ times the ruling's share of area, (R₁² − R₀²) / (2·sin α).
 */
function coneFlux({ convex, radius, halfAngle, origin: o, axis }: ConeSurface, loop: Loop, origin: Vec3): number {
  const [near, far] = arcsOf(loop);
  const [c, s] = [cosDeg(halfAngle), sinDeg(halfAngle)];
  const { normals, turned } = sumOfNormals(near);
  const offset = subtract(o, origin);
  const square = dot(offset, normals) * c + turned * (radius * c - dot(offset, axis) * s);
  const flux = (square * Math.abs(far.radius ** 2 - near.radius ** 2)) / (2 * s);
  return convex ? flux : -flux;
}

const arcsOf = (loop: Loop) => loop.filter((edge): edge is ArcEdge => edge.kind === "arc") as [ArcEdge, ArcEdge];

/** Unit vectors from the axis summed over an arc, and its turn, both in radians and without a sign. */
function sumOfNormals({ axis, centre, radius, from, to, sweep }: ArcEdge): { normals: Vec3; turned: number } {
  const tangent = (p: Vec3) => scale(cross(axis, subtract(p, centre)), 1 / radius);
  return {
    normals: scale(subtract(tangent(from), tangent(to)), Math.sign(sweep)),
    turned: (Math.abs(sweep) * Math.PI) / 180,
  };
}
