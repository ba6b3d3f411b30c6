// A build for the bench screens, from the same history, steps and words as `next` and the traveller; and what is entered there.
import {
  asBuiltPlane,
  type BuildState,
  buildNews,
  buildState,
  doubtText,
  earlierLosses,
  expectedValue,
  findDoubt,
  formatFigure,
  isMeasuredKey,
  type Loss,
  lossText,
  MEASURED_ROWS,
  measuredUnit,
  skippedSteps,
  stepWords,
} from "@lamplane/bench";
import { checkWithoutCures, findingSentence } from "@lamplane/bench/checks";
import { faultText, readDesign, removeValue, setValue } from "@lamplane/parameters/design";
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { type TravellerStep, travellerSteps } from "@lamplane/sheets";
import type { BenchAnswer, BenchBuild, BenchEntry, BenchLoss, BenchScreen } from "../protocol/bench-build.ts";
import { BENCH } from "../words/bench.ts";
import { stepRoom } from "./step-room.ts";

/**
 * @param width of a step's drawing, mm
 * @param file name of the design file, for faults
 */
export function answerBench(text: string, file: string, width: number, entry?: BenchEntry): BenchAnswer {
  const before = readDesign(text, file);
  if (!before.ok) return { kind: "refused", words: before.faults.map(faultText) };
  if (!entry) return build(before.design, text, width);
  const written = entry.value === undefined ? removeValue(text, entry.path) : setValue(text, entry.path, entry.value);
  const after = readDesign(written, file);
  if (!after.ok) return { kind: "refused", words: after.faults.map(faultText) };
  return judgeEntry(before.design, after.design, entry) ?? build(after.design, written, width);
}

/** What the maker is asked before a value is entered, as `lamplane measured` asks it. */
function judgeEntry(before: Design, after: Design, { path, value, isConfirmed }: BenchEntry): BenchAnswer | undefined {
  const key = path.replace("measured.", "");
  if (value === undefined) return undefined;
  if (isMeasuredKey(key) && expectedValue(after, key) === undefined)
    return { kind: "refused", words: [BENCH.nothingToMeasure] };
  if (isConfirmed) return undefined;
  const doubt = isMeasuredKey(key) ? findDoubt(after, key) : undefined;
  if (doubt) return { kind: "doubt", words: doubtText(doubt, (mm, unit) => formatValue(mm, unit, after)) };
  const skipped = skippedSteps(before, after);
  if (skipped.length === 0) return undefined;
  return { kind: "skips", titles: skipped.map((step) => stepWords(after, step).title) };
}

function build(design: Design, text: string, width: number): BenchAnswer {
  const stops = checkWithoutCures(asBuiltPlane(design))
    .filter(({ severity }) => severity === "stop")
    .map((stop) => findingSentence(design, stop));
  try {
    return { kind: "build", build: makeBuild(design, text, width, stops) };
  } catch (error) {
    if (stops.length === 0) throw error;
    return { kind: "refused", words: stops }; // no steps can be drawn of a plane that cannot be
  }
}

function makeBuild(design: Design, text: string, width: number, stops: readonly string[]): BenchBuild {
  const state = buildState(design);
  return {
    name: design.name,
    style: { units: design.units, shop: design.shop },
    text,
    screens: travellerSteps(design).map((step) => screenOf(step, state, width)),
    ...(state.step ? { next: state.step } : {}),
    stops,
    ...newsOf(design, state),
    earlier: earlierLosses(state).map((loss) => lossOf(design, loss)),
    unread: state.unread
      .map(({ key, unit, taken }) => `${MEASURED_ROWS[key].name} ${formatValue(taken, unit, design)}`)
      .join(", "),
    ...(state.mouthTooWideBy === 0 ? {} : { tooWideBy: formatValue(state.mouthTooWideBy, "mm", design) }),
  };
}

/** Done as `next` says: a mouth that was read and is to be opened further is not. */
function screenOf(step: TravellerStep, { done, unread }: BuildState, width: number): BenchScreen {
  const { key, title, task, why, numbers, instructions, checks, cautions, blanks } = step;
  const isDone = (done as readonly string[]).includes(key);
  return {
    key,
    title,
    task,
    ...(why === undefined ? {} : { why }),
    numbers,
    instructions,
    checks,
    cautions: cautions.map((caution) => caution.text),
    blanks: blanks.map(({ key: blank, label, expected, times, measured }) => ({
      path: `measured.${blank}`,
      label,
      expected,
      unit: measuredUnit(blank),
      ...(times === undefined ? {} : { times }),
      ...(measured === undefined ? {} : { value: measured }),
    })),
    picture: step.draw(stepRoom(width)),
    isDone,
    isComplete: isDone && unread.every((value) => value.step !== key),
    isKept: (STEP_NAMES as readonly string[]).includes(key),
  };
}

function newsOf(design: Design, state: BuildState): Pick<BenchBuild, "news"> {
  const news = buildNews(state);
  if (!news) return {};
  return {
    news: {
      from: stepWords(design, news.step).title,
      values: news.values.map((loss) => lossOf(design, loss)),
      moved: news.moved.map(({ key, name, now, planned, unit }) => ({
        name,
        now: formatFigure(design, key, now, unit),
        planned: formatFigure(design, key, planned, unit),
      })),
    },
  };
}

const lossOf = (design: Design, loss: Loss): BenchLoss => ({
  name: MEASURED_ROWS[loss.key].name,
  ...lossText(design, loss),
});
