// The layers of a core as solids: prisms over their shapes, in their place in the plane and as they lie on the table.
import { layerDrawing, layLayer } from "../drawings/layer-drawing.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { layerShapes } from "../elevation/layer-shapes.ts";
import type { Stage } from "../table/index.ts";
import type { Part } from "./part.ts";
import { prism } from "./part-faces.ts";
import { makePart } from "./parts.ts";

/** Every layer of the front block and the bed block, each in z order; none of a core in one piece. */
export const layerParts = (plane: Elevation, stage: Stage): Part[] =>
  layerShapes(plane, stage).map((layer) =>
    makePart(
      layer.name,
      prism(layer.shape, layer.from, layer.to),
      layLayer(layer).transform,
      layerDrawing(plane, stage, layer),
    ),
  );
