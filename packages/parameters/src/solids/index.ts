// Door: solids of the parts and the body; the only folder that loads JSCAD.
export { toGeom3 } from "./geom3.ts";
export { type BoughtPart, ironSolids } from "./iron-solids.ts";
export { type Jig, makeJig, planeJigs } from "./jigs/jig-solids.ts";
export { layerParts } from "./layer-parts.ts";
export type { Part } from "./part.ts";
export { bodyFaces, bodySolid, type NamedFaces, partFaces, partsOf } from "./parts.ts";
