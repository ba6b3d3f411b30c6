// `lamplane next`: where the build stands, what to do now with its numbers, what is new, and what was before.

import {
  asBuiltPlane,
  type BuildState,
  buildNews,
  buildState,
  earlierLosses,
  expectationText,
  type FigureChange,
  formatFigure,
  formatStepFigure,
  JOB_STEPS,
  jobNumber,
  type Loss,
  lossText,
  MEASURED_ROWS,
  mouthSkew,
  readingsInFile,
  skewText,
  stepWords,
} from "@lamplane/bench";
import { checkWithoutCures, type Finding, findingSentence, formatFinding } from "@lamplane/bench/checks";
import { formatParameter, rowAt, valueAt } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { EXIT, type Exit, type Io } from "../io.ts";
import { alignColumns, unreadText } from "../text.ts";
import { NEXT } from "../words/reports.ts";

export interface NextOptions {
  /** As it was typed: what is to be typed next names it. */
  readonly file: string;
  readonly json: boolean;
}

export function nextCommand(io: Io, design: Design, { file, json }: NextOptions): Exit {
  const state = buildState(design);
  const stops = checkWithoutCures(asBuiltPlane(design)).filter(({ severity }) => severity === "stop");
  if (json)
    io.out(
      `${JSON.stringify({ name: design.name, ...state, stops: stops.map((stop) => formatFinding(design, stop)) }, null, 2)}\n`,
    );
  else io.out(stateText(design, file, state, stops));
  return EXIT.done;
}

function stateText(design: Design, file: string, state: BuildState, stops: readonly Finding[]): string {
  return [
    headText(design, state),
    ...stopsText(design, stops, file),
    ...taskText(design, file, state),
    ...tooWideText(design, file, state),
    ...unevenText(design, state),
    ...latestStepText(design, state),
    ...earlierStepsText(design, state),
    ...unreadStepsText(design, state),
  ].join("\n");
}

function headText(design: Design, { step }: BuildState): string {
  const { name } = design;
  const last = JOB_STEPS.length;
  if (!step) return `${NEXT.built({ name, first: JOB_STEPS.indexOf("first-shaving") + 1, last })}\n`;
  const { title, task } = stepWords(design, step);
  return `${NEXT.step({ name, number: jobNumber(step), of: last, title })}\n${task}\n`;
}

/** What fails as the plane stands comes before what to do: the next cut may be the one that cannot be undone. */
const stopsText = (design: Design, stops: readonly Finding[], file: string): string[] =>
  stops.length === 0
    ? []
    : [NEXT.stops({ count: stops.length, file }), ...stops.map((stop) => `  ${findingSentence(design, stop)}`), ""];

function taskText(design: Design, file: string, { step, figures, toMeasure }: BuildState): string[] {
  if (!step) return [];
  const rows = figures.map(({ key, name, value, unit, planned, unread }) => [
    `  ${name}`,
    formatStepFigure(design, key, value, unit),
    [
      ...(planned === undefined ? [] : [NEXT.planned({ value: formatFigure(design, key, planned, unit) })]),
      ...(unread === undefined ? [] : [NEXT.notMeasured]),
    ].join("; "),
  ]);
  const measure = toMeasure.flatMap(({ key, unit, expected }) => [
    `  lamplane measured ${file} ${key}=…`,
    `      ${NEXT.expected({ help: MEASURED_ROWS[key].help, value: expectationText(design, key) ?? formatValue(expected, unit, design) })}`,
  ]);
  const inFile = readingsInFile(design, step).map((path) => [
    `  ${path}`,
    formatParameter(path, valueAt(design, path)!, design),
    rowAt(path).name,
  ]);
  const correct = inFile.length > 0 ? ["", NEXT.inFile({ file }), alignColumns(inFile)] : [];
  const closing = measure.length > 0 ? ["", NEXT.measure, ...measure] : ["", NEXT.done({ file, step })];
  return [alignColumns(rows), ...correct, ...closing, ""];
}

const tooWideText = (design: Design, file: string, { mouthTooWideBy }: BuildState): string[] =>
  mouthTooWideBy === 0 ? [] : [NEXT.tooWide({ by: formatValue(mouthTooWideBy, "mm", design), file }), ""];

/** From the mouth's step on; until both cheeks are read, while that step is to be done only. */
function unevenText(design: Design, { step }: BuildState): string[] {
  const plane = asBuiltPlane(design);
  return step === "mouth" || mouthSkew(plane).isRead ? [...skewText(plane), ""] : [];
}

/** What the latest step brought: each value that is off, what it costs, and the later steps' numbers that moved with it. */
function latestStepText(design: Design, state: BuildState): string[] {
  const news = buildNews(state);
  if (!news) return [];
  const { step, values, moved } = news;
  return [
    NEXT.latest({ title: stepWords(design, step).title }),
    ...values.flatMap((loss) => lossLines(design, loss)),
    ...(moved.length > 0 ? [NEXT.moved, alignColumns(moved.map((change) => figureChangeRow(design, change)))] : []),
    "",
  ];
}

/** The plane as it is beside the plane had that one value come out as asked. */
function lossLines(design: Design, loss: Loss): string[] {
  const { came, costs } = lossText(design, loss);
  return [`  ${MEASURED_ROWS[loss.key].name}: ${came}`, ...costs.map((cost) => `      ${cost}`)];
}

const figureChangeRow = (design: Design, { key, name, planned, now, unit }: FigureChange): string[] => [
  `    ${name}`,
  NEXT.change({ now: formatFigure(design, key, now, unit), planned: formatFigure(design, key, planned, unit) }),
];

/** What came out otherwise at steps before the latest, a line each: every number above allows for it. */
function earlierStepsText(design: Design, state: BuildState): string[] {
  const older = earlierLosses(state);
  if (older.length === 0) return [];
  const rows = older.map(({ key, asked, got, unit, costs }) => [
    `  ${MEASURED_ROWS[key].name}`,
    NEXT.insteadOf({ got: formatValue(got, unit, design), asked: formatValue(asked, unit, design) }),
    costs.length === 0 ? "" : NEXT.affects({ names: costs.map((cost) => costText(design, cost)) }),
  ]);
  return [
    state.step ? NEXT.earlier : NEXT.offPlan,
    alignColumns(rows),
    ...(nothingWarns(design) ? [NEXT.passes] : []),
    "",
  ];
}

const costText = (design: Design, { name, now, planned, unit }: FigureChange): string =>
  NEXT.cost({ name, now: formatValue(now, unit, design), planned: formatValue(planned, unit, design) });

const nothingWarns = (design: Design): boolean =>
  checkWithoutCures(asBuiltPlane(design)).every(({ severity }) => severity === "note");

const unreadStepsText = (design: Design, { unread }: BuildState): string[] =>
  unread.length === 0 ? [] : [NEXT.unread({ values: unreadText(design, unread) }), ""];
