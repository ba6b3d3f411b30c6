// The wood and its climate, the force on the iron, and the shop.
import {
  angle,
  angleOrAuto,
  choice,
  forcePerLength,
  humidity,
  length,
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
