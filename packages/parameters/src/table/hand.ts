// What this maker's hands and shop can hold: each ± is two standard deviations of a normal error; 0 where there is none.
import { angle, choice, length } from "../parameter.ts";
import { COMMON_PRACTICE, ownAssumption } from "./sources.ts";

const SHOP_PRACTICE = `${COMMON_PRACTICE}; the maker's own trial pieces tell better`;

const TRIAL_PIECES = ownAssumption("the maker's own trial pieces tell");

const heldLength = (value: number, max: number, name: string, help: string, source = SHOP_PRACTICE) =>
  length({
    default: value,
    min: 0,
    max,
    step: 0.01,
    name,
    help: `${help}: 19 times in 20 it is off by no more than this.`,
    source,
  });
const heldAngle = (value: number, name: string, help: string) =>
  angle({
    default: value,
    min: 0,
    max: 5,
    step: 0.05,
    name,
    help: `${help}: 19 times in 20 it is off by no more than this.`,
    source: SHOP_PRACTICE,
  });

export const hand = {
  placing: choice({
    choices: ["contact", "marks"],
    default: "contact",
    name: "placing of front block",
    help: "How the front block is placed at glue-up: contact (slid back until it touches the iron, whose edge is clamped above the sole of the blank) or marks (set to its mark).",
    source: COMMON_PRACTICE,
  }),
  caliper: heldLength(0.02, 1, "caliper reading", "Iron and cap iron thickness as read"),
  sawAngle: heldAngle(0.25, "sawn angle", "Bed and ramp angle as sawn and trued"),
  angleReading: heldAngle(0.1, "angle reading", "An angle as read once it is cut"),
  rampForm: heldLength(0.3, 5, "ramp curve", "Curve of a curved ramp, square to it, as shaped to its template"),
  pinHole: heldLength(0.15, 5, "pin hole position", "Position of the pin hole, along and above the sole"),
  pinDepth: heldLength(0.1, 2, "cross pin as made", "Width and depth of the cross pin as made"),
  wedgeTaper: heldAngle(0.1, "wedge taper", "Wedge angle as planed"),
  wedgeThickness: heldLength(0.05, 2, "wedge thickness", "Thickness of the wedge tip as planed"),
  placement: heldLength(0.2, 5, "block placement", "Position of a block against its mark at glue-up"),
  edgeHeight: heldLength(
    0.05,
    2,
    "edge height at contact",
    "Height of the edge above the sole of the blank when the front block touches it",
  ),
  creep: heldLength(
    0.1,
    5,
    "creep under clamps",
    "Movement of the blocks on their pegs under the clamps",
    TRIAL_PIECES,
  ),
  frontSkew: heldLength(
    0.1,
    5,
    "front block out of square",
    "How far out of square the front block is glued, along the sole over the core width",
    TRIAL_PIECES,
  ),
  bedSkew: heldLength(
    0.1,
    5,
    "bed out of square",
    "How far out of square the bed is trued, along the sole over the core width",
    TRIAL_PIECES,
  ),
  planing: heldLength(0.05, 2, "sole planing", "Wood planed off the sole against what was to come off"),
  mouthReading: heldLength(0.03, 1, "mouth reading", "Mouth opening as read with feeler leaves"),
  feel: length({
    default: 0.005,
    min: 0,
    max: 0.1,
    step: 0.001,
    name: "feel of feeler leaves",
    help: "How closely a gap under a straightedge is judged by feel: 19 times in 20 it is off by no more than this.",
    source: COMMON_PRACTICE,
  }),
  mouthWithin: length({
    default: 0.1,
    min: 0.01,
    max: 5,
    step: 0.01,
    name: "mouth tolerance",
    help: "How close the mouth should come to its opening, ±. `tolerance` says how well each step must then be done.",
    source: "maker's choice",
  }),
};
