// What came out at the bench, in the order of the work; every row stays empty until its step is done. One row says all of a value.
import { choice, measuredAngle, measuredLength } from "../parameter.ts";
import type { hand } from "./hand.ts";
import { STEP_NAMES, type Step } from "./step-names.ts";

type Hand = keyof typeof hand;

/** What is known of a measured value beside its limits: plain data, read where the build is followed. */
export interface Measurement {
  /** Step at which it is measured. */
  readonly at: Step;
  /** Parameter that asked for it. */
  readonly parameter: string;
  /** Whether it takes that parameter's place and does nothing else; what more a value does stands with its step's effect. */
  readonly replaces?: true;
  /** Figure that it is expected to be; the parameter's own value where neither this nor a rule is named. */
  readonly figure?: string;
  /** Rule by which it is expected, where no figure says it. */
  readonly rule?: string;
  /** Figure of the plane that this value is the reading of. */
  readonly readingOf?: string;
  /** Sources of error that it replaces by that of its reading. */
  readonly errors?: readonly string[];
  /** How well it is read. */
  readonly reading?: Hand;
  /** How well it is held, where no source of error says it. */
  readonly held?: Hand;
  /** An iron is bought, not planed to a size: the file may hold what its seller says of it. */
  readonly isBought?: true;
  /** Measured along the sole from the toe end of the cheeks, half a trim in front of the finished toe. */
  readonly isFromEnd?: true;
  /**
   * Read on the way to what is wanted: any value from nothing up to its parameter is right and has cost nothing. The
   * parameter counts as it was planned, or as the plane stands when the step begins.
   */
  readonly upTo?: "planned" | "standing";
  /** Taken as its parameter wants it, not as it is expected, where its step is done without a reading. */
  readonly isTakenAsWanted?: true;
  /** How often it is read before its step is done, where that is more than once. */
  readonly times?: number;
  /** Whether nothing is missing where it is not read. */
  readonly isOptional?: true;
  /** Values that together imply this one, so that it need not be read. */
  readonly impliedBy?: readonly string[];
  /** By which it is changed on the page, mm, where that is not 0.05. */
  readonly step?: number;
}

const BENCH = "measured at the bench";
const length = <const M extends Measurement>(min: number, max: number, name: string, help: string, facts: M) => ({
  ...measuredLength({ min, max, step: facts.step ?? 0.05, name, help, source: BENCH }),
  ...facts,
});
const angle = <const M extends Measurement>(min: number, max: number, name: string, help: string, facts: M) => ({
  ...measuredAngle({ min, max, step: 0.05, name, help, source: BENCH }),
  ...facts,
});

const seenBesideCheek = {
  at: "mouth",
  parameter: "mouth.opening",
  rule: "mouthAtSole",
  held: "mouthReading",
  upTo: "planned",
  isOptional: true,
} as const satisfies Measurement;

export const measured = {
  done: choice({
    choices: ["nothing", ...STEP_NAMES],
    default: "nothing",
    name: "last step done",
    help: "Last step that is done. A measured value marks its step done by itself.",
    source: "order of the work",
  }),
  ironThickness: length(0.8, 12, "iron thickness", "Thickness of the iron where it lies on the bed.", {
    at: "iron",
    parameter: "iron.thickness",
    replaces: true,
    errors: ["ironThickness"],
    reading: "caliper",
    isBought: true,
  }),
  ironThicknessAtTop: length(0.8, 12, "iron thickness near top", "Thickness of a tapered iron near its top.", {
    at: "iron",
    parameter: "iron.thicknessAtTop",
    figure: "thicknessAtTop",
    errors: ["ironTopThickness"],
    reading: "caliper",
    isBought: true,
  }),
  ironWidth: length(8, 120, "iron width", "Greatest width of the iron, just above the edge or at the top.", {
    at: "iron",
    parameter: "iron.width",
    replaces: true,
    held: "caliper",
    isBought: true,
  }),
  coreWidth: length(5, 200, "core width", "Width of the core as milled.", {
    at: "core",
    parameter: "body.sideClearance",
    figure: "coreWidth",
    held: "planing",
  }),
  cheekThickness: length(1, 60, "cheek thickness", "Thickness of the thinner cheek as milled.", {
    at: "core",
    parameter: "body.cheek",
    replaces: true,
    held: "planing",
  }),
  rampAngle: angle(30, 89, "ramp angle", "Ramp angle as cut; of a curved ramp, its wear angle.", {
    at: "cuts",
    parameter: "ramp.angle",
    figure: "rampAngle",
    errors: ["rampAngle"],
    reading: "angleReading",
  }),
  rampRadius: length(5, 1000, "ramp radius", "Curved ramp: radius as shaped.", {
    at: "cuts",
    parameter: "ramp.radius",
    figure: "rampRadius",
    held: "rampForm",
    step: 1,
  }),
  bedAngle: angle(25, 75, "bed angle", "Bed angle as trued.", {
    at: "bed",
    parameter: "bed.angle",
    replaces: true,
    errors: ["bedAngle"],
    reading: "angleReading",
  }),
  recessWidth: length(1, 120, "recess width", "Width of the recess as made.", {
    at: "recess",
    parameter: "recess.width",
    figure: "recessWidth",
    held: "pinHole",
  }),
  recessDepth: length(0.2, 40, "recess depth", "Depth of the recess as made, square to the bed.", {
    at: "recess",
    parameter: "recess.depth",
    figure: "recessDepth",
    held: "pinHole",
  }),
  pinHoleFromEnd: length(
    1,
    850,
    "pin hole from toe end",
    "From the toe end of the cheeks to the middle of the pin hole.",
    {
      at: "pin-hole",
      parameter: "pin.height",
      figure: "pinFromEnd",
      errors: ["pinHoleAlong"],
      reading: "caliper",
      isFromEnd: true,
    },
  ),
  pinHoleHeight: length(
    3,
    200,
    "pin hole height",
    "Height of the middle of the pin hole above the sole of the blank.",
    {
      at: "pin-hole",
      parameter: "pin.height",
      figure: "pinOverBlankSole",
      errors: ["pinHoleUp"],
      reading: "caliper",
    },
  ),
  wedgeAngle: angle(0.5, 30, "wedge angle", "Wedge angle as cut.", {
    at: "wedge",
    parameter: "wedge.angle",
    replaces: true,
    errors: ["wedgeTaper"],
    reading: "angleReading",
  }),
  wedgeTip: length(0.2, 30, "wedge tip thickness", "Thickness of the wedge at its tip.", {
    at: "wedge",
    parameter: "wedge.tip",
    replaces: true,
    errors: ["wedgeThickness"],
    reading: "caliper",
  }),
  wedgeLength: length(10, 400, "wedge length", "Length of the wedge, tip to butt.", {
    at: "wedge",
    parameter: "wedge.length",
    replaces: true,
    figure: "wedgeLength",
    held: "placement",
  }),
  bedTipFromEnd: length(
    5,
    850,
    "bed tip from toe end",
    "After glue-up, from the toe end of the cheeks to the bed tip on the sole of the blank: where the line of the bed meets it, feather counted in.",
    {
      at: "glue-up",
      parameter: "mouth.fromToe",
      figure: "bedTipFromEnd",
      errors: ["bedPlace"],
      reading: "mouthReading",
      isFromEnd: true,
    },
  ),
  rampTipFromEnd: length(
    5,
    850,
    "ramp tip from toe end",
    "After glue-up, from the toe end of the cheeks to the ramp tip on the sole of the blank.",
    {
      at: "glue-up",
      parameter: "mouth.opening",
      figure: "rampTipFromEnd",
      errors: ["frontPlace", "edgeHeight", "creep"],
      reading: "mouthReading",
      isFromEnd: true,
    },
  ),
  allowanceLeft: length(
    0,
    30,
    "wood left under sole",
    "Wood still left under the planned sole once the sole is flat.",
    {
      at: "sole",
      parameter: "sole.allowance",
      rule: "soleWhereMouthOpens",
      readingOf: "soleToTake",
      held: "planing",
      upTo: "standing",
      impliedBy: ["mouthSeen"],
    },
  ),
  mouthSeen: length(0, 20, "mouth opening", "Mouth opening as read, edge set to the sole as it is.", {
    at: "mouth",
    parameter: "mouth.opening",
    rule: "mouthAtSole",
    held: "mouthReading",
    upTo: "planned",
    isTakenAsWanted: true,
    times: 4,
    impliedBy: ["mouthSeenLeft", "mouthSeenRight"],
  }),
  mouthSeenLeft: length(
    0,
    20,
    "mouth at left cheek",
    "Mouth opening as read beside the left cheek, edge even with the sole.",
    seenBesideCheek,
  ),
  mouthSeenRight: length(
    0,
    20,
    "mouth at right cheek",
    "Mouth opening as read beside the right cheek, edge even with the sole.",
    seenBesideCheek,
  ),
};
