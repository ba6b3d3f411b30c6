// Figures of a core glued up from layers; a core in one piece has none of them.

import { COMMON_PRACTICE } from "../table/index.ts";
import type { Elevation } from "./elevation.ts";
import { count, mm } from "./figure-row.ts";
import { layerPegLength, layerPegWood, layersOf, setBackLayers } from "./layer-shapes.ts";
import { type Layer, layerThickness } from "./layers.ts";

const ofLayers =
  (value: (layers: readonly Layer[], e: Elevation) => number | undefined) =>
  (e: Elevation): number | undefined => {
    const layers = layersOf(e);
    return layers && value(layers, e);
  };

export const LAYER_FIGURES = {
  layerCount: count(
    "layers side by side",
    ofLayers((layers) => layers.length),
    { spentAt: "core" },
  ),
  outerLayer: mm(
    "(coreWidth − the layers between) / 2",
    ofLayers((layers) => layerThickness(layers[0]!)),
    {
      spentAt: "core",
    },
  ),
  recessLayer: mm(
    "recess width / layers set back",
    ofLayers((layers, e) => {
      const setBack = setBackLayers(e);
      return setBack && layerThickness(layers[setBack.first]!);
    }),
    { spentAt: "core" },
  ),
  bedAllowance: mm(
    "left on the bed of each layer",
    ofLayers((_, e) => e.design.core.allowanceBed),
    {
      source: COMMON_PRACTICE,
      spentAt: "bed",
    },
  ),
  layerPegLength: mm(
    "coreWidth − 2",
    ofLayers((_, e) => layerPegLength(e)),
    { source: COMMON_PRACTICE, readingMode: "down", spentAt: "cuts" },
  ),
  layerPegWood: mm(
    "largest least distance to edges, recess and the other peg",
    ofLayers((_, e) => layerPegWood(e)),
    { readingMode: "down", spentAt: "cuts" },
  ),
};
