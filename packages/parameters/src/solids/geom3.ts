// Meshes as JSCAD's solids: the only file that makes one.
import modeling from "@jscad/modeling";
import type { Geom3 } from "@jscad/modeling/src/geometries/types.js";
import { type Mesh, triangleAt, triangleCount, type Vec3 } from "@lamplane/geometry/mesh";

const { geom3, poly3 } = modeling.geometries;

const toVec3 = ([x, y, z]: Vec3): [number, number, number] => [x, y, z];

/** The same triangles as a JSCAD solid. */
export const toGeom3 = (mesh: Mesh): Geom3 =>
  geom3.create(Array.from({ length: triangleCount(mesh) }, (_, t) => poly3.create(triangleAt(mesh, t).map(toVec3))));
