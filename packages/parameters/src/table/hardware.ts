// What holds the iron: recess for the cap iron's screw, wedge, cross pin; and the pegs that place the cheeks.
import { angle, choice, count, length, lengthOrAuto } from "../parameter.ts";

const TRADE = "common practice, no published source";

export const recess = {
  width: lengthOrAuto({
    min: 3,
    max: 100,
    auto: "screw head's diameter and the clearance",
    help: "Width of the recess in the bed.",
    source: TRADE,
  }),
  depth: lengthOrAuto({
    min: 0.5,
    max: 30,
    auto: "screw head's height and 1.6 mm (1/16 in)",
    help: "Depth of the recess, square to the bed.",
    source: TRADE,
  }),
  clearance: length({
    default: 3,
    min: 0.2,
    max: 20,
    help: "How much wider the recess is than the screw's head, in all.",
    source: TRADE,
  }),
  travel: length({
    default: 6,
    min: 0,
    max: 40,
    help: "How far below its place the screw's head may come while the iron is set.",
    source: TRADE,
  }),
  cutter: length({
    default: 12.7,
    min: 2,
    max: 40,
    help: "Diameter of the router's cutter, which rounds the recess's lower end.",
    source: "maker's cutter",
  }),
};

export const wedge = {
  angle: angle({
    default: 6,
    min: 2,
    max: 20,
    help: "Wedge angle, between its lower and its upper side.",
    source: TRADE,
  }),
  tip: length({ default: 3, min: 0.5, max: 20, help: "Thickness of the wedge at its tip.", source: TRADE }),
  tipFromEdge: length({
    default: 22,
    min: 3,
    max: 120,
    help: "From the cutting edge up the iron to the wedge's tip.",
    source: TRADE,
  }),
  length: lengthOrAuto({
    min: 20,
    max: 300,
    step: 1,
    auto: "25 mm out of the top, to be tapped on",
    help: "Length of the wedge along the iron, tip to butt.",
    source: TRADE,
  }),
  clearance: length({
    default: 1.6,
    min: 0.1,
    max: 10,
    help: "How much narrower the wedge is than the core, in all.",
    source: TRADE,
  }),
};

export const pin = {
  section: choice({
    choices: ["flatted", "round"],
    default: "flatted",
    help: "Cross pin's section: flatted (half round above, square below, its flat on the wedge) or round.",
    source: TRADE,
  }),
  diameter: length({ default: 12.7, min: 4, max: 40, help: "Width of the cross pin, and its depth.", source: TRADE }),
  tenon: length({
    default: 9.5,
    min: 2,
    max: 38,
    help: "Diameter of the round tenons in which the cross pin turns.",
    source: TRADE,
  }),
  height: lengthOrAuto({
    min: 8,
    max: 140,
    auto: "where the smallest of the pin's margins is largest",
    help: "Height of the cross pin's axis over the trued sole.",
    source: "plane geometry: largest smallest margin",
  }),
  tenonLength: lengthOrAuto({
    min: 2,
    max: 60,
    auto: "to 0.5 mm short of the cheek's outside, so that no tenon stands out of a body that has shrunk",
    help: "Length of each tenon.",
    source: TRADE,
  }),
  tenonClearance: length({
    default: 0.2,
    inches: 1 / 64, // a 3/8 in tenon in a 25/64 in hole: for 0.2 mm no drill is sold
    min: 0.05,
    max: 2,
    step: 0.05,
    help: "How much larger the cheek's hole is than the tenon, so that the pin turns freely.",
    source: TRADE,
  }),
  endClearance: length({
    default: 0.5,
    min: 0,
    max: 5,
    step: 0.05,
    help: "Gap between each shoulder of the cross pin and the cheek.",
    source: "plane geometry: a core of beech for a 60 mm iron still leaves 0.1 mm on the driest days",
  }),
};

export const pegs = {
  diameter: length({
    default: 6,
    min: 2,
    max: 20,
    help: "Diameter of the pegs that place the cheeks at glue-up.",
    source: TRADE,
  }),
  perEnd: count({
    default: 2,
    min: 0,
    max: 2,
    help: "Pegs at each end, in the waste that is trimmed off; two stand high and low.",
    source: TRADE,
  }),
};
