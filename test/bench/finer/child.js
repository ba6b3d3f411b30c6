// Times of the first example's solids with the chord error as it was loaded; told as JSON.
import { stlBytes } from "@lamplane/export/bytes";
import { planeOf } from "@lamplane/parameters/bench";
import { bodyOf, partsOf } from "@lamplane/parameters/solids";
import { FIRST } from "../corpus.js";
import { beside } from "../measure.js";

const plane = planeOf(FIRST.design);
const triangles = (geometry) => geometry.polygons.reduce((sum, { vertices }) => sum + vertices.length - 2, 0);
const inParts = partsOf(plane, "blank").reduce((sum, { lying }) => sum + triangles(lying), 0);
const [parts] = await beside([{ what: `${inParts} triangles`, run: () => partsOf(plane, "blank"), each: inParts }]);
const rows = [{ kind: "parts", ...parts }];
try {
  const { solid, volume } = bodyOf(plane, "trued");
  const count = triangles(solid);
  const [bytes] = await beside([
    { what: `${count} triangles`, run: () => stlBytes(solid, "body", volume), each: count },
  ]);
  rows.push({ kind: "bytes", ...bytes });
} catch (error) {
  rows.push({ kind: "bytes", what: `refused: ${error.message.split("\n")[0]}` });
}
console.log(JSON.stringify(rows));
