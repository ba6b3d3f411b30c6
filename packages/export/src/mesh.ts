// Measures and faults of loose triangles: two corners are one only where their numbers are the same.

/** Loose triangles, as a file holds them. */
export interface TriangleSoup {
  readonly count: number;
  /** Nine numbers a triangle: three corners, each x, y, z, in mm. */
  readonly corners: Float32Array | Float64Array;
}
/** What keeps a mesh from being a solid, counted; all three are 0 where it closes. */
export interface MeshFaults {
  /** Directed edges that do not have exactly one opposite. */
  readonly openEdges: number;
  /** Triangles without an area: no height that float32 could tell from 0. */
  readonly flatTriangles: number;
  readonly notFinite: number;
}
export type MeshVertex = readonly [number, number, number];
export interface MeshMeasures {
  readonly triangles: number;
  /** Smallest upright box about the mesh, mm. */
  readonly bounds: { readonly min: MeshVertex; readonly max: MeshVertex };
  /** Enclosed volume, mm³; negative where the triangles face inwards. */
  readonly volume: number;
}

/** Half of a float32's last place, for a number of size 1. */
export const FLOAT32_ROUNDING = 2 ** -24;

/** Faults of a mesh, corners matched by their float32 numbers, as a slicer matches them. */
export function meshFaults(triangles: TriangleSoup): MeshFaults {
  const rounding = maxAbsCoordinate(triangles) * FLOAT32_ROUNDING;
  let flatTriangles = 0;
  for (let t = 0; t < triangles.count; t++) if (triangleHeight(triangles, t) <= rounding) flatTriangles++;
  return { openEdges: countSoupOpenEdges(triangles), flatTriangles, notFinite: countNonFinite(triangles.corners) };
}

/** Coordinates that are no finite number. */
export function countNonFinite(corners: TriangleSoup["corners"]): number {
  let count = 0;
  for (const c of corners) if (!Number.isFinite(c)) count++;
  return count;
}

function countSoupOpenEdges({ count, corners }: TriangleSoup): number {
  const numbers = weldCorners(corners);
  const size = numbers.length;
  const runs = new Map<number, number>(); // from × size + to → how often the edge is run that way
  for (let t = 0; t < count; t++) {
    for (let side = 0; side < 3; side++) {
      const edge = numbers[3 * t + side]! * size + numbers[3 * t + ((side + 1) % 3)]!;
      runs.set(edge, (runs.get(edge) ?? 0) + 1);
    }
  }
  let open = 0;
  for (const [edge, times] of runs) {
    const opposite = runs.get((edge % size) * size + Math.floor(edge / size)) ?? 0;
    if (times !== 1 || opposite !== 1) open += times;
  }
  return open;
}

/** For each corner in the file the number of its point; corners at the same place have the same number. */
function weldCorners(corners: TriangleSoup["corners"]): Uint32Array {
  const numbers = new Uint32Array(corners.length / 3);
  const places = new Map<number, Map<number, Map<number, number>>>();
  for (let i = 0; i < numbers.length; i++) {
    const [x, y, z] = [corners[3 * i]!, corners[3 * i + 1]!, corners[3 * i + 2]!];
    const alongZ = getOrCreate(getOrCreate(places, x), y) as Map<number, number>;
    const known = alongZ.get(z);
    if (known === undefined) alongZ.set(z, i);
    numbers[i] = known ?? i;
  }
  return numbers;
}

function getOrCreate<V>(map: Map<number, Map<number, V>>, key: number): Map<number, V> {
  const found = map.get(key);
  if (found) return found;
  const made = new Map<number, V>();
  map.set(key, made);
  return made;
}

type Vector = [number, number, number];
const subtract = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const norm = (a: Vector): number => Math.hypot(...a);

function cornerOf({ corners }: TriangleSoup, triangle: number, which: number): Vector {
  const at = 9 * triangle + 3 * which;
  return [corners[at]!, corners[at + 1]!, corners[at + 2]!];
}

/** Height of a triangle over its longest side, mm. */
function triangleHeight(triangles: TriangleSoup, t: number): number {
  const [a, b, c] = [cornerOf(triangles, t, 0), cornerOf(triangles, t, 1), cornerOf(triangles, t, 2)];
  const longest = Math.max(norm(subtract(b, a)), norm(subtract(c, b)), norm(subtract(a, c)));
  return longest === 0 ? 0 : norm(cross(subtract(b, a), subtract(c, a))) / longest;
}

/** Largest distance of a coordinate from 0, mm. */
export const maxAbsCoordinate = ({ corners }: TriangleSoup): number =>
  (corners as Float64Array).reduce((largest, c) => Math.max(largest, Math.abs(c)), 0);

/** Area of the whole surface, mm². */
export function meshArea(triangles: TriangleSoup): number {
  let twice = 0;
  for (let t = 0; t < triangles.count; t++) {
    const a = cornerOf(triangles, t, 0);
    twice += norm(cross(subtract(cornerOf(triangles, t, 1), a), subtract(cornerOf(triangles, t, 2), a)));
  }
  return twice / 2;
}

/** Enclosed volume, mm³: tetrahedra on the first corner, which keeps a solid far from the origin exact. */
export function soupVolume(triangles: TriangleSoup): number {
  if (triangles.count === 0) return 0;
  const apex = cornerOf(triangles, 0, 0);
  let sixTimes = 0;
  for (let t = 0; t < triangles.count; t++) {
    const [a, b, c] = [cornerOf(triangles, t, 0), cornerOf(triangles, t, 1), cornerOf(triangles, t, 2)];
    sixTimes += dot(subtract(a, apex), cross(subtract(b, apex), subtract(c, apex)));
  }
  return sixTimes / 6;
}

/** Smallest upright box about the mesh, mm. */
export function meshBounds({ corners }: TriangleSoup): MeshMeasures["bounds"] {
  const min: Vector = [Infinity, Infinity, Infinity];
  const max: Vector = [-Infinity, -Infinity, -Infinity];
  for (const [i, c] of corners.entries()) {
    min[i % 3] = Math.min(min[i % 3]!, c);
    max[i % 3] = Math.max(max[i % 3]!, c);
  }
  return { min, max };
}
