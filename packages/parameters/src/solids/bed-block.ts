// The bed block: a prism but for the recess in its bed.

import { point, tessellate } from "@lamplane/geometry";
import { blocksAt, type Stage, stageExtent } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { bedFaces, ribs } from "./bed-faces.ts";
import { atWidth, planarFace, rib, strip, strips, type Triangle } from "./faces.ts";
import { polygonArea } from "./prism.ts";

/** Faces and volume of the bed block at a stage. */
export function bedBlock(plane: Elevation, stage: Stage): { triangles: Triangle[]; volume: number } {
  const c = plane.widths.core / 2;
  const blocks = blocksAt(plane, stage);
  const { sole, blockHeel } = stageExtent(plane, stage);
  const bed = bedFaces(plane, blocks.bedChain, blocks.topOverBed, c);
  const foot = blocks.bedChain[0]!.from;
  const heelFoot = point(blockHeel, sole);
  const h = bed.half;
  const wood = bed.topOverWood;
  const lastWood = h > 0 ? [...ribs(wood.slice(0, -1), -c, c), rib(wood.at(-1)!, -c, -h, h, c)] : ribs(wood, -c, c);
  const overRecess = ribs(bed.topOverRecess, -c, -h, h, c);
  const corners = [
    foot,
    heelFoot,
    ...wood,
    ...bed.topOverRecess.slice(1),
    ...tessellate(blocks.bedChain).reverse().slice(0, -1),
  ];
  return {
    triangles: [
      ...bed.triangles,
      ...strip(rib(foot, -c, c), rib(heelFoot, -c, c), -c, c),
      ...strip(rib(heelFoot, -c, c), lastWood[0]!, -c, c),
      ...strips(lastWood, -c, c),
      ...(h > 0 ? [...strips(overRecess, -c, -h), ...strips(overRecess, h, c)] : []),
      ...planarFace([corners.map((p) => atWidth(p, c))]),
      ...planarFace([[...corners].reverse().map((p) => atWidth(p, -c))]),
    ],
    volume: polygonArea(corners) * 2 * c - bed.removed,
  };
}
