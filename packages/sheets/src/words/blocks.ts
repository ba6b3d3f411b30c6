// Steps 4 to 7: the two cuts, the bed, the recess and the pin hole.
import { sentence } from "@lamplane/parameters/words";

interface SawData {
  readonly angle: string;
}

export const CUTS = {
  sawRamp: "Saw for the ramp, from square",
  sawBed: "Saw for the bed, from square",
  rampMark: "Ramp mark from the toe end",
  bedMark: "Bed mark from the toe end",
  wearHeight: "Wear, above the planned sole",
  radius: "Radius of the curve",
  exit: "Exit of the curve, from the sole",
  mark: "Square both marks across the sole, and those of the drawing across the top. Join them down both sides with a bevel. Both kerfs lie in the waste between the marks.",
  lie: "Lay the core on its right side, sole against the fence, toe to your right. The left side with its sheet looks up.",
  testPiece: "Set the saw by the gauge or a bevel. Cut a test piece of the core's height and measure it first.",
  ramp: sentence(
    ({ angle }: SawData) =>
      `Clamp the core. Swing the saw ${angle} from square, so that the cut runs to the right as it comes toward you. Cut the ramp in the waste and just leave the line.`,
    { angle: "30°" },
  ),
  bed: sentence(
    ({ angle }: SawData) =>
      `Leave the core lying as it is. Swing the saw ${angle} to the other side and cut the bed. Leave the line, and a shaving for truing.`,
    { angle: "43°" },
  ),
  beyond: sentence(
    ({
      name,
      saw,
      limit,
      rest,
      angle,
    }: {
      name: "ramp" | "bed";
      saw: string;
      limit: string;
      rest: string;
      angle: string;
    }) =>
      `The ${name} wants ${saw}, and your saw stops at ${limit}. Choose: a wedge of ${rest} clamped under the block or to the fence, with the saw at its stop; a bandsaw with its table or a jig at ${saw}; the complement, ${angle}, off a jig that holds the core upright; or a handsaw to the lines, trued with a plane.`,
    { name: "bed", saw: "49°", limit: "45°", rest: "4°", angle: "41°" },
  ),
  curve:
    "Shape the curve after the straight cut, by the template, wear first, with disc, belt, rasp or plane. A drum cannot form it.",
  otherSaws:
    "Bandsaw: set its mitre gauge the same way, sole against the gauge, left side up, toe to your left. Handsaw: follow the lines on both sides.",
  waste: "Keep the throat offcut: it backs the blocks in the vise.",
  angles: "Each angle measured on both sides of the block, not read off the saw.",
  square: "Cuts square across the core: no light under a square along either slope.",
  curveFits: "The curve fits its template from wear to top and is nowhere proud.",
} as const;

export const BED = {
  why: "The iron chatters on a hump and is held by a slight hollow: this face decides how the plane cuts.",
  angle: "Bed angle wanted",
  unsupported: "Bed from the planned sole to the heel of the bevel, which the iron never touches",
  hold: sentence(
    ({ hasCradle }: { hasCradle: boolean }) =>
      `Hold the block in the ${hasCradle ? "bed cradle, or without one in the vise with" : "vise with"} the throat offcut under it, the bed level and up.`,
    { hasCradle: true },
    { hasCradle: false },
  ),
  survey:
    "Lay a straightedge at the places drawn. At each station write the thickest leaf that goes in and the thinnest that does not. Enter them in the survey sheet (“lamplane survey FILE --blank”): it says whether the bed is flat, hollow or humped, and where to take wood off.",
  plane:
    "Work across and along with a fine-set block plane or a scraper, from the edges toward the middle. Take wood only where the survey says.",
  blue: "Rub pencil on the back of the iron, lay it on the bed and press: the marks that it leaves are the high places.",
  feather: sentence(
    ({ height }: { height: string }) =>
      `Cut the feather off the tip of the bed, square to the sole, to ${height} above it: a thin tip breaks in the glue-up. Measure the height that it came to and write it on the block: the glue-up is read from it. The small flat that this leaves goes when the sole is planed.`,
    { height: "3 mm" },
  ),
  featherAgain: sentence(
    ({ height }: { height: string }) =>
      `Truing has left the flat at the tip of the bed lower. Cut it back, square to the sole, until it ends ${height} above it again.`,
    { height: "3 mm" },
  ),
  measure: "Measure the bed angle again from the sole, on both sides.",
  flat: "Flat, or hollow by no more than a thin leaf: never humped, never twisted.",
  rocks: "The iron does not rock, corner to corner, under two fingers.",
  square: "Bed square across: its angle reads the same on both sides.",
  ends: sentence(
    ({ from, to }: { from: readonly [string, string]; to: readonly [string, string] }) =>
      `${from[0]} up, ${from[1]} across to ${to[0]} up, ${to[1]} across`,
    { from: ["5", "24"], to: ["80", "24"] },
  ),
} as const;

export const RECESS = {
  none: "Leave the bed whole.",
  noneFlat: "The iron lies flat on the bed from the heel of the bevel to the top.",
  fromBedEdge: "Lower end of the recess, up the bed from its lower edge, feather off",
  cutter: "Cutter",
  draw: "Draw the middle line of the bed and the outline of the recess, or glue on the bed's sheet of the layout.",
  rout: sentence(
    ({ hasTemplate }: { hasTemplate: boolean }) =>
      hasTemplate
        ? "Clamp block and template so that neither can turn. Rout against the rotation of the cutter, from the top end inward, in the passes on the template's own sheet."
        : "Clamp the block. Rout against the rotation of the cutter, from the top end inward, a quarter of the depth at a pass.",
    { hasTemplate: true },
    { hasTemplate: false },
  ),
  byHand: sentence(
    ({ width, depth }: { width: string; depth: string }) =>
      `No router: wedge the block with its bed level. Bore a row of holes, the bit no wider than ${width}, its point no deeper than ${depth}; clear the rest with chisel and router plane.`,
    { width: "19 mm", depth: "5 mm" },
  ),
  tryIron: sentence(
    ({ depth }: { depth: string }) =>
      `Stop at ${depth}, scrape the sheet off the bed, and try the iron with its cap and screw. The head must slide the whole length and touch neither side nor floor. Where it touches, take off a hair more.`,
    { depth: "5 mm" },
  ),
  flat: "Iron flat on both lands and on the pad below the recess.",
  free: "Push the iron over to the line of the left cheek, then of the right: the screw head must not touch the recess.",
} as const;

export const PIN_HOLE = {
  fromToeEnd: "Middle of the hole from the toe end of the cheeks",
  overSole: "Middle of the hole above the sole of the cheeks",
  drill: "Drill",
  clamp:
    "Lay the cheeks inside to inside, the left one on top, soles and toe ends flush, marks together, and clamp them. One hole goes through both.",
  pilot: sentence(
    ({ hasGuide }: { hasGuide: boolean }) =>
      `${hasGuide ? "Without the pin guide: prick" : "Prick"} the middle of the hole on the inside of the left cheek, through its layout sheet. Check both distances with a rule. Drill a pilot hole there, square through this cheek alone: once the cheeks are clamped, their insides are hidden.`,
    { hasGuide: true },
    { hasGuide: false },
  ),
  place: "With the pin guide: clamp it on as below. Check both distances with a rule before you drill.",
  bore: "Bore through both at once into a backing board, square to the insides, with a bit that leaves a clean edge. Try the drill in waste first and measure the hole it makes.",
  otherDrill: sentence(
    ({ clearance }: { clearance: string }) => `Another drill: make the tenons ${clearance} thinner than its hole.`,
    { clearance: "0.2 mm" },
  ),
  noPegs: "Leave the peg holes for the dry fit: there they go through cheeks and blocks together.",
  rod: "A rod the size of the hole, put through both cheeks, stands square to their insides.",
  alike: "Measured from sole and toe, both cheeks the same.",
} as const;
