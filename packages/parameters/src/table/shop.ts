// The maker's shop: saw, rules, paper and printer.
import { angle, choice, length } from "../parameter.ts";

const SHOP_SOURCE = "the maker's own shop";

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
    inches: "Letter",
    help: "Paper that the 1:1 sheets are tiled to.",
    source: SHOP_SOURCE,
  }),
  smallestFraction: choice({
    choices: ["1/8", "1/16", "1/32", "1/64"],
    default: "1/64",
    help: "Smallest fraction of an inch that the shop's rules show.",
    source: SHOP_SOURCE,
  }),
  bothUnits: choice({
    choices: ["no", "yes"],
    default: "no",
    help: "Whether the other unit stands behind each length, in brackets.",
    source: "maker's choice",
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
      metric: true,
      min: 80,
      max: 1000,
      step: 5,
      help: "Printer's bed, left to right.",
      source: SHOP_SOURCE,
    }),
    depth: length({
      default: 220,
      metric: true,
      min: 80,
      max: 1000,
      step: 5,
      help: "Printer's bed, front to back.",
      source: SHOP_SOURCE,
    }),
    height: length({
      default: 220,
      metric: true,
      min: 50,
      max: 1000,
      step: 5,
      help: "Printer's height.",
      source: SHOP_SOURCE,
    }),
  },
};
