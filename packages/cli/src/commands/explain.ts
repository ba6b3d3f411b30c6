// `lamplane explain`: what a parameter or a figure is, from the tables that everything else reads.
import { BENCH_FIGURES } from "@lamplane/bench";
import { knownPaths, nearestWord } from "@lamplane/parameters/design";
import { FIGURES, type FigureRow } from "@lamplane/parameters/elevation";
import { type Row, rowsOf, TABLE, UNIT_OF } from "@lamplane/parameters/table";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { alignColumns } from "../text.ts";
import { ARGUMENT_FAULT } from "../words/commands.ts";
import { EXPLAIN } from "../words/reports.ts";

const FIGURE_ROWS: Readonly<Record<string, FigureRow>> = { ...FIGURES, ...BENCH_FIGURES };

/** Explains a parameter, a section of them or a figure; lists every parameter without a key. @throws InputRefused for any other */
export function explainCommand(io: Io, key: string | undefined): Exit {
  const rows = rowsOf(TABLE).filter(({ path }) => key === undefined || path === key || path.startsWith(`${key}.`));
  const figure = key !== undefined && Object.hasOwn(FIGURE_ROWS, key) ? FIGURE_ROWS[key] : undefined;
  if (key === undefined) io.out(`${alignColumns(rows.map(({ path, row }) => [path, row.help]))}\n`);
  else if (figure) io.out(figureText(key, figure));
  else if (rows.length > 0) io.out(rows.map(({ path, row }) => parameterText(path, row)).join("\n"));
  else {
    const near = nearestWord(key, [...knownPaths(), ...Object.keys(TABLE), ...Object.keys(FIGURE_ROWS)]);
    throw new InputRefused(ARGUMENT_FAULT.unknownName({ name: key, near }));
  }
  return EXIT.done;
}

const indented = (lines: readonly string[]): string => lines.map((line) => `  ${line}\n`).join("");

const figureText = (key: string, { name, help, formula, source }: FigureRow): string =>
  `${key}: ${name}\n${indented([help, EXPLAIN.formula({ formula }), EXPLAIN.source({ source })])}`;

function parameterText(path: string, row: Row): string {
  const auto = row.kind === "number" && row.auto !== undefined ? [EXPLAIN.auto({ what: row.auto })] : [];
  return `${path}: ${row.name}\n${indented([row.help, limitsText(row), ...auto, EXPLAIN.source(row)])}`;
}

function limitsText(row: Row): string {
  if (row.kind === "choice") return EXPLAIN.choice({ choices: row.choices, standard: row.default });
  if (row.kind === "text") return EXPLAIN.text({ standard: row.default });
  const { min, max } = row;
  const unit = UNIT_OF[row.quantity];
  if (row.unset) return EXPLAIN.notMeasured({ min, max, unit: unit === "°" ? unit : ` ${unit}` });
  const ofDegrees = unit === "°" && typeof row.default === "number" ? unit : "";
  const standard = row.required ? undefined : `${row.default}${ofDegrees}`;
  return EXPLAIN.number({ min, max, unit, standard });
}
