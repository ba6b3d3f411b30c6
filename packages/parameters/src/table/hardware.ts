// What holds the iron: recess for the cap iron's screw, wedge, cross pin; and the pegs that place the cheeks.
import { angle, choice, count, length, lengthOrAuto } from "../parameter.ts";
import { COMMON_PRACTICE } from "./sources.ts";

export const recess = {
  width: lengthOrAuto({
    min: 3,
    max: 100,
    auto: "screw head diameter plus recess clearance",
    name: "recess width",
    help: "Width of the recess in the bed.",
    source: COMMON_PRACTICE,
  }),
  depth: lengthOrAuto({
    min: 0.5,
    max: 30,
    auto: "screw head height plus 1.6 mm",
    name: "recess depth",
    help: "Depth of the recess, square to the bed.",
    source: COMMON_PRACTICE,
  }),
  clearance: length({
    default: 3,
    min: 0.2,
    max: 20,
    name: "recess clearance",
    help: "Recess width less screw head diameter.",
    source: COMMON_PRACTICE,
  }),
  travel: length({
    default: 6,
    min: 0,
    max: 40,
    name: "screw head travel",
    help: "How far the screw head may slide below its place while you set the iron.",
    source: COMMON_PRACTICE,
  }),
  cutter: length({
    default: 12.7,
    min: 2,
    max: 40,
    name: "recess cutter diameter",
    help: "Diameter of the router cutter, which rounds the lower end of the recess.",
    source: "maker's cutter",
  }),
};

export const wedge = {
  angle: angle({
    default: 6,
    min: 2,
    max: 20,
    name: "wedge angle",
    help: "Angle between the lower and the upper face of the wedge.",
    source: COMMON_PRACTICE,
  }),
  tip: length({
    default: 3,
    min: 0.5,
    max: 20,
    name: "wedge tip thickness",
    help: "Thickness of the wedge at its tip.",
    source: COMMON_PRACTICE,
  }),
  tipFromEdge: length({
    default: 22,
    min: 3,
    max: 120,
    name: "wedge tip from edge",
    help: "From the cutting edge up the iron to the wedge tip.",
    source: COMMON_PRACTICE,
  }),
  length: lengthOrAuto({
    min: 20,
    max: 300,
    step: 1,
    auto: "ends 25 mm above the top, for tapping",
    name: "wedge length",
    help: "Length of the wedge along the iron, tip to butt.",
    source: COMMON_PRACTICE,
  }),
  clearance: length({
    default: 1.6,
    min: 0.1,
    max: 10,
    name: "wedge side play",
    help: "Core width less wedge width.",
    source: COMMON_PRACTICE,
  }),
};

export const pin = {
  section: choice({
    choices: ["flatted", "round"],
    default: "flatted",
    name: "cross pin section",
    help: "Section of the cross pin: flatted (half round above, square below, flat on the wedge) or round.",
    source: COMMON_PRACTICE,
  }),
  diameter: lengthOrAuto({
    min: 4,
    max: 40,
    auto: "12.7 mm (1/2 in) where it fits, else two ninths of the height of the body",
    name: "cross pin diameter",
    help: "Diameter of the cross pin; of a flatted pin, its width and depth.",
    source: COMMON_PRACTICE,
  }),
  tenon: lengthOrAuto({
    min: 2,
    max: 38,
    auto: "9.5 mm (3/8 in) where it fits, else three quarters of the cross pin",
    name: "tenon diameter",
    help: "Diameter of the round tenons on which the cross pin turns.",
    source: COMMON_PRACTICE,
  }),
  height: lengthOrAuto({
    min: 8,
    max: 140,
    auto: "the height that leaves the most room all round the pin",
    name: "cross pin height",
    help: "Height of the cross pin axis above the trued sole.",
    source: "plane geometry: largest smallest margin",
  }),
  tenonLength: lengthOrAuto({
    min: 2,
    max: 60,
    auto: "ends 0.5 mm inside the cheek, so that no tenon stands out when the body shrinks",
    name: "tenon length",
    help: "Length of each tenon.",
    source: COMMON_PRACTICE,
  }),
  tenonClearance: length({
    default: 0.2,
    inches: 1 / 64, // a 3/8 in tenon in a 25/64 in hole: for 0.2 mm no drill is sold
    min: 0.05,
    max: 2,
    step: 0.05,
    name: "tenon play",
    help: "Diameter of the hole in the cheek less that of the tenon, so that the pin turns freely.",
    source: COMMON_PRACTICE,
  }),
  endClearance: length({
    default: 0.5,
    min: 0,
    max: 5,
    step: 0.05,
    name: "gap at pin shoulder",
    help: "Gap between each shoulder of the cross pin and the cheek.",
    source: "plane geometry: a core of beech for a 60 mm iron still leaves 0.1 mm on the driest days",
  }),
};

export const pegs = {
  diameter: length({
    default: 6,
    min: 2,
    max: 20,
    name: "peg diameter",
    help: "Diameter of the pegs that locate the cheeks at glue-up.",
    source: COMMON_PRACTICE,
  }),
  perEnd: count({
    default: 2,
    min: 0,
    max: 2,
    name: "pegs at each end",
    help: "Pegs at each end, in the waste that is trimmed off. Two stand one above the other.",
    source: COMMON_PRACTICE,
  }),
};
