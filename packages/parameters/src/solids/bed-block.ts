// The bed block: a prism but for the recess in its bed.

import { line, type Outline, point, reverseOutline } from "@lamplane/geometry";
import { levelFace, wallFace } from "@lamplane/geometry/mesh";
import { blocksAt, stageExtent } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import type { Stage } from "../table/index.ts";
import { bedFaces, topOverBedFaces } from "./bed-faces.ts";
import { chordArea, type PartFaces } from "./part-faces.ts";

/** Faces and volume of the bed block at a stage. */
export function bedBlock(plane: Elevation, stage: Stage): PartFaces {
  const c = plane.widths.core / 2;
  const blocks = blocksAt(plane, stage);
  const { sole, blockHeel } = stageExtent(plane, stage);
  const bed = bedFaces(plane, blocks.bedChain, blocks.topOverBed, c);
  const h = bed.half;
  const foot = blocks.bedChain[0]!.from;
  const heelFoot = point(blockHeel, sole);
  const soleLine = line(foot, heelFoot);
  const heelLine = line(heelFoot, bed.topOverWood[0]!.from);
  const outline: Outline = [
    soleLine,
    heelLine,
    ...bed.topOverWood,
    ...bed.topOverRecess,
    ...reverseOutline(blocks.bedChain),
  ];
  return {
    faces: [
      ...bed.faces,
      wallFace(soleLine, [-c, c]),
      wallFace(heelLine, [-c, c]),
      ...topOverBedFaces(bed, c, h > 0 ? [-c, -h, h, c] : [-c, c]),
      levelFace([outline], c, "above"),
      levelFace([outline], -c, "below"),
    ],
    volume: chordArea(outline) * 2 * c - bed.removed,
  };
}
