// Door for pages: outlines and solids to bytes, without a disk; nothing behind it needs Node.js.

export type { Mesh, MeshMeasures } from "@lamplane/geometry/mesh";
export { csvLine } from "./csv.ts";
export { dxfText } from "./dxf.ts";
export { MANIFEST, manifestText, type PackFiles } from "./manifest.ts";
export { sha256Hex } from "./sha256.ts";
export { assemblyStep, type NamedShells, type PosedShells, partStep } from "./step/step.ts";
export { stlBytes } from "./stl.ts";
export { meshMeasures, parseStl } from "./stl-parser.ts";

export { type PartInPlace, serializeThreeMf } from "./threemf.ts";
export { parseThreeMf, type SolidMeasures, solidMeasures } from "./threemf-parser.ts";
export type { NamedMesh } from "./threemf-xml.ts";
export { zipArchive } from "./zip.ts";
