// Steps 8 to 10: wedge and pin, the dry rehearsal and the glue-up.
import { sentence } from "@lamplane/parameters/words";

export const WEDGE = {
  atPin: "Thickness where the pin will bear",
  pinSize: "Pin, width and depth",
  pinLength: "Pin, shoulder to shoulder",
  tenon: "Tenon diameter",
  pin: sentence(
    ({ flatted, rings }: { flatted: boolean; rings: string | undefined }) =>
      flatted
        ? `Pin: take a longer stick, its rings ${rings === undefined ? "along the flat" : `at ${rings} to the flat`}. Plane it square. Round the upper half; the lower half stays square, its flat face to the wedge. Cut the tenons with square shoulders, so that they turn freely without shake. Cut the pin off last.`
        : "Pin: turn or plane the end of a longer stick round. Cut the tenons with square shoulders, so that they turn freely without shake. Cut the pin off last.",
    { flatted: true, rings: undefined },
    { flatted: true, rings: "30°" },
    { flatted: false, rings: undefined },
  ),
  blank: sentence(
    ({ fromWaste }: { fromWaste: boolean }) =>
      fromWaste
        ? "Wedge: its blank comes out of the throat offcut, grain along its length."
        : "Wedge: cut its blank from straight-grained stock, grain along its length.",
    { fromWaste: true },
    { fromWaste: false },
  ),
  taper: sentence(
    ({ angle, hasSled }: { angle: string; hasSled: boolean }) =>
      `Plane its lower side flat and cut it to length and width. Then plane the taper of ${angle}${hasSled ? " in the sled" : ""}; leave a shaving for the dry fit.`,
    { angle: "6°", hasSled: true },
    { angle: "6°", hasSled: false },
  ),
  gives: sentence(
    ({ gives, further }: { gives: string; further: string }) =>
      `The pin gives way ${gives} in its holes: a wedge made to its figures goes ${further} further in.`,
    { gives: "0.1 mm", further: "0.96 mm" },
  ),
  clearance: sentence(
    ({ clearance }: { clearance: string }) =>
      `The wedge is ${clearance} narrower than the core: dry air must not pinch it.`,
    { clearance: "1.6 mm" },
  ),
  tip: "Bevel the tip so that shavings ride over it. Cut the corners off the butt.",
  bears: sentence(
    ({ on }: { on: "cap iron" | "iron" }) => `Wedge on the ${on}: no light along either side or across the tip.`,
    { on: "cap iron" },
    { on: "iron" },
  ),
  chalk: "Chalk on the wedge and the pin laid across it: the pin bears across the whole width.",
} as const;

export const DRY_FIT = {
  edge: "Edge above the sole of the blank when the front block touches it",
  frontSetIn: "Front block in from the toe ends of the cheeks",
  bedSetIn: "Bed block in from the heel ends of the cheeks",
  bedTip: "Bed tip from the toe end of the cheeks",
  rampTip: "Ramp tip from the toe end of the cheeks",
  gap: "Gap between block tips",
  bedFoot: "Foot of the bed from the toe end of the cheeks, feather off",
  gapFeatherOff: "Gap between block tips, feather off",
  pegDrill: "Drill for the pegs",
  pegPlace: "Pegs in from the ends of the cheeks",
  pegHeights: "Pegs above the sole of the cheeks",
  scrape: "Scrape the layout's paper off blocks and cheeks: none may stay in a glue joint or under the iron.",
  wedgeTip: "Wedge tip from the cutting edge, the wedge pushed in by hand",
  shims: sentence(
    ({ height, capOff }: { height: string; capOff: boolean }) =>
      `Stand the bed block, sole down, on a flat plate. Lay the iron on the bed, bevel down${capOff ? ", its cap iron off" : ""}, its edge on shims ${height} thick, and clamp it.`,
    { height: "2.9 mm", capOff: true },
    { height: "2.9 mm", capOff: false },
  ),
  bedBlock: sentence(
    ({ setIn, withIron }: { setIn: string; withIron: boolean }) =>
      `Lay the right cheek on the bench, inside up. Lay the bed block ${withIron ? "with its iron " : ""}on it, soles flush, its end ${setIn} in from the heel end; clamp it.`,
    { setIn: "2.42 mm", withIron: true },
    { setIn: "2.42 mm", withIron: false },
  ),
  contact:
    "Slide the front block back, soles flush, until it just touches the edge all across. Contact governs: this is its place. Clamp it and take the iron off.",
  toMark: sentence(
    ({ setIn, edgeBelow }: { setIn: string; edgeBelow: boolean }) =>
      `Set the front block to its mark, soles flush, its end ${setIn} in from the toe end${edgeBelow ? ": the iron cannot set it, its edge would stand below the sole of the blank" : ""}. The marks govern; clamp it.`,
    { setIn: "1 mm", edgeBelow: true },
    { setIn: "1 mm", edgeBelow: false },
  ),
  read: "Read the distances of the table with a rule, the small ones with a caliper, and write them down. Where one differs, find out why before you go on.",
  marks: sentence(
    ({ front, bed }: { front: string; bed: string }) =>
      `At its place the front block's matching marks stand ${front} nearer the heel than the cheeks', the bed block's ${bed} nearer the toe.`,
    { front: "2.42 mm", bed: "2.42 mm" },
  ),
  pegs: "Put the pin in its hole, lay the left cheek on over it, and clamp all. Mark the pegs on its outside as in the table. Bore the peg holes, each through both cheeks and the block between them at once, in the waste at the ends. Drive the pegs.",
  noPegs:
    "Put the pin in its hole, lay the left cheek on over it, and clamp all. Mark the place of each block on both cheeks.",
  tryIron: sentence(
    ({ capped }: { capped: boolean }) =>
      `Put in the iron${capped ? " with its cap iron" : ""}. Draw it up and push it down all its travel; turn the pin.`,
    { capped: true },
    { capped: false },
  ),
  fitWedge: sentence(
    ({ atContact, edge, tip }: { atContact: boolean; edge: string; tip: string }) =>
      `Push the iron down until its edge ${atContact ? "touches the ramp" : `stands ${edge} above the sole of the blank`}, and the wedge in by hand. Plane its upper side, a shaving at a time, until it bears along its whole length with its tip ${tip} from the edge.`,
    { atContact: true, edge: "3 mm", tip: "22 mm" },
    { atContact: false, edge: "3 mm", tip: "22 mm" },
  ),
  again: "Take it apart. Rehearse once more against the clock, every clamp in its order.",
  free: sentence(({ parts }: { parts: string }) => `Nothing binds: ${parts} move freely.`, {
    parts: "iron, wedge, pin and screw's head",
  }),
  withHead: "iron, wedge, pin and screw head",
  withoutHead: "iron, wedge and pin",
  flush: "Soles of blocks and cheeks in one plane. No light between block and cheek at the throat.",
  ready:
    "Every clamp, caul, wax, glue and wet rag within reach. The rehearsal takes less than half the open time of the glue.",
} as const;

export const GLUE_UP = {
  wax: "Take the iron out. Wax the pin, its holes, the ramp, and the insides of the cheeks between the blocks: glue must not hold there. No wax on the bed, where the iron would slip: wipe glue off it while it is wet.",
  glue: sentence(
    ({ free }: { free: string }) =>
      `Spread glue thinly on the sides of the blocks, up to ${free} from bed and ramp and no nearer (the grey in the drawing). What comes out in the throat is hard to reach.`,
    { free: "3 to 5 mm" },
  ),
  order: sentence(
    ({ hasPegs }: { hasPegs: boolean }) =>
      hasPegs
        ? "Right cheek, blocks on their pegs, pin with both shoulders inside, left cheek, pegs home."
        : "Right cheek, blocks at their marks, pin with both shoulders inside, left cheek.",
    { hasPegs: true },
    { hasPegs: false },
  ),
  clamps:
    "Clamp first at the throat on both blocks, then the ends, top and sole in turn, a caul under each jaw. Let the pressure grow as you go round.",
  spacer:
    "Wax the throat spacer, but for its flank on the bed, and let it in once the clamps hold: it must stand as it stood dry. Draw it straight up by its tab before the glue sets.",
  readTips:
    "Read the place of both tips from the toe end of the cheeks, not of the front block, and turn the pin. Knock a block that has crept back to its place at once: when the glue grabs it is too late.",
  footRead: sentence(
    ({ chamfer, height, factor }: Record<"chamfer" | "height" | "factor", string>) =>
      `The feather is off: read to the foot of the bed, and take away ${factor} × the height to which the feather was cut (${chamfer} for ${height}). What you write down counts to the bed tip, where the line of the bed meets the sole.`,
    { chamfer: "2.8 mm", height: "3 mm", factor: "0.933" },
  ),
  scrape: "Scrape the glue out of the throat with a thin stick while it is soft.",
  rest: "When the glue has cured, take off the clamps and let the blank rest for some days. Glue and clamps have wetted and bent it: a sole trued today would not be flat next week.",
  turns: "Pin turns. Wedge and iron slide. Soles of all four pieces in one plane as near as they came.",
  entered: "Both tips measured on the sole of the blank and entered: where the sole will end follows from them.",
} as const;
