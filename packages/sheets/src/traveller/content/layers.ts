// A core in layers: the boards, the strips ripped and planed from them, the layers cut and glued, and the recess that they make.
import type { LayerStock, StockPlan } from "@lamplane/bench";
import { cotDeg } from "@lamplane/geometry";
import { layerPegs, setBackLayers } from "@lamplane/parameters/elevation";
import { BOARDS, LAYER_CUTS, LAYER_RECESS, LAYERS } from "../../words/layers.ts";
import { layerCutsPicture, layerStackPicture, stripPicture } from "../draw/layers.ts";
import type { StepNumber } from "../step.ts";
import type { StepContext } from "../step-context.ts";
import { type ContentInput, keepSentences, type StepContent } from "./content.ts";

export function boardContent(t: StepContext, layers: LayerStock): StepContent {
  const { wood } = t.design;
  const boardRings = t.deg(layers.boardRings);
  return {
    title: BOARDS.title,
    task: BOARDS.task({ layers: layers.count - 2 }),
    why: BOARDS.why,
    numbers: [
      { label: BOARDS.strips, value: String(layers.count) },
      t.lengthRow(BOARDS.along, layers.length, "up"),
      t.lengthRow(BOARDS.across, layers.width, "up"),
      t.lengthRow(BOARDS.thickness, layers.board),
      t.lengthRow(BOARDS.running, layers.running, "up"),
      { label: BOARDS.wood, value: wood.body },
      { label: BOARDS.rings, value: boardRings },
      ...t.figureRow("moistureAsCut", BOARDS.moisture),
    ],
    instructions: [
      BOARDS.rest,
      BOARDS.onEdge({ sole: t.deg(wood.rings), board: boardRings }),
      BOARDS.grain,
      BOARDS.setAside,
    ],
    checks: [
      BOARDS.clear,
      BOARDS.planes({
        length: t.mm(layers.thickest),
        needed: t.mm(Math.max(...layers.strips.map(({ thickness }) => thickness))),
      }),
    ],
    cautions: ["dust"],
    draw: (room) => stripPicture(t, layers, room),
  };
}

export function layerContent(t: StepContext, { marks, core }: StockPlan, layers: LayerStock): StepContent {
  const places = marks.marks.map(({ strokes, at, over }) => LAYERS.mark({ strokes, at: at.map((x) => t.mm(x)), over }));
  return {
    numbers: [
      ...stripRows(t, layers),
      ...t.figureRow("blankLength", LAYERS.length),
      ...t.figureRow("blankHeight", LAYERS.height),
    ],
    instructions: keepSentences(
      LAYERS.rip,
      LAYERS.plane,
      LAYERS.number,
      LAYERS.measure({ hasRecess: setBackLayers(t.plane) !== undefined }),
      LAYERS.surface({ length: t.mm(core.height) }),
      places.length > 0 && LAYERS.marks({ places }),
    ),
    checks: [LAYERS.closes, LAYERS.cheeksFlat],
    cautions: ["ripping", "jointing"],
    draw: (room) => layerStackPicture(t, room),
  };
}

/** The saw's fence, what each strip is planed to, and the stack that they make. */
export const stripRows = (t: StepContext, layers: LayerStock): StepNumber[] => [
  t.lengthRow(LAYERS.fence, layers.width, "up"),
  ...layers.strips.map(({ numbers, thickness }) =>
    t.lengthRow(LAYERS.strip({ numbers: numbers.map(String) }), thickness),
  ),
  ...t.figureRow("coreWidth", LAYERS.stack),
];

/** Where the layers' peg holes are drilled, and with what; none of a core in one piece. */
export const layerPegRows = (t: StepContext): StepNumber[] =>
  t.design.core.layers === "whole"
    ? []
    : [
        ...pegRows(t, "front"),
        ...pegRows(t, "bed"),
        t.lengthRow(LAYER_CUTS.drillFor, t.design.core.pegDiameter),
        ...t.figureRow("layerPegLength", LAYER_CUTS.pegLength),
      ];

/** Rows of a block's peg holes, as they are marked on each layer. */
function pegRows(t: StepContext, block: "front" | "bed"): StepNumber[] {
  const { plane } = t;
  const { body, sole } = plane.design;
  const shift = body.trim / 2 + (block === "front" ? -plane.cuts.setInToe : plane.cuts.setInHeel);
  return layerPegs(plane)[block].holes.map(({ centre }, i) => ({
    label: LAYER_CUTS.peg({ block, number: i + 1 }),
    value: `${t.mm(centre.x + shift)}, ${t.mm(centre.y + sole.allowance)}`,
  }));
}

/** The step of the two cuts for a core in layers. @param whole that of a core in one piece; @param beyond how to cut what the saw does not reach */
export function layerCutsContent(
  { t, plan }: ContentInput,
  whole: StepContent,
  beyond: (name: "ramp" | "bed") => readonly string[],
): StepContent {
  const { core, bed } = t.plane.design;
  const left = t.mm(core.allowanceBed);
  const setBack = setBackLayers(t.plane);
  const [rampCut, bedCut] = plan.core.cuts;
  return {
    ...whole,
    why: LAYER_CUTS.why({ length: left }),
    numbers: [
      ...whole.numbers,
      ...layerPegRows(t),
      ...(setBack
        ? [
            ...t.figureRow("recessDepth", LAYER_CUTS.recessDepth),
            t.lengthRow(LAYER_CUTS.recessEnd, t.figure("recessFromBedEdge") + lowerEdgeBelow(t), "up"),
          ]
        : []),
    ],
    instructions: keepSentences(
      LAYER_CUTS.from,
      LAYER_CUTS.drill,
      LAYER_CUTS.lie,
      LAYER_CUTS.testPiece,
      ...beyond("ramp"),
      LAYER_CUTS.ramp({ angle: t.deg(rampCut.saw) }),
      ...beyond("bed"),
      LAYER_CUTS.bed({ angle: t.deg(bedCut.saw), length: left }),
      bed.featherChamfer > 0 &&
        LAYER_CUTS.feather({ height: t.mm(bed.featherChamfer), hasRecess: setBack !== undefined }),
      setBack !== undefined && recessText(t, setBack),
      LAYER_CUTS.glue,
      LAYER_CUTS.dry({ hasRecess: setBack !== undefined }),
    ),
    checks: [LAYER_CUTS.flat, LAYER_CUTS.square, ...(setBack ? [LAYER_CUTS.head] : [])],
    cautions: [...whole.cautions, "drilling"],
    draw: (room) => layerCutsPicture(t, room),
  };
}

/** How far the lower edge of the bed as cut lies below that of the trued bed, along the bed: both at one height over the sole. mm */
const lowerEdgeBelow = ({ plane: { design, frame } }: StepContext): number =>
  design.core.allowanceBed * cotDeg(frame.bedAngle);

function recessText(t: StepContext, { first, last }: { readonly first: number; readonly last: number }): string {
  const layers = Array.from({ length: last - first + 1 }, (_, i) => `${first + i + 1}`);
  const { cornerCutter } = t.plane.design.core;
  return LAYER_CUTS.recess({ layers, hole: cornerCutter > 0 ? t.mm(cornerCutter) : undefined });
}

/** The recess is there already. @param whole the step of a core in one piece */
export const layerRecessContent = (whole: StepContent, cutterLabel: string): StepContent => ({
  ...whole,
  numbers: whole.numbers.filter(({ label }) => label !== cutterLabel),
  instructions: [LAYER_RECESS.pare, LAYER_RECESS.measure, LAYER_RECESS.tryIron],
  cautions: ["handTools"],
  jigs: [],
});
