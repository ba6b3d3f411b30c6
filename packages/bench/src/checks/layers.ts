// Whether the core's layers come out of their boards, make up the core, and leave recess and pegs where they can be.

import { BENCH_TOLERANCE } from "@lamplane/geometry";
import {
  type Elevation,
  type Layer,
  LEAST_LAYER,
  layerFromBoard,
  layerPegWood,
  layersOf,
  layerThickness,
  type RecessLayers,
  ROUND_A_PEG,
  setBackLayers,
  wantedRecess,
} from "@lamplane/parameters/elevation";
import { COMMON_PRACTICE, PLANE_GEOMETRY } from "@lamplane/parameters/table";
import { stepIndex, stepsDone } from "../steps.ts";
import type { CheckRow, Judgement } from "./judgement.ts";
import { changeTo, decrease, increase } from "./remedy.ts";

/** How far a glue line may stand inside the recess's wall, mm. Common practice, no published source. */
const INSIDE_WALL = 0.5;
/** Wood about a peg under which it may split out while the plane is used, mm. Common practice, no published source. */
const WOOD_WANTED = 3;

const ofLayers =
  (value: (layers: readonly Layer[], plane: Elevation) => number) =>
  (plane: Elevation): number | undefined => {
    const layers = layersOf(plane);
    return layers && value(layers, plane);
  };
const ofRecess =
  (value: (setBack: RecessLayers, plane: Elevation) => number) =>
  (plane: Elevation): number | undefined => {
    const setBack = setBackLayers(plane);
    return setBack && value(setBack, plane);
  };

export const LAYER_CHECKS: readonly CheckRow[] = [
  {
    code: "layer-sum",
    subject: "layers-off-core",
    relation: "at most",
    value: ofLayers((layers, { widths }) => Math.abs(layers.at(-1)!.to - layers[0]!.from - widths.core)),
    stop: BENCH_TOLERANCE,
    unit: "mm",
    parameters: ["core.layers", "body.sideClearance"],
    place: "bedTop",
    advice: "match-layers-to-core",
    remedies: [
      changeTo("body.sideClearance", (plane) => {
        const layers = layersOf(plane)!;
        return layers.at(-1)!.to - layers[0]!.from - plane.design.iron.width;
      }),
    ],
    source: PLANE_GEOMETRY,
  },
  {
    code: "layer-thickness",
    subject: "thinnest-layer",
    relation: "at least",
    value: ofLayers((layers) => Math.min(...layers.map(layerThickness))),
    stop: LEAST_LAYER,
    unit: "mm",
    parameters: ["core.layers", "core.board", "recess.width"],
    place: "bedTop",
    advice: "thicken-layers",
    remedies: [increase("core.board"), decrease("recess.clearance"), increase("recess.clearance")],
    source: COMMON_PRACTICE,
  },
  {
    // What is planed already needs no board any more.
    code: "layer-board",
    subject: "board-over-layer",
    appliesTo: ({ design }) => stepsDone(design) <= stepIndex("core"),
    relation: "at least",
    value: ofLayers((layers, { design }) => layerFromBoard(design) - Math.max(...layers.map(layerThickness))),
    stop: 0,
    unit: "mm",
    parameters: ["core.layers", "core.board", "shop.jointingPass"],
    place: "heel",
    advice: "thin-layers-or-thicken-board",
    remedies: [increase("core.board"), decrease("shop.jointingPass")],
    source: PLANE_GEOMETRY,
  },
  {
    code: "layer-recess",
    subject: "glue-line-inside-recess",
    relation: "at most",
    value: ofRecess(({ from, to }, { design }) => Math.max(0, (wantedRecess(design) - (to - from)) / 2)),
    stop: INSIDE_WALL,
    unit: "mm",
    parameters: ["core.layers", "recess.width", "recess.clearance"],
    place: "recessLow",
    advice: "match-layer-to-recess",
    remedies: [decrease("recess.width"), decrease("recess.clearance")],
    source: COMMON_PRACTICE,
  },
  {
    code: "layer-middle",
    subject: "recess-off-middle",
    relation: "at most",
    value: ofRecess(({ from, to }) => Math.abs(from + to) / 2),
    stop: BENCH_TOLERANCE / 10,
    unit: "mm",
    parameters: ["core.layers"],
    place: "recessLow",
    advice: "balance-layers",
    remedies: [],
    source: PLANE_GEOMETRY,
  },
  {
    code: "layer-corner",
    subject: "recess-end-over-corner",
    relation: "at least",
    value: ({ recess }) => (recess?.madeBy === "layers" ? recess.depth - recess.relief * Math.SQRT2 : undefined),
    stop: 0,
    unit: "mm",
    parameters: ["core.cornerCutter", "recess.depth"],
    place: "recessLow",
    advice: "take-smaller-corner-cutter",
    remedies: [decrease("core.cornerCutter"), increase("recess.depth")],
    source: PLANE_GEOMETRY,
  },
  {
    code: "layer-pegs",
    subject: "wood-round-layer-pegs",
    relation: "at least",
    value: ofLayers((_, plane) => layerPegWood(plane)),
    stop: ROUND_A_PEG,
    warn: WOOD_WANTED,
    unit: "mm",
    parameters: ["core.pegDiameter", "body.length", "body.height"],
    place: "bedTop",
    advice: "thin-layer-pegs",
    remedies: [decrease("core.pegDiameter"), increase("body.length")],
    source: COMMON_PRACTICE,
  },
];

/** Rings in a layer of a flat-sawn board, degrees to the sole once it stands on edge. */
const ON_EDGE = 90;
/** Ring angle under which a layer does not come from a flat-sawn board, degrees. */
const RIFT = 45;

/** A layer stands on edge: a flat-sawn board gives a quarter-sawn sole, whatever the plan says. */
export function noteLayerRings(plane: Elevation): Judgement[] {
  const { rings } = plane.design.wood;
  if (!layersOf(plane) || rings >= RIFT) return [];
  return [
    {
      code: "layer-rings",
      subject: "rings-of-layers",
      severity: "note",
      value: rings,
      limit: ON_EDGE,
      unit: "°",
      parameters: ["wood.rings", "core.layers"],
      place: "bedTop",
      remedies: [],
      source: COMMON_PRACTICE,
    },
  ];
}
