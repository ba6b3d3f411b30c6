// The shop and its jigs, and the billet at hand.
import { angle, choice, length } from "../parameter.ts";
import { SHOP_SOURCE } from "./sources.ts";

export const shop = {
  kerf: length({
    default: 3.2,
    min: 0.2,
    max: 8,
    name: "saw kerf",
    help: "Width of the saw cut.",
    source: SHOP_SOURCE,
  }),
  millingAllowance: length({
    default: 1.5,
    min: 0,
    max: 10,
    name: "milling allowance",
    help: "Wood left on each face that is still to be surfaced.",
    source: SHOP_SOURCE,
  }),
  jointingPass: length({
    default: 0.8,
    min: 0,
    max: 5,
    name: "jointing pass",
    help: "Wood that one pass takes off a freshly sawn face of the billet.",
    source: SHOP_SOURCE,
  }),
  paper: choice({
    choices: ["A4", "Letter", "A3", "Tabloid"],
    default: "A4",
    name: "paper size",
    help: "Paper on which the 1:1 sheets are printed.",
    source: SHOP_SOURCE,
  }),
  smallestFraction: choice({
    choices: ["1/8", "1/16", "1/32", "1/64"],
    default: "1/64",
    name: "smallest fraction",
    help: "Smallest fraction of an inch on the shop's rules.",
    source: SHOP_SOURCE,
  }),
  sawLimit: angle({
    default: 45,
    min: 20,
    max: 70,
    name: "saw swing",
    help: "Furthest angle from square to which the saw swings.",
    source: "common practice, no published source: many mitre saws stop at 45 to 50",
  }),
  printer: {
    width: length({
      default: 220,
      min: 80,
      max: 1000,
      step: 5,
      name: "printer width",
      help: "Bed of the 3D printer, left to right.",
      source: SHOP_SOURCE,
    }),
    depth: length({
      default: 220,
      min: 80,
      max: 1000,
      step: 5,
      name: "printer depth",
      help: "Bed of the 3D printer, front to back.",
      source: SHOP_SOURCE,
    }),
    height: length({
      default: 220,
      min: 50,
      max: 1000,
      step: 5,
      name: "printer height",
      help: "Greatest height that the 3D printer prints.",
      source: SHOP_SOURCE,
    }),
  },
};

export const billet = {
  length: lengthOrNone("billet length", "Length of the billet at hand."),
  width: lengthOrNone("billet width", "Width of the billet at hand, across the sole."),
  height: lengthOrNone("billet height", "Height of the billet at hand."),
};

function lengthOrNone(name: string, help: string) {
  return length({
    default: 0,
    min: 0,
    max: 3000,
    step: 1,
    name,
    help: `${help} 0 if it is still to be bought.`,
    source: "measured on the maker's billet",
  });
}

export const jigs = {
  clearance: length({
    default: 0.2,
    min: 0,
    max: 1.5,
    step: 0.05,
    name: "jig clearance",
    help: "Gap all round between a jig and what it fits.",
    source: "printer's own allowance, read off the fit test",
  }),
  bush: length({
    default: 0,
    min: 0,
    max: 60,
    name: "guide bush diameter",
    help: "Outside diameter of the router's guide bush. 0 for a bearing of the cutter's size.",
    source: SHOP_SOURCE,
  }),
  cutterLength: length({
    default: 12.7,
    min: 3,
    max: 80,
    name: "recess cutter length",
    help: "Router cutter for the recess: from its tip to the bearing on its shank; with a guide bush, its reach below the router base.",
    source: "maker's cutter",
  }),
  drillBush: length({
    default: 0,
    min: 0,
    max: 60,
    name: "drill bush diameter",
    help: "Outside diameter of the drill bush in the pin guide. 0 for none: the hole in the guide leads the drill.",
    source: SHOP_SOURCE,
  }),
  fence: choice({
    choices: ["fixed", "slotted"],
    default: "fixed",
    name: "template fences",
    help: "Fences of the recess template: fixed for this core width, or slotted to suit several widths.",
    source: SHOP_SOURCE,
  }),
  relief: length({
    default: 0,
    min: 0,
    max: 8,
    name: "corner relief radius",
    help: "Radius of the cutter that cuts the flat jigs from sheet; inner corners are relieved by it. 0 for printed jigs.",
    source: "maker's cutter",
  }),
};
