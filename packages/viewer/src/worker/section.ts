// A mesh cut level: the lines in which its faces are cut, and the area between them as triangles.
import { type Point, point } from "@lamplane/geometry";
import { type Mesh, triangleCount, triangulate, type Vec3, vertexAt } from "@lamplane/geometry/mesh";

export interface Section {
  /** Two corners to a line. */
  readonly lines: Float32Array;
  /** Three corners to a triangle. */
  readonly cap: Float32Array;
}

/** Where an edge of the mesh goes through the level, by the numbers of its two ends. */
interface Crossing {
  readonly key: number;
  readonly at: Point;
}

/** The closed mesh cut at a height that none of its vertices has. */
export function sectionAt(mesh: Mesh, z: number): Section {
  const next = new Map<number, number>();
  const points = new Map<number, Point>();
  const lines: number[] = [];
  for (let t = 0; t < triangleCount(mesh); t++) {
    const through = triangleCrossings(mesh, t, z);
    if (!through) continue;
    const [up, down] = through;
    next.set(up.key, down.key);
    points.set(up.key, up.at);
    lines.push(up.at.x, up.at.y, z, down.at.x, down.at.y, z);
  }
  const rings = ringsOf(next).map((ring) => ring.map((key) => points.get(key)!));
  return { lines: Float32Array.from(lines), cap: Float32Array.from(fillRings(rings).flatMap(({ x, y }) => [x, y, z])) };
}

/** The edges by which a triangle's outline rises through the level and comes down; the neighbour beyond the second rises by it. */
function triangleCrossings(mesh: Mesh, t: number, z: number): readonly [up: Crossing, down: Crossing] | undefined {
  const isAbove = (k: number) => mesh.positions[3 * mesh.indices[3 * t + k]! + 2]! > z;
  if (isAbove(0) === isAbove(1) && isAbove(1) === isAbove(2)) return undefined;
  let [up, down]: (Crossing | undefined)[] = [];
  for (let k = 0; k < 3; k++) {
    const [a, b] = [mesh.indices[3 * t + k]!, mesh.indices[3 * t + ((k + 1) % 3)]!];
    const [p, q] = [vertexAt(mesh, Math.min(a, b)), vertexAt(mesh, Math.max(a, b))];
    if (p[2] > z === q[2] > z) continue;
    const found = { key: Math.min(a, b) * mesh.positions.length + Math.max(a, b), at: levelPoint(p, q, z) };
    if (vertexAt(mesh, b)[2] > z) up = found;
    else down = found;
  }
  return up && down && [up, down];
}

function levelPoint(p: Vec3, q: Vec3, z: number): Point {
  const share = (z - p[2]) / (q[2] - p[2]);
  return point(p[0] + (q[0] - p[0]) * share, p[1] + (q[1] - p[1]) * share);
}

/** Closed chains of edges, each followed until it comes back. */
function ringsOf(next: Map<number, number>): number[][] {
  const rings: number[][] = [];
  for (const start of next.keys()) {
    const ring: number[] = [];
    for (let key: number | undefined = start; key !== undefined && next.has(key); ) {
      ring.push(key);
      const following: number | undefined = next.get(key);
      next.delete(key);
      key = following;
    }
    if (ring.length > 2) rings.push(ring);
  }
  return rings;
}

/** Corners of the triangles between rings, three each. */
function fillRings(rings: readonly (readonly Point[])[]): Point[] {
  const points = rings.flat();
  let first = 0;
  const numbered = rings.map((ring) => ring.map(() => first++));
  return points.length === 0 ? [] : triangulate(points, numbered).flatMap((corners) => corners.map((k) => points[k]!));
}
