// The finished body, the two slopes, the mouth and the sole.
import { angle, angleOrAuto, choice, length, lengthOrAuto } from "../parameter.ts";

const TRADE = "common practice, no published source";

export const body = {
  length: length({
    default: 230,
    min: 60,
    max: 900,
    step: 1,
    help: "Finished length of the plane, toe to heel.",
    source: TRADE,
  }),
  height: length({
    default: 58,
    min: 20,
    max: 150,
    help: "Finished height, trued sole to the highest point of the top.",
    source: TRADE,
  }),
  cheek: length({
    default: 8,
    min: 2,
    max: 40,
    help: "Finished thickness of each cheek; 8 mm (5/16 in) or more is usual.",
    source: TRADE,
  }),
  sideClearance: length({
    default: 1.6,
    min: 0.1,
    max: 10,
    help: "How much wider the core is than the iron, in all; 1.6 mm (1/16 in) is usual.",
    source: TRADE,
  }),
  trim: length({
    default: 25.4,
    min: 0,
    max: 120,
    help: "How much longer the blank is than the finished plane, both ends together; 1 in is usual.",
    source: TRADE,
  }),
  outline: choice({
    choices: ["flat", "arched"],
    default: "flat",
    help: "Top of the finished body from the side: flat, or two arcs that meet level at the crown.",
    source: "maker's choice",
  }),
  crown: lengthOrAuto({
    min: 0,
    max: 900,
    step: 1,
    auto: "half the height up the bed line, where the pin and the wedge need the wood",
    help: "Arched outline: from the toe to the crown, the highest point of the top.",
    source: "maker's choice",
  }),
  toeHeight: lengthOrAuto({
    min: 5,
    max: 150,
    auto: "70 % of the height",
    help: "Arched outline: height of the top at the toe.",
    source: "maker's choice",
  }),
  heelHeight: lengthOrAuto({
    min: 5,
    max: 150,
    auto: "60 % of the height",
    help: "Arched outline: height of the top at the heel.",
    source: "maker's choice",
  }),
};

export const bed = {
  angle: angle({ default: 47, min: 35, max: 65, help: "Bed angle, from the sole up to the bed.", source: TRADE }),
  featherChamfer: length({
    default: 3,
    min: 0,
    max: 20,
    help: "Height of the square cut that takes the feather off the bed's tip, from the blank's sole; 0 for none.",
    source: TRADE,
  }),
};

export const ramp = {
  angle: angleOrAuto({
    min: 40,
    max: 85,
    auto: "107 less the bed angle for a straight ramp; a curved ramp stands at its wear's angle",
    help: "Ramp angle of a straight ramp, from the sole up to the ramp.",
    source: "common practice, no published source: 62 for a 45 bed, one degree less for each degree steeper",
  }),
  shape: choice({
    choices: ["auto", "straight", "curved"],
    default: "auto",
    help: "Ramp in one straight cut, or a straight wear and a curve; auto takes the straight one up to a 50 bed.",
    source: TRADE,
  }),
  wearAngle: angle({
    default: 75,
    min: 50,
    max: 88,
    help: "Curved ramp: angle of the straight wear, from the sole.",
    source: TRADE,
  }),
  wearHeight: length({
    default: 6,
    min: 0.5,
    max: 40,
    help: "Curved ramp: height of the wear over the trued sole.",
    source: TRADE,
  }),
  exitAngle: angle({
    default: 45,
    min: 20,
    max: 80,
    help: "Curved ramp: angle from the sole at which the curve ends and the ramp runs on straight.",
    source: TRADE,
  }),
  radius: lengthOrAuto({
    min: 5,
    max: 1000,
    step: 1,
    auto: "the largest radius that leaves the room wanted between cross pin and ramp",
    help: "Curved ramp: radius of the curve above the wear.",
    source: "plane geometry: tangent arc",
  }),
};

export const mouth = {
  fromToe: lengthOrAuto({
    min: 10,
    max: 600,
    step: 1,
    auto: "a third of the length",
    help: "From the finished toe to the cutting edge at the trued sole.",
    source: TRADE,
  }),
  opening: length({
    default: 0.15,
    min: 0,
    max: 10,
    step: 0.05,
    help: "Mouth opening wanted at the trued sole, cutting edge to ramp.",
    source: TRADE,
  }),
};

export const sole = {
  allowance: length({
    default: 3,
    min: 0,
    max: 20,
    help: "Wood left under the sole at glue-up, to be taken off when the sole is trued and the mouth opened.",
    source: TRADE,
  }),
};
