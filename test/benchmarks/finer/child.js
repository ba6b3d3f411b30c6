// Times of the first example's solids with the chord error as it was loaded; told as JSON.

import { asBuiltPlane } from "@lamplane/bench";
import { stlBytes } from "@lamplane/export/bytes";
import { bodySolid, partsOf } from "@lamplane/parameters/solids";
import { FIRST } from "../corpus.js";
import { beside } from "../measure.js";

const how = process.env.LAMPLANE_BENCH_ONCE ? { repetitions: 1, warm: "none" } : {};
const plane = asBuiltPlane(FIRST.design);
const triangles = (geometry) => geometry.polygons.reduce((sum, { vertices }) => sum + vertices.length - 2, 0);
const made = partsOf(plane, "blank");
const inParts = made.reduce((sum, { lying }) => sum + triangles(lying), 0);
const rows = [];
const measure = async (kind, each, run) => {
  const [row] = await beside([{ what: `${each} triangles`, run, each }], how);
  rows.push({ kind, ...row });
};
await measure("parts", inParts, () => partsOf(plane, "blank"));
try {
  const { mesh, solid, volume } = bodySolid(plane, "trued");
  await measure("bytes", triangles(solid), () => stlBytes(mesh, "body", volume));
} catch (error) {
  rows.push({ kind: "bytes", what: `refused by the gate (${error.message})` });
}
console.log(JSON.stringify(rows));
