// The door of @lamplane/export: outlines and solids to bytes, and bytes to a pack on the disk.
export { CouldNotWrite } from "./could-not-write.ts";
export { dxfText } from "./dxf.ts";
export { disk, type FileSystem, type Found } from "./file-system.ts";
export { MANIFEST, manifest, type PackFiles, type PackName } from "./manifest.ts";
export { type Corner, type MeshFaults, type MeshMeasures, meshFaults, type Triangles } from "./mesh.ts";
export { type PackRequest, type PackResult, writePack } from "./pack.ts";
export { stlBytes } from "./stl.ts";
export { meshMeasures, readStl } from "./stl-reading.ts";
