// Door: solids of the parts and the body; the only folder that loads JSCAD.
export { closedSolid, meshVolume, openEdges } from "./closed-solid.ts";
export type { Triangle, Vec3 } from "./faces.ts";
export { type Bought, ironSolids } from "./iron-solids.ts";
export { type Jig, jigOf, jigsOf } from "./jigs/jigs-of.ts";
export type { Part } from "./part.ts";
export { bodyOf, partsOf, type ShownPart, shownParts } from "./parts.ts";
