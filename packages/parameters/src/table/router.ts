// The router that is steered by a program: how far it goes, where its zero is, how parts are held.
import { angle, choice, length } from "../parameter.ts";
import { COMMON_PRACTICE, SHOP_SOURCE } from "./sources.ts";

const travel = (name: string, help: string) =>
  length({
    default: 0,
    min: 0,
    max: 5000,
    step: 5,
    name,
    help: `${help} 0 for no router.`,
    source: SHOP_SOURCE,
  });

export const router = {
  area: {
    width: travel("router travel in x", "How far the router's cutter goes along x."),
    depth: travel("router travel in y", "How far the router's cutter goes along y."),
    height: travel("router travel in z", "How far the router's cutter goes up from the spoilboard."),
  },
  zero: choice({
    choices: ["corner-top", "corner-spoilboard"],
    default: "corner-top",
    name: "program zero",
    help: "Where a program's zero is: the stock's lower left corner, at its top (corner-top) or on the spoilboard under it (corner-spoilboard).",
    source: SHOP_SOURCE,
  }),
  units: choice({
    choices: ["mm", "in"],
    default: "mm",
    name: "program unit",
    help: "Unit of the lengths in a program.",
    source: SHOP_SOURCE,
  }),
  toolChange: choice({
    choices: ["pause", "files", "m6"],
    default: "pause",
    name: "cutter change",
    help: "How a program changes its cutter: pause (the program stops with the cutter raised), files (a program for each cutter) or m6 (the control does it).",
    source: SHOP_SOURCE,
  }),
  direction: choice({
    choices: ["climb", "conventional"],
    default: "conventional",
    name: "cutting direction",
    help: "Which way the cutter goes round: climb (with its teeth) or conventional (against them). Climb wants a machine without play.",
    source: COMMON_PRACTICE,
  }),
  rapidHeight: length({
    default: 6,
    min: 2,
    max: 50,
    name: "rapid height",
    help: "How high over the stock the cutter travels between cuts. Clamps within its way must be lower.",
    source: COMMON_PRACTICE,
  }),
  margin: length({
    default: 20,
    min: 0,
    max: 100,
    name: "stock margin",
    help: "Wood on each side of a part for the cutter's way round it and for holding it.",
    source: "maker's choice",
  }),
  web: length({
    default: 4,
    min: 0,
    max: 50,
    name: "web between parts",
    help: "Wood left between the cutter's ways round two parts on one sheet. It carries their tabs.",
    source: COMMON_PRACTICE,
  }),
  through: length({
    default: 0.3,
    min: 0,
    max: 3,
    name: "cut into spoilboard",
    help: "How far a through cut goes into the spoilboard.",
    source: COMMON_PRACTICE,
  }),
  engraving: length({
    default: 0,
    min: 0,
    max: 1,
    step: 0.1,
    name: "engraving depth",
    help: "How deep the programs engrave marks into cheeks and layers and names into jigs. 0 for no engraving.",
    source: "maker's choice",
  }),
  rampAngle: angle({
    default: 4,
    min: 0.5,
    max: 30,
    name: "ramp-in angle",
    help: "How steeply an end mill goes down into the wood, along its way or round a helix.",
    source: COMMON_PRACTICE,
  }),
  tabs: {
    width: length({
      default: 8,
      min: 2,
      max: 50,
      name: "tab width",
      help: "Length of the bridges that hold a part in its stock.",
      source: COMMON_PRACTICE,
    }),
    height: length({
      default: 1.5,
      min: 0.5,
      max: 20,
      name: "tab height",
      help: "Height of the bridges that hold a part in its stock.",
      source: COMMON_PRACTICE,
    }),
    spacing: length({
      default: 120,
      min: 30,
      max: 1000,
      step: 5,
      name: "tab spacing",
      help: "Longest way round a part from tab to tab.",
      source: COMMON_PRACTICE,
    }),
  },
};
