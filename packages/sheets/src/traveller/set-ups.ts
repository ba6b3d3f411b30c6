// What machines and tools are set to, step by step, each with the plane as it stands when its step begins: the card's list.
import { JOB_STEPS, LEAST_RUNS, plannedDesign, type Step, stockPlan, toleranceReport } from "@lamplane/bench";
import { pegHoles, pinLengths } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatDrill } from "@lamplane/parameters/units";
import { SET_UP } from "../words/card.ts";
import { solePasses } from "./content/use.ts";
import type { StepNumber } from "./step.ts";
import { type StepContext, stepContext } from "./step-context.ts";

/** The settings of one step. */
export interface SetUp {
  /** Number of the step. */
  readonly step: number;
  readonly work: string;
  readonly rows: readonly StepNumber[];
}

/** Every set-up in the order of the work; a step that this plane does not need has none. */
export function setUps(design: Design): SetUp[] {
  const at = (step: Step, work: string, rows: (t: StepContext) => readonly StepNumber[]): SetUp => ({
    step: JOB_STEPS.indexOf(step) + 1,
    work,
    rows: rows(stepContext(design, step)),
  });
  return [
    at("core", SET_UP.rip, ripRows),
    at("cuts", SET_UP.cuts, cutRows),
    at("bed", SET_UP.bed, (t) => t.figureRow("bedAngle", SET_UP.bedAngle)),
    at("recess", SET_UP.router, routerRows),
    at("pin-hole", SET_UP.drill, drillRows),
    at("wedge", SET_UP.wedge, wedgeRows),
    at("dry-fit", SET_UP.dryFit, dryFitRows),
    at("sole", SET_UP.sole, (t) => soleRows(t, design)),
    at("mouth", SET_UP.mouth, (t) => [
      ...t.figureRow("mouthOpening", SET_UP.mouthWanted),
      ...t.figureRow("mouthGrowth", SET_UP.mouthGrowth({ units: design.units })),
    ]),
    at("shaping", SET_UP.trim, (t) => [
      ...t.figureRow("mouthX", SET_UP.edgeFromToe),
      t.lengthRow(SET_UP.length, t.design.body.length),
    ]),
  ].filter(({ rows }) => rows.length > 0);
}

function ripRows(t: StepContext): StepNumber[] {
  const { rip } = stockPlan(t.plane);
  return [
    ...rip.sawLines.map(({ frees, fence }, i) => t.lengthRow(SET_UP.fence({ cut: i + 1, frees }), fence, "up")),
    ...t.figureRow("coreWidth", SET_UP.core),
    t.lengthRow(SET_UP.cheek, t.plane.widths.cheek, "up"),
    ...t.figureRow("blankLength", SET_UP.blankLength),
  ];
}

const cutRows = (t: StepContext): StepNumber[] => [
  ...t.figureRow("rampMark", SET_UP.rampMark),
  ...t.figureRow("sawRamp", SET_UP.rampSaw),
  ...t.figureRow("bedMark", SET_UP.bedMark),
  ...t.figureRow("sawBed", SET_UP.bedSaw),
];

function routerRows(t: StepContext): StepNumber[] {
  if (t.plane.recess?.madeBy !== "router") return [];
  return [
    t.lengthRow(SET_UP.cutter, t.design.recess.cutter),
    ...t.figureRow("recessDepth", SET_UP.depth),
    ...t.figureRow("recessWidth", SET_UP.width),
    ...t.figureRow("recessFromBedEdge", SET_UP.recessEnd),
  ];
}

const drillRows = (t: StepContext): StepNumber[] => [
  { label: SET_UP.pinDrill, value: formatDrill(t.figure("pinHoleDiameter"), t.design) },
  ...t.figureRow("pinFromEnd", SET_UP.fromToeEnd),
  ...t.figureRow("pinOverBlankSole", SET_UP.overSole),
];

const wedgeRows = (t: StepContext): StepNumber[] => [
  ...t.figureRow("wedgeAngle", SET_UP.taper),
  ...t.figureRow("wedgeLength", SET_UP.wedgeLength),
  ...t.figureRow("wedgeWidth", SET_UP.wedgeWidth),
  ...t.figureRow("wedgeTip", SET_UP.tip),
  ...t.figureRow("wedgeButt", SET_UP.butt),
  t.lengthRow(SET_UP.pin, t.plane.pinSize.diameter),
  t.lengthRow(SET_UP.pinLength, 2 * pinLengths(t.plane).shoulder, "down"),
  t.lengthRow(SET_UP.tenon, t.plane.pinSize.tenon, "down"),
  ...t.figureRow("tenonLength", SET_UP.tenonLength),
];

function dryFitRows(t: StepContext): StepNumber[] {
  const { pegs } = t.design;
  return [
    ...t.figureRow("setInHeel", SET_UP.bedSetIn),
    ...t.figureRow("edgeHeightAtContact", SET_UP.edgeHeight),
    ...t.figureRow("setInToe", SET_UP.frontSetIn),
    ...(pegHoles(t.plane).length > 0 ? [{ label: SET_UP.pegDrill, value: formatDrill(pegs.diameter, t.design) }] : []),
  ];
}

function soleRows(t: StepContext, design: Design): StepNumber[] {
  const { stopShort } = toleranceReport(plannedDesign(design), { runs: LEAST_RUNS }).mouth;
  const { coarse, fine } = solePasses(t.design.sole.allowance - stopShort);
  return [
    ...(coarse > 0 ? [t.lengthRow(SET_UP.coarse, coarse)] : []),
    t.lengthRow(SET_UP.fine, fine),
    t.lengthRow(SET_UP.stopShort, stopShort),
  ];
}
