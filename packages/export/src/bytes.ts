// Door for pages: outlines and solids to bytes, without a disk; nothing behind it needs Node.js.
export { csvLine } from "./csv.ts";
export { dxfText } from "./dxf.ts";

export { type Files, MANIFEST, manifestText } from "./manifest.ts";
export type { MeshMeasures, Triangles } from "./mesh.ts";
export { sha256Hex } from "./sha256.ts";
export { stlBytes } from "./stl.ts";
export { meshMeasures, readStl } from "./stl-reading.ts";

export { type PartInPlace, threeMf } from "./threemf.ts";
export { readThreeMf, type SolidMeasures, solidMeasures } from "./threemf-reading.ts";
export type { NamedMesh } from "./threemf-xml.ts";
export { zipOf } from "./zip.ts";
