// The two cuts, the bed, the recess and the pin's hole: where angles are made and measured.
import { formatStation, placementStations, stepWords, straightedgePlacements } from "@lamplane/bench";
import { pegHoles } from "@lamplane/parameters/elevation";
import { formatDrill } from "@lamplane/parameters/units";
import { bedPicture, recessPicture } from "../draw/bed.ts";
import { pinHolePicture } from "../draw/cheek.ts";
import { cutsPicture } from "../draw/core.ts";
import type { ReadingRow } from "../step.ts";
import type { StepContext } from "../step-context.ts";
import { type ContentInput, keepSentences, type StepContent } from "./content.ts";

export function cutsContent(known: ContentInput): StepContent {
  const { t, plan } = known;
  const { ramp } = t.plane;
  const { core } = plan;
  const [rampCut, bedCut] = core.cuts;
  return {
    numbers: [
      ...t.figureRow("sawRamp", "Saw for the ramp, from square"),
      ...t.figureRow("sawBed", "Saw for the bed, from square"),
      ...t.figureRow("rampMark", "Ramp's mark, sole, from toe end"),
      ...t.figureRow("bedMark", "Bed's mark, sole, from toe end"),
      ...(ramp.curve
        ? [
            t.lengthRow("Wear's height over the planned sole", ramp.curve.begin.y),
            t.lengthRow("Radius of the curve", ramp.curve.radius),
            { label: "Exit's angle to the sole", value: t.deg(ramp.curve.exitAngle) },
          ]
        : []),
    ],
    instructions: keepSentences(
      "Square both marks across the sole and across the top; join them down both sides with a bevel: the lines on the sides slope. Both kerfs lie in the waste between the marks.",
      "Lay the core's right side on the saw's table, its sole against the fence, the toe to your right: the left side with its sheet looks up.",
      "Set the saw by the printed gauge or a bevel; cut a test piece of the core's height and measure it first.",
      ...beyondLimitTexts(known, "ramp"),
      `Cut the ramp: swing the saw ${t.deg(rampCut.saw)} from square, the cut running to the right as it comes toward you; core clamped, the mark just left standing.`,
      ...beyondLimitTexts(known, "bed"),
      `Cut the bed, the core lying as before: swing the saw ${t.deg(bedCut.saw)} to the other side, leaving its mark and a shaving to true.`,
      ramp.curve !== undefined &&
        `The ramp is curved: after the straight cut shape it by the template, wear first, with disc, belt, rasp or plane. A drum cannot form it.`,
      "Keep the waste wedge: it backs the blocks in the vise.",
    ),
    checks: keepSentences(
      "Each angle measured on both sides of the block, not read off the saw.",
      "Cuts square across the core: a square shows no light along either slope.",
      ramp.curve !== undefined && "The curve fits its template from wear to top, never proud.",
    ),
    cautions: ramp.curve ? ["shortAtSaw", "tiltedSaw", "disc"] : ["shortAtSaw", "tiltedSaw"],
    draw: (room) => cutsPicture(t, plan, room),
    jigs: ["bed-gauge", "ramp-gauge"],
  };
}

/** How to cut an angle that the shop's saw does not reach. */
function beyondLimitTexts({ t, plan }: ContentInput, name: "ramp" | "bed"): string[] {
  const cut = plan.core.cuts.find((each) => each.name === name)!;
  const { sawLimit } = t.plane.design.shop;
  if (cut.saw <= sawLimit) return [];
  const rest = cut.saw - sawLimit;
  return [
    `The ${name} wants ${t.deg(cut.saw)}, and your saw stops at ${t.deg(sawLimit)}. Choose: a wedge of ${t.deg(rest)} clamped under the block or to the fence, with the saw at its stop; a bandsaw with its table or a jig at ${t.deg(cut.saw)}; the complement, ${t.deg(cut.angle)}, off a jig that holds the core upright; or a handsaw to the lines, trued with a plane.`,
  ];
}

export function bedContent({ t }: ContentInput): StepContent {
  return {
    why: "The iron chatters on a hump and is held by a slight hollow: this face decides how the plane cuts.",
    numbers: [
      ...t.figureRow("bedAngle", "Bed angle wanted"),
      ...t.figureRow("unsupported", "Bed below the bevel's heel that the iron never touches"),
    ],
    instructions: keepSentences(
      "Hold the block in the bed cradle, or in the vise with the waste wedge under it, the bed level and up.",
      "Lay a straightedge at the places drawn. At each station write the thickest leaf that goes in and the thinnest that does not. Enter them in the survey sheet (“lamplane survey FILE --blank”): it says whether the bed is flat, hollow or humped, and where to take wood off.",
      "Work across and along with a fine-set block plane or a scraper, from the edges toward the middle; take wood only where the survey says.",
      "Blue the iron's back with pencil, lay it on the bed, press and rub it: the marks it leaves are the high places.",
      t.plane.design.bed.featherChamfer > 0 &&
        `Take the feather off the bed's tip square, ${t.mm(t.plane.design.bed.featherChamfer)} high: a thin tip breaks in the glue-up. It is planed away with the sole.`,
      "Measure the bed's angle again from the sole, on both sides.",
    ),
    checks: [
      "Flat, or hollow by no more than a thin feeler: never humped, never in wind.",
      "The iron does not rock, corner to corner, under two fingers.",
      "Bed square across: its angle reads the same on both sides.",
    ],
    readings: readingRows(t),
    cautions: ["handTools"],
    draw: (room) => bedPicture(t, room),
    jigs: ["bed-cradle"],
  };
}

/** The survey sheet's own placements and stations. */
const readingRows = ({ plane }: StepContext): ReadingRow[] =>
  straightedgePlacements(plane).map(({ words, from, to }) => {
    const format = (mm: number) => formatStation(mm, plane.design.units);
    return {
      placement: words,
      ends: `${format(from.along)} up, ${format(from.across)} across to ${format(to.along)} up, ${format(to.across)} across`,
      stations: placementStations({ from, to }, plane.design.units).map(format),
    };
  });

export function recessContent({ t }: ContentInput): StepContent {
  const { recess, design } = t.plane;
  if (!recess)
    return {
      ...stepWords(design, "recess"),
      numbers: [],
      instructions: ["Leave the bed whole."],
      checks: ["The iron lies flat on the bed from the bevel's heel to the top."],
      cautions: [],
      draw: (room) => recessPicture(t, room),
    };
  return {
    numbers: [
      ...t.figureRow("recessWidth"),
      ...t.figureRow("recessDepth"),
      ...t.figureRow("recessFromBedTip", "Recess's lower end up the bed from its lower edge, the feather taken off"),
      ...t.figureRow("recessLand"),
      ...t.figureRow("recessPad"),
      t.lengthRow("Cutter", design.recess.cutter),
    ],
    instructions: [
      "Draw the bed's middle line and the recess's outline, or glue on the bed's sheet from the layout.",
      "Clamp block and template so that neither can turn; rout against the cutter's turning, a quarter of the depth at a pass, from the top end inward.",
      "No router: drill a row of holes to depth and clear the rest with chisel and router plane.",
      `Stop at ${t.mm(recess.depth)} and try the iron with its cap and screw: the head must slide the whole length without touching side or floor. Then deepen, if it must be.`,
    ],
    checks: [
      "Iron flat on both lands and on the pad below the recess.",
      "Head free by a hair at both sides with the iron against either cheek's line.",
    ],
    cautions: ["router", "handTools"],
    draw: (room) => recessPicture(t, room),
    jigs: ["recess-template"],
  };
}

export function pinHoleContent({ t }: ContentInput): StepContent {
  const { pegs, body } = t.plane.design;
  const { trim } = body;
  const hasPegs = pegHoles(t.plane).length > 0;
  return {
    numbers: [
      t.lengthRow("Hole's middle from the blank's toe end", t.figure("pinX") + trim / 2),
      ...t.figureRow("pinOverBlankSole", "Hole's middle over the blank's sole"),
      { label: "Drill", value: formatDrill(t.figure("pinHoleDiameter"), t.design) },
      ...(hasPegs ? [t.lengthRow("Peg holes, diameter", pegs.diameter)] : []),
    ],
    instructions: keepSentences(
      "Lay the cheeks inside to inside, soles and toe ends flush, marks together, and clamp them: one hole goes through both and the two are one line.",
      "Lay the pin guide on the left cheek's outside, its pegs under both soles and before both toe ends, and clamp it; or prick the middle from the layout sheet. Check both distances with a rule before you drill.",
      "Bore through both at once with a bit that leaves a clean edge, square to the insides, into a backing board; try the drill in waste first and measure the hole it makes.",
      trim > 0 &&
        `The reading along the sole counts from the finished toe's line: draw it ${t.mm(trim / 2)} inside the toe ends.`,
      hasPegs &&
        `Leave the peg holes ⌀ ${t.mm(pegs.diameter)}: they are bored at the dry fit, through cheeks and blocks together.`,
    ),
    checks: [
      "A rod the hole's size, put through both cheeks, stands square to their insides.",
      "Measured from sole and toe, both cheeks the same.",
    ],
    cautions: ["drilling"],
    draw: (room) => pinHolePicture(t, room),
    jigs: ["pin-guide"],
  };
}
