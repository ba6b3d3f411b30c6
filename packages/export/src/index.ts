// Door: outlines and solids to bytes, and bytes to a pack on disk.
export { asCouldNotWrite, CouldNotWrite } from "./could-not-write.ts";
export { dxfText } from "./dxf.ts";
export { LINE_STYLES, type LineStyle } from "./line-styles.ts";
export { MANIFEST, manifestText } from "./manifest.ts";
export type { MeshMeasures, Triangles } from "./mesh.ts";
export { type Pack, type WrittenPack, writePack } from "./pack.ts";
export type { FileSystem } from "./pack-files.ts";
export { stlBytes } from "./stl.ts";
export { meshMeasures, readStl } from "./stl-reading.ts";
export { pictureSvg } from "./svg.ts";
