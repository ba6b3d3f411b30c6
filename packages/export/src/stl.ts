// A solid to binary STL: the bytes are read back and judged before anyone else sees them, and a mesh that does not close is never a file.
import modeling from "@jscad/modeling";
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import serializer from "@jscad/stl-serializer";
import { assertNoFaults, assertVolume, type Mesh, meshVolume } from "@lamplane/geometry/mesh";
import { toGeom3 } from "@lamplane/parameters/solids";
import { assertModelVolume, writingAllowance } from "./mesh-volume.ts";
import { parseStl } from "./stl-parser.ts";

const { measurements } = modeling;

const HEADER = "binary STL, unit mm, written by lamplane".padEnd(80, " ");

/**
 * Binary STL of a closed solid, in mm. The same mesh gives the same bytes.
 * @param what the part's name, for the message
 * @param expectedVolume volume from the outlines the mesh was made from, mm³
 * @throws our bug: a mesh that is open, flat, inside out, not finite or of another volume
 */
export function stlBytes(mesh: Mesh, what: string, expectedVolume: number): Uint8Array {
  const solid = toGeom3(mesh);
  const bytes = serialize(solid);
  const written = parseStl(bytes);
  assertNoFaults(what, written);
  assertModelVolume(what, mesh, expectedVolume);
  // The serializer moves each coordinate to a grid of `measureEpsilon`.
  const allowance = writingAllowance(written, measurements.measureEpsilon(solid));
  assertVolume(what, "in its STL", written, meshVolume(mesh), allowance);
  return bytes;
}

function serialize(solid: Geom3): Uint8Array {
  const [, count, triangles] = serializer.serialize({ binary: true }, solid);
  const bytes = new Uint8Array(HEADER.length + count.byteLength + triangles.byteLength);
  bytes.set(new TextEncoder().encode(HEADER));
  bytes.set(new Uint8Array(count), HEADER.length);
  bytes.set(new Uint8Array(triangles), HEADER.length + count.byteLength);
  return bytes;
}
