// `lamplane explain`: what a parameter, figure, check or step is, from the tables that everything else reads.
import { BENCH_FIGURES, jobNumber, STEPS } from "@lamplane/bench";
import { type CheckDescription, checkDescriptions, noteDescriptions } from "@lamplane/bench/checks";
import { sheetLimitDescriptions } from "@lamplane/export/nested";
import { routerLimitDescriptions } from "@lamplane/export/router";
import { allowedText, nearNames } from "@lamplane/parameters/design";
import { FIGURES, type FigureRow } from "@lamplane/parameters/elevation";
import { LIST_NAMES, listRows, type Row, rowsOf, STEP_NAMES, TABLE, UNIT_OF } from "@lamplane/parameters/table";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { alignColumns, wrapWords } from "../text.ts";
import { ARGUMENT_FAULT, MORE } from "../words/commands.ts";
import { EXPLAIN } from "../words/explain.ts";

const KINDS = ["parameter", "figure", "check", "step"] as const;

/** Something that can be explained by its name. */
interface Entry {
  readonly name: string;
  readonly kind: (typeof KINDS)[number];
  /** What a parameter may be. */
  readonly range?: string;
  /** In a line. */
  readonly summary: string;
  /** What more there is to say, a line each. */
  readonly details: readonly string[];
}

export interface ExplainOptions {
  /** Names of all there is, where absent. */
  readonly name: string | undefined;
  /** What each of them is too. */
  readonly all: boolean;
}

/**
 * Explains whatever has a name, or a section of parameters.
 * @throws InputRefused where nothing is called so
 */
export function explainCommand(io: Io, { name, all: isLong }: ExplainOptions): Exit {
  const all = [...parameterEntries(), ...figureEntries(), ...checkEntries(), ...noteEntries(), ...stepEntries()];
  if (name === undefined) io.out(isLong ? listText(all) : `${namesText(all)}\n${MORE.explain}\n`);
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

const entryText = ({ name, kind, range, summary, details }: Entry): string => {
  const head = isParameter({ kind }) ? name : EXPLAIN.head({ name, kind });
  const lines = [
    range === undefined ? head : EXPLAIN.range({ name, range }),
    ...[summary, ...details].map((line) => `  ${line}`),
  ];
  return `${lines.join("\n")}\n`;
};

/** The names alone, each section of parameters in a paragraph of its own. */
function namesText(all: readonly Entry[]): string {
  return KINDS.map((kind) => {
    const names = [...new Set(all.filter((entry) => entry.kind === kind).map(({ name }) => name))];
    const section = (name: string) => (kind === "parameter" ? name.replace(/\..*$/, "") : "");
    const sections = [...new Set(names.map(section))];
    const paragraphs = sections.map((of) => wrapWords(names.filter((name) => section(name) === of)).join("\n"));
    return `${EXPLAIN.heads[kind]}\n${paragraphs.join("\n")}\n`;
  }).join("\n");
}

function listText(all: readonly Entry[]): string {
  return KINDS.map((kind) => {
    const rows = all.filter((entry) => entry.kind === kind).map(({ name, summary }) => [name, summary]);
    return `${EXPLAIN.heads[kind]}\n\n${alignColumns(rows)}\n`;
  }).join("\n");
}

const parameterEntries = (): Entry[] =>
  [...rowsOf(TABLE), ...LIST_NAMES.flatMap((name) => listRows(name, `${name}.`))].map(({ path, row }) => ({
    name: path,
    kind: "parameter",
    range: rangeText(row),
    summary: row.help,
    details: [
      ...((row.kind === "number" || row.kind === "lengths") && row.auto !== undefined
        ? [EXPLAIN.auto({ what: row.auto })]
        : []),
      EXPLAIN.source(row),
    ],
  }));

function rangeText(row: Row): string {
  if (row.kind === "choice") return EXPLAIN.choice({ choices: row.choices, standard: row.default });
  if (row.kind === "text") return EXPLAIN.text({ standard: row.default });
  if (row.kind === "lengths") return EXPLAIN.choice({ choices: [allowedText(row, "mm")], standard: row.default });
  const { min, max } = row;
  const unit = UNIT_OF[row.quantity];
  const ofDegrees = unit === "°" && typeof row.default === "number" ? unit : "";
  const standard = row.required ? undefined : `${row.default}${ofDegrees}`;
  return row.unset
    ? EXPLAIN.notMeasured({ min, max, unit: unit === "°" ? unit : ` ${unit}` })
    : EXPLAIN.number({ min, max, unit, standard });
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

/** Notes, and what is judged of jigs, of a router's work and of sheets, are reported by `check` like any check. */
const noteEntries = (): Entry[] =>
  [...noteDescriptions(), ...routerLimitDescriptions(), ...sheetLimitDescriptions()].map(
    ({ code, help, parameters, source }) => ({
      name: code,
      kind: "check",
      summary: help,
      details: [...(parameters.length > 0 ? [EXPLAIN.decidedBy({ parameters })] : []), EXPLAIN.source({ source })],
    }),
  );

function limitText({ relation, stop, warn, warnParameter, unit }: CheckDescription): string {
  const limit = (value: number | undefined) =>
    value === undefined ? undefined : `${relation} ${value}${unit === "°" ? "" : " "}${unit}`.trimEnd();
  return EXPLAIN.limit({ stop: limit(stop), warn: limit(warn), setBy: warnParameter });
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
