// Exact volume within a face list: the divergence theorem over planes and cylinders, arcs as arcs.
import { circularSegmentArea } from "../outline.ts";
import type { ArcEdge, CylinderSurface, Face, Loop } from "./face.ts";
import { add, cross, dot, norm, scale, subtract, type Vec3 } from "./vectors.ts";

/** Volume enclosed by faces that close, mm³. */
export function facesVolume(faces: readonly Face[]): number {
  const origin = faces[0]?.loops[0]?.[0]?.from ?? [0, 0, 0];
  return faces.reduce((sum, { surface, loops }) => {
    const flux = surface.kind === "plane" ? planeFlux(loops, origin) : cylinderFlux(surface, loops[0]!, origin);
    return sum + flux / 3;
  }, 0);
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
  const [near, far] = loop.filter((edge): edge is ArcEdge => edge.kind === "arc") as [ArcEdge, ArcEdge];
  const { axis, centre, from, to, sweep } = near;
  const height = norm(subtract(far.centre, centre));
  const tangent = (p: Vec3) => scale(cross(axis, subtract(p, centre)), 1 / radius);
  const normals = scale(subtract(tangent(from), tangent(to)), Math.sign(sweep));
  const turned = (Math.abs(sweep) * Math.PI) / 180;
  const flux = height * radius * (dot(subtract(centre, origin), normals) + radius * turned);
  return convex ? flux : -flux;
}
