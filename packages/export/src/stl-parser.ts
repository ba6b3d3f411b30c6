// Reading a binary STL back: a mesh is measured from the bytes in the file, never from what they were made of.
import { type Mesh, type MeshMeasures, measureMesh, weld } from "@lamplane/geometry/mesh";

const HEADER_BYTES = 80;
const TRIANGLE_BYTES = 50;

/**
 * Mesh in a binary STL: corners with the same numbers are one vertex, as a slicer matches them.
 * @throws where the bytes are not one: wrong length, or a header that readers take for the text format
 * @see P. Bourke, "STL format": 80 bytes of header, uint32 number of facets, 50 bytes a facet (little-endian): 84 + 50 n bytes
 */
export function parseStl(bytes: Uint8Array): Mesh {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const start = HEADER_BYTES + 4;
  const count = bytes.length < start ? Number.NaN : view.getUint32(HEADER_BYTES, true);
  if (bytes.length !== start + TRIANGLE_BYTES * count) {
    throw new Error(`not a binary STL: ${bytes.length} bytes for ${count} triangles`);
  }
  if (new TextDecoder("latin1").decode(bytes.subarray(0, 5)).toLowerCase() === "solid") {
    throw new Error("not a binary STL: its header begins like the text format's");
  }
  const corners = new Float32Array(9 * count);
  for (let i = 0; i < corners.length; i++) {
    corners[i] = view.getFloat32(start + TRIANGLE_BYTES * Math.floor(i / 9) + 12 + 4 * (i % 9), true);
  }
  return weld(corners);
}

/** Size of the mesh in a binary STL. */
export const meshMeasures = (bytes: Uint8Array): MeshMeasures => measureMesh(parseStl(bytes));
