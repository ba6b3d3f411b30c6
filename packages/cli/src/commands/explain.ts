// `lamplane explain`: what a parameter, figure, check or step is, from the tables that everything else reads.
import { BENCH_FIGURES, jobNumber, STEPS } from "@lamplane/bench";
import { type CheckDescription, checkDescriptions } from "@lamplane/bench/checks";
import { nearNamesText } from "@lamplane/parameters/design";
import { FIGURES, type FigureRow } from "@lamplane/parameters/elevation";
import { type Row, rowsOf, STEP_NAMES, TABLE, UNIT_OF } from "@lamplane/parameters/table";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { alignColumns } from "../text.ts";

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
  const near = nearNamesText(name, [...new Set(all.map((entry) => entry.name))]);
  throw new InputRefused(
    `${name}: there is no such parameter, figure, check or step${near}; \`lamplane explain\` lists them`,
  );
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
  rowsOf(TABLE).map(({ path, row }) => ({
    name: path,
    kind: "parameter",
    summary: row.help,
    details: [...limitLines(row), `source: ${row.source}`],
  }));

function limitLines(row: Row): string[] {
  if (row.kind === "choice") return [`one of ${row.choices.join(", ")}; ${row.default} unless told otherwise`];
  if (row.kind === "text") return [`text; ${row.default} unless told otherwise`];
  const range = `${row.min} to ${row.max} ${UNIT_OF[row.quantity]}`.trimEnd();
  return [`${range}; ${defaultText(row)}`, ...(row.auto === undefined ? [] : [`auto: ${row.auto}`])];
}

function defaultText({ required, unset, default: standard }: Extract<Row, { kind: "number" }>): string {
  if (required) return "must be given";
  return unset ? "nothing until it is measured" : `${standard} unless told otherwise`;
}

const figureEntries = (): Entry[] =>
  Object.entries<FigureRow>({ ...FIGURES, ...BENCH_FIGURES }).map(([name, { help, unit, formula, source }]) => ({
    name,
    kind: "figure",
    summary: help,
    details: [`${unit === "" ? "a ratio" : `in ${unit}`}: ${formula}`, `source: ${source}`],
  }));

/** A check may judge several values: one entry for each of its rows. */
const checkEntries = (): Entry[] =>
  checkDescriptions().map((check) => ({
    name: check.code,
    kind: "check",
    summary: check.name ?? limitText(check),
    details: [
      ...(check.name ? [limitText(check)] : []),
      `decided by ${check.parameters.join(", ")}`,
      `source: ${check.source}`,
    ],
  }));

function limitText({ relation, stop, warn, unit }: CheckDescription): string {
  const limit = (value: number) => `${relation} ${value}${unit === "°" ? "" : " "}${unit}`.trimEnd();
  if (stop === undefined && warn === undefined) return `${relation} a limit that follows from the plane`;
  if (stop === undefined) return `${limit(warn!)}, else a warning`;
  return `${limit(stop)}, else it fails${warn === undefined ? "" : `; ${limit(warn)}, else a warning`}`;
}

const stepEntries = (): Entry[] =>
  STEP_NAMES.map((name) => {
    const { title, task, measures, locks } = STEPS[name];
    return {
      name,
      kind: "step",
      summary: `${jobNumber(name)}. ${title}: ${task}`,
      details: [
        ...(measures.length > 0 ? [`measured at it: ${measures.join(", ")}`] : []),
        ...(locks.length > 0 ? [`fixed once it is done: ${locks.join(", ")}`] : []),
      ],
    };
  });
