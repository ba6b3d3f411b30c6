// What came out at the bench, in the order of the work; every row stays empty until its step is done.
import { choice, measuredAngle, measuredLength } from "../parameter.ts";

/** Steps of the build that are measured or marked done, in order. */
export const STEP_NAMES = [
  "iron",
  "core",
  "cuts",
  "bed",
  "recess",
  "pin-hole",
  "wedge",
  "dry-fit",
  "glue-up",
  "sole",
  "mouth",
  "shaping",
] as const;

const BENCH = "measured at the bench";
const length = (min: number, max: number, help: string, step = 0.05) =>
  measuredLength({ min, max, step, help, source: BENCH });
const angle = (min: number, max: number, help: string) => measuredAngle({ min, max, step: 0.05, help, source: BENCH });

export const measured = {
  done: choice({
    choices: ["nothing", ...STEP_NAMES],
    default: "nothing",
    help: "Last step that is done; a measured value says so by itself.",
    source: "order of the work",
  }),
  ironThickness: length(0.8, 12, "Iron's thickness where it lies on the bed."),
  ironWidth: length(8, 120, "Iron's width at its cutting edge."),
  coreWidth: length(5, 200, "Core's width as milled."),
  cheekThickness: length(1, 60, "Cheek's thickness as milled, the thinner of the two."),
  rampAngle: angle(30, 89, "Ramp angle as cut (of a curved ramp, its wear's)."),
  rampRadius: length(5, 1000, "Curved ramp: radius as shaped.", 1),
  bedAngle: angle(25, 75, "Bed angle as trued."),
  recessWidth: length(1, 120, "Recess's width as routed."),
  recessDepth: length(0.2, 40, "Recess's depth as routed, square to the bed."),
  pinHoleFromToe: length(1, 850, "Middle of the pin's hole, from the line of the finished toe."),
  pinHoleHeight: length(3, 200, "Middle of the pin's hole, over the blank's sole."),
  wedgeAngle: angle(0.5, 30, "Wedge angle as cut."),
  wedgeTip: length(0.2, 30, "Wedge's thickness at its tip."),
  wedgeLength: length(10, 400, "Wedge's length, tip to butt."),
  bedTipX: length(
    5,
    850,
    "Bed's tip on the blank's sole after glue-up (where the bed's line meets it, chamfer or not), from the line of the finished toe.",
  ),
  rampTipX: length(5, 850, "Ramp's tip on the blank's sole after glue-up, from the line of the finished toe."),
  allowanceLeft: length(0, 30, "Wood still left under the planned sole once it is flat."),
  mouthSeen: length(0, 20, "Mouth opening seen with the edge set at the sole as it is."),
};
