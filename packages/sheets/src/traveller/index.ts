// The traveller as plain data: every step in order with this plane's numbers, and what goes before and after them.

import type { BenchFigureKey } from "@lamplane/bench";
import {
  asBuiltPlane,
  CAUTIONS,
  type CautionRow,
  DEFER,
  JOB_STEPS,
  LEAST_GAP,
  LEAST_RUNS,
  planeSeasonSeries,
  planeSeasons,
  plannedDesign,
  plannedPlane,
  type ResultTolerance,
  STEPS,
  STRENGTH_CAUTION,
  type Step,
  type StockPlan,
  stockPlan,
  toleranceReport,
} from "@lamplane/bench";
import { checkWithoutCures, type FormattedFinding, formatFinding } from "@lamplane/bench/checks";
import type { Elevation } from "@lamplane/parameters/elevation";
import { jigPlans } from "@lamplane/parameters/jigs";
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import { formatBareLength, formatDrill } from "@lamplane/parameters/units";
import type { Picture } from "../picture/picture.ts";
import { mouthPlot, seasonsPlot, sharesPlot, throatPlot } from "../plots/plots.ts";
import { bedContent, cutsContent, pinHoleContent, recessContent } from "./content/blocks.ts";
import type { ContentInput, StepContent } from "./content/content.ts";
import { dryFitContent, glueContent, wedgeContent } from "./content/together.ts";
import { firstShavingContent, mouthContent, seasonContent, shapingContent, soleContent } from "./content/use.ts";
import { coreContent, ironContent, stockContent } from "./content/wood.ts";
import { jigPicture } from "./draw/jig.ts";
import { sectionPicture } from "./draw/section.ts";
import type { Caution, StepNumber, TravellerKey, TravellerStep } from "./step.ts";
import { isDone, type StepContext, stepBlanks, stepContext } from "./step-context.ts";

export type { Blank, Caution, StepNumber, TravellerKey, TravellerStep } from "./step.ts";

/** What is measured at a step, and its place among the bench's steps, are the bench's own. */
const CONTENTS: Readonly<Record<TravellerKey, (known: ContentInput) => StepContent>> = {
  stock: stockContent,
  iron: ironContent,
  core: coreContent,
  cuts: cutsContent,
  bed: bedContent,
  recess: recessContent,
  "pin-hole": pinHoleContent,
  wedge: wedgeContent,
  "dry-fit": dryFitContent,
  "glue-up": glueContent,
  sole: soleContent,
  mouth: mouthContent,
  shaping: shapingContent,
  "first-shaving": firstShavingContent,
  season: seasonContent,
};

const isBenchStep = (key: TravellerKey): key is Step => (STEP_NAMES as readonly string[]).includes(key);

/** Every step with this plane's numbers as they stand when it begins; the plane must be one that may be built. */
export function travellerSteps(design: Design): TravellerStep[] {
  const report = toleranceReport(plannedDesign(design), { runs: LEAST_RUNS });
  const plans = new Map<Elevation, StockPlan>();
  return JOB_STEPS.map((key) => {
    const step = isBenchStep(key) ? key : key === "stock" ? "iron" : "shaping";
    const t = stepContext(design, step);
    const plan = plans.get(t.plane) ?? stockPlan(t.plane);
    plans.set(t.plane, plan);
    return makeStep(key, design, CONTENTS[key]({ t, plan, report }));
  });
}

function makeStep(key: TravellerKey, design: Design, content: StepContent): TravellerStep {
  const bench = isBenchStep(key) ? STEPS[key] : undefined;
  const { why, numbers, instructions, checks, picture, jigs = [] } = content;
  return {
    key,
    title: content.title ?? bench!.title,
    task: content.task ?? bench!.task,
    ...(why === undefined ? {} : { why }),
    numbers,
    instructions,
    checks,
    blanks: isBenchStep(key) ? stepBlanks(design, key) : [],
    cautions: content.cautions.map((caution): Caution => CAUTIONS[caution]),
    picture,
    jigs,
    done: isBenchStep(key) && isDone(design, key),
  };
}

export interface StockTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface Traveller {
  readonly name: string;
  readonly design: Design;
  /** The plane cut along its middle with its parts named. */
  readonly section: Picture;
  readonly keyFigures: readonly StepNumber[];
  readonly tools: readonly string[];
  readonly defer: string;
  readonly cautions: readonly Caution[];
  readonly stock: StockTable;
  readonly findings: readonly FormattedFinding[];
  readonly steps: readonly TravellerStep[];
  readonly jigs: readonly {
    readonly title: string;
    readonly use: string;
    readonly against: string;
    readonly picture?: Picture;
  }[];
  readonly plots: readonly { readonly words: string; readonly picture: Picture }[];
  readonly strength: readonly StepNumber[];
  readonly strengthCaution: string;
}

/** Everything that the traveller's sheets show. */
export function traveller(design: Design): Traveller {
  const plane = asBuiltPlane(design);
  const t = stepContext(design, "shaping");
  return {
    name: design.name,
    design,
    section: sectionPicture(t),
    keyFigures: keyFigures(t),
    tools: toolsFor(plane, t),
    defer: DEFER,
    cautions: Object.values<CautionRow>(CAUTIONS),
    stock: stockTable(t, stockPlan(plannedPlane(design))),
    findings: checkWithoutCures(plane).map((finding) => formatFinding(design, finding)),
    steps: travellerSteps(design),
    jigs: jigPlans(plane).map((plan) => {
      const picture = jigPicture(plane, plan);
      return { title: plan.title, use: plan.use, against: plan.registersAgainst, ...(picture ? { picture } : {}) };
    }),
    plots: travellerPlots(plane, design),
    strength: STRENGTH_ROWS.flatMap(([key, label]) => t.figureRow(key, label)),
    strengthCaution: STRENGTH_CAUTION,
  };
}

/** What is told of hold and strength, in words that stand alone. */
const STRENGTH_ROWS: readonly (readonly [BenchFigureKey, string])[] = [
  ["cuttingForce", "Force on the edge, fine shaving"],
  ["cuttingForceInCatch", "Force on the edge, a catch"],
  ["clampWanted", "Clamp on the iron that holds it, fine shaving"],
  ["clampWantedLeast", "The same where friction is best"],
  ["clampWantedMost", "The same where friction is worst"],
  ["clampWantedInCatch", "Clamp on the iron that holds it, a catch"],
  ["drivingForce", "Push on the wedge that clamps for a fine shaving"],
  ["holdMargin", "Self-locking margin of the wedge"],
  ["holdMarginLeast", "The same where friction is worst"],
  ["pinSag", "Sag of the cross pin, fine shaving"],
  ["pinBendingFactor", "Cross pin in bending: strength over stress, fine shaving"],
  ["tenonBendingFactor", "Tenons in bending at the shoulder: strength over stress, fine shaving"],
  ["tenonShearFactor", "Tenons in shear: strength over stress, fine shaving"],
  ["tenonBearingFactor", "Tenons pressed in their holes: strength over stress, fine shaving"],
  ["cheekBearingFactor", "Cheeks pressed by the tenons: strength over stress, fine shaving"],
  ["shearOutFactor", "Cheeks sheared out to the edge: strength over stress, fine shaving"],
  ["smallestFactorInCatch", "The weakest of these in a catch: strength over stress"],
];

function keyFigures(t: StepContext): StepNumber[] {
  const { design, ramp } = t.plane;
  return [
    t.lengthRow("Length", design.body.length),
    ...t.figureRow("bodyHeight", "Height"),
    ...t.figureRow("bodyWidth", "Width"),
    ...t.figureRow("bedAngle", "Bed"),
    { label: ramp.curve ? "Ramp's wear" : "Ramp", value: t.deg(ramp.angle) },
    ...t.figureRow("mouthX", "Edge from the toe"),
    ...t.figureRow("mouthOpening", "Mouth wanted"),
    ...t.figureRow("mouthGrowth", `Mouth opens, ${t.perFine}`),
    ...t.figureRow("soleToTake", "Sole still to take off"),
    ...t.figureRow("coreWidth", "Core"),
    t.lengthRow("Each cheek", t.plane.widths.cheek),
    ...t.figureRow("wedgeAngle", "Wedge"),
    t.lengthRow("Cross pin", design.pin.diameter),
    ...t.figureRow("pinToRamp", "Room from pin to ramp"),
  ];
}

function toolsFor(plane: Elevation, t: StepContext): string[] {
  const { design, recess } = plane;
  return [
    "rule, caliper, square, bevel or protractor, straightedge, winding sticks, feeler leaves, pencil and knife",
    `saw for ripping; mitre saw, bandsaw or handsaw for the two cuts (kerf told as ${t.mm(design.shop.kerf)})`,
    "bench plane and block plane, sharp; scraper, rasp or spokeshave",
    ...(recess ? [`router with a cutter ⌀ ${t.mm(design.recess.cutter)}, or chisels`] : []),
    `drill ⌀ ${formatDrill(2 * plane.pinHole.radius, design)}${design.pegs.perEnd > 0 ? ` and ⌀ ${t.mm(design.pegs.diameter)}` : ""}, square to the table`,
    "six clamps or more with cauls, glue, wax, oil, a small hammer",
    "eye, ear and dust protection as the machine's manual asks",
  ];
}

function stockTable(t: StepContext, { list }: StockPlan): StockTable {
  type Size = (typeof list.rows)[number]["rough"];
  const size = (of: Size) =>
    (["length", "width", "thickness"] as const).map((side) => formatBareLength(of[side], t.design)).join(" × ");
  return {
    head: ["Piece", "No.", "Rough, no less", "Finished", "From", "Wood", "Grain"],
    rows: list.rows.map((row) => [
      row.piece,
      String(row.count),
      size(row.rough),
      size(row.finished),
      row.from,
      row.species,
      row.grain,
    ]),
  };
}

function travellerPlots(plane: Elevation, design: Design) {
  const { units, name } = design;
  const mouth = toleranceReport(plannedDesign(design), { runs: LEAST_RUNS }).results.find(
    ({ key }) => key === "mouthOpening",
  );
  const shares = (mouth as ResultTolerance).shares;
  return [
    { words: "What each truing of the sole costs the mouth.", picture: mouthPlot(plane) },
    {
      words: "Whether a shaving finds its way out: the throat's width from the mouth to the top.",
      picture: throatPlot(plane),
    },
    {
      words: "What the year's dry and damp days do to the gaps (indicative).",
      picture: seasonsPlot(planeSeasonSeries(plane), {
        units,
        of: name,
        planned: planeSeasons(plane).planned.moisture,
        leastGap: LEAST_GAP,
      }),
    },
    ...(shares.length > 0
      ? [
          {
            words: "Which step decides how wide the mouth comes out before set, read and repeat.",
            picture: sharesPlot(shares, {
              name: "mouth-shares",
              title: `${name}: which step decides the mouth`,
              axis: "share of the mouth's variance",
            }),
          },
        ]
      : []),
  ];
}
