// Reading a binary STL back: what is said of a mesh is said of the bytes in the file, never of what they were made from.
import { type MeshMeasures, meshBounds, soupVolume, type TriangleSoup } from "./mesh.ts";

const HEADER_BYTES = 80;
const TRIANGLE_BYTES = 50;

/**
 * Triangles of a binary STL.
 * @throws where the bytes are not one: wrong length, or a header that readers take for the text format
 * @see P. Bourke, "STL format": 80 bytes of header, uint32 number of facets, 50 bytes a facet (little-endian): 84 + 50 n bytes
 */
export function parseStl(bytes: Uint8Array): TriangleSoup {
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
  return { count, corners };
}

/** Size of the mesh in a binary STL. */
export function meshMeasures(bytes: Uint8Array): MeshMeasures {
  const triangles = parseStl(bytes);
  return { triangles: triangles.count, bounds: meshBounds(triangles), volume: soupVolume(triangles) };
}
