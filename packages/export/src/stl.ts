// A solid to binary STL: the bytes are read back and judged before anyone else sees them, and a mesh that does not close is never a file.
import modeling from "@jscad/modeling";
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import serializer from "@jscad/stl-serializer";
import binarySerializer from "@jscad/stl-serializer/CSGToStlb.js";
import { assertNoFaults, assertVolume, countOpenEdges, type Mesh, meshVolume } from "@lamplane/geometry/mesh";
import { toGeom3 } from "@lamplane/parameters/solids";
import { assertModelVolume, writingAllowance } from "./mesh-volume.ts";
import { parseStl } from "./stl-parser.ts";

const { measurements, modifiers } = modeling;
/** Corners moved to the library's grid; its types lose the function. */
const generalize = modifiers.generalize as unknown as (options: { readonly snap: true }, solid: Geom3) => Geom3;

const HEADER = "binary STL, unit mm, written by lamplane".padEnd(80, " ");

/**
 * Binary STL of a closed solid, in mm. The same mesh gives the same bytes.
 * @param what the part's name, for the message
 * @param expectedVolume volume from the outlines the mesh was made from, mm³
 * @throws our bug: a mesh that is open, flat, inside out, not finite or of another volume
 */
export function stlBytes(mesh: Mesh, what: string, expectedVolume: number): Uint8Array {
  const solid = toGeom3(mesh);
  const { bytes, written } = serialize(solid);
  assertNoFaults(what, written);
  assertModelVolume(what, mesh, expectedVolume);
  // The serializer moves each coordinate to a grid of `measureEpsilon`.
  const allowance = writingAllowance(written, measurements.measureEpsilon(solid));
  assertVolume(what, "in its STL", written, meshVolume(mesh), allowance);
  return bytes;
}

/**
 * The solid's bytes, and the mesh in them. The serializer moves corners to its grid, splits sides at corners that lie on them and
 * writes triangles; the splitting takes as long as all else and finds nothing to do where every side has its opposite.
 */
function serialize(solid: Geom3): { bytes: Uint8Array; written: Mesh } {
  const onGrid = withHeader(binarySerializer.serializeBinary([generalize({ snap: true }, solid)], {}));
  const asOnGrid = parseStl(onGrid);
  if (countOpenEdges(asOnGrid) === 0) return { bytes: onGrid, written: asOnGrid };
  const bytes = withHeader(serializer.serialize({ binary: true }, solid));
  return { bytes, written: parseStl(bytes) };
}

function withHeader([, count, triangles]: readonly [ArrayBuffer, ArrayBuffer, ArrayBuffer]): Uint8Array {
  const bytes = new Uint8Array(HEADER.length + count.byteLength + triangles.byteLength);
  bytes.set(new TextEncoder().encode(HEADER));
  bytes.set(new Uint8Array(count), HEADER.length);
  bytes.set(new Uint8Array(triangles), HEADER.length + count.byteLength);
  return bytes;
}
