// What we use of @jscad/stl-serializer, which has no types of its own; nothing is declared here that stl.ts does not call.
declare module "@jscad/stl-serializer" {
  import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";

  const serializer: {
    /** Header of 80 bytes, number of triangles, triangles of 50 bytes. */
    serialize(options: { binary: true }, ...solids: Geom3[]): [ArrayBuffer, ArrayBuffer, ArrayBuffer];
  };
  export default serializer;
}
declare module "@jscad/stl-serializer/CSGToStlb.js" {
  import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";

  const binarySerializer: {
    /** Polygons as they are; the same three buffers. */
    serializeBinary(solids: readonly Geom3[], options: Record<string, never>): [ArrayBuffer, ArrayBuffer, ArrayBuffer];
  };
  export default binarySerializer;
}
