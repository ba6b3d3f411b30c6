// `lamplane explain`: what a parameter, figure, check or step is, from the tables that everything else reads.
import { BENCH_FIGURES, jobNumber, STEPS } from "@lamplane/bench";
import { type CheckDescription, checkDescriptions } from "@lamplane/bench/checks";
import { nearNames } from "@lamplane/parameters/design";
import { FIGURES, type FigureRow } from "@lamplane/parameters/elevation";
import { LIST_NAMES, LISTS, type Row, rowsOf, STEP_NAMES, TABLE, UNIT_OF } from "@lamplane/parameters/table";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { alignColumns } from "../text.ts";
import { ARGUMENT_FAULT } from "../words/commands.ts";
import { EXPLAIN } from "../words/reports.ts";

/** Something that can be explained by its name. */
interface Entry {
  readonly name: string;
  readonly kind: "parameter" | "figure" | "check" | "step";
  /** In a line. */
  readonly summary: string;
  /** What more there is to say, a line each. */
  readonly details: readonly string[];
}

/** Explains whatever has a name, a section of parameters, or lists all there is. @throws InputRefused where nothing is called so */
export function explainCommand(io: Io, name: string | undefined): Exit {
  const all = [...parameterEntries(), ...figureEntries(), ...checkEntries(), ...stepEntries()];
  if (name === undefined) io.out(listText(all));
  else io.out(entriesNamed(all, name).map(entryText).join("\n"));
  return EXIT.done;
}

function entriesNamed(all: readonly Entry[], name: string): Entry[] {
  const found = all.filter((entry) => entry.name === name || (isParameter(entry) && entry.name.startsWith(`${name}.`)));
  if (found.length > 0) return found;
  const near = nearNames(name, [...new Set(all.map((entry) => entry.name))]);
  throw new InputRefused(ARGUMENT_FAULT.unknownName({ name, near }));
}

const isParameter = ({ kind }: Pick<Entry, "kind">): boolean => kind === "parameter";

const entryText = ({ name, kind, summary, details }: Entry): string =>
  [isParameter({ kind }) ? name : `${name} (${kind})`, ...[summary, ...details].map((line) => `  ${line}`), ""].join(
    "\n",
  );

function listText(all: readonly Entry[]): string {
  const kinds = ["parameter", "figure", "check", "step"] as const;
  return kinds
    .map((kind) => {
      const rows = all.filter((entry) => entry.kind === kind).map(({ name, summary }) => [name, summary]);
      return `${kind[0]!.toUpperCase()}${kind.slice(1)}s\n\n${alignColumns(rows)}\n`;
    })
    .join("\n");
}

const parameterEntries = (): Entry[] =>
  [...rowsOf(TABLE), ...LIST_NAMES.flatMap((name) => rowsOf(LISTS[name].item, `${name}.`))].map(({ path, row }) => ({
    name: path,
    kind: "parameter",
    summary: row.help,
    details: [...limitLines(row), EXPLAIN.source(row)],
  }));

function limitLines(row: Row): string[] {
  if (row.kind === "choice") return [EXPLAIN.choice({ choices: row.choices, standard: row.default })];
  if (row.kind === "text") return [EXPLAIN.text({ standard: row.default })];
  const { min, max, auto } = row;
  const unit = UNIT_OF[row.quantity];
  const ofDegrees = unit === "°" && typeof row.default === "number" ? unit : "";
  const standard = row.required ? undefined : `${row.default}${ofDegrees}`;
  const range = row.unset
    ? EXPLAIN.notMeasured({ min, max, unit: unit === "°" ? unit : ` ${unit}` })
    : EXPLAIN.number({ min, max, unit, standard });
  return [range, ...(auto === undefined ? [] : [EXPLAIN.auto({ what: auto })])];
}

const figureEntries = (): Entry[] =>
  Object.entries<FigureRow>({ ...FIGURES, ...BENCH_FIGURES }).map(([key, { name, help, formula, source }]) => ({
    name: key,
    kind: "figure",
    summary: `${name}: ${help}`,
    details: [EXPLAIN.formula({ formula }), EXPLAIN.source({ source })],
  }));

/** A check may judge several values: one entry for each of its rows. */
const checkEntries = (): Entry[] =>
  checkDescriptions().map((check) => ({
    name: check.code,
    kind: "check",
    summary: check.name ?? limitText(check),
    details: [
      ...(check.name ? [limitText(check)] : []),
      EXPLAIN.decidedBy({ parameters: check.parameters }),
      EXPLAIN.source(check),
    ],
  }));

function limitText({ relation, stop, warn, unit }: CheckDescription): string {
  const limit = (value: number | undefined) =>
    value === undefined ? undefined : `${relation} ${value}${unit === "°" ? "" : " "}${unit}`.trimEnd();
  return EXPLAIN.limit({ stop: limit(stop), warn: limit(warn) });
}

const stepEntries = (): Entry[] =>
  STEP_NAMES.map((name) => {
    const { title, task, measures, locks } = STEPS[name];
    return {
      name,
      kind: "step",
      summary: `${jobNumber(name)}. ${title}: ${task}`,
      details: [
        ...(measures.length > 0 ? [EXPLAIN.measures({ keys: measures })] : []),
        ...(locks.length > 0 ? [EXPLAIN.locks({ keys: locks })] : []),
      ],
    };
  });
