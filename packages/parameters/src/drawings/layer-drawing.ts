// A layer of the core in 2D: its outline as cut, its peg holes, and the line that its bed is trued to.
import { transformCircle, transformOutline, transformSegment } from "@lamplane/geometry";
import { blocksAt } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { type LayerShape, layersOf } from "../elevation/layer-shapes.ts";
import { layerThickness } from "../elevation/layers.ts";
import type { Stage } from "../table/index.ts";
import { formatLength } from "../units.ts";
import { DRAWING_NOTE } from "../words/drawings.ts";
import type { Drawing, DrawingEntry } from "./drawing.ts";
import { cut, type FlatPart, layFlat, mark, note } from "./part-drawings.ts";

/** A layer lies as its block does, seen from the left cheek. */
export const layLayer = ({ shape }: LayerShape): FlatPart => layFlat(shape.boundary);

/** A layer from the side. */
export function layerDrawing(e: Elevation, stage: Stage, layer: LayerShape): Drawing {
  const { outline, transform } = layLayer(layer);
  const { block, number, name, shape } = layer;
  const count = layersOf(e)!.length;
  const { pegDiameter, allowanceBed } = e.design.core;
  const entries: DrawingEntry[] = [
    cut(transformOutline(outline, transform)),
    ...shape.circles.map(
      (circle): DrawingEntry => ({ kind: "circle", work: "DRILL", circle: transformCircle(circle, transform) }),
    ),
    note(DRAWING_NOTE.layer({ block, number, count, thickness: formatLength(layerThickness(layer), e.design) }), 5, 5),
    note(DRAWING_NOTE.layerPegs({ diameter: formatLength(pegDiameter, e.design) }), 5, 10),
  ];
  if (block === "bed" && stage === "blank" && allowanceBed > 0) {
    const bedLine = blocksAt(e, stage).bedChain.at(-1)!;
    const recessLow = layer.isSetBack ? { ...bedLine, to: e.points.recessLow } : bedLine;
    entries.push(
      mark(transformSegment(recessLow, transform)),
      note(DRAWING_NOTE.bedAllowance({ allowance: formatLength(allowanceBed, e.design) }), 5, 15),
    );
  }
  return { title: name, thickness: layerThickness(layer), entries };
}
