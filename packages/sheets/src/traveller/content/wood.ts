// Choosing the wood, measuring the iron, ripping and milling: before anything is cut to an angle.

import { cotDeg } from "@lamplane/geometry";
import { bevelToBack, topFromEdge } from "@lamplane/parameters/elevation";
import { ripPicture, stockPicture } from "../draw/billet.ts";
import { ironPicture } from "../draw/iron.ts";
import type { StepNumber } from "../step.ts";
import type { StepContext } from "../step-context.ts";
import { type ContentInput, keepSentences, type StepContent } from "./content.ts";

export function stockContent({ t, plan }: ContentInput): StepContent {
  const { billet, rip } = plan;
  const { needed, measured, lay, rings } = billet;
  const { wood } = t.design;
  const has = (["length", "width", "height"] as const).filter((side) => measured[side] > 0);
  return {
    title: "Choose the wood",
    task: "Choose one billet for core and cheeks: straight in the grain, dry, free of knots and checks where bed, mouth and pin will be.",
    why: "Cheeks and core out of one billet move alike with the seasons, and the grain matches when they are put together again.",
    numbers: [
      t.lengthRow("Billet length, along the grain", needed.length, "up"),
      t.lengthRow("Billet width, across the sole", needed.width, "up"),
      t.lengthRow("Billet height", needed.height, "up"),
      ...t.figureRow("billetWidthByRule", `Width by the rule of thumb: iron and ${t.mm(38.1)}`),
      { label: "Wood of the body", value: wood.body },
      { label: "Rings to the sole (0° flat, 90° quarter sawn)", value: t.deg(rings) },
      ...t.figureRow("moistureAsCut", "Moisture of the wood when it is cut"),
      ...has.map((side) => t.lengthRow(`Billet at hand, ${side}`, measured[side])),
    ],
    instructions: keepSentences(
      "Let the wood lie in the shop until its weight no longer changes; a meter should read near the moisture above.",
      `Turn the billet so that the rings lie at about ${t.deg(rings)} to the sole: flat or rift sawn reads smoother on the sole than quarter sawn (common practice, no published source).`,
      "Turn it end for end until the grain's lines, seen from the side, run down toward the heel: then the sole is planed with the grain from toe to heel, and the work strokes it the right way.",
      lay === "on its side" &&
        `Your billet holds the plane only on its side: its height becomes the width, and the rings stand at ${t.deg(rings)}.`,
      billet.fits === true && lay === "as measured" && "Your billet holds the plane as measured.",
      "Set aside wood for wedge, cross pin and pegs as in the stock list; keep every offcut until the plane cuts.",
    ),
    checks: [
      "No knot, check or wild grain within a hand's breadth of the mouth, in the bed or where the pin will be.",
      `The billet is at least ${t.mm(rip.needed)} wide, ${t.mm(needed.height)} high and ${t.mm(needed.length)} long.`,
      "The sole's side and the toe's end are written on the wood.",
    ],
    cautions: ["dust"],
    draw: (room) => stockPicture(t, plan, room),
  };
}

export function ironContent({ t }: ContentInput): StepContent {
  const { iron, capIron } = t.plane.design;
  return {
    why: "An iron a tenth thicker than told moves the bed's line, the mouth and the wedge by as much; nothing is cut from a catalogue's figure.",
    numbers: [
      ...thicknessRows(t),
      t.lengthRow("Iron width in the file", iron.width),
      { label: "Bevel", value: t.deg(iron.bevel) },
      ...t.figureRow("clearanceAngle", "Clearance under the bevel at this bed"),
      ...(capIron.thickness > 0 ? [t.lengthRow("Cap iron thickness", capIron.thickness)] : []),
      ...(t.plane.recess
        ? [
            t.lengthRow("Screw head's diameter", capIron.screwHead.diameter),
            t.lengthRow("Screw head's height", capIron.screwHead.height, "up"),
            t.lengthRow("Screw head's middle from the edge", capIron.screwHead.fromEdge),
          ]
        : []),
    ],
    instructions: keepSentences(
      ...thicknessTexts(t),
      "Measure the width just above the edge and at the top; write down the greater.",
      "Lay the iron's back on a flat plate: where it rocks or is hollow, flatten the part that lies on the bed first and measure after.",
      capIron.thickness > 0 &&
        "Screw the cap iron on where it will work and measure its thickness, its hump and the screw's head; correct the file where they differ.",
    ),
    checks: [
      `${isTapered(t) ? "All three" : "Both"} values are typed in before the billet is marked: every number after this step follows them.`,
    ],
    cautions: ["sharpIron"],
    draw: (room) => ironPicture(t, room),
  };
}

const isTapered = ({ plane: { frame } }: StepContext): boolean => frame.faceAngle !== frame.bedAngle;
const fromEdge = (t: StepContext, s: number): string => (s === 0 ? "at the edge" : `${t.mm(s)} from the edge`);

/** One thickness of a parallel iron; of a tapered one both, with where they are measured and what follows. */
function thicknessRows(t: StepContext): StepNumber[] {
  const { design } = t.plane;
  const { thickness, thicknessFromEdge } = design.iron;
  if (!isTapered(t)) return [t.lengthRow("Iron thickness in the file", thickness)];
  return [
    t.lengthRow(`Iron thickness in the file, ${fromEdge(t, thicknessFromEdge)}`, thickness),
    ...t.figureRow("thicknessAtTop", `Iron thickness in the file, ${fromEdge(t, topFromEdge(design))}`),
    ...t.figureRow("ironTaper", "Taper, back to face"),
    ...(thicknessFromEdge === 0 ? [] : t.figureRow("edgeThickness", "Thickness at the edge itself, from both")),
    ...t.figureRow("faceAngle", "Angle of the face from the sole: bed less taper"),
  ];
}

function thicknessTexts(t: StepContext): string[] {
  const { design, frame } = t.plane;
  if (!isTapered(t))
    return [
      "Measure the thickness where the iron lies on the bed, at three places up its length and on both sides; write down the greatest.",
    ];
  const { thicknessFromEdge } = design.iron;
  const heel = frame.thickness * cotDeg(bevelToBack(design));
  const thickEnd = frame.faceAngle < frame.bedAngle ? "edge" : "top";
  return keepSentences(
    `This iron tapers, thicker at its ${thickEnd}. Measure its thickness ${fromEdge(t, thicknessFromEdge)} and ${fromEdge(t, topFromEdge(design))}, on both sides; write down the greater at each place.`,
    thicknessFromEdge < heel &&
      `The bevel ends ${t.mm(heel)} from the edge: a caliper reaches the back above it only. Measure there, and enter that place as iron.thicknessFromEdge.`,
  );
}

export function coreContent({ t, plan }: ContentInput): StepContent {
  const { rip, marks, core } = plan;
  const at = marks.marks.map(
    ({ strokes, at: places, over }) =>
      `${strokes === 1 ? "one stroke" : "two strokes"} at ${places.map((x) => t.mm(x)).join(" and ")} (${over})`,
  );
  return {
    numbers: [
      ...t.figureRow("billetWidth", "Billet's width needed"),
      ...rip.sawLines.map(({ frees, fence }, i) =>
        t.lengthRow(`Fence for cut ${i + 1}, frees the ${frees}`, fence, "up"),
      ),
      ...t.figureRow("roughCheek", "Each cheek, rough"),
      ...t.figureRow("roughCore", "Core, rough"),
      ...t.figureRow("coreWidth", "Core, milled"),
      t.lengthRow("Each cheek, milled", t.plane.widths.cheek, "up"),
      ...t.figureRow("blankLength", "Core and cheeks, length"),
      ...t.figureRow("blankHeight", "Core and cheeks, height"),
    ],
    instructions: keepSentences(
      `Joint the face that becomes the left cheek's outside: the reference face; take no more than ${t.mm(rip.referencePass)} off it. Surface the sole square to it, then the top parallel to the sole, ${t.mm(core.height)} apart.`,
      marks.marks.length > 0 &&
        `Draw the matching marks square across the whole top, from the toe end: ${at.join("; ")}. They stand clear of every kerf and tell front from back on every piece.`,
      ...marks.lacking.map(
        (block) => `The ${block}'s top has no room for two marks: keep its pieces together by hand.`,
      ),
      "Rip the first cheek at the first fence; joint the fresh face of what is left; rip the core at the second; joint again.",
      "Let the three pieces lie a day with air all round, then mill each to its width, taking the same off both faces; insides flat, sides parallel.",
      "Mill the core to the caliper, not to the rule: iron, wedge and pin all follow it.",
    ),
    checks: [
      "Core the same width at both ends, top and sole, within what your caliper shows.",
      "Cheeks' insides flat: no light under a straightedge along, across or corner to corner.",
      "Marks still there on all three pieces.",
    ],
    cautions: ["ripping", "jointing"],
    draw: (room) => ripPicture(t, plan, room),
  };
}
