// Meshes seen from outside the project: edges counted after rounding to float32, and solids in manifold-3d.
import modeling from "@jscad/modeling";
import { type Mesh, weld } from "@lamplane/geometry/mesh";
import type { Part } from "@lamplane/parameters/solids";
import Module, { type Manifold } from "manifold-3d";

type Solid = Part["inPlace"];
export type Vertex = readonly [number, number, number];

/** Triangles of a solid as they stand in it. */
export const solidTriangles = (solid: Solid): Vertex[][] =>
  solid.polygons.map(({ vertices }) => vertices.map(([x, y, z]) => [x, y, z] as const));

/** Mesh of a solid that JSCAD made: its faces fanned, its corners welded; they may meet in T-junctions. */
export const meshOf = (solid: Solid): Mesh =>
  weld(
    modeling.geometries.geom3
      .toPolygons(solid)
      .flatMap(({ vertices }) => vertices.slice(2).flatMap((v, i) => [...vertices[0]!, ...vertices[i + 1]!, ...v])),
  );

/** Corners once each, and triangles by their numbers, after rounding to what an STL file holds. */
function indexTriangles(triangles: readonly (readonly Vertex[])[]): { corners: number[]; triangles: number[][] } {
  const numbers = new Map<number, Map<number, Map<number, number>>>();
  const corners: number[] = [];
  const numbered = triangles.map((triangle) =>
    triangle.map((corner) => {
      const [x, y, z] = corner.map((v) => Math.fround(v) + 0) as [number, number, number];
      const alongZ = getOrCreate(getOrCreate(numbers, x), y);
      const known = alongZ.get(z);
      if (known !== undefined) return known;
      const number = corners.length / 3;
      alongZ.set(z, number);
      corners.push(x, y, z);
      return number;
    }),
  );
  return { corners, triangles: numbered };
}

function getOrCreate<V>(map: Map<number, Map<number, V>>, key: number): Map<number, V> {
  const known = map.get(key) ?? new Map<number, V>();
  map.set(key, known);
  return known;
}

/** Undirected edges that are not run exactly once each way, and triangles that rounding has shut. */
export function countEdgeFaults(triangles: readonly (readonly Vertex[])[]): number {
  const { corners, triangles: numbered } = indexTriangles(triangles);
  const count = corners.length / 3;
  const balance = new Map<number, { there: number; back: number }>();
  let shut = 0;
  for (const triangle of numbered) {
    if (triangle.length !== 3 || new Set(triangle).size !== 3) shut++;
    triangle.forEach((a, i) => {
      const b = triangle[(i + 1) % triangle.length]!;
      const edge = Math.min(a, b) * count + Math.max(a, b);
      const ways = balance.get(edge) ?? { there: 0, back: 0 };
      if (a < b) ways.there++;
      else ways.back++;
      balance.set(edge, ways);
    });
  }
  return shut + [...balance.values()].filter(({ there, back }) => there !== 1 || back !== 1).length;
}

/** How many shells the triangles make: corners that triangles share belong to one. */
export function countShells(triangles: readonly (readonly Vertex[])[]): number {
  const { corners, triangles: numbered } = indexTriangles(triangles);
  const leader = Array.from({ length: corners.length / 3 }, (_, i) => i);
  const leaderOf = (i: number): number => {
    let at = i;
    while (leader[at] !== at) {
      leader[at] = leader[leader[at]!]!;
      at = leader[at]!;
    }
    return at;
  };
  for (const [a, b, c] of numbered) {
    leader[leaderOf(b!)] = leaderOf(a!);
    leader[leaderOf(c!)] = leaderOf(a!);
  }
  return leader.filter((to, i) => to === i).length;
}

/** Volume within triangles that look outward, mm³, summed from the first corner. */
export function volumeOf(triangles: readonly (readonly Vertex[])[]): number {
  const origin = triangles[0]![0]!;
  return triangles.reduce((sum, triangle) => {
    const [a, b, c] = triangle.map((p) => [p[0] - origin[0], p[1] - origin[1], p[2] - origin[2]] as const);
    const [p, q, r] = [a!, b!, c!];
    return (
      sum +
      (p[0] * (q[1] * r[2] - q[2] * r[1]) + p[1] * (q[2] * r[0] - q[0] * r[2]) + p[2] * (q[0] * r[1] - q[1] * r[0])) / 6
    );
  }, 0);
}

export const wasm = await Module();
wasm.setup();

/** A solid in manifold-3d, whose coordinates are float32. Throws where it is none. The caller deletes it. */
export function manifoldOf(solid: Solid): Manifold {
  const { corners, triangles } = indexTriangles(solidTriangles(solid));
  const mesh = new wasm.Mesh({
    numProp: 3,
    vertProperties: new Float32Array(corners),
    triVerts: new Uint32Array(triangles.flat()),
  });
  const manifold = new wasm.Manifold(mesh);
  if (manifold.status() !== "NoError") throw new Error(`manifold-3d: ${manifold.status()}`);
  return manifold;
}

/** Volume that two solids share, mm³. */
export function overlapVolume(a: Manifold, b: Manifold): number {
  const shared = wasm.Manifold.intersection(a, b);
  const volume = shared.volume();
  shared.delete();
  return volume;
}

/** Volume of several solids as one, mm³. */
export function unionVolume(solids: readonly Manifold[]): number {
  const whole = wasm.Manifold.union([...solids]);
  const volume = whole.volume();
  whole.delete();
  return volume;
}
