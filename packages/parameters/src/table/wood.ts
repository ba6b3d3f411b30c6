// The wood and its climate, and the forces on the iron.
import { angle, angleOrAuto, forcePerLength, humidity, percentOrAuto, ratio, temperature, text } from "../parameter.ts";
import { SHOP_SOURCE } from "./sources.ts";

const HANDBOOK = "Wood Handbook (FPL-GTR-190, 2010)";
const ENGINEERING = "engineering estimate, no published table";

export const wood = {
  body: text({
    default: "beech, american",
    maxLength: 60,
    name: "wood of body",
    help: "Wood of the body, as the wood tables name it.",
    source: HANDBOOK,
  }),
  pin: text({
    default: "same",
    maxLength: 60,
    name: "wood of cross pin",
    help: "Wood of the cross pin; `same` for the wood of the body.",
    source: HANDBOOK,
  }),
  wedge: text({
    default: "same",
    maxLength: 60,
    name: "wood of wedge",
    help: "Wood of the wedge; `same` for the wood of the body.",
    source: HANDBOOK,
  }),
  rings: angle({
    default: 20,
    min: 0,
    max: 90,
    step: 5,
    name: "ring angle of body",
    help: "Angle of the growth rings to the sole: 0 flat sawn, 90 quarter sawn.",
    source: "common practice, no published source: rift or flat sawn reads smoother on the sole",
  }),
  wedgeRings: angleOrAuto({
    min: 0,
    max: 90,
    step: 5,
    auto: "that of the body, as in a wedge cut from the throat offcut",
    name: "ring angle of wedge",
    help: "Angle of the growth rings to the wide faces of the wedge: 0 flat sawn, 90 quarter sawn.",
    source: "measured on the maker's wedge",
  }),
  moisture: percentOrAuto({
    min: 2,
    max: 30,
    auto: "midway between the driest and the dampest days",
    name: "wood moisture when cut",
    help: "Moisture of the wood when it is cut, percent of ovendry weight.",
    source: "measured with a moisture meter",
  }),
  driest: {
    temperature: temperature({
      default: 21,
      min: -20,
      max: 50,
      name: "temperature, driest days",
      help: "Shop temperature on the driest days.",
      source: SHOP_SOURCE,
    }),
    humidity: humidity({
      default: 30,
      min: 1,
      max: 99,
      name: "humidity, driest days",
      help: "Relative humidity in the shop on the driest days.",
      source: SHOP_SOURCE,
    }),
  },
  dampest: {
    temperature: temperature({
      default: 21,
      min: -20,
      max: 50,
      name: "temperature, dampest days",
      help: "Shop temperature on the dampest days.",
      source: SHOP_SOURCE,
    }),
    humidity: humidity({
      default: 65,
      min: 1,
      max: 99,
      name: "humidity, dampest days",
      help: "Relative humidity in the shop on the dampest days.",
      source: SHOP_SOURCE,
    }),
  },
};

export const hold = {
  forcePerMm: forcePerLength({
    default: 5,
    min: 0.1,
    max: 60,
    name: "cutting force, fine shaving",
    help: "Cutting force per mm of edge in a fine shaving.",
    source: ENGINEERING,
  }),
  catchPerMm: forcePerLength({
    default: 15,
    min: 0.1,
    max: 120,
    name: "cutting force, catch",
    help: "Cutting force per mm of edge when the iron catches.",
    source: ENGINEERING,
  }),
  friction: {
    steel: ratio({
      default: 0.25,
      min: 0.02,
      max: 1,
      name: "friction, wood on iron",
      help: "Friction of wood on the iron or the cap iron.",
      source: ENGINEERING,
    }),
    steelLow: ratio({
      default: 0.15,
      min: 0.02,
      max: 1,
      name: "lowest friction, wood on iron",
      help: "Lowest friction of wood on the iron or the cap iron.",
      source: ENGINEERING,
    }),
    steelHigh: ratio({
      default: 0.4,
      min: 0.02,
      max: 1,
      name: "highest friction, wood on iron",
      help: "Highest friction of wood on the iron or the cap iron.",
      source: ENGINEERING,
    }),
    wood: ratio({
      default: 0.35,
      min: 0.02,
      max: 1,
      name: "friction, wood on wood",
      help: "Friction of wood on wood.",
      source: ENGINEERING,
    }),
    woodLow: ratio({
      default: 0.25,
      min: 0.02,
      max: 1,
      name: "lowest friction, wood on wood",
      help: "Lowest friction of wood on wood.",
      source: ENGINEERING,
    }),
    woodHigh: ratio({
      default: 0.5,
      min: 0.02,
      max: 1,
      name: "highest friction, wood on wood",
      help: "Highest friction of wood on wood.",
      source: ENGINEERING,
    }),
  },
  safety: ratio({
    default: 3,
    min: 1,
    max: 20,
    step: 0.5,
    name: "factor of safety",
    help: "Factor of safety on the published average strengths.",
    source: ENGINEERING,
  }),
};
