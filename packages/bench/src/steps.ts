// The steps of the build in their order: what each measures, and which figures it is done by.
import { type FigureKey, recessOf } from "@lamplane/parameters/elevation";
import { type Design, STEP_NAMES, type Step } from "@lamplane/parameters/table";
import { MEASURED_KEYS, MEASURED_ROWS, type MeasuredKey } from "./measured-values.ts";
import { STEP_WORDS, type StepWords } from "./words/steps.ts";

export type { Step } from "@lamplane/parameters/table";
export { MEASURED_KEYS, type MeasuredKey } from "./measured-values.ts";

export interface StepRow extends StepWords {
  /** Figures that this step is done by, in the order in which they are wanted. */
  readonly figures: readonly FigureKey[];
  /** What is measured when it is done. */
  readonly measures: readonly MeasuredKey[];
  /** Parameters that cannot be changed once it is done. */
  readonly locks: readonly string[];
}

/** @see common practice, no published source: order of the work */
const STEP_ROWS: Readonly<Record<Step, Omit<StepRow, "measures" | keyof StepWords>>> = {
  iron: {
    figures: ["ironTaper", "edgeThickness", "faceAngle", "clearanceAngle"],
    locks: [
      "iron.width",
      "iron.thickness",
      "iron.thicknessFromEdge",
      "iron.thicknessAtTop",
      "iron.topFromEdge",
      "iron.taper",
    ],
  },
  core: {
    figures: [
      "billetWidth",
      "fenceLeftCheek",
      "fenceCore",
      "fenceRightCheek",
      "coreWidth",
      "cheekThickness",
      "layerCount",
      "outerLayer",
      "recessLayer",
      "blankLength",
      "blankHeight",
    ],
    locks: [
      "body.sideClearance",
      "body.cheek",
      "body.length",
      "body.height",
      "body.trim",
      "shop.millingAllowance",
      "shop.jointingPass",
      "sole.allowance",
      "core.layers",
      "core.board",
    ],
  },
  cuts: {
    figures: ["sawRamp", "sawBed", "rampMark", "bedMark", "rampAngle", "rampRadius", "layerPegLength"],
    locks: [
      "ramp.angle",
      "ramp.shape",
      "ramp.wearAngle",
      "ramp.wearHeight",
      "ramp.exitAngle",
      "ramp.radius",
      "bed.angle",
      "mouth.fromToe",
      "shop.kerf",
      "shop.sawLimit",
      "core.allowanceBed",
      "core.pegDiameter",
      "core.cornerCutter",
    ],
  },
  bed: {
    figures: ["bedAngle", "unsupported"],
    locks: [],
  },
  recess: {
    figures: ["recessWidth", "recessDepth", "recessFromBedEdge", "recessLand", "recessPad"],
    locks: ["recess.width", "recess.depth", "recess.clearance", "recess.travel", "recess.cutter"],
  },
  "pin-hole": {
    figures: ["pinFromEnd", "pinOverBlankSole", "pinHoleDiameter"],
    locks: ["pin.height", "pin.tenon", "pin.tenonClearance"],
  },
  wedge: {
    figures: [
      "wedgeAngle",
      "wedgeTip",
      "wedgeLength",
      "wedgeButt",
      "wedgeWidth",
      "wedgeTipFromEdge",
      "wedgeAtPin",
      "pinDiameter",
      "pinBody",
      "tenonDiameter",
      "tenonLength",
    ],
    locks: [
      "wedge.angle",
      "wedge.tip",
      "wedge.tipFromEdge",
      "wedge.length",
      "wedge.clearance",
      "pin.section",
      "pin.diameter",
      "pin.tenonLength",
      "pin.endClearance",
    ],
  },
  "dry-fit": {
    figures: ["setInToe", "setInHeel", "tipGap", "edgeHeightAtContact"],
    locks: [],
  },
  "glue-up": {
    figures: ["bedTipFromEnd", "rampTipFromEnd", "tipGap"],
    locks: ["bed.featherChamfer", "pegs.diameter", "pegs.perEnd"],
  },
  sole: {
    figures: ["edgeHeightAtContact", "soleToTake"],
    locks: [],
  },
  mouth: {
    figures: ["soleToTake", "mouthOpening", "mouthGrowth"],
    locks: [],
  },
  shaping: {
    figures: ["bodyHeight", "mouthX", "bodyWidth"],
    locks: ["body.outline", "body.crown", "body.toeHeight", "body.heelHeight"],
  },
};

/** Every step with what is measured at it. */
export const STEPS = Object.fromEntries(
  STEP_NAMES.map((step): [Step, StepRow] => {
    const { locks, ...row } = STEP_ROWS[step];
    return [
      step,
      { ...STEP_WORDS[step], ...row, measures: MEASURED_KEYS.filter((key) => MEASURED_ROWS[key].at === step), locks },
    ];
  }),
) as Readonly<Record<Step, StepRow>>;

/** A step's title and task for this plane: one without a recess has nothing to rout, and layers make their own. */
export function stepWords(design: Design, step: Step): Pick<StepRow, "title" | "task"> {
  const { title, task, notNeeded, notNeededTitle, inLayers } = STEPS[step];
  if (step === "recess" && !recessOf(design)) return { title: notNeededTitle ?? title, task: notNeeded ?? task };
  if (!inLayers || design.core.layers === "whole") return { title, task };
  return { title: inLayers.title, task: (recessOf(design) ? undefined : inLayers.taskWithoutRecess) ?? inLayers.task };
}

/** The whole job as the traveller numbers it from 1: the bench's steps, with what comes before the first and after the last. */
export const JOB_STEPS = ["stock", ...STEP_NAMES, "first-shaving", "season"] as const;

/** Number of a step on the traveller. */
export const jobNumber = (step: Step): number => JOB_STEPS.indexOf(step) + 1;

/** Place of a step in the order of the work. */
export const stepIndex = (step: Step): number => STEP_NAMES.indexOf(step);

/** The step at which a value is measured. */
export const measuringStep = (key: MeasuredKey): Step => MEASURED_ROWS[key].at;

/** How many steps are done: as far as `measured.done` says, or any measured value shows. */
export const stepsDone = ({ measured }: Design): number =>
  Math.max(
    measured.done === "nothing" ? 0 : stepIndex(measured.done) + 1,
    ...MEASURED_KEYS.map((key) => (measured[key] === undefined ? 0 : stepIndex(measuringStep(key)) + 1)),
  );

/** Parameters that can no longer be changed. */
export const lockedParameters = (design: Design): ReadonlySet<string> =>
  new Set(STEP_NAMES.slice(0, stepsDone(design)).flatMap((step) => STEPS[step].locks));
