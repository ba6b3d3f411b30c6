// The traveller as plain data: every step in order with this plane's numbers, and what goes before and after them.
import {
  asBuiltPlane,
  asBuiltStockPlan,
  CAUTIONS,
  type CautionRow,
  DEFER,
  JOB_STEPS,
  LEAST_RUNS,
  plannedDesign,
  STRENGTH_CAUTION,
  type Step,
  type StockPlan,
  stepWords,
  stockPlan,
  toleranceReport,
} from "@lamplane/bench";
import { checkWithoutCures, type FormattedFinding, formatFinding } from "@lamplane/bench/checks";
import type { Elevation } from "@lamplane/parameters/elevation";
import { jigPlans } from "@lamplane/parameters/jigs";
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import type { Picture } from "../picture/picture.ts";
import { STRENGTH } from "../words/appendix.ts";
import { travellerPlots } from "./appendix.ts";
import { bedContent, cutsContent, pinHoleContent, recessContent } from "./content/blocks.ts";
import type { ContentInput, StepContent } from "./content/content.ts";
import { dryFitContent, glueContent, wedgeContent } from "./content/together.ts";
import { firstShavingContent, mouthContent, seasonContent, shapingContent, soleContent } from "./content/use.ts";
import { coreContent, ironContent, stockContent } from "./content/wood.ts";
import { jigPicture } from "./draw/jig.ts";
import { sectionPicture } from "./draw/section.ts";
import { keyFigures, type StockTable, stockTable, toolsFor } from "./front-matter.ts";
import { type SetUp, setUps } from "./set-ups.ts";
import type { Caution, JigInUse, StepNumber, TravellerKey, TravellerStep } from "./step.ts";
import { isDone, stepBlanks, stepContext } from "./step-context.ts";
import type { PictureRoom } from "./views.ts";

export type { StockTable } from "./front-matter.ts";
export type { SetUp } from "./set-ups.ts";
export type { Blank, Caution, JigInUse, ReadingRow, StepNumber, TravellerKey, TravellerStep } from "./step.ts";

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
  const names = new Set<string>(jigPlans(asBuiltPlane(design)).map(({ name }) => name));
  const hasJig = (name: string) => names.has(name);
  const plans = new Map<Elevation, StockPlan>();
  return JOB_STEPS.map((key) => {
    const step = isBenchStep(key) ? key : key === "stock" ? "iron" : "shaping";
    const t = stepContext(design, step);
    const plan = plans.get(t.plane) ?? stockPlan(t.plane);
    plans.set(t.plane, plan);
    const content = CONTENTS[key]({ t, plan, report, hasJig });
    return makeStep(key, design, content, jigsInUse(t.plane, content.jigs ?? []));
  });
}

/** Those of the jigs that can be made for the plane. @param plane as it stands when they are used */
const jigsInUse = (plane: Elevation, names: readonly string[]): JigInUse[] =>
  names.length === 0
    ? []
    : jigPlans(plane)
        .filter(({ name }) => names.includes(name))
        .map((plan) => ({
          name: plan.name,
          title: plan.title,
          against: plan.registersAgainst,
          use: plan.use,
          draw: (room) => jigPicture(plane, plan, room),
        }));

function makeStep(key: TravellerKey, design: Design, content: StepContent, jigs: readonly JigInUse[]): TravellerStep {
  const words = isBenchStep(key) ? stepWords(design, key) : undefined;
  const { why, readings, numbers, instructions, checks, draw } = content;
  return {
    key,
    title: content.title ?? words!.title,
    task: content.task ?? words?.task ?? "",
    ...(why === undefined ? {} : { why }),
    numbers,
    instructions,
    checks,
    blanks: isBenchStep(key) ? stepBlanks(design, key) : [],
    ...(readings === undefined ? {} : { readings }),
    cautions: content.cautions.map((caution): Caution => CAUTIONS[caution]),
    draw,
    jigs,
    done: isBenchStep(key) && isDone(design, key),
  };
}

export interface Traveller {
  readonly name: string;
  readonly design: Design;
  /** The plane cut along its middle with its parts named. */
  readonly section: (room: PictureRoom) => Picture;
  readonly keyFigures: readonly StepNumber[];
  /** Machines and tools set to this plane's numbers, in the order of the work. */
  readonly setUps: readonly SetUp[];
  readonly tools: readonly string[];
  readonly defer: string;
  readonly cautions: readonly Caution[];
  readonly stock: StockTable;
  readonly findings: readonly FormattedFinding[];
  readonly steps: readonly TravellerStep[];
  /** What is printed before the other jigs. */
  readonly fitTest: JigInUse | undefined;
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
    section: (room) => sectionPicture(t, room),
    keyFigures: keyFigures(t),
    setUps: setUps(design),
    tools: toolsFor(plane, t),
    defer: DEFER,
    cautions: Object.values<CautionRow>(CAUTIONS),
    stock: stockTable(t, asBuiltStockPlan(design)),
    findings: checkWithoutCures(plane).map((finding) => formatFinding(design, finding)),
    steps: travellerSteps(design),
    fitTest: jigsInUse(plane, ["fit-test"])[0],
    plots: travellerPlots(plane, design),
    strength: (Object.keys(STRENGTH) as (keyof typeof STRENGTH)[]).flatMap((key) => t.figureRow(key, STRENGTH[key])),
    strengthCaution: STRENGTH_CAUTION,
  };
}
