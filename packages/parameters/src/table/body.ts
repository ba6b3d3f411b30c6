// The finished body, the two slopes, the mouth and the sole.
import { angle, angleOrAuto, choice, length, lengthOrAuto } from "../parameter.ts";
import { COMMON_PRACTICE } from "./sources.ts";

export const body = {
  length: length({
    default: 230,
    min: 60,
    max: 900,
    step: 1,
    name: "plane length",
    help: "Finished length, toe to heel.",
    source: COMMON_PRACTICE,
  }),
  height: length({
    default: 58,
    min: 20,
    max: 150,
    name: "plane height",
    help: "Finished height, trued sole to the highest point of the top.",
    source: COMMON_PRACTICE,
  }),
  cheek: length({
    default: 8,
    min: 2,
    max: 40,
    name: "cheek thickness",
    help: "Finished thickness of each cheek.",
    source: COMMON_PRACTICE,
  }),
  sideClearance: length({
    default: 1.6,
    min: 0.1,
    max: 10,
    name: "iron side play",
    help: "Core width less iron width.",
    source: COMMON_PRACTICE,
  }),
  trim: length({
    default: 25.4,
    min: 0,
    max: 120,
    name: "waste at ends",
    help: "Length of the blank beyond the finished plane, both ends together.",
    source: COMMON_PRACTICE,
  }),
  outline: choice({
    choices: ["flat", "arched"],
    default: "flat",
    name: "top outline",
    help: "Shape of the finished top from the side: flat, or arched (two arcs that meet level at the crown).",
    source: "maker's choice",
  }),
  crown: lengthOrAuto({
    min: 0,
    max: 900,
    step: 1,
    auto: "above the bed at half height, where pin and wedge need the wood",
    name: "crown from toe",
    help: "Arched top: from the toe to the crown, the highest point.",
    source: "maker's choice",
  }),
  toeHeight: lengthOrAuto({
    min: 5,
    max: 150,
    auto: "70 % of the height",
    name: "toe height",
    help: "Arched top: height at the toe.",
    source: "maker's choice",
  }),
  heelHeight: lengthOrAuto({
    min: 5,
    max: 150,
    auto: "60 % of the height",
    name: "heel height",
    help: "Arched top: height at the heel.",
    source: "maker's choice",
  }),
};

export const bed = {
  angle: angle({
    default: 47,
    min: 35,
    max: 65,
    name: "bed angle",
    help: "Angle of the bed to the sole.",
    source: COMMON_PRACTICE,
  }),
  featherChamfer: length({
    default: 3,
    min: 0,
    max: 20,
    name: "feather chamfer",
    help: "Height above the sole of the blank at which the feather edge of the bed tip is cut off square. 0 for none.",
    source: COMMON_PRACTICE,
  }),
};

export const ramp = {
  angle: angleOrAuto({
    min: 40,
    max: 85,
    auto: "107° less the bed angle; a curved ramp uses its wear angle",
    name: "ramp angle",
    help: "Straight ramp: angle to the sole.",
    source: `${COMMON_PRACTICE}: 62 for a 45 bed, one degree less for each degree steeper`,
  }),
  shape: choice({
    choices: ["auto", "straight", "curved"],
    default: "auto",
    name: "ramp shape",
    help: "One straight cut, or a straight wear with a curve above it. auto: straight up to a bed of 50°.",
    source: COMMON_PRACTICE,
  }),
  wearAngle: angle({
    default: 75,
    min: 50,
    max: 88,
    name: "wear angle",
    help: "Curved ramp: angle of the straight wear to the sole.",
    source: COMMON_PRACTICE,
  }),
  wearHeight: length({
    default: 6,
    min: 0.5,
    max: 40,
    name: "wear height",
    help: "Curved ramp: height of the wear above the trued sole.",
    source: COMMON_PRACTICE,
  }),
  exitAngle: angle({
    default: 45,
    min: 20,
    max: 80,
    name: "exit angle",
    help: "Curved ramp: angle to the sole where the curve ends and the ramp runs on straight.",
    source: COMMON_PRACTICE,
  }),
  radius: lengthOrAuto({
    min: 5,
    max: 1000,
    step: 1,
    auto: "largest radius that leaves enough room between cross pin and ramp",
    name: "ramp radius",
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
    name: "mouth from toe",
    help: "From the finished toe to the cutting edge at the trued sole.",
    source: COMMON_PRACTICE,
  }),
  opening: length({
    default: 0.15,
    min: 0,
    max: 10,
    step: 0.05,
    name: "mouth opening",
    help: "Mouth wanted at the trued sole, cutting edge to ramp.",
    source: COMMON_PRACTICE,
  }),
};

export const sole = {
  allowance: length({
    default: 3,
    min: 0,
    max: 20,
    name: "sole allowance",
    help: "Wood left under the sole at glue-up, to true the sole and open the mouth.",
    source: COMMON_PRACTICE,
  }),
};
