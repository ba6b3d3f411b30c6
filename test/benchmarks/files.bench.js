// What a pack is made of, file by file, and the whole of it.

import { asBuiltPlane } from "@lamplane/bench";
import { checkWithoutCures } from "@lamplane/bench/checks";
import { dxfText, serializeThreeMf, zipArchive } from "@lamplane/export/bytes";
import { makePackContent } from "@lamplane/export/content";
import { partsOf } from "@lamplane/parameters/solids";
import { WORK_AFTER } from "@lamplane/parameters/table";
import { layoutPictures, pictureSvg } from "@lamplane/sheets";
import { layoutPdf } from "@lamplane/sheets/pages";
import { EXAMPLES } from "./corpus.js";
import { beside } from "./measure.js";

export const title = "Files: 3MF, DXF, SVG, PDF, zip, and a whole pack in memory";

export async function measured() {
  const groups = [];
  for (const { name, design } of EXAMPLES) groups.push(await filesOf(name, design));
  return groups;
}

async function filesOf(name, design) {
  const plane = asBuiltPlane(design);
  const parts = partsOf(plane, WORK_AFTER[design.stage].drawn);
  const pictures = layoutPictures(plane);
  const of = { design, plane, findings: checkWithoutCures(plane), version: "0" };
  const pack = await makePackContent(of);
  const words = { paper: design.shop.paper, name, version: "0", units: design.units };
  const size = [...pack.values()].reduce((sum, content) => sum + content.length, 0);
  return {
    of: `${name}: ${pack.size} files, ${(size / 1e6).toFixed(1)} MB`,
    rows: await beside(
      [
        { what: "3MF of all parts in place", run: () => serializeThreeMf(parts, { name, version: "0" }) },
        { what: "DXF of all parts", run: () => parts.map(({ drawing }) => dxfText(drawing)) },
        { what: "layout as pictures", run: () => layoutPictures(plane) },
        { what: "layout's pictures as SVG", run: () => pictures.map(pictureSvg) },
        { what: "layout as tiled PDF", run: () => layoutPdf(pictures, words) },
        { what: "whole pack in memory", run: () => makePackContent(of) },
        { what: "the pack zipped", run: () => zipArchive(pack, name) },
      ],
      { repetitions: 15 },
    ),
  };
}
