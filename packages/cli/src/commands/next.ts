// `lamplane next`: where the build stands, what to do now with its numbers, what has changed, and what is lost.
import { type BenchState, benchState, type Change, STEPS, stepPlace } from "@lamplane/parameters/bench";
import { type Design, rowAt } from "@lamplane/parameters/design";
import { STEP_NAMES } from "@lamplane/parameters/table";
import { EXIT, type Exit, type Io } from "../io.ts";
import { columns, shownFor } from "../words.ts";

export function next(io: Io, design: Design, file: string, json: boolean): Exit {
  const state = benchState(design);
  if (json) io.out(`${JSON.stringify({ name: design.name, ...state }, null, 2)}\n`);
  else io.out(stateText(design, file, state));
  return EXIT.done;
}

function stateText(design: Design, file: string, state: BenchState): string {
  return [
    headText(design, state),
    ...taskText(design, file, state),
    ...changedText(design, state),
    ...lostText(design, state),
  ].join("\n");
}

function headText({ name }: Design, { done, step }: BenchState): string {
  if (!step) return `${name}: all ${STEP_NAMES.length} steps are done.\n`;
  const last = done.at(-1);
  const after = last ? `after "${STEPS[last].title}"` : "nothing is cut yet";
  return `${name}: step ${stepPlace(step) + 1} of ${STEP_NAMES.length}, ${after}.\n\n${STEPS[step].title}\n${STEPS[step].task}\n`;
}

function taskText(design: Design, file: string, { step, figures, toMeasure }: BenchState): string[] {
  if (!step) return [];
  const rows = figures.map(({ key, value, unit, help, planned }) => [
    `  ${key}`,
    shownFor(design, value, unit),
    planned === undefined ? help : `${help} Planned: ${shownFor(design, planned, unit)}.`,
  ]);
  const measure = toMeasure.map(
    ({ key, unit, expected }) =>
      `  lamplane measured ${file} ${key}=…   ${rowAt(`measured.${key}`).help} Expected: ${shownFor(design, expected, unit)}.`,
  );
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
  `${shownFor(design, planned, unit)} is now ${shownFor(design, now, unit)}`,
  help,
];

function lostText(design: Design, { lost, mouthTooWideBy }: BenchState): string[] {
  const tooWide =
    mouthTooWideBy > 0
      ? [
          `The mouth is too wide by ${shownFor(design, mouthTooWideBy, "mm")} and cannot be closed by planing: a slip glued to the ramp's foot closes it again.`,
          "",
        ]
      : [];
  const lines = lost.flatMap(({ key, asked, got, unit, costs }) => [
    `  ${key}: ${shownFor(design, asked, unit)} was wanted, ${shownFor(design, got, unit)} came out.`,
    ...costs.map((cost) => `      ${changeRow(design, cost).slice(1).join("; ")}`),
  ]);
  return [...tooWide, ...(lines.length > 0 ? ["What came out otherwise, and what it costs:", ...lines, ""] : [])];
}
