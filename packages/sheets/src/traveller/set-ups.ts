// What machines and tools are set to, step by step, each with the plane as it stands when its step begins: the card's list.
import {
  JOB_STEPS,
  LEAST_RUNS,
  plannedDesign,
  type Step,
  stepWords,
  stockPlan,
  toleranceReport,
} from "@lamplane/bench";
import { pegHoles } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatDrill } from "@lamplane/parameters/units";
import { SET_UP } from "../words/card.ts";
import { layerPegRows, stripRows } from "./content/layers.ts";
import { mouthGrowthRow, solePassRows } from "./content/use.ts";
import type { StepNumber } from "./step.ts";
import { type StepContext, stepContext } from "./step-context.ts";

/** The settings of one step. */
export interface SetUp {
  /** Number of the step. */
  readonly step: number;
  readonly title: string;
  /** How the wood lies or is held. */
  readonly hold?: string;
  readonly rows: readonly StepNumber[];
}

/** Every set-up in the order of the work; a step that this plane does not need has none. */
export function setUps(design: Design): SetUp[] {
  const at = (step: Step, rows: (t: StepContext) => readonly StepNumber[], hold?: string): SetUp => ({
    step: JOB_STEPS.indexOf(step) + 1,
    title: stepWords(design, step).title,
    ...(hold === undefined ? {} : { hold }),
    rows: rows(stepContext(design, step)),
  });
  return [
    at("core", ripRows),
    at("cuts", cutRows, SET_UP.cuts({ inLayers: design.core.layers !== "whole" })),
    at("bed", (t) => t.figureRow("bedAngle", SET_UP.bedAngle)),
    at("recess", routerRows),
    at("pin-hole", drillRows, SET_UP.drill),
    at("wedge", wedgeRows),
    at("dry-fit", dryFitRows),
    at("sole", soleRows),
    at("mouth", (t) => [
      ...t.figureRow("mouthOpening", SET_UP.mouthWanted),
      mouthGrowthRow(t, SET_UP.mouthGrowth({ units: design.units })),
    ]),
    at("shaping", (t) => [
      ...t.figureRow("mouthX", SET_UP.edgeFromToe),
      t.lengthRow(SET_UP.length, t.design.body.length),
    ]),
  ].filter(({ rows }) => rows.length > 0);
}

function ripRows(t: StepContext): StepNumber[] {
  const { rip, layers } = stockPlan(t.plane);
  if (layers) return [...stripRows(t, layers), ...t.figureRow("blankLength", SET_UP.layersLength)];
  return [
    ...rip.sawLines.map(({ frees, fence }, i) => t.lengthRow(SET_UP.fence({ cut: i + 1, frees }), fence, "up")),
    ...t.figureRow("coreWidth", SET_UP.core),
    ...t.figureRow("cheekThickness", SET_UP.cheek),
    ...t.figureRow("blankLength", SET_UP.blankLength),
  ];
}

const cutRows = (t: StepContext): StepNumber[] => [
  ...t.figureRow("rampMark", SET_UP.rampMark),
  ...t.figureRow("sawRamp", SET_UP.rampSaw),
  ...t.figureRow("bedMark", SET_UP.bedMark),
  ...t.figureRow("sawBed", SET_UP.bedSaw),
  ...layerPegRows(t),
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
  ...t.figureRow("pinDiameter", SET_UP.pin),
  ...t.figureRow("pinBody", SET_UP.pinLength),
  ...t.figureRow("tenonDiameter", SET_UP.tenon),
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

function soleRows(t: StepContext): StepNumber[] {
  const { stopShort } = toleranceReport(plannedDesign(t.design), { runs: LEAST_RUNS }).mouth;
  return solePassRows(t, stopShort, SET_UP);
}
