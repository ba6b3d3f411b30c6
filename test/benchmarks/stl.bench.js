// STL of a body: ours, gated; the serializer alone that it is written by; and the floor, one copy of as many bytes.

import serializer from "@jscad/stl-serializer";
import { asBuiltPlane } from "@lamplane/bench";
import { stlBytes } from "@lamplane/export/bytes";
import { bodySolid } from "@lamplane/parameters/solids";
import { EXAMPLES } from "./corpus.js";
import { beside } from "./measure.js";

export const title = "STL: a whole body to bytes";

export async function measured() {
  const groups = [];
  for (const { name, design } of EXAMPLES) {
    const { mesh, solid, volume } = bodySolid(asBuiltPlane(design), "trued");
    const bytes = stlBytes(mesh, "body", volume);
    const megabyte = { each: bytes.length / 1e6, unit: "MB" };
    groups.push({
      of: `${name}, ${(bytes.length - 84) / 50} triangles, ${(bytes.length / 1000).toFixed(0)} kB`,
      rate: "MB",
      rows: await beside([
        { what: "lamplane: written, read back, judged", run: () => stlBytes(mesh, "body", volume), ...megabyte },
        { what: "@jscad/stl-serializer alone", run: () => serializer.serialize({ binary: true }, solid), ...megabyte },
        { what: "one copy of the bytes in memory", run: () => bytes.slice(), ...megabyte },
      ]),
    });
  }
  return groups;
}
