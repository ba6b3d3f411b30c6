// What came out at the bench, in the order of the work; every row stays empty until its step is done. One row says all of a value.
import { choice, measuredAngle, measuredLength } from "../parameter.ts";
import type { hand } from "./hand.ts";
import { STEP_NAMES } from "./step-names.ts";

type Hand = keyof typeof hand;

/** What is known of a measured value beside its limits: plain data, read where the build is followed. */
export interface Measurement {
  /** Step at which it is measured. */
  readonly at: (typeof STEP_NAMES)[number];
  /** Parameter that asked for it. */
  readonly parameter: string;
  /** Whether it takes that parameter's place and does nothing else; what more a value does stands with its step's effect. */
  readonly replaces?: true;
  /** Whether what `auto` came to there is written into the file beside what was measured. */
  readonly keepsAuto?: true;
  /** Figure that it is expected to be; the parameter's own value where neither this nor a rule is named. */
  readonly figure?: string;
  /** Rule by which it is expected, where no figure says it. */
  readonly rule?: string;
  /** Figure that is no more than this value, once it is read. */
  readonly tells?: string;
  /** Sources of error that it replaces by that of its reading. */
  readonly errors?: readonly string[];
  /** How well it is read. */
  readonly reading?: Hand;
  /** How well it is held, where no source of error says it. */
  readonly held?: Hand;
  /** An iron is bought, not planed to a size: the file may hold what its seller says of it. */
  readonly isBought?: true;
  /** Measured along the sole from the finished toe's line, half a trim inside the blank's end. */
  readonly isFromToe?: true;
  /**
   * Read on the way to what is wanted: any value from nothing up to its parameter is right and has cost nothing. The
   * parameter counts as it was planned, or as the plane stands when the step begins.
   */
  readonly upTo?: "planned" | "standing";
  /** Taken as its parameter wants it, not as it is expected, where its step is done without a reading. */
  readonly isTakenAsWanted?: true;
  /** How often it is read before its step is done, where that is more than once. */
  readonly times?: number;
  /** Later value that tells the same, so that this one need not be read. */
  readonly toldBy?: string;
}

const BENCH = "measured at the bench";
const length = <const M extends Measurement>(min: number, max: number, help: string, facts: M, step = 0.05) => ({
  ...measuredLength({ min, max, step, help, source: BENCH }),
  ...facts,
});
const angle = <const M extends Measurement>(min: number, max: number, help: string, facts: M) => ({
  ...measuredAngle({ min, max, step: 0.05, help, source: BENCH }),
  ...facts,
});

export const measured = {
  done: choice({
    choices: ["nothing", ...STEP_NAMES],
    default: "nothing",
    help: "Last step that is done; a measured value says so by itself.",
    source: "order of the work",
  }),
  ironThickness: length(0.8, 12, "Iron's thickness where it lies on the bed.", {
    at: "iron",
    parameter: "iron.thickness",
    replaces: true,
    errors: ["ironThickness"],
    reading: "caliper",
    isBought: true,
  }),
  ironThicknessAtTop: length(0.8, 12, "Tapered iron's thickness near its top.", {
    at: "iron",
    parameter: "iron.thicknessAtTop",
    figure: "thicknessAtTop",
    errors: ["ironTopThickness"],
    reading: "caliper",
    isBought: true,
  }),
  ironWidth: length(8, 120, "Iron's width at its cutting edge.", {
    at: "iron",
    parameter: "iron.width",
    replaces: true,
    held: "caliper",
    isBought: true,
  }),
  coreWidth: length(5, 200, "Core's width as milled.", {
    at: "core",
    parameter: "body.sideClearance",
    figure: "coreWidth",
    held: "planing",
  }),
  cheekThickness: length(1, 60, "Cheek's thickness as milled, the thinner of the two.", {
    at: "core",
    parameter: "body.cheek",
    replaces: true,
    held: "planing",
  }),
  rampAngle: angle(30, 89, "Ramp angle as cut (of a curved ramp, its wear's).", {
    at: "cuts",
    parameter: "ramp.angle",
    keepsAuto: true,
    figure: "rampAngle",
    errors: ["rampAngle"],
    reading: "angleReading",
  }),
  rampRadius: length(
    5,
    1000,
    "Curved ramp: radius as shaped.",
    { at: "cuts", parameter: "ramp.radius", keepsAuto: true, figure: "rampRadius", held: "rampForm" },
    1,
  ),
  bedAngle: angle(25, 75, "Bed angle as trued.", {
    at: "bed",
    parameter: "bed.angle",
    replaces: true,
    errors: ["bedAngle"],
    reading: "angleReading",
  }),
  recessWidth: length(1, 120, "Recess's width as routed.", {
    at: "recess",
    parameter: "recess.width",
    keepsAuto: true,
    figure: "recessWidth",
    held: "pinHole",
  }),
  recessDepth: length(0.2, 40, "Recess's depth as routed, square to the bed.", {
    at: "recess",
    parameter: "recess.depth",
    keepsAuto: true,
    figure: "recessDepth",
    held: "pinHole",
  }),
  pinHoleFromToe: length(1, 850, "Middle of the pin's hole, from the line of the finished toe.", {
    at: "pin-hole",
    parameter: "pin.height",
    keepsAuto: true,
    figure: "pinX",
    errors: ["pinHoleAlong"],
    reading: "caliper",
    isFromToe: true,
  }),
  pinHoleHeight: length(3, 200, "Middle of the pin's hole, over the blank's sole.", {
    at: "pin-hole",
    parameter: "pin.height",
    keepsAuto: true,
    figure: "pinOverBlankSole",
    errors: ["pinHoleUp"],
    reading: "caliper",
  }),
  wedgeAngle: angle(0.5, 30, "Wedge angle as cut.", {
    at: "wedge",
    parameter: "wedge.angle",
    replaces: true,
    errors: ["wedgeTaper"],
    reading: "angleReading",
  }),
  wedgeTip: length(0.2, 30, "Wedge's thickness at its tip.", {
    at: "wedge",
    parameter: "wedge.tip",
    replaces: true,
    errors: ["wedgeThickness"],
    reading: "caliper",
  }),
  wedgeLength: length(10, 400, "Wedge's length, tip to butt.", {
    at: "wedge",
    parameter: "wedge.length",
    replaces: true,
    keepsAuto: true,
    figure: "wedgeLength",
    held: "placement",
  }),
  bedTipX: length(
    5,
    850,
    "Bed's tip on the blank's sole after glue-up (where the bed's line meets it, chamfer or not), from the line of the finished toe.",
    {
      at: "glue-up",
      parameter: "mouth.fromToe",
      figure: "bedTipX",
      errors: ["bedPlace"],
      reading: "mouthReading",
      isFromToe: true,
    },
  ),
  rampTipX: length(5, 850, "Ramp's tip on the blank's sole after glue-up, from the line of the finished toe.", {
    at: "glue-up",
    parameter: "mouth.opening",
    figure: "rampTipX",
    errors: ["frontPlace", "edgeHeight", "creep"],
    reading: "mouthReading",
    isFromToe: true,
  }),
  allowanceLeft: length(0, 30, "Wood still left under the planned sole once it is flat.", {
    at: "sole",
    parameter: "sole.allowance",
    rule: "soleWhereMouthOpens",
    tells: "soleToTake",
    held: "planing",
    upTo: "standing",
    toldBy: "mouthSeen",
  }),
  mouthSeen: length(0, 20, "Mouth opening seen with the edge set at the sole as it is.", {
    at: "mouth",
    parameter: "mouth.opening",
    rule: "mouthAtSole",
    held: "mouthReading",
    upTo: "planned",
    isTakenAsWanted: true,
    times: 4,
  }),
};
