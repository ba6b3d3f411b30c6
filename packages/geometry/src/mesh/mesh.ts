// Indexed triangle meshes: every vertex once, triangles by the numbers of their vertices. Lengths mm.
import type { Vec3 } from "./vectors.ts";
import { VertexTable } from "./vertex-table.ts";

export interface Mesh {
  /** Three coordinates a vertex. */
  readonly positions: Float64Array;
  /** Three vertices a triangle, counter-clockwise seen from outside. */
  readonly indices: Uint32Array;
}

export const triangleCount = ({ indices }: Mesh): number => indices.length / 3;

/** Coordinates of a vertex by its number. */
export const vertexAt = ({ positions }: Mesh, n: number): Vec3 => [
  positions[3 * n]!,
  positions[3 * n + 1]!,
  positions[3 * n + 2]!,
];

/** The three corners of a triangle. */
export const triangleAt = (mesh: Mesh, t: number): readonly [Vec3, Vec3, Vec3] => [
  vertexAt(mesh, mesh.indices[3 * t]!),
  vertexAt(mesh, mesh.indices[3 * t + 1]!),
  vertexAt(mesh, mesh.indices[3 * t + 2]!),
];

/** Mesh of loose triangles, nine coordinates each: corners with the same coordinates become one vertex. */
export function weld(corners: ArrayLike<number>): Mesh {
  const table = new VertexTable();
  const indices = new Uint32Array(corners.length / 3);
  for (let i = 0; i < indices.length; i++)
    indices[i] = table.numberOf(corners[3 * i]!, corners[3 * i + 1]!, corners[3 * i + 2]!);
  return { positions: table.positions(), indices };
}

/** Loose triangles, nine coordinates each, in the mesh's order. */
export function unweld({ positions, indices }: Mesh): Float64Array {
  const corners = new Float64Array(3 * indices.length);
  for (let i = 0; i < indices.length; i++)
    for (let k = 0; k < 3; k++) corners[3 * i + k] = positions[3 * indices[i]! + k]!;
  return corners;
}

/** The mesh as float32 holds it: vertices that rounding lays together are one. */
export const roundToFloat32 = (mesh: Mesh): Mesh => weld(Float32Array.from(unweld(mesh)));

/** The same triangles with every vertex moved. */
export function mapVertices(mesh: Mesh, move: (p: Vec3) => Vec3): Mesh {
  const positions = new Float64Array(mesh.positions.length);
  for (let n = 0; 3 * n < positions.length; n++) {
    const [x, y, z] = move(vertexAt(mesh, n));
    positions[3 * n] = x;
    positions[3 * n + 1] = y;
    positions[3 * n + 2] = z;
  }
  return { positions, indices: mesh.indices };
}

/** Several meshes as one, each with its own vertices. */
export function joinMeshes(meshes: readonly Mesh[]): Mesh {
  const positions = new Float64Array(meshes.reduce((sum, mesh) => sum + mesh.positions.length, 0));
  const indices = new Uint32Array(meshes.reduce((sum, mesh) => sum + mesh.indices.length, 0));
  let [vertices, at] = [0, 0];
  for (const mesh of meshes) {
    positions.set(mesh.positions, 3 * vertices);
    for (const index of mesh.indices) indices[at++] = vertices + index;
    vertices += mesh.positions.length / 3;
  }
  return { positions, indices };
}
