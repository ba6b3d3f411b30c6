// `lamplane next`: where the build stands, what to do now with its numbers, what is new, and what was before.

import {
  asBuiltPlane,
  type BuildState,
  buildState,
  type FigureChange,
  formatFigure,
  JOB_STEPS,
  jobNumber,
  type Loss,
  lossText,
  STEPS,
  stepIndex,
  stepWords,
  wantedText,
} from "@lamplane/bench";
import { checkWithoutCures, type Finding, findingSentence, formatFinding } from "@lamplane/bench/checks";
import { rowAt } from "@lamplane/parameters/design";
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";
import { EXIT, type Exit, type Io } from "../io.ts";
import { alignColumns, unreadText } from "../text.ts";

export function nextCommand(io: Io, design: Design, file: string, json: boolean): Exit {
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
    headText(design, file, state),
    ...stopsText(design, stops, file),
    ...taskText(design, file, state),
    ...tooWideText(design, file, state),
    ...latestStepText(design, state),
    ...earlierStepsText(design, state),
    ...unreadStepsText(design, state),
  ].join("\n");
}

const FIRST_SHAVING = JOB_STEPS.indexOf("first-shaving") + 1;

function headText(design: Design, file: string, { done, step }: BuildState): string {
  const { name } = design;
  if (!step)
    return `${name}: the plane is built. The traveller goes on with ${FIRST_SHAVING}, the first shaving, and ${JOB_STEPS.length}, after a season.\n`;
  const last = done.at(-1);
  const after = last
    ? `after "${stepWords(design, last).title}"`
    : `nothing is cut yet (1 is the choice of wood: \`lamplane stock ${file}\`)`;
  const { title, task } = stepWords(design, step);
  return `${name}: step ${jobNumber(step)} of the traveller's ${JOB_STEPS.length}, ${after}.\n\n${title}\n${task}\n`;
}

/** What fails as the plane stands is told before what to do: the next cut may be the one that cannot be mended. */
const stopsText = (design: Design, stops: readonly Finding[], file: string): string[] =>
  stops.length === 0
    ? []
    : [
        `BEFORE YOU GO ON: as it stands, ${stops.length === 1 ? "a check fails" : `${stops.length} checks fail`}; \`lamplane check ${file}\` says more.`,
        ...stops.map((stop) => `  ${findingSentence(design, stop)}`),
        "",
      ];

function taskText(design: Design, file: string, { step, figures, toMeasure }: BuildState): string[] {
  if (!step) return [];
  const rows = figures.map(({ key, value, unit, help, planned, unread }) => [
    `  ${key}`,
    formatFigure(design, key, value, unit),
    [
      help,
      ...(planned === undefined ? [] : [`Planned: ${formatValue(planned, unit, design)}.`]),
      ...(unread === undefined ? [] : [`Not measured (${unread}): taken as planned.`]),
    ].join(" "),
  ]);
  const measure = toMeasure.flatMap(({ key, unit, expected }) => [
    `  lamplane measured ${file} ${key}=…`,
    `      ${rowAt(`measured.${key}`).help} Expected: ${wantedText(design, key) ?? formatValue(expected, unit, design)}.`,
  ]);
  const closing =
    measure.length > 0
      ? ["", "Then measure, and write down what came out:", ...measure]
      : ["", `When it is done: lamplane measured ${file} done=${step}`];
  return [alignColumns(rows), ...closing, ""];
}

function tooWideText(design: Design, file: string, { mouthTooWideBy }: BuildState): string[] {
  if (mouthTooWideBy === 0) return [];
  return [
    `The mouth is too wide by ${formatValue(mouthTooWideBy, "mm", design)}, and no planing closes it:`,
    `\`lamplane mouth ${file} --seen …\` says what does.`,
    "",
  ];
}

/** What the latest step brought: each value that is off, what it costs, and the later steps' numbers that moved with it. */
function latestStepText(design: Design, { latest, step, lost, changed }: BuildState): string[] {
  const values = lost.filter((loss) => loss.step === latest);
  if (latest === undefined || values.length === 0) return [];
  const shownAbove = new Set<string>(step ? STEPS[step].figures : []);
  const later = new Set<string>(STEP_NAMES.slice(stepIndex(latest) + 1).flatMap((name) => STEPS[name].figures));
  const moved = changed.filter(({ key, isNew }) => isNew && later.has(key) && !shownAbove.has(key));
  return [
    `New from "${stepWords(design, latest).title}":`,
    ...values.flatMap((loss) => lossLines(design, loss)),
    ...(moved.length > 0
      ? [
          "  Numbers of later steps that moved with it:",
          alignColumns(moved.map((change) => figureChangeRow(design, change))),
        ]
      : []),
    "",
  ];
}

/** The plane as it is beside the plane had that one value come out as asked. */
function lossLines(design: Design, loss: Loss): string[] {
  const { came, costs } = lossText(design, loss);
  return [`  ${loss.key}: ${came}`, ...costs.map((cost) => `      ${cost}`)];
}

const figureChangeRow = (design: Design, { key, planned, now, unit, help }: FigureChange): string[] => [
  `    ${key}`,
  `${formatValue(now, unit, design)}, planned ${formatValue(planned, unit, design)}`,
  help,
];

/** What came out otherwise at steps before the latest: a line each, for every number told allows for it. */
function earlierStepsText(design: Design, { latest, step, lost }: BuildState): string[] {
  const older = lost.filter((loss) => loss.step !== latest);
  if (older.length === 0) return [];
  const rows = older.map(({ key, asked, got, unit, costs }) => [
    `  ${key}`,
    `${formatValue(got, unit, design)} instead of ${formatValue(asked, unit, design)}`,
    costs.length === 0 ? "" : `still felt in ${costs.map((cost) => cost.key).join(", ")}`,
  ]);
  const head = step ? "From earlier steps, already allowed for in every number above:" : "What came out otherwise:";
  return [head, alignColumns(rows), ""];
}

const unreadStepsText = (design: Design, { unread }: BuildState): string[] =>
  unread.length === 0 ? [] : [`Not measured, so taken as planned: ${unreadText(design, unread)}.`, ""];
