// The gate that every mesh passes on its way to a file: a mesh that does not close, or is of another size, is never a file.
import modeling from "@jscad/modeling";
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import { countNonFinite, type MeshFaults, soupVolume, type TriangleSoup } from "./mesh.ts";

/** Relative: faces summed in doubles agree to 1e-10; a hole of 0.1 mm³ left out of a block of 100 cm³ shows. */
const MODEL_VOLUME = 1e-6;
/** mm³: what arithmetic leaves of a solid as small as a peg. */
const LEAST_VOLUME = 1e-6;

/** The solid's faces as triangles, in doubles; faces may meet in T-junctions, which only the written mesh is judged for. */
export function triangulateSolid(solid: Geom3): TriangleSoup {
  const corners = modeling.geometries.geom3
    .toPolygons(solid)
    .flatMap(({ vertices }) => vertices.slice(2).flatMap((v, i) => [...vertices[0]!, ...vertices[i + 1]!, ...v]));
  return { count: corners.length / 9, corners: Float64Array.from(corners) };
}

/** @throws our bug: a corner that is no finite number */
export function assertFinite(what: string, { corners }: TriangleSoup): void {
  assertNoFaults(what, { notFinite: countNonFinite(corners) });
}

/** @throws our bug, naming the part and what was counted */
export function assertNoFaults(what: string, faults: Partial<MeshFaults>): void {
  const found = Object.entries(faults).filter(([, count]) => count > 0);
  if (found.length === 0) return;
  throw new Error(`${what}: its mesh is no solid: ${found.map(([fault, count]) => `${fault} ${count}`).join(", ")}`);
}

/** The model against what its outlines say. @throws our bug: inside out, or of another volume */
export function assertModelVolume(what: string, modelled: TriangleSoup, expected: number): void {
  assertVolume(what, "as modelled", soupVolume(modelled), expected, expected * MODEL_VOLUME);
}

/** The written mesh against the model, mm³. @throws our bug: inside out, or further off than writing may take it */
export function assertWrittenVolume(
  what: string,
  where: string,
  written: TriangleSoup,
  modelled: TriangleSoup,
  allowance: number,
): void {
  assertVolume(what, `in its ${where}`, soupVolume(written), soupVolume(modelled), allowance);
}

function assertVolume(what: string, when: string, volume: number, expected: number, allowance: number): void {
  if (!(volume > 0))
    throw new Error(`${what}: its volume ${when} is ${volume} mm³; its faces point inwards or are missing`);
  if (Math.abs(volume - expected) <= Math.max(allowance, LEAST_VOLUME)) return;
  throw new Error(`${what}: its volume ${when} is ${volume} mm³ where ${expected} mm³ were expected (± ${allowance})`);
}
