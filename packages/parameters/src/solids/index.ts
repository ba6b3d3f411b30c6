// Door: solids of the parts and the body; the only folder that loads JSCAD.
export { countOpenEdges, makeClosedSolid, trianglesVolume } from "./closed-solid.ts";
export type { Triangle, Vec3 } from "./faces.ts";
export { type BoughtPart, ironSolids } from "./iron-solids.ts";
export { type Jig, makeJig, planeJigs } from "./jigs/jig-solids.ts";
export type { Part } from "./part.ts";
export { bodySolid, type PartFaces, partFaces, partsOf } from "./parts.ts";
