// A solid to binary STL: the bytes are read back and judged before anyone else sees them, and a mesh that does not close is never a file.
import modeling from "@jscad/modeling";
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import serializer from "@jscad/stl-serializer";
import { FLOAT32_ROUNDING, largestCoordinate, meshArea, meshFaults, meshVolume, type Triangles } from "./mesh.ts";
import { readStl } from "./stl-reading.ts";

const { geometries, measurements } = modeling;

/** Relative: faces summed in doubles agree to 1e-10; a hole of 0.1 mm³ left out of a block of 100 cm³ shows. */
const MODEL_VOLUME = 1e-6;
/** mm³: what arithmetic leaves of a solid as small as a peg. */
const LEAST_VOLUME = 1e-6;
const HEADER = "binary STL, unit mm, written by lamplane".padEnd(80, " ");

/**
 * Binary STL of a closed solid, in mm. The same solid gives the same bytes.
 * @param what the part's name, for the message
 * @param expectedVolume volume from the outlines the solid was made from, mm³
 * @throws our bug: a mesh that is open, flat, inside out, not finite or of another volume
 */
export function stlBytes(solid: Geom3, what: string, expectedVolume: number): Uint8Array {
  const modelled = trianglesOf(solid);
  refuseFaults(what, { notFinite: modelled.corners.filter((c) => !Number.isFinite(c)).length });
  const bytes = serialised(solid);
  const written = readStl(bytes);
  refuseFaults(what, { ...meshFaults(written) });
  refuseVolume(what, "as modelled", meshVolume(modelled), expectedVolume, expectedVolume * MODEL_VOLUME);
  refuseVolume(what, "in its STL", meshVolume(written), meshVolume(modelled), writingAllowance(solid, written));
  return bytes;
}

/** The solid's faces as triangles, in doubles; only good for measuring, since faces may meet in T-junctions. */
function trianglesOf(solid: Geom3): Triangles {
  const corners = geometries.geom3
    .toPolygons(solid)
    .flatMap(({ vertices }) => vertices.slice(2).flatMap((v, i) => [...vertices[0]!, ...vertices[i + 1]!, ...v]));
  return { count: corners.length / 9, corners: Float64Array.from(corners) };
}

function serialised(solid: Geom3): Uint8Array {
  const [, count, triangles] = serializer.serialize({ binary: true }, solid);
  const bytes = new Uint8Array(HEADER.length + count.byteLength + triangles.byteLength);
  bytes.set(new TextEncoder().encode(HEADER));
  bytes.set(new Uint8Array(count), HEADER.length);
  bytes.set(new Uint8Array(triangles), HEADER.length + count.byteLength);
  return bytes;
}

/**
 * How much volume the writing may add or take, mm³. The serializer moves each coordinate to a grid of `measureEpsilon`, so by half
 * of it, and float32 rounds it once more; a face moves along its normal by at most √3 times that, over its whole area.
 */
function writingAllowance(solid: Geom3, written: Triangles): number {
  const moved = measurements.measureEpsilon(solid) / 2 + largestCoordinate(written) * FLOAT32_ROUNDING;
  return meshArea(written) * Math.sqrt(3) * moved;
}

function refuseFaults(what: string, faults: Record<string, number>): void {
  const found = Object.entries(faults).filter(([, count]) => count > 0);
  if (found.length === 0) return;
  throw new Error(`${what}: its mesh is no solid: ${found.map(([fault, count]) => `${fault} ${count}`).join(", ")}`);
}

function refuseVolume(what: string, when: string, volume: number, expected: number, allowance: number): void {
  if (!(volume > 0))
    throw new Error(`${what}: its volume ${when} is ${volume} mm³; its faces point inwards or are missing`);
  if (Math.abs(volume - expected) <= Math.max(allowance, LEAST_VOLUME)) return;
  throw new Error(`${what}: its volume ${when} is ${volume} mm³ where ${expected} mm³ were expected (± ${allowance})`);
}
