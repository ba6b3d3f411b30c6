// Wedge and pin, the dry rehearsal and the glue-up.
import { pinSeat } from "@lamplane/bench";
import { pegHoles } from "@lamplane/parameters/elevation";
import { dryFitPicture, gluePicture } from "../draw/glue.ts";
import { wedgePicture } from "../draw/wedge.ts";
import { type ContentInput, keepSentences, type StepContent } from "./content.ts";

export function wedgeContent({ t, plan }: ContentInput): StepContent {
  const { pin, wedge, capIron } = t.plane.design;
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
      t.lengthRow("Pin's width and depth", pin.diameter),
      t.lengthRow("Tenons, diameter", pin.tenon, "down"),
      ...t.figureRow("tenonLength"),
    ],
    instructions: keepSentences(
      pin.section === "flatted"
        ? "Pin: plane a stick square to its width, leave one face flat and round the other half; turn, file or cut the tenons with a dowel plate, and shoulder them square."
        : "Pin: turn or plane the stick round, then turn or cut the tenons and shoulder them square.",
      pin.section === "flatted" &&
        "Take the pin quarter sawn: rings square to its flat. It then moves least on the wedge.",
      "Tenons turn freely in the holes without shake: the pin must find the wedge by itself.",
      offcut.wedge.fits
        ? "Wedge: it comes out of the throat's waste, its grain along its length; saw it with wood to spare."
        : "Wedge: cut it from straight-grained stock, its grain along its length; it does not come out of the throat's waste.",
      `Plane its lower side flat, then the taper to ${t.deg(wedge.angle)} in the sled, a shaving thick until the dry fit.`,
      seat.gives > 0 &&
        `The pin gives way ${t.fine(seat.gives)} in its holes: a wedge planed to its figures at once goes ${t.fine(seat.wedgeFurtherIn)} further in.`,
      `It is ${t.mm(wedge.clearance)} narrower than the core, so that dry air cannot pinch it.`,
      "Cut the corners off its butt, and bevel the tip so that shavings ride over it.",
    ),
    checks: [
      `Wedge on the ${capIron.thickness > 0 ? "cap iron" : "iron"}: no light along either side or across the tip.`,
      "Pin's flat bears across the wedge's whole width: chalk shows it.",
      "Grain runs from tip to butt on both; no short grain at the tip.",
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
  const high = t.figure("edgeHeightAtContact");
  return {
    why: "Wet glue leaves minutes. Whatever binds, slides or is missing must show itself now.",
    numbers: [
      ...t.figureRow("edgeHeightAtContact", "Edge over the blank's sole when the front block touches it"),
      ...t.figureRow("setInToe", "Front block's end inside the cheeks' toe ends"),
      ...t.figureRow("setInHeel", "Bed block's end inside the cheeks' heel ends"),
      t.lengthRow("Bed's tip from the cheeks' toe end", plane.points.bedTip.x + plane.design.body.trim / 2),
      t.lengthRow("Ramp's tip from the cheeks' toe end", plane.points.rampTip.x + plane.design.body.trim / 2),
      ...t.figureRow("glueGap", "Between the two tips on the blank's sole"),
    ],
    instructions: keepSentences(
      `Lay one cheek on the bench, inside up; set the bed block on it, its end ${t.mm(plane.cuts.setInHeel)} inside the cheek's heel end.`,
      high >= 0
        ? `Clamp the iron to the bed with its edge ${t.fine(high)} over the blank's sole: shims of that thickness under the edge, the sole on a flat plate, set it best.`
        : "At contact the edge would stand below the blank's sole: set the front block to its mark instead, not to the iron.",
      high >= 0 && "Slide the front block back until it just touches the edge all across: this is its place. Clamp it.",
      "Read the two distances in the table with a rule. Where touch and number differ by more than you can hold, find out why before going on.",
      `The front block's strokes stand ${t.mm(shift["front block"])} nearer to the heel than the cheeks', the bed block's ${t.mm(Math.abs(shift["bed block"]))} nearer to the toe: that is how they should look.`,
      hasPegs &&
        "Lay the other cheek on, pin in its holes, clamp all, and bore the peg holes through cheeks and blocks in the waste at the ends. Drive the pegs: from now on everything finds its place by itself.",
      "Put in iron, wedge and pin. Draw the iron up and push it down through its whole travel; turn the pin.",
      "Take it apart and put it together once more against the clock, with every clamp and block in the order of the real thing.",
    ),
    checks: [
      `Nothing binds: ${plane.recess ? "iron, wedge, pin and screw's head" : "iron, wedge and pin"} move freely.`,
      "Blocks' soles and cheeks' soles in one plane; no light between block and cheek at the throat.",
      "Every clamp, caul, wax, glue and wet rag within reach; the whole rehearsal shorter than half the glue's open time.",
    ],
    cautions: ["sharpIron", "drilling"],
    picture: dryFitPicture(t),
    jigs: ["throat-spacer"],
  };
}

export function glueContent({ t, plan }: ContentInput): StepContent {
  const { plane } = t;
  const over = plane.design.body.trim / 2;
  return {
    numbers: [
      ...t.figureRow("bedTipX", "Bed's tip from the finished toe's line, on the blank's sole"),
      ...t.figureRow("rampTipX", "Ramp's tip from the finished toe's line, on the blank's sole"),
      t.lengthRow("Bed's tip from the blank's toe end", plane.points.bedTip.x + over),
      t.lengthRow("Ramp's tip from the blank's toe end", plane.points.rampTip.x + over),
      ...t.figureRow("glueGap", "Between the two tips"),
      ...t.figureRow("edgeHeightAtContact", "Edge over the blank's sole at contact"),
    ],
    instructions: keepSentences(
      "Take the iron out. Wax the pin, its holes, the bed, the ramp and the cheeks' insides between the blocks: glue must not hold there.",
      "Glue thinly on the blocks' sides, a finger's breadth short of bed and ramp; little is needed, and what comes out in the throat is hard to reach.",
      "Cheek, blocks on their pegs, pin with both shoulders inside, other cheek, pegs home.",
      "Clamps: first at the throat on both blocks, then the ends, top and sole in turn, pressure growing as you go round; a caul under each jaw.",
      "Read the two tips' places and turn the pin; a block that has crept is knocked back now or never.",
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
