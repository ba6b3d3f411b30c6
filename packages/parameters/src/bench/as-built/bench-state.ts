// Where the build stands: what is done, what to do now with its numbers, what has changed against the plan, what is lost.
import { type Elevation, elevation, mouthGrowth } from "../../elevation/elevation.ts";
import { type Figure, figuresOf } from "../../elevation/figures.ts";
import { rampShape } from "../../elevation/ramp.ts";
import { type Design, STEP_NAMES } from "../../table/index.ts";
import { SHOP } from "../../tolerances.ts";
import { SHAVING } from "../mouth.ts";
import { MEASURED_KEYS, type MeasuredKey, STEPS, type Step, stepOf, stepPlace, stepsDone } from "../steps.ts";
import { planeOf, planned } from "./as-built.ts";
import { expectedOf, MEASURED } from "./expected.ts";

/** A figure that is no longer what was planned. */
export interface Change {
  readonly key: string;
  readonly help: string;
  readonly unit: string;
  readonly planned: number;
  readonly now: number;
}
/** A measured value off what was asked for, and what it costs in the finished plane. */
export interface Loss {
  readonly key: MeasuredKey;
  readonly unit: "mm" | "°";
  readonly asked: number;
  readonly got: number;
  readonly costs: readonly Change[];
}
export interface BenchState {
  readonly done: readonly Step[];
  /** Absent once all is done. */
  readonly step?: Step;
  /** The next step's figures, each with what it was planned to be. */
  readonly figures: readonly (Figure & { readonly planned?: number })[];
  /** What to measure when the step is done, and what it is expected to be. */
  readonly toMeasure: readonly { readonly key: MeasuredKey; readonly unit: "mm" | "°"; readonly expected: number }[];
  /** Figures of steps still to come that have moved. */
  readonly changed: readonly Change[];
  /** What can no longer be had. */
  readonly lost: readonly Loss[];
  /** How much wider than wanted the mouth is, mm; 0 where it is not, or by no more than one shaving opens. */
  readonly mouthTooWideBy: number;
}

/** Smaller changes are not worth a word: half of what a maker can hold, and what a saw's scale shows. */
const WORTH_A_WORD: Readonly<Record<string, number>> = { mm: SHOP / 2, "°": 0.05, "": 0.005 };
/** Figures that are held finer than the shop's own tolerance: the mouth and what opens it. */
const FINE = new Set(["mouthOpening", "glueGap", "edgeHeightAtContact", "soleToTake", "mouthSeen", "allowanceLeft"]);
/** What is worth a word of those: a hundredth is seen at the mouth. mm */
const FINE_WORTH = 0.005;

/** The build's state, read off the design's measured values. */
export function benchState(design: Design): BenchState {
  const now = planeOf(design);
  const count = stepsDone(design) - (mouthWantsMore(design, now) ? 1 : 0);
  const step = STEP_NAMES[count];
  const plan = figureMap(elevation(planned(design)));
  return {
    done: STEP_NAMES.slice(0, count),
    ...(step ? { step } : {}),
    figures: step ? stepFigures(now, step, plan) : [],
    toMeasure: step ? STEPS[step].measures.flatMap((key) => expectation(design, key)) : [],
    changed: changes(plan, now, (key) => stillAhead(key, count) && !isUsedUp(key, count)),
    lost: MEASURED_KEYS.flatMap((key) => lossOf(design, key)),
    mouthTooWideBy: mouthTooWideBy(design, now),
  };
}

/** A mouth wider by less than one shaving opens is as good as hands make it. */
function mouthTooWideBy(design: Design, now: Elevation): number {
  const by = now.design.mouth.opening - design.mouth.opening;
  return by > SHAVING * mouthGrowth(now) ? by : 0;
}

/** Whether the mouth was read, and is not yet as wide as wanted: set, read, repeat. */
const mouthWantsMore = (design: Design, now: Elevation): boolean =>
  design.measured.mouthSeen !== undefined &&
  stepsDone(design) === stepPlace("mouth") + 1 &&
  design.measured.done !== "mouth" &&
  now.design.sole.allowance * mouthGrowth(now) > FINE_WORTH;

const figureMap = (plane: Elevation): ReadonlyMap<string, Figure> =>
  new Map(figuresOf(plane).map((each) => [each.key, each]));

/** Whether a figure still matters: a step to come is done by it, or it is felt in the finished plane. */
const stillAhead = (key: string, count: number): boolean =>
  FELT.has(key) || STEP_NAMES.slice(count).some((step) => (STEPS[step].figures as readonly string[]).includes(key));

/** Whether a figure has moved so far that the maker should be told. */
export const isWorthAWord = (key: string, unit: string, difference: number): boolean =>
  Math.abs(difference) > (FINE.has(key) ? FINE_WORTH : WORTH_A_WORD[unit]!);

function stepFigures(plane: Elevation, step: Step, plan: ReadonlyMap<string, Figure>) {
  const here = figureMap(plane);
  return STEPS[step].figures.flatMap((key) => {
    const found = here.get(key);
    if (!found) return [];
    const before = isUsedUp(key, stepPlace(step)) ? undefined : plan.get(key)?.value;
    const moved = before !== undefined && isWorthAWord(key, found.unit, found.value - before);
    return [moved ? { ...found, planned: before } : found];
  });
}

/** What is left of the allowance once the sole is trued is no departure from the plan. */
const isUsedUp = (key: string, count: number): boolean => key === "soleToTake" && count > stepPlace("sole");

function expectation(design: Design, key: MeasuredKey) {
  const expected = expectedOf(design, key);
  return expected === undefined ? [] : [{ key, unit: MEASURED[key].unit, expected }];
}

function changes(
  before: ReadonlyMap<string, Figure>,
  after: Elevation,
  counts: (key: string) => boolean,
): readonly Change[] {
  return figuresOf(after).flatMap(({ key, help, unit, value }) => {
    const was = before.get(key)?.value;
    if (was === undefined || !counts(key) || !isWorthAWord(key, unit, value - was)) return [];
    return [{ key, help, unit, planned: was, now: value }];
  });
}

/** Figures in which a maker feels that something came out otherwise. */
const FELT = new Set([
  "clearanceAngle",
  "mouthGrowth",
  "mouthOpening",
  "sideClearance",
  "bodyHeight",
  "bodyWidth",
  "pinToRamp",
  "woodOverPinHole",
  "shearOut",
  "wedgeBelowPin",
  "wedgeAbovePin",
  "wedgeTip",
  "wedgeTipFromEdge",
  "wedgeAtPin",
  "recessLand",
  "recessPad",
  "throatNarrowing",
  "throatAtTop",
]);

/** Read on the way to the mouth wanted: more wood left, or a mouth still narrow, has cost nothing. */
const ON_THE_WAY: ReadonlySet<MeasuredKey> = new Set(["allowanceLeft", "mouthSeen"]);

/** What one measured value costs: the plane as it stands beside the plane had that value come out as expected. */
function lossOf(design: Design, key: MeasuredKey): Loss[] {
  if (ON_THE_WAY.has(key)) return [];
  const got = design.measured[key];
  const asked = got === undefined ? undefined : expectedOf(design, key);
  if (got === undefined || asked === undefined || !isWorthAWord(key, MEASURED[key].unit, got - asked)) return [];
  const { [key]: _, ...others } = design.measured;
  const without = { ...design, measured: others as Design["measured"] };
  const costs = changes(figureMap(planeOf(without)), planeOf(design), (figure) => FELT.has(figure));
  return [{ key, unit: MEASURED[key].unit, asked, got, costs }];
}

/** Values that were `auto` and are settled by steps that are done; to be written into the file beside what was measured. */
export function settledValues(design: Design): { key: MeasuredKey; value: number }[] {
  const wasAuto: readonly [MeasuredKey, unknown][] = [
    ["rampAngle", rampShape(design) === "straight" ? design.ramp.angle : design.ramp.wearAngle],
    ["rampRadius", design.ramp.radius],
    ["recessWidth", design.recess.width],
    ["recessDepth", design.recess.depth],
    ["pinHoleFromToe", design.pin.height],
    ["pinHoleHeight", design.pin.height],
    ["wedgeLength", design.wedge.length],
  ];
  const count = stepsDone(design);
  return wasAuto.flatMap(([key, given]) => {
    if (given !== "auto" || design.measured[key] !== undefined || stepPlace(stepOf(key)) >= count) return [];
    const value = expectedOf(design, key);
    return value === undefined ? [] : [{ key, value: Math.round(value * 1e4) / 1e4 }];
  });
}
