// Size of a mesh: box, area, volume.
import { type Mesh, triangleAt, triangleCount } from "./mesh.ts";
import { cross, dot, norm, subtract, type Vec3 } from "./vectors.ts";

export interface MeshMeasures {
  readonly triangles: number;
  /** Smallest upright box about the mesh, mm. */
  readonly bounds: { readonly min: Vec3; readonly max: Vec3 };
  /** Enclosed volume, mm³; negative where the triangles face inwards. */
  readonly volume: number;
}

export const measureMesh = (mesh: Mesh): MeshMeasures => ({
  triangles: triangleCount(mesh),
  bounds: meshBounds(mesh),
  volume: meshVolume(mesh),
});

/** Smallest upright box about the mesh, mm. */
export function meshBounds({ positions }: Mesh): MeshMeasures["bounds"] {
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < positions.length; i++) {
    const [k, c] = [(i % 3) as 0 | 1 | 2, positions[i]!];
    if (c < min[k]) min[k] = c;
    if (c > max[k]) max[k] = c;
  }
  return { min, max };
}

/** Largest distance of a coordinate from 0, mm. */
export const maxAbsCoordinate = ({ positions }: Mesh): number =>
  positions.reduce((largest, c) => Math.max(largest, Math.abs(c)), 0);

/** Area of the whole surface, mm². */
export function meshArea(mesh: Mesh): number {
  let twice = 0;
  for (let t = 0; t < triangleCount(mesh); t++) {
    const [a, b, c] = triangleAt(mesh, t);
    twice += norm(cross(subtract(b, a), subtract(c, a)));
  }
  return twice / 2;
}

/** Enclosed volume, mm³: tetrahedra on the first vertex, which keeps a solid far from the origin exact. */
export function meshVolume(mesh: Mesh): number {
  if (mesh.indices.length === 0) return 0;
  const [apex] = triangleAt(mesh, 0);
  let sixTimes = 0;
  for (let t = 0; t < triangleCount(mesh); t++) {
    const [a, b, c] = triangleAt(mesh, t);
    sixTimes += dot(subtract(a, apex), cross(subtract(b, apex), subtract(c, apex)));
  }
  return sixTimes / 6;
}

/** Height of a triangle over its longest side, mm. */
export function triangleHeight([a, b, c]: readonly [Vec3, Vec3, Vec3]): number {
  const longest = Math.max(norm(subtract(b, a)), norm(subtract(c, b)), norm(subtract(a, c)));
  return longest === 0 ? 0 : norm(cross(subtract(b, a), subtract(c, a))) / longest;
}
