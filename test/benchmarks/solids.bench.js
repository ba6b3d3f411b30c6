// All solids of an example: ours, made of their own faces; the same by 3D booleans of JSCAD and of manifold-3d.
import modeling from "@jscad/modeling";
import { asBuiltPlane } from "@lamplane/bench";
import { stlBytes } from "@lamplane/export/bytes";
import { weld } from "@lamplane/geometry/mesh";
import { bodySolid, partsOf } from "@lamplane/parameters/solids";
import { EXAMPLES, FIRST } from "./corpus.js";
import { beside } from "./measure.js";
import { JSCAD, manifoldKit, partsBy } from "./peers.js";

export const title = "Solids: six wooden parts, each a closed mesh";

export async function measured() {
  const manifold = await manifoldKit();
  const groups = [];
  for (const { name, design } of EXAMPLES) {
    const plane = asBuiltPlane(design);
    const by = (kit) => () => {
      const finished = partsBy(kit, plane, "blank").map(kit.finished);
      kit.freed();
      return finished;
    };
    groups.push({
      of: name,
      rows: await beside([
        { what: "lamplane, made of their faces, gated closed", run: () => partsOf(plane, "blank") },
        { what: "JSCAD booleans, as they come", run: by(JSCAD) },
        { what: "manifold-3d booleans", run: by(manifold) },
      ]),
      notes: [volumesApart(plane, manifold), await closedOrNot(plane)],
    });
  }
  const plane = asBuiltPlane(FIRST.design);
  groups.push({
    of: `${FIRST.name}, whole body`,
    rows: await beside([{ what: "lamplane, one shell with a rounded recess", run: () => bodySolid(plane, "trued") }]),
  });
  return groups;
}

/** Whether the peers make what we make: the parts' volumes beside ours. */
function volumesApart(plane, manifold) {
  const ours = partsOf(plane, "blank").map(({ volume }) => volume);
  const worst = (kit) => {
    const apart = partsBy(kit, plane, "blank").map((solid, i) => Math.abs(kit.volume(solid) / ours[i] - 1));
    kit.freed();
    return `${(100 * Math.max(...apart)).toFixed(2)} %`;
  };
  return `volumes differ from ours by at most ${worst(JSCAD)} (JSCAD), ${worst(manifold)} (manifold-3d): their recess ends square`;
}

/** Whether what JSCAD's booleans leave closes, judged by the gate that every solid of ours passes. */
async function closedOrNot(plane) {
  const open = partsBy(JSCAD, plane, "blank").filter((solid) => {
    try {
      const triangles = modeling.geometries.geom3
        .toPolygons(solid)
        .flatMap(({ vertices }) => vertices.slice(2).flatMap((v, i) => [...vertices[0], ...vertices[i + 1], ...v]));
      stlBytes(weld(triangles), "peer", JSCAD.volume(solid));
      return false;
    } catch {
      return true;
    }
  });
  return `of JSCAD's six, ${open.length} would not be let out by our gate as they come`;
}
