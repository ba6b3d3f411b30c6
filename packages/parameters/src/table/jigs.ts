// What the jigs are made for: printer, router, drill, and the cutter that cuts them from sheet.
import { choice, length, lengthOrAuto } from "../parameter.ts";

const SHOP_SOURCE = "the maker's own shop";

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
