// `lamplane next`: where the build stands, what to do now with its numbers, what is new, and what was before.
import {
  type BenchState,
  benchState,
  type Change,
  comparedTold,
  figureTold,
  JOB,
  jobNumber,
  type Loss,
  lossText,
  measuredTold,
  planeOf,
  STEPS,
  stepPlace,
  wantedText,
} from "@lamplane/bench";
import { type Finding, findingsOf } from "@lamplane/bench/checks";
import { rowAt } from "@lamplane/parameters/design";
import { type Design, STEP_NAMES } from "@lamplane/parameters/table";
import { EXIT, type Exit, type Io } from "../io.ts";
import { columns, shownFor, unreadText } from "../words.ts";

export function next(io: Io, design: Design, file: string, json: boolean): Exit {
  const state = benchState(design);
  const stops = findingsOf(planeOf(design)).filter(({ severity }) => severity === "stop");
  if (json) io.out(`${JSON.stringify({ name: design.name, ...state, stops }, null, 2)}\n`);
  else io.out(stateText(design, file, state, stops));
  return EXIT.done;
}

function stateText(design: Design, file: string, state: BenchState, stops: readonly Finding[]): string {
  return [
    headText(design, file, state),
    ...stopsText(stops, file),
    ...taskText(design, file, state),
    ...tooWideText(design, file, state),
    ...newText(design, state),
    ...olderText(design, state),
    ...notReadText(design, state),
  ].join("\n");
}

const FIRST_SHAVING = JOB.indexOf("first-shaving") + 1;

function headText({ name }: Design, file: string, { done, step }: BenchState): string {
  if (!step)
    return `${name}: the plane is built. The traveller goes on with ${FIRST_SHAVING}, the first shaving, and ${JOB.length}, after a season.\n`;
  const last = done.at(-1);
  const after = last
    ? `after "${STEPS[last].title}"`
    : `nothing is cut yet (1 is the choice of wood: \`lamplane stock ${file}\`)`;
  return `${name}: step ${jobNumber(step)} of the traveller's ${JOB.length}, ${after}.\n\n${STEPS[step].title}\n${STEPS[step].task}\n`;
}

/** What fails as the plane stands is told before what to do: the next cut may be the one that cannot be mended. */
const stopsText = (stops: readonly Finding[], file: string): string[] =>
  stops.length === 0
    ? []
    : [
        `BEFORE YOU GO ON: as it stands, ${stops.length === 1 ? "a check fails" : `${stops.length} checks fail`}; \`lamplane check ${file}\` says more.`,
        ...stops.map(({ message }) => `  ${message}`),
        "",
      ];

function taskText(design: Design, file: string, { step, figures, toMeasure }: BenchState): string[] {
  if (!step) return [];
  const rows = figures.map(({ key, value, unit, help, planned, unread }) => [
    `  ${key}`,
    figureTold(design, key, value, unit),
    [
      help,
      ...(planned === undefined ? [] : [`Planned: ${comparedTold(design, planned, unit)}.`]),
      ...(unread === undefined ? [] : [`Not measured (${unread}): taken as planned.`]),
    ].join(" "),
  ]);
  const measure = toMeasure.flatMap(({ key, unit, expected }) => [
    `  lamplane measured ${file} ${key}=…`,
    `      ${rowAt(`measured.${key}`).help} Expected: ${wantedText(design, key) ?? measuredTold(design, expected, unit)}.`,
  ]);
  const closing =
    measure.length > 0
      ? ["", "Then measure, and write down what came out:", ...measure]
      : ["", `When it is done: lamplane measured ${file} done=${step}`];
  return [columns(rows), ...closing, ""];
}

function tooWideText(design: Design, file: string, { mouthTooWideBy }: BenchState): string[] {
  if (mouthTooWideBy === 0) return [];
  return [
    `The mouth is too wide by ${shownFor(design, mouthTooWideBy, "mm")}, and no planing closes it:`,
    `\`lamplane mouth ${file} --seen …\` says what does.`,
    "",
  ];
}

/** What the latest step brought: each value that is off, what it costs, and the later steps' numbers that moved with it. */
function newText(design: Design, { latest, step, lost, changed }: BenchState): string[] {
  const values = lost.filter((loss) => loss.step === latest);
  if (latest === undefined || values.length === 0) return [];
  const shownAbove = new Set<string>(step ? STEPS[step].figures : []);
  const later = new Set<string>(STEP_NAMES.slice(stepPlace(latest) + 1).flatMap((name) => STEPS[name].figures));
  const moved = changed.filter(({ key, isNew }) => isNew && later.has(key) && !shownAbove.has(key));
  return [
    `New from "${STEPS[latest].title}":`,
    ...values.flatMap((loss) => lossLines(design, loss)),
    ...(moved.length > 0
      ? ["  Numbers of later steps that moved with it:", columns(moved.map((change) => movedRow(design, change)))]
      : []),
    "",
  ];
}

/** The plane as it is beside the plane had that one value come out as asked. */
function lossLines(design: Design, loss: Loss): string[] {
  const { came, costs } = lossText(design, loss);
  return [`  ${loss.key}: ${came}`, ...costs.map((cost) => `      ${cost}`)];
}

const movedRow = (design: Design, { key, planned, now, unit, help }: Change): string[] => [
  `    ${key}`,
  `${comparedTold(design, now, unit)}, planned ${comparedTold(design, planned, unit)}`,
  help,
];

/** What came out otherwise at steps before the latest: a line each, for every number told allows for it. */
function olderText(design: Design, { latest, step, lost }: BenchState): string[] {
  const older = lost.filter((loss) => loss.step !== latest);
  if (older.length === 0) return [];
  const rows = older.map(({ key, asked, got, unit, costs }) => [
    `  ${key}`,
    `${comparedTold(design, got, unit)} instead of ${comparedTold(design, asked, unit)}`,
    costs.length === 0 ? "" : `still felt in ${costs.map((cost) => cost.key).join(", ")}`,
  ]);
  const head = step ? "From earlier steps, already allowed for in every number above:" : "What came out otherwise:";
  return [head, columns(rows), ""];
}

const notReadText = (design: Design, { unread }: BenchState): string[] =>
  unread.length === 0 ? [] : [`Not measured, so taken as planned: ${unreadText(design, unread)}.`, ""];
