// The two cuts, the bed, the recess and the pin's hole: where angles are made and measured.
import { formatStation, placementStations, stepWords, straightedgePlacements } from "@lamplane/bench";
import { pegHoles } from "@lamplane/parameters/elevation";
import { formatDrill } from "@lamplane/parameters/units";
import { BED, CUTS, PIN_HOLE, RECESS } from "../../words/blocks.ts";
import { LAYER_CUTS } from "../../words/layers.ts";
import { bedPicture, recessPicture } from "../draw/bed.ts";
import { pinHolePicture } from "../draw/cheek.ts";
import { cutsPicture } from "../draw/core.ts";
import type { ReadingRow } from "../step.ts";
import { readAgain, type StepContext } from "../step-context.ts";
import { type ContentInput, keepSentences, type StepContent } from "./content.ts";
import { layerCutsContent, layerRecessContent } from "./layers.ts";

export function cutsContent(known: ContentInput): StepContent {
  const whole = sawnCutsContent(known);
  return known.plan.layers ? layerCutsContent(known, whole, (name) => beyondLimitTexts(known, name)) : whole;
}

function sawnCutsContent(known: ContentInput): StepContent {
  const { t, plan } = known;
  const { ramp } = t.plane;
  const [rampCut, bedCut] = plan.core.cuts;
  return {
    numbers: [
      ...readAgain(...t.figureRow("sawRamp", CUTS.sawRamp), ...t.figureRow("sawBed", CUTS.sawBed)),
      ...t.figureRow("rampMark", CUTS.rampMark),
      ...t.figureRow("bedMark", CUTS.bedMark),
      ...(ramp.curve
        ? [
            t.lengthRow(CUTS.wearHeight, ramp.curve.begin.y),
            t.lengthRow(CUTS.radius, ramp.curve.radius),
            { label: CUTS.exit, value: t.deg(ramp.curve.exitAngle) },
          ]
        : []),
    ],
    instructions: keepSentences(
      CUTS.mark,
      CUTS.lie,
      CUTS.testPiece,
      CUTS.otherSaws,
      ...beyondLimitTexts(known, "ramp"),
      CUTS.ramp({ angle: t.deg(rampCut.saw) }),
      ...beyondLimitTexts(known, "bed"),
      CUTS.bed({ angle: t.deg(bedCut.saw) }),
      ramp.curve !== undefined && CUTS.curve,
      CUTS.waste,
    ),
    checks: keepSentences(CUTS.angles, CUTS.square, ramp.curve !== undefined && CUTS.curveFits),
    cautions: ramp.curve ? ["shortAtSaw", "tiltedSaw", "disc"] : ["shortAtSaw", "tiltedSaw"],
    draw: (room) => cutsPicture(t, plan, room),
    jigs: ["bed-gauge", "ramp-gauge"],
  };
}

/** How to cut an angle that the shop's saw does not reach. */
function beyondLimitTexts({ t, plan }: ContentInput, name: "ramp" | "bed"): string[] {
  const { saw, angle } = plan.core.cuts.find((each) => each.name === name)!;
  const { sawLimit } = t.plane.design.shop;
  if (saw <= sawLimit) return [];
  const [limit, rest] = [t.deg(sawLimit), t.deg(saw - sawLimit)];
  return [CUTS.beyond({ name, saw: t.deg(saw), limit, rest, angle: t.deg(angle) })];
}

export function bedContent({ t, plan, hasJig }: ContentInput): StepContent {
  return {
    why: BED.why,
    numbers: [
      ...t.figureRow("bedAngle", BED.angle),
      ...t.figureRow("bedAllowance", LAYER_CUTS.allowance),
      ...t.figureRow("unsupported", BED.unsupported),
    ],
    instructions: keepSentences(
      BED.hold({ hasCradle: hasJig("bed-cradle") }),
      BED.survey,
      BED.plane,
      BED.blue,
      featherText(t, plan.layers !== undefined),
      BED.measure,
    ),
    checks: [BED.flat, BED.rocks, BED.square],
    readings: readingRows(t),
    cautions: ["handTools"],
    draw: (room) => bedPicture(t, room),
    jigs: ["bed-cradle"],
  };
}

/** Layers lose their feather before the recess is measured from it: what truing takes off their bed is then cut back. */
function featherText({ plane: { design }, mm }: StepContext, inLayers: boolean): string | false {
  const { featherChamfer } = design.bed;
  const height = mm(featherChamfer);
  if (featherChamfer === 0) return false;
  if (!inLayers) return BED.feather({ height });
  return design.core.allowanceBed > 0 && BED.featherAgain({ height });
}

/** The survey sheet's own placements and stations. */
const readingRows = ({ plane }: StepContext): ReadingRow[] =>
  straightedgePlacements(plane).map(({ words, from, to }) => {
    const format = (mm: number) => formatStation(mm, plane.design.units);
    const placed = ({ along, across }: typeof from) => [format(along), format(across)] as const;
    return {
      placement: words,
      ends: BED.ends({ from: placed(from), to: placed(to) }),
      stations: placementStations({ from, to }, plane.design.units).map(format),
    };
  });

export function recessContent({ t, hasJig }: ContentInput): StepContent {
  const { recess, design } = t.plane;
  if (!recess)
    return {
      ...stepWords(design, "recess"),
      numbers: [],
      instructions: [RECESS.none],
      checks: [RECESS.noneFlat],
      cautions: [],
      draw: (room) => recessPicture(t, room),
    };
  const routed: StepContent = {
    numbers: [
      ...t.figureRow("recessWidth"),
      ...t.figureRow("recessDepth"),
      ...t.figureRow("recessFromBedEdge", RECESS.fromBedEdge),
      ...t.figureRow("recessLand"),
      ...t.figureRow("recessPad"),
      t.lengthRow(RECESS.cutter, design.recess.cutter),
    ],
    instructions: [
      RECESS.draw,
      RECESS.rout({ hasTemplate: hasJig("recess-template") }),
      RECESS.byHand({ width: t.mm(recess.width), depth: t.mm(recess.depth) }),
      RECESS.tryIron({ depth: t.mm(recess.depth) }),
    ],
    checks: [RECESS.flat, RECESS.free],
    cautions: ["router", "handTools"],
    draw: (room) => recessPicture(t, room),
    jigs: ["recess-template"],
  };
  return recess.madeBy === "layers" ? layerRecessContent(routed, RECESS.cutter) : routed;
}

export function pinHoleContent({ t, hasJig }: ContentInput): StepContent {
  return {
    numbers: [
      ...t.figureRow("pinFromEnd", PIN_HOLE.fromToeEnd),
      ...t.figureRow("pinOverBlankSole", PIN_HOLE.overSole),
      ...readAgain({ label: PIN_HOLE.drill, value: formatDrill(t.figure("pinHoleDiameter"), t.design) }),
    ],
    instructions: keepSentences(
      PIN_HOLE.pilot({ hasGuide: hasJig("pin-guide") }),
      PIN_HOLE.clamp,
      hasJig("pin-guide") && PIN_HOLE.place,
      PIN_HOLE.bore,
      PIN_HOLE.otherDrill({ clearance: t.mm(t.design.pin.tenonClearance) }),
      pegHoles(t.plane).length > 0 && PIN_HOLE.noPegs,
    ),
    checks: [PIN_HOLE.rod, PIN_HOLE.alike],
    cautions: ["drilling"],
    draw: (room) => pinHolePicture(t, room),
    jigs: ["pin-guide"],
  };
}
