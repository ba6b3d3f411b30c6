// The core glued up from layers that lie side by side across the plane, for boards thinner than the core.
import { length, lengths } from "../parameter.ts";
import { COMMON_PRACTICE, SHOP_SOURCE } from "./sources.ts";

export const core = {
  layers: lengths({
    words: ["whole", "auto"],
    default: "whole",
    min: 1,
    max: 120,
    most: 15,
    auto: "as few as the board allows, the same left and right, with layers as wide as the recess in the middle",
    name: "core layers",
    help: "Whether the core is one piece (whole) or glued up from layers: their finished thicknesses from the right cheek to the left.",
    source: "maker's choice",
  }),
  board: length({
    default: 20,
    min: 3,
    max: 120,
    name: "board thickness",
    help: "Thickness of the boards that the layers are ripped from, before planing.",
    source: SHOP_SOURCE,
  }),
  allowanceBed: length({
    default: 0.3,
    min: 0,
    max: 3,
    name: "bed allowance",
    help: "Wood left on the bed of each layer, to true the bed once the layers are glued.",
    source: COMMON_PRACTICE,
  }),
  pegDiameter: length({
    default: 6,
    min: 2,
    max: 20,
    name: "layer peg diameter",
    help: "Diameter of the two pegs that line up the layers of each block.",
    source: COMMON_PRACTICE,
  }),
  cornerCutter: length({
    default: 6,
    min: 0,
    max: 20,
    name: "corner cutter diameter",
    help: "Diameter of the drill or cutter that clears the inner corner of the recess in its layers. 0 for a corner cut square.",
    source: COMMON_PRACTICE,
  }),
};
