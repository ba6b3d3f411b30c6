// What the jigs are made for: printer, router, drill, and the cutter that cuts them from sheet.
import { choice, length, lengthOrAuto, lengths } from "../parameter.ts";
import { SHOP_SOURCE } from "./sources.ts";

export const jigs = {
  clearance: length({
    default: 0.2,
    min: 0,
    max: 1.5,
    step: 0.05,
    name: "jig clearance",
    help: "Gap on each side between a printed jig and the wood that it slides over. Jigs cut from sheet have none.",
    source: "printer's own allowance",
  }),
  holeClearance: lengthOrAuto({
    min: 0,
    max: 1.5,
    step: 0.005,
    auto: "half of what the pin's hole may be off, hand.pinHole: drill and pegs together then keep to it",
    name: "hole clearance",
    help: "Gap all round in the holes of a printed jig for drill and pegs. Jigs cut from sheet have none.",
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
  plate: lengths({
    words: ["auto"],
    default: "auto",
    min: 2,
    max: 60,
    most: 12,
    auto: "the thicknesses of the plies in sheets; without any, each jig as thick as it is printed",
    name: "jig plates",
    help: "Thicknesses of the plates at hand for jigs cut from sheet, as measured: [6, 9, 12]. Each jig takes the one that serves it, or a few glued face to face.",
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
