// Wedge and pin, the dry rehearsal and the glue-up.
import { pinSeat } from "@lamplane/bench";
import { isPlacedByContact, pegHoles } from "@lamplane/parameters/elevation";
import { dryFitPicture, glueFreeText, gluePicture } from "../draw/glue.ts";
import { wedgePicture } from "../draw/wedge.ts";
import type { StepContext } from "../step-context.ts";
import { type ContentInput, keepSentences, type StepContent } from "./content.ts";

export function wedgeContent({ t, plan }: ContentInput): StepContent {
  const { pin, wedge, capIron, wood } = t.plane.design;
  const capped = capIron.thickness > 0;
  const { offcut } = plan;
  const seat = pinSeat(t.plane);
  return {
    numbers: [
      ...t.figureRow("wedgeAngle"),
      ...t.figureRow("wedgeTip"),
      ...t.figureRow("wedgeButt"),
      ...t.figureRow("wedgeLength"),
      ...t.figureRow("wedgeWidth"),
      ...t.figureRow("wedgeAtPin", "Thickness where the pin will bear"),
      ...t.figureRow("wedgeTipFromEdge"),
      t.lengthRow("Pin's width and depth", t.plane.pinSize.diameter),
      t.lengthRow("Tenons, diameter", t.plane.pinSize.tenon, "down"),
      ...t.figureRow("tenonLength"),
    ],
    instructions: keepSentences(
      pin.section === "flatted"
        ? `Pin: take a longer stick, its rings ${wood.pinRings === 0 ? "along the flat" : `at ${t.deg(wood.pinRings)} to the flat`}. Plane it square, leave one face flat, round the other half, cut the tenons with square shoulders to turn freely without shake, and cut the pin off last.`
        : "Pin: turn or plane the end of a longer stick round, cut the tenons with square shoulders to turn freely without shake, and cut the pin off last.",
      offcut.wedge.fits
        ? "Wedge: its blank comes out of the throat's waste, grain along its length."
        : "Wedge: cut its blank from straight-grained stock, grain along its length.",
      "Plane its lower side flat and cut it to the wedge's length and width.",
      `Lay it in the sled, that side in the pocket, and plane the taper of ${t.deg(wedge.angle)}; leave a shaving until the dry fit.`,
      seat.gives > 0 &&
        `The pin gives way ${t.mm(seat.gives)} in its holes: a wedge made to its figures goes ${t.mm(seat.wedgeFurtherIn)} further in.`,
      `It is ${t.mm(wedge.clearance)} narrower than the core: dry air must not pinch it.`,
      "Bevel the tip so that shavings ride over it; cut the corners off the butt.",
    ),
    checks: [
      `Wedge on the ${capped ? "cap iron" : "iron"}: no light along either side or across the tip.`,
      "Pin's flat bears across the whole wedge: chalk shows it.",
      "Grain runs from tip to butt; no short grain at the tip.",
    ],
    cautions: ["smallParts", "handTools"],
    picture: wedgePicture(t),
    jigs: ["wedge-sled"],
  };
}

export function dryFitContent({ t, plan }: ContentInput): StepContent {
  const { plane } = t;
  const { shift } = plan.marks;
  const hasPegs = pegHoles(plane).length > 0;
  const screw = plane.recess ? "iron, wedge, pin and screw's head" : "iron, wedge and pin";
  return {
    numbers: [
      ...t.figureRow("edgeHeightAtContact", "Edge over the blank's sole when the front block touches it"),
      ...t.figureRow("setInToe", "Front block's end inside the cheeks' toe ends"),
      ...t.figureRow("setInHeel", "Bed block's end inside the cheeks' heel ends"),
      t.lengthRow("Bed's tip from the cheeks' toe end", plane.points.bedTip.x + plane.design.body.trim / 2),
      t.lengthRow("Ramp's tip from the cheeks' toe end", plane.points.rampTip.x + plane.design.body.trim / 2),
      ...t.figureRow("glueGap", "Between the two tips on the blank's sole"),
    ],
    instructions: keepSentences(
      ...(isPlacedByContact(plane) ? contactTexts(t) : markTexts(t)),
      "Read the distances in the table with a rule. Where one differs, find out why before going on.",
      `The front block's strokes stand ${t.mm(shift["front block"])} nearer the heel than the cheeks', the bed block's ${t.mm(Math.abs(shift["bed block"]))} nearer the toe.`,
      hasPegs
        ? "Lay the other cheek on, pin in its holes, clamp all, and bore the peg holes through both cheeks and the block between them at once, in the waste at the ends. Drive the pegs."
        : "Lay the other cheek on, pin in its holes, and clamp all; mark each block's place on both cheeks.",
      `Put in ${plane.design.capIron.thickness > 0 ? "iron with its cap iron" : "iron"}, wedge and pin. Draw the iron up and push it down all its travel; turn the pin.`,
      "Take it apart, and rehearse once more against the clock with every clamp in its order.",
    ),
    checks: [
      `Nothing binds: ${screw} move freely.`,
      "Blocks' soles and cheeks' soles in one plane; no light between block and cheek at the throat.",
      "Every clamp, caul, wax, glue and wet rag within reach; the rehearsal shorter than half the glue's open time.",
    ],
    cautions: ["sharpIron", "drilling"],
    picture: dryFitPicture(t),
    jigs: ["throat-spacer"],
  };
}

/** The front block's place by contact with the iron: contact governs, the spacer only checks it. */
function contactTexts(t: StepContext): string[] {
  const { capIron } = t.plane.design;
  return [
    `Stand the bed block, sole down, on a flat plate. Lay the iron on the bed${capIron.thickness > 0 ? ", its cap iron off" : ""}, its edge on shims ${t.mm(t.figure("edgeHeightAtContact"))} thick, and clamp it.`,
    `Lay one cheek on the bench, inside up. Lay the bed block with its iron on it, soles flush, its end ${t.mm(t.plane.cuts.setInHeel)} inside the cheek's heel end; clamp it.`,
    "Slide the front block back, soles flush, until it just touches the edge all across: contact governs, this is its place. Clamp it and take the iron off.",
  ];
}

/** The blocks' places by their marks, where the maker wants it so or the iron's edge would stand below the sole. */
const markTexts = (t: StepContext): string[] => [
  `Lay one cheek on the bench, inside up. Lay the bed block on it, soles flush, its end ${t.mm(t.plane.cuts.setInHeel)} inside the cheek's heel end; clamp it.`,
  `Set the front block to its mark, soles flush, its end ${t.mm(t.plane.cuts.setInToe)} inside the cheek's toe end${t.figure("edgeHeightAtContact") < 0 ? ": the iron cannot set it, its edge would stand below the blank's sole" : ""}. The marks govern; clamp it.`,
];

export function glueContent({ t, plan }: ContentInput): StepContent {
  const { plane } = t;
  const over = plane.design.body.trim / 2;
  const hasPegs = pegHoles(plane).length > 0;
  return {
    numbers: [
      t.lengthRow("Bed's tip from the blank's toe end", plane.points.bedTip.x + over),
      t.lengthRow("Ramp's tip from the blank's toe end", plane.points.rampTip.x + over),
      ...t.figureRow("glueGap", "Between the two tips"),
    ],
    instructions: keepSentences(
      "Take the iron out. Wax the pin, its holes, the bed, the ramp and the cheeks' insides between the blocks: glue must not hold there.",
      `Glue thinly on the blocks' sides, up to ${glueFreeText(t)} from bed and ramp and no nearer (the grey in the drawing); what comes out in the throat is hard to reach.`,
      hasPegs
        ? "Cheek, blocks on their pegs, pin with both shoulders inside, other cheek, pegs home."
        : "Cheek, blocks at their marks, pin with both shoulders inside, other cheek.",
      "Clamps: first at the throat on both blocks, then the ends, top and sole in turn, pressure growing as you go round; a caul under each jaw.",
      "Read the two tips' places and turn the pin; a block that has crept is knocked back now or never.",
      over > 0 && `The readings count from the finished toe's line, ${t.mm(over)} inside the cheeks' toe ends.`,
      "Scrape the glue out of the throat while it is soft, with a thin stick.",
      "When the glue has cured, take off the clamps and let the blank rest for some days: glue and clamps have wetted and bent it, and a sole trued today would not be flat next week.",
    ),
    checks: [
      "Pin turns. Wedge and iron slide. Sole's four pieces in one plane as near as they came.",
      "Both tips measured on the blank's sole and typed in: where the sole will end follows from them.",
    ],
    cautions: ["glue"],
    picture: gluePicture(t, plan),
    jigs: ["throat-spacer"],
  };
}
