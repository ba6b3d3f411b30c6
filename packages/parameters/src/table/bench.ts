// The wood and its climate, the force on the iron, and the billet.
import {
  angle,
  angleOrAuto,
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
