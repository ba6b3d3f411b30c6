// A core in layers: the boards, the strips ripped and planed from them, the layers cut and glued, and the recess that they make.
import type { LayerStock, LayerStrip, StockPlan } from "@lamplane/bench";
import { layerPegs, setBackLayers } from "@lamplane/parameters/elevation";
import { listText } from "@lamplane/parameters/words";
import { layerCutsPicture, layerStackPicture, stripPicture } from "../draw/layers.ts";
import type { StepNumber } from "../step.ts";
import type { StepContext } from "../step-context.ts";
import { type ContentInput, keepSentences, type StepContent } from "./content.ts";

const stripName = ({ piece, numbers }: LayerStrip): string =>
  piece === "cheek" ? "Cheeks" : `Layer${numbers.length > 1 ? "s" : ""} ${listText(numbers.map(String))}`;

const stripRows = (t: StepContext, { strips }: LayerStock): StepNumber[] =>
  strips.map((strip) => t.lengthRow(`${stripName(strip)}, planed`, strip.thickness));

export function boardContent(t: StepContext, layers: LayerStock): StepContent {
  const { wood } = t.design;
  return {
    title: "Choose the wood",
    task: `Choose boards for ${layers.count - 2} layers and two cheeks: straight in the grain, dry, free of knots and checks where bed, mouth and pin will be.`,
    why: "Strips out of one board move alike with the seasons.",
    numbers: [
      { label: "Strips", value: String(layers.count) },
      t.lengthRow("Each strip, along the grain", layers.length, "up"),
      t.lengthRow("Each strip, across the board", layers.width, "up"),
      t.lengthRow("Board thickness", layers.board),
      t.lengthRow("Board of that width, in all", layers.running, "up"),
      { label: "Wood of the body", value: wood.body },
      { label: "Rings to the face of the board (0° flat, 90° quarter sawn)", value: t.deg(layers.boardRings) },
      ...t.figureRow("moistureAsCut", "Moisture of the wood when it is cut"),
    ],
    instructions: [
      "Let the wood lie in the shop until its weight no longer changes; a meter should read near the moisture above.",
      `Each strip stands on edge in the plane. A strip of a flat-sawn board is quarter sawn at the sole, one of a quarter-sawn board flat sawn (common practice, no published source): for rings of ${t.deg(t.design.wood.rings)} at the sole they stand at ${t.deg(layers.boardRings)} to the face of the board.`,
      "Turn every strip so that the grain's lines, seen from the side, run down toward the heel.",
      "Set aside wood for wedge, cross pin and pegs as in the stock list.",
    ],
    checks: [
      "No knot, check or wild grain within a hand's breadth of the mouth, in the bed or where the pin will be.",
      `The boards plane down to ${t.mm(layers.thickest)} on both faces.`,
    ],
    cautions: ["dust"],
    picture: stripPicture(t, layers),
  };
}

export function layerContent(t: StepContext, { marks, core }: StockPlan, layers: LayerStock): StepContent {
  const at = marks.marks.map(
    ({ strokes, at: places, over }) =>
      `${strokes === 1 ? "one stroke" : "two strokes"} at ${places.map((x) => t.mm(x)).join(" and ")} (${over})`,
  );
  return {
    numbers: [
      t.lengthRow("Fence for every strip", layers.width, "up"),
      ...stripRows(t, layers),
      ...t.figureRow("coreWidth", "Stack of all layers"),
      ...t.figureRow("blankLength", "Layers and cheeks, length"),
      ...t.figureRow("blankHeight", "Layers and cheeks, height"),
    ],
    instructions: keepSentences(
      "Joint one edge of the board and rip the strips from it, jointing the fresh edge before each next one.",
      "Let the strips lie a day with air all round. Flatten one face of each, then plane it to its thickness; faces parallel.",
      "Number the layers from the right cheek to the left, on their toe ends.",
      "Lay all layers side by side and measure the stack before the last pass: take what is over off the outer layers, the same off both. The middle ones make the recess and keep their thickness.",
      `Surface all soles, then all tops, ${t.mm(core.height)} apart.`,
      marks.marks.length > 0 &&
        `Clamp layers and cheeks together dry, toe ends and soles flush, and draw the matching marks square across the whole top, from the toe end: ${at.join("; ")}.`,
    ),
    checks: [
      "The stack has the same width at both ends, top and sole, with no light between the layers.",
      "Cheeks' insides flat: no light under a straightedge along, across or corner to corner.",
    ],
    cautions: ["ripping", "jointing"],
    picture: layerStackPicture(t),
  };
}

/** Rows of a block's peg holes, as they are marked on each layer. */
function pegRows(t: StepContext, block: "front" | "bed"): StepNumber[] {
  const { plane } = t;
  const { trim } = plane.design.body;
  const shift = trim / 2 + (block === "front" ? -plane.cuts.setInToe : plane.cuts.setInHeel);
  return layerPegs(plane)[block].holes.map(({ centre }, i) => ({
    label: `${block === "front" ? "Front" : "Bed"} block, peg ${i + 1}: from toe end, over sole`,
    value: `${t.mm(centre.x + shift)}, ${t.mm(centre.y + plane.design.sole.allowance)}`,
  }));
}

/** What is sawn in the step of the two cuts, and what is left beside the bed's mark. */
export interface CutPiece {
  readonly piece: "core" | "layer";
  readonly leaving: string;
}

/** The step of the two cuts for a core in layers. @param wholeCuts the step for a core in one piece, in the words of another piece */
export function layerCutsContent(t: StepContext, wholeCuts: (of: CutPiece) => StepContent): StepContent {
  const { core, recess } = t.plane.design;
  const setBack = setBackLayers(t.plane);
  const middle =
    setBack && Array.from({ length: setBack.last - setBack.first + 1 }, (_, i) => `${setBack.first + i + 1}`);
  const relief = core.cornerCutter;
  const whole = wholeCuts({ piece: "layer", leaving: `the mark, which has ${t.mm(core.allowanceBed)} to true in it` });
  return {
    ...whole,
    why: `Every layer has the same outline and the same holes, so that the pegs set the blocks true. ${t.mm(core.allowanceBed)} is left on the bed, to true it once the glue is dry.`,
    numbers: [
      ...whole.numbers,
      ...pegRows(t, "front"),
      ...pegRows(t, "bed"),
      t.lengthRow("Drill for the layer pegs", core.pegDiameter),
      ...t.figureRow("layerPegLength", "Layer pegs, length"),
      ...(setBack
        ? [
            ...t.figureRow("recessDepth", "Recess, square to the finished bed"),
            ...t.figureRow("recessFromBedTip", "Recess's lower end up the bed"),
          ]
        : []),
    ],
    instructions: keepSentences(
      "Mark one layer from the layout sheet, and the others from it; or cut all by the files parts/front-layer and parts/bed-layer.",
      "Drill the four peg holes through each layer before you cut it: clamp it on one fence and stop, so that all layers are alike.",
      ...whole.instructions,
      middle !== undefined &&
        recess !== undefined &&
        `Saw layer ${listText(middle)} of the bed block along the recess: down from the top to its lower end${relief > 0 ? `, into a hole ⌀ ${t.mm(relief)} drilled at the corner` : ""}, then square in from the bed.`,
      "Glue front and bed block each by themselves: pegs in the first layer, glue on one face of each joint, the layers down in their order; clamp between flat cauls. Leave the pegs short of both outer faces.",
      "Wipe the glue out of the recess before it sets. Let the blocks dry a day, then plane their sides flat to the width of the stack.",
    ),
    checks: [
      "Outer faces flat and parallel, as wide as the core; no peg stands out.",
      "Ramp and bed square across the block: a square shows no light but the steps of the saw.",
      ...(setBack ? ["The screw head goes into the recess with room at both sides."] : []),
    ],
    cautions: [...whole.cautions, "drilling"],
    picture: layerCutsPicture(t),
  };
}

/** The recess is there already. @param whole the step of a core in one piece */
export const layerRecessContent = ({ t }: ContentInput, whole: StepContent): StepContent => ({
  ...whole,
  numbers: [
    ...t.figureRow("recessWidth"),
    ...t.figureRow("recessDepth"),
    ...t.figureRow("recessFromBedTip", "Recess's lower end up the bed from its lower edge, the feather taken off"),
    ...t.figureRow("recessLand"),
    ...t.figureRow("recessPad"),
  ],
  instructions: [
    "Pare hardened glue off floor and sides with a chisel.",
    "Truing took the bed down: measure the depth from the bed as it is now.",
    "Try the iron with its cap and screw: the head must slide the whole length without touching side, floor or corner. Pare the floor where it does.",
  ],
  cautions: ["handTools"],
  jigs: [],
});
