// Glue lines of a core in layers, as they show on the outside of its blocks.
import { ringPairs, tessellate } from "@lamplane/geometry";
import { type Elevation, layerOutlines, layersOf, setBackLayers } from "@lamplane/parameters/elevation";
import type { Stage } from "@lamplane/parameters/table";

/** Ends of each stretch of glue line round a block, six numbers a stretch; none of a core in one piece. mm */
export function layerLines(plane: Elevation, part: string, stage: Stage): number[] {
  const layers = layersOf(plane);
  if (!layers || (part !== "front-block" && part !== "bed-block")) return [];
  const outlines = layerOutlines(plane, stage, 0);
  const setBack = setBackLayers(plane);
  return layers.slice(1).flatMap(({ from: z }, i) => {
    const isWithinRecess = setBack !== undefined && i >= setBack.first && i < setBack.last;
    const outline = part === "front-block" ? outlines.front : isWithinRecess ? outlines.setBack : outlines.bed;
    return ringPairs(tessellate(outline)).flatMap(([p, q]) => [p.x, p.y, z, q.x, q.y, z]);
  });
}
