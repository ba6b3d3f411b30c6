// A layer of the core in 2D: its outline as cut, its peg holes, and the line that its bed is trued to.
import { transformCircle, transformOutline, transformSegment } from "@lamplane/geometry";
import { blocksAt, type Stage } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { type LayerShape, layersOf } from "../elevation/layer-shapes.ts";
import { layerThickness } from "../elevation/layers.ts";
import type { Drawing, DrawingEntry } from "./drawing.ts";
import { cut, type FlatPart, formatHundredths, layFlat, mark, note } from "./part-drawings.ts";

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
    note(
      `${block} block, layer ${number} of ${count} from the right, ${formatHundredths(layerThickness(layer))} thick`,
      5,
      5,
    ),
    note(`drill ${formatHundredths(pegDiameter)} through, all layers alike`, 5, 10),
  ];
  if (block === "bed" && stage === "blank" && allowanceBed > 0) {
    const bedLine = blocksAt(e, stage).bedChain.at(-1)!;
    const recessLow = layer.isSetBack ? { ...bedLine, to: e.points.recessLow } : bedLine;
    entries.push(
      mark(transformSegment(recessLow, transform)),
      note(`${formatHundredths(allowanceBed)} left on the bed: true it to the mark once glued`, 5, 15),
    );
  }
  return { title: name, entries };
}
