// The gate that every mesh passes: a mesh that does not close, or is of another size, is never given out.
import { maxAbsCoordinate, meshVolume, triangleHeight } from "./measures.ts";
import { type Mesh, triangleAt, triangleCount } from "./mesh.ts";

/** What keeps a mesh from being a solid, counted; all three are 0 where it closes. */
export interface MeshFaults {
  /** Directed edges that do not have exactly one opposite. */
  readonly openEdges: number;
  /** Triangles without an area: no height that float32 could tell from 0. */
  readonly flatTriangles: number;
  /** Coordinates that are no finite number. */
  readonly notFinite: number;
}

/** Half of a float32's last place, for a number of size 1. */
export const FLOAT32_ROUNDING = 2 ** -24;
/** Share of its volume by which a mesh may differ from the volume of the polygons it was made from: rounding, nothing else. */
const VOLUME_ROUNDING = 1e-9;
/** mm³: what arithmetic leaves of a solid as small as a peg. */
const LEAST_VOLUME = 1e-6;

export function meshFaults(mesh: Mesh): MeshFaults {
  const rounding = maxAbsCoordinate(mesh) * FLOAT32_ROUNDING;
  let flatTriangles = 0;
  for (let t = 0; t < triangleCount(mesh); t++) if (triangleHeight(triangleAt(mesh, t)) <= rounding) flatTriangles++;
  return { openEdges: countOpenEdges(mesh), flatTriangles, notFinite: countNonFinite(mesh) };
}

function countNonFinite({ positions }: Mesh): number {
  let count = 0;
  for (const c of positions) if (!Number.isFinite(c)) count++;
  return count;
}

/** Directed edges, each as often as it is run, that do not have exactly one opposite. */
export function countOpenEdges({ positions, indices }: Mesh): number {
  const size = positions.length / 3;
  const next = (i: number) => indices[i % 3 === 2 ? i - 2 : i + 1]!;
  // The ends of the edges that leave vertex n stand in `ends` from starts[n] to starts[n + 1].
  const starts = new Uint32Array(size + 1);
  for (const from of indices) starts[from + 1]!++;
  for (let n = 0; n < size; n++) starts[n + 1]! += starts[n]!;
  const ends = new Uint32Array(indices.length);
  const filled = starts.slice();
  for (let i = 0; i < indices.length; i++) ends[filled[indices[i]!]!++] = next(i);
  const runs = (from: number, to: number): number => {
    let count = 0;
    for (let k = starts[from]!; k < starts[from + 1]!; k++) if (ends[k] === to) count++;
    return count;
  };
  let open = 0;
  for (let i = 0; i < indices.length; i++) {
    const [from, to] = [indices[i]!, next(i)];
    if (runs(from, to) !== 1 || runs(to, from) !== 1) open++;
  }
  return open;
}

/** @throws Error (our bug) naming the part, for a coordinate that is no finite number */
export const assertFinite = (what: string, mesh: Mesh): void => refuse(what, { notFinite: countNonFinite(mesh) });

/** @throws Error (our bug) naming the part and what was counted */
export const assertNoFaults = (what: string, mesh: Mesh): void => refuse(what, meshFaults(mesh));

function refuse(what: string, faults: Partial<MeshFaults>): void {
  const found = Object.entries(faults).filter(([, count]) => count > 0);
  if (found.length === 0) return;
  throw new Error(`${what}: its mesh is no solid: ${found.map(([fault, count]) => `${fault} ${count}`).join(", ")}`);
}

/**
 * @param when where the mesh was found, for the message
 * @param allowance mm³
 * @throws Error (our bug): inside out, or of another volume
 */
export function assertVolume(what: string, when: string, mesh: Mesh, expected: number, allowance: number): void {
  const volume = meshVolume(mesh);
  if (!(volume > 0))
    throw new Error(`${what}: its volume ${when} is ${volume} mm³; its faces point inwards or are missing`);
  if (Math.abs(volume - expected) <= Math.max(allowance, LEAST_VOLUME)) return;
  throw new Error(`${what}: its volume ${when} is ${volume} mm³ where ${expected} mm³ were expected (± ${allowance})`);
}

/**
 * A mesh as it was made against the polygons it was made from.
 * @param volume what the polygons enclose, mm³
 * @throws Error (our bug): open, doubled, flat, not finite, inside out or of another volume
 */
export function assertSolid(what: string, mesh: Mesh, volume: number): void {
  assertNoFaults(what, mesh);
  assertVolume(what, "as modelled", mesh, volume, VOLUME_ROUNDING * Math.max(volume, 1));
}
