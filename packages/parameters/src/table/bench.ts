// The wood and its climate, the force on the iron, the shop and its jigs.
import {
  angle,
  angleOrAuto,
  choice,
  forcePerLength,
  humidity,
  length,
  lengthOrAuto,
  percentOrAuto,
  ratio,
  temperature,
  text,
} from "../parameter.ts";

const HANDBOOK = "Wood Handbook (FPL-GTR-190, 2010)";
const ENGINEERING = "engineering estimate, no published table";
const SHOP_SOURCE = "the maker's own shop";

export const wood = {
  body: text({
    default: "beech, american",
    maxLength: 60,
    help: "Species of the body, as the wood table names it.",
    source: HANDBOOK,
  }),
  pin: text({
    default: "same",
    maxLength: 60,
    help: "Species of the cross pin; `same` for the body's.",
    source: HANDBOOK,
  }),
  wedge: text({
    default: "same",
    maxLength: 60,
    help: "Species of the wedge; `same` for the body's.",
    source: HANDBOOK,
  }),
  rings: angle({
    default: 20,
    min: 0,
    max: 90,
    step: 5,
    help: "Angle of the growth rings to the sole: 0 flat sawn, 90 quarter sawn.",
    source: "common practice, no published source: rift or flat sawn reads smoother on the sole",
  }),
  wedgeRings: angleOrAuto({
    min: 0,
    max: 90,
    step: 5,
    auto: "the body's, as in a wedge cut out of the throat's waste",
    help: "Angle of the wedge's growth rings to its wide faces: 0 flat sawn, 90 quarter sawn.",
    source: "measured on the maker's wedge",
  }),
  moisture: percentOrAuto({
    min: 2,
    max: 30,
    auto: "midway between the driest and the dampest days",
    help: "Moisture of the wood when it is cut, percent of its ovendry weight.",
    source: "measured with a moisture meter",
  }),
  driest: {
    temperature: temperature({
      default: 21,
      min: -20,
      max: 50,
      help: "Shop's temperature on its driest days.",
      source: SHOP_SOURCE,
    }),
    humidity: humidity({
      default: 30,
      min: 1,
      max: 99,
      help: "Shop's relative humidity on its driest days.",
      source: SHOP_SOURCE,
    }),
  },
  dampest: {
    temperature: temperature({
      default: 21,
      min: -20,
      max: 50,
      help: "Shop's temperature on its dampest days.",
      source: SHOP_SOURCE,
    }),
    humidity: humidity({
      default: 65,
      min: 1,
      max: 99,
      help: "Shop's relative humidity on its dampest days.",
      source: SHOP_SOURCE,
    }),
  },
};

export const hold = {
  forcePerMm: forcePerLength({
    default: 5,
    min: 0.1,
    max: 60,
    help: "Cutting force per mm of edge in a fine shaving.",
    source: ENGINEERING,
  }),
  catchPerMm: forcePerLength({
    default: 15,
    min: 0.1,
    max: 120,
    help: "Cutting force per mm of edge when the iron catches.",
    source: ENGINEERING,
  }),
  friction: {
    steel: ratio({
      default: 0.25,
      min: 0.02,
      max: 1,
      help: "Friction, wood on the iron or cap iron.",
      source: ENGINEERING,
    }),
    steelLow: ratio({ default: 0.15, min: 0.02, max: 1, help: "The same at its lowest.", source: ENGINEERING }),
    steelHigh: ratio({ default: 0.4, min: 0.02, max: 1, help: "The same at its highest.", source: ENGINEERING }),
    wood: ratio({ default: 0.35, min: 0.02, max: 1, help: "Friction, wood on wood.", source: ENGINEERING }),
    woodLow: ratio({ default: 0.25, min: 0.02, max: 1, help: "The same at its lowest.", source: ENGINEERING }),
    woodHigh: ratio({ default: 0.5, min: 0.02, max: 1, help: "The same at its highest.", source: ENGINEERING }),
  },
  safety: ratio({
    default: 3,
    min: 1,
    max: 20,
    step: 0.5,
    help: "Factor of safety on the handbook's average strengths.",
    source: ENGINEERING,
  }),
};

export const shop = {
  kerf: length({ default: 3.2, min: 0.2, max: 8, help: "Width of the saw's cut.", source: SHOP_SOURCE }),
  millingAllowance: length({
    default: 1.5,
    min: 0,
    max: 10,
    help: "Wood left on each face that is still to be surfaced.",
    source: SHOP_SOURCE,
  }),
  jointingPass: length({
    default: 0.8,
    min: 0,
    max: 5,
    help: "What one pass takes off a freshly sawn face of the billet.",
    source: SHOP_SOURCE,
  }),
  paper: choice({
    choices: ["A4", "Letter", "A3", "Tabloid"],
    default: "A4",
    help: "Paper that the 1:1 sheets are tiled to.",
    source: SHOP_SOURCE,
  }),
  smallestFraction: choice({
    choices: ["1/8", "1/16", "1/32", "1/64"],
    default: "1/64",
    help: "Smallest fraction of an inch that the shop's rules show.",
    source: SHOP_SOURCE,
  }),
  sawLimit: angle({
    default: 45,
    min: 20,
    max: 70,
    help: "Furthest that the saw swings from square.",
    source: "common practice, no published source: many mitre saws stop at 45 to 50",
  }),
  printer: {
    width: length({
      default: 220,
      min: 80,
      max: 1000,
      step: 5,
      help: "Printer's bed, left to right.",
      source: SHOP_SOURCE,
    }),
    depth: length({
      default: 220,
      min: 80,
      max: 1000,
      step: 5,
      help: "Printer's bed, front to back.",
      source: SHOP_SOURCE,
    }),
    height: length({ default: 220, min: 50, max: 1000, step: 5, help: "Printer's height.", source: SHOP_SOURCE }),
  },
};

export const billet = {
  length: lengthOrNone("Length of the billet at hand."),
  width: lengthOrNone("Width of the billet at hand, across what will be the sole."),
  height: lengthOrNone("Height of the billet at hand."),
};

function lengthOrNone(help: string) {
  return length({
    default: 0,
    min: 0,
    max: 3000,
    step: 1,
    help: `${help} 0 when it is still to be bought.`,
    source: "measured on the maker's billet",
  });
}

export const jigs = {
  clearance: length({
    default: 0.2,
    min: 0,
    max: 1.5,
    step: 0.05,
    help: "Gap left on each side between a printed jig and the wood that it slides over; jigs cut from sheet have none.",
    source: "printer's own allowance",
  }),
  holeClearance: lengthOrAuto({
    min: 0,
    max: 1.5,
    step: 0.005,
    auto: "half of what the pin's hole may be off, hand.pinHole: drill and pegs together then keep to it",
    help: "Gap left all round in a printed jig's holes for drill and pegs; jigs cut from sheet have none.",
    source: "printer's own allowance, read off the fit test",
  }),
  bush: length({
    default: 0,
    min: 0,
    max: 60,
    help: "Outside diameter of the router's guide bush; 0 for a bearing the cutter's size.",
    source: SHOP_SOURCE,
  }),
  cutterLength: length({
    default: 12.7,
    min: 3,
    max: 80,
    help: "Router's cutter for the recess: from its tip to the bearing on its shank; with a guide bush, how far it reaches under the router's base.",
    source: "maker's cutter",
  }),
  drillBush: length({
    default: 0,
    min: 0,
    max: 60,
    help: "Outside diameter of a drill bush for the pin guide; 0 for none, the guide's hole then leads the drill itself.",
    source: SHOP_SOURCE,
  }),
  fence: choice({
    choices: ["fixed", "slotted"],
    default: "fixed",
    help: "Fences of the recess template: fixed for this core's width, or screwed in slots to suit several widths.",
    source: SHOP_SOURCE,
  }),
  relief: length({
    default: 0,
    min: 0,
    max: 8,
    help: "Radius of the cutter that cuts the flat jigs from sheet; inner corners are relieved by it. 0 for printed jigs.",
    source: "maker's cutter",
  }),
};
