// Where the build stands: what is done, what to do now with its numbers, what has changed against the plan, what is lost.

import { SAME_POINT } from "@lamplane/geometry";
import type { Figure } from "@lamplane/parameters/elevation";
import { type Elevation, elevation, mouthGrowth, rampShape } from "@lamplane/parameters/elevation";
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import { SHAVING } from "../mouth/mouth.ts";
import { type MeasuredKey, STEPS, type Step, stepOf, stepPlace, stepsDone } from "../steps.ts";
import { planeAt, planeOf, planned } from "./as-built.ts";
import { type Change, changes, FINE_WORTH, figureMap, isWorthAWord } from "./changes.ts";
import { expectedOf, lastDone, MEASURED } from "./expected.ts";
import { isFelt, type Loss, lossesOf } from "./losses.ts";

/** A figure of the next step; `planned` where it has moved, `unread` where it rests on a value that was never read. */
export type StepFigure = Figure & { readonly planned?: number; readonly unread?: MeasuredKey };

/** A value that was not read at its step, and what it is taken for. */
export interface Unread {
  readonly key: MeasuredKey;
  readonly step: Step;
  readonly unit: "mm" | "°";
  readonly taken: number;
}
export interface BenchState {
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
  readonly changed: readonly (Change & { readonly isNew: boolean })[];
  /** What steps that are done should have measured and did not: taken as planned, and not known. */
  readonly unread: readonly Unread[];
  /** What can no longer be had. */
  readonly lost: readonly Loss[];
  /** How much wider than wanted the mouth is, mm; 0 where it is not, or by no more than one shaving opens. */
  readonly mouthTooWideBy: number;
}

/** The build's state, read off the design's measured values. */
export function benchState(design: Design): BenchState {
  const now = planeOf(design);
  const count = stepsDone(design) - (mouthWantsMore(design, now) ? 1 : 0);
  const step = STEP_NAMES[count];
  const latest = stepsDone(design) === 0 ? undefined : lastDone(design);
  const plan = figureMap(elevation(planned(design)));
  return {
    done: STEP_NAMES.slice(0, count),
    ...(latest ? { latest } : {}),
    ...(step ? { step } : {}),
    figures: step ? stepFigures(design, now, step, plan) : [],
    toMeasure: step ? STEPS[step].measures.flatMap((key) => expectation(design, key)) : [],
    changed: changedSince(design, latest, plan, now, (key) => stillAhead(key, count) && !isUsedUp(key, count)),
    unread: unreadOf(design),
    lost: lossesOf(design),
    mouthTooWideBy: mouthTooWideBy(design, now),
  };
}

/** What moved against the plan; new is what the latest step moved. */
function changedSince(
  design: Design,
  latest: Step | undefined,
  plan: ReadonlyMap<string, Figure>,
  now: Elevation,
  counts: (key: string) => boolean,
): BenchState["changed"] {
  const before = latest ? figureMap(planeAt(design, latest)) : plan;
  const moved = new Set(changes(before, now, counts).map(({ key }) => key));
  return changes(plan, now, counts).map((change) => ({ ...change, isNew: moved.has(change.key) }));
}

/**
 * Values of steps that are done without a reading; a mouth that is done is taken to be as wanted. A mouth that was seen
 * tells where the sole stands, whatever was read of it before.
 */
export function unreadOf(design: Design): Unread[] {
  return STEP_NAMES.slice(0, stepsDone(design)).flatMap((step) =>
    STEPS[step].measures.flatMap((key): Unread[] => {
      const expected = design.measured[key] === undefined ? expectedOf(design, key) : undefined;
      if (expected === undefined || (key === "allowanceLeft" && design.measured.mouthSeen !== undefined)) return [];
      const taken = key === "mouthSeen" ? design.mouth.opening : expected;
      return [{ key, step, unit: MEASURED[key].unit, taken }];
    }),
  );
}

/** A mouth wider by no more than one shaving opens is as good as hands make it. */
function mouthTooWideBy(design: Design, now: Elevation): number {
  const by = now.design.mouth.opening - design.mouth.opening;
  return by > SHAVING * mouthGrowth(now) + SAME_POINT ? by : 0;
}

/** Whether the mouth was read, and is not yet as wide as wanted: set, read, repeat. */
const mouthWantsMore = (design: Design, now: Elevation): boolean =>
  design.measured.mouthSeen !== undefined &&
  stepsDone(design) === stepPlace("mouth") + 1 &&
  design.measured.done !== "mouth" &&
  now.design.sole.allowance * mouthGrowth(now) > FINE_WORTH;

/** Whether a figure still matters: a step to come is done by it, or it is felt in the finished plane. */
const stillAhead = (key: string, count: number): boolean =>
  isFelt(key) || STEP_NAMES.slice(count).some((step) => (STEPS[step].figures as readonly string[]).includes(key));

/** Figures that are no more than what was measured at a step before. */
const READ_AS: Readonly<Partial<Record<string, MeasuredKey>>> = { soleToTake: "allowanceLeft" };

function stepFigures(design: Design, plane: Elevation, step: Step, plan: ReadonlyMap<string, Figure>): StepFigure[] {
  const here = figureMap(plane);
  const unread = new Set(unreadOf(design).map(({ key }) => key));
  return STEPS[step].figures.flatMap((key) => {
    const found = here.get(key);
    if (!found) return [];
    const before = isUsedUp(key, stepPlace(step)) ? undefined : plan.get(key)?.value;
    const moved = before !== undefined && isWorthAWord(key, found.unit, found.value - before);
    const asked = READ_AS[key];
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
const isUsedUp = (key: string, count: number): boolean => key === "soleToTake" && count > stepPlace("sole");

function expectation(design: Design, key: MeasuredKey) {
  const expected = expectedOf(design, key);
  return expected === undefined ? [] : [{ key, unit: MEASURED[key].unit, expected }];
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
