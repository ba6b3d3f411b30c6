// Where the build stands: what is done, what to do now with its numbers, what has changed against the plan, what is lost.

import { EPSILON } from "@lamplane/geometry";
import { valueAt } from "@lamplane/parameters/design";
import { type Elevation, type Figure, type FigureKey, mouthOpeningAt } from "@lamplane/parameters/elevation";
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import { MEASURED_KEYS, MEASURED_ROWS, type MeasuredKey, measuredUnit } from "../measured-values.ts";
import { SHAVING } from "../mouth/mouth.ts";
import { mouthSeenInMiddle } from "../mouth/mouth-skew.ts";
import { STEPS, type Step, stepIndex, stepsDone } from "../steps.ts";
import { asBuiltPlane, planeBeforeStep, plannedPlane } from "./as-built.ts";
import { FINE_SIGNIFICANCE, type FigureChange, figuresByKey, findChanges, isSignificant } from "./changes.ts";
import { expectedValue } from "./expected.ts";
import { history } from "./history.ts";
import { affectsUse, findLosses, type Loss } from "./losses.ts";

/** A figure of the next step; `planned` where it has moved, `unread` where it rests on a value that was never read. */
export type StepFigure = Figure & { readonly planned?: number; readonly unread?: MeasuredKey };

/** A value that was not read at its step, and what it is taken for. */
export interface UnreadValue {
  readonly key: MeasuredKey;
  readonly step: Step;
  readonly unit: "mm" | "°";
  readonly taken: number;
}
export interface BuildState {
  readonly done: readonly Step[];
  /** The last step that is done or was measured: what it brought is new. Absent where nothing is done. */
  readonly latest?: Step;
  /** Absent once all is done. */
  readonly step?: Step;
  /** The next step's figures, each with what it was planned to be. */
  readonly figures: readonly StepFigure[];
  /** What to measure when the step is done, and what it is expected to be. */
  readonly toMeasure: readonly { readonly key: MeasuredKey; readonly unit: "mm" | "°"; readonly expected: number }[];
  /** Figures of steps still to come that have moved; `isNew` where the latest step moved them. */
  readonly changed: readonly (FigureChange & { readonly isNew: boolean })[];
  /** What steps that are done should have measured and did not: taken as planned, and not known. */
  readonly unread: readonly UnreadValue[];
  /** What can no longer be had. */
  readonly lost: readonly Loss[];
  /** How much wider than wanted the mouth is, mm; 0 where it is not, or by no more than one shaving opens. */
  readonly mouthTooWideBy: number;
}

/** The build's state, read off the design's measured values. */
export function buildState(design: Design): BuildState {
  const now = asBuiltPlane(design);
  const count = stepsDone(design) - (mouthNeedsMore(design) ? 1 : 0);
  const step = STEP_NAMES[count];
  const latest = history(design).at(-1)?.step;
  const plan = figuresByKey(plannedPlane(design));
  return {
    done: STEP_NAMES.slice(0, count),
    ...(latest ? { latest } : {}),
    ...(step ? { step } : {}),
    figures: step ? stepFigures(design, now, step, plan) : [],
    toMeasure: step ? STEPS[step].measures.flatMap((key) => expectedReading(design, key)) : [],
    changed: changesSinceStep(design, latest, plan, now, (key) => isStillRelevant(key, count) && !isUsedUp(key, count)),
    unread: unreadValues(design),
    lost: findLosses(design),
    mouthTooWideBy: mouthTooWideBy(design, now),
  };
}

/** What moved against the plan; new is what the latest step moved. */
function changesSinceStep(
  design: Design,
  latest: Step | undefined,
  plan: ReadonlyMap<string, Figure>,
  now: Elevation,
  counts: (key: string) => boolean,
): BuildState["changed"] {
  const before = latest ? figuresByKey(planeBeforeStep(design, latest)) : plan;
  const moved = new Set(findChanges(before, now, counts).map(({ key }) => key));
  return findChanges(plan, now, counts).map((change) => ({ ...change, isNew: moved.has(change.key) }));
}

/**
 * Values of steps that are done without a reading; a mouth that is done is taken to be as wanted. A mouth that was seen
 * shows where the sole stands, whatever was read of it before.
 */
export function unreadValues(design: Design): UnreadValue[] {
  return STEP_NAMES.slice(0, stepsDone(design)).flatMap((step) =>
    STEPS[step].measures.flatMap((key): UnreadValue[] => {
      const expected = design.measured[key] === undefined ? expectedValue(design, key) : undefined;
      const { isOptional, isTakenAsWanted, parameter } = MEASURED_ROWS[key];
      if (expected === undefined || isOptional || isImplied(design, key)) return [];
      const taken = isTakenAsWanted ? Number(valueAt(design, parameter)) : expected;
      return [{ key, step, unit: measuredUnit(key), taken }];
    }),
  );
}

/** Whether other readings imply a value: by themselves, or by what implies each of them. */
function isImplied({ measured }: Design, key: MeasuredKey): boolean {
  const areRead = (keys: readonly MeasuredKey[] = []) =>
    keys.length > 0 && keys.every((each) => measured[each] !== undefined);
  const { impliedBy = [] } = MEASURED_ROWS[key];
  return (
    areRead(impliedBy) || (impliedBy.length > 0 && impliedBy.every((each) => areRead(MEASURED_ROWS[each].impliedBy)))
  );
}

/** A mouth wider by no more than one shaving opens is as good as hands make it. */
function mouthTooWideBy(design: Design, now: Elevation): number {
  const by = now.design.mouth.opening - design.mouth.opening;
  return by > mouthOpeningAt(now, SHAVING) - mouthOpeningAt(now, 0) + EPSILON ? by : 0;
}

/** Whether the mouth was read, and is not yet as wide as wanted: set, read, repeat. */
const mouthNeedsMore = (design: Design): boolean =>
  stepsDone(design) === stepIndex("mouth") + 1 &&
  design.measured.done !== "mouth" &&
  wantsWider(design, mouthSeenInMiddle(design.measured));

const wantsWider = (design: Design, seen: number | undefined): boolean =>
  seen !== undefined && design.mouth.opening - seen > FINE_SIGNIFICANCE;

/** Whether a figure still matters: a step to come is done by it, or it is felt in the finished plane. */
const isStillRelevant = (key: string, count: number): boolean =>
  affectsUse(key) || STEP_NAMES.slice(count).some((step) => (STEPS[step].figures as readonly string[]).includes(key));

/** The value whose reading a figure is. */
const measuredKeyOf = (figure: FigureKey): MeasuredKey | undefined =>
  MEASURED_KEYS.find((key) => MEASURED_ROWS[key].readingOf === figure);

function stepFigures(design: Design, plane: Elevation, step: Step, plan: ReadonlyMap<string, Figure>): StepFigure[] {
  const here = figuresByKey(plane);
  const unread = new Set(unreadValues(design).map(({ key }) => key));
  return STEPS[step].figures.flatMap((key) => {
    const found = here.get(key);
    if (!found) return [];
    const before = isUsedUp(key, stepIndex(step)) ? undefined : plan.get(key)?.value;
    const moved = before !== undefined && isSignificant(key, found.unit, found.value - before);
    const asked = measuredKeyOf(key);
    return [
      {
        ...found,
        ...(moved ? { planned: before } : {}),
        ...(asked !== undefined && unread.has(asked) ? { unread: asked } : {}),
      },
    ];
  });
}

/** What is left of the allowance once the sole is trued is no departure from the plan. */
const isUsedUp = (key: string, count: number): boolean => key === "soleToTake" && count > stepIndex("sole");

function expectedReading(design: Design, key: MeasuredKey) {
  const expected = expectedValue(design, key);
  return expected === undefined ? [] : [{ key, unit: measuredUnit(key), expected }];
}
