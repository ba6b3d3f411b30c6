// `lamplane next`: where the build stands, what to do now with its numbers, what has changed, and what is lost.
import { type BenchState, benchState, type Change, planeOf, STEPS, stepPlace } from "@lamplane/parameters/bench";
import { type Finding, findingsOf } from "@lamplane/parameters/checks";
import { type Design, rowAt } from "@lamplane/parameters/design";
import { STEP_NAMES } from "@lamplane/parameters/table";
import { EXIT, type Exit, type Io } from "../io.ts";
import { columns, ownFor, shownFor } from "../words.ts";

export function next(io: Io, design: Design, file: string, json: boolean): Exit {
  const state = benchState(design);
  const stops = findingsOf(planeOf(design)).filter(({ severity }) => severity === "stop");
  if (json) io.out(`${JSON.stringify({ name: design.name, ...state, stops }, null, 2)}\n`);
  else io.out(stateText(design, file, state, stops));
  return EXIT.done;
}

function stateText(design: Design, file: string, state: BenchState, stops: readonly Finding[]): string {
  return [
    headText(design, state),
    ...stopsText(stops, file),
    ...taskText(design, file, state),
    ...changedText(design, state),
    ...tooWideText(design, file, state),
    ...lostText(design, state),
  ].join("\n");
}

function headText({ name }: Design, { done, step }: BenchState): string {
  if (!step) return `${name}: all ${STEP_NAMES.length} steps are done.\n`;
  const last = done.at(-1);
  const after = last ? `after "${STEPS[last].title}"` : "nothing is cut yet";
  return `${name}: step ${stepPlace(step) + 1} of ${STEP_NAMES.length}, ${after}.\n\n${STEPS[step].title}\n${STEPS[step].task}\n`;
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
  const rows = figures.map(({ key, value, unit, help, planned }) => [
    `  ${key}`,
    shownFor(design, value, unit),
    planned === undefined ? help : `${help} Planned: ${shownFor(design, planned, unit)}.`,
  ]);
  const measure = toMeasure.flatMap(({ key, unit, expected }) => [
    `  lamplane measured ${file} ${key}=…`,
    `      ${rowAt(`measured.${key}`).help} Expected: ${shownFor(design, expected, unit)}.`,
  ]);
  const closing =
    measure.length > 0
      ? ["", "Then measure, and write down what came out:", ...measure]
      : ["", `When it is done: lamplane measured ${file} done=${step}`];
  return [columns(rows), ...closing, ""];
}

function changedText(design: Design, { changed }: BenchState): string[] {
  if (changed.length === 0) return [];
  return ["Changed against the plan:", columns(changed.map((change) => changeRow(design, change))), ""];
}

const changeRow = (design: Design, { key, planned, now, unit, help }: Change): string[] => [
  `  ${key}`,
  `${ownFor(design, planned, unit)} is now ${ownFor(design, now, unit)}`,
  help,
];

function tooWideText(design: Design, file: string, { mouthTooWideBy }: BenchState): string[] {
  if (mouthTooWideBy === 0) return [];
  return [
    `The mouth is too wide by ${shownFor(design, mouthTooWideBy, "mm")}, and no planing closes it:`,
    `\`lamplane mouth ${file} --seen …\` says what does.`,
    "",
  ];
}

/** The plane as it is beside the plane had that one value come out as asked. */
const costText = (design: Design, { planned, now, unit, help }: Change): string =>
  `      ${help.replace(/\.$/, "")}: ${ownFor(design, now, unit)} instead of ${ownFor(design, planned, unit)}`;

function lostText(design: Design, { lost }: BenchState): string[] {
  const lines = lost.flatMap(({ key, asked, got, unit, costs }) => [
    `  ${key}: ${shownFor(design, asked, unit)} was wanted, ${shownFor(design, got, unit)} came out.`,
    ...costs.map((cost) => costText(design, cost)),
  ]);
  return lines.length > 0 ? ["What came out otherwise, and what it changes:", ...lines, ""] : [];
}
