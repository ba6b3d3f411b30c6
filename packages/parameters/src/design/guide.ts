// The parameters told to a maker: a Markdown table and a commented first design, both derived from the table.
import {
  defaultIn,
  isRow,
  type NumberRow,
  type Row,
  rowsOf,
  TABLE,
  type TableSection,
  UNIT_OF,
} from "../table/index.ts";
import { formatDecimal, formatLength, fromMillimetres, type Units } from "../units.ts";
import { allowedText } from "./allowed-text.ts";

// What is no default: an invented iron of a common size, since the maker measures another.
const OWN: Record<Units, Record<string, string>> = {
  mm: { "iron.width": "48 mm", "iron.thickness": "3.6 mm" },
  in: { "iron.width": "2 in", "iron.thickness": "1/8 in" },
};

/** Every parameter as a row of a Markdown table. */
export function parameterTable(): string {
  const head = ["| key | unit | default | allowed | meaning | source |", "| --- | --- | --- | --- | --- | --- |"];
  const rows = rowsOf(TABLE).map(({ path, row }) => {
    const unit = row.kind === "number" ? UNIT_OF[row.quantity] : "";
    const cells = [`\`${path}\``, unit, defaultWords(row), limits(row), meaning(row), row.source];
    return `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
  });
  return `${[...head, ...rows].join("\n")}\n`;
}

/**
 * A whole design in YAML with a comment over each key; what it gives is each default, in inches the common size
 * next to it, and an iron to be replaced.
 * @param name stands in the file as it is; readDesign says whether it will do
 */
export function starterDesign(name: string, units: Units): string {
  const lines = [
    "# A laminated hand plane. Measure your own iron first; every other value may stay as it is.",
    `# A length without a unit is in ${units === "mm" ? "millimetres" : "inches"}; 44.5 mm, 1.75 in and 1 3/4 in are read too.`,
    ...sectionLines(TABLE, "", { name, units }),
  ];
  return `${lines.join("\n")}\n`;
}

function defaultWords(row: Row): string {
  if (row.kind !== "number") return `\`${row.default}\``;
  if (row.default === undefined) return row.required ? "to be given" : "not yet measured";
  return String(row.default);
}

function limits(row: Row): string {
  if (row.kind !== "number")
    return row.kind === "choice" ? row.choices.map((word) => `\`${word}\``).join(", ") : allowedText(row, "mm");
  return `${row.min} to ${row.max}${row.auto ? ", or `auto`" : ""}`;
}

const meaning = (row: Row): string =>
  row.kind === "number" && row.auto ? `${row.help} \`auto\`: ${row.auto}.` : row.help;

interface StarterOptions {
  readonly name: string;
  readonly units: Units;
}

function sectionLines(section: TableSection, path: string, asked: StarterOptions): string[] {
  const indent = "  ".repeat(path === "" ? 0 : path.split(".").length);
  return Object.entries(section).flatMap(([key, entry]) => {
    const full = path === "" ? key : `${path}.${key}`;
    const gap = path === "" ? [""] : [];
    if (!isRow(entry)) {
      const lines = sectionLines(entry, full, asked);
      const isEmpty = lines.every((line) => line.trimStart().startsWith("#"));
      return [...gap, `${indent}${key}:${isEmpty ? " # each to be filled in once it is measured" : ""}`, ...lines];
    }
    const value = starterValue(entry, full, asked);
    const comment = `${indent}# ${entry.help} ${sentence(allowedText(entry, asked.units))}`;
    return [...gap, comment, value === undefined ? `${indent}# ${key}:` : `${indent}${key}: ${value}`];
  });
}

const sentence = (words: string): string => `Allowed: ${words}.`;

function starterValue(row: Row, path: string, { name, units }: StarterOptions): string | undefined {
  if (path === "name") return quoteYaml(name);
  if (path === "units") return units;
  const own = OWN[units][path];
  if (row.kind !== "number") return quoteYaml(own ?? String(defaultIn(row, units)));
  return own ?? numberText(row, units);
}

/** The default, with its unit where it is a length. */
function numberText(row: NumberRow<unknown>, units: Units): string | undefined {
  const value = defaultIn(row as NumberRow, units);
  if (typeof value !== "number") return value === undefined ? undefined : String(value);
  if (row.quantity !== "length") return formatDecimal(value, 6);
  if (units === "mm" || row.metric) return `${formatDecimal(value, 6)} mm`;
  const inches = fromMillimetres(value, "in");
  return Number.isInteger(Number((inches * 64).toFixed(4)))
    ? formatLength(value, INCH_STYLE)
    : `${formatDecimal(inches, 4)} in`;
}
const INCH_STYLE = { units: "in", shop: { smallestFraction: "1/64", bothUnits: "no" } } as const;

/** Plain where YAML reads it back as the same text. */
const quoteYaml = (text: string): string =>
  /^[A-Za-z][\w./-]*$/.test(text) && !/^(true|false|null)$/i.test(text) ? text : JSON.stringify(text);
