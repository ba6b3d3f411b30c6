// The parameters told to a maker: a Markdown table and a commented first design, both derived from the table.
import { isRow, type NumberRow, type Row, rowsOf, TABLE, type TableSection, UNIT_OF } from "../table/index.ts";
import { formatDecimal, formatLength, fromMillimetres, toMillimetres, type Units } from "../units.ts";
import { STARTER } from "../words/design-faults.ts";
import { allowedText } from "./allowed-text.ts";

// What is no default: an invented iron of a common size, since the maker measures another, and the paper and the drill that go
// with inches: a 3/8 in tenon in a 25/64 in hole, where 0.2 mm over the tenon would ask for a drill that nobody sells.
const OWN: Record<Units, Record<string, string>> = {
  mm: { "iron.width": "48 mm", "iron.thickness": "3.6 mm" },
  in: { "iron.width": "2 in", "iron.thickness": "1/8 in", "shop.paper": "Letter", "pin.tenonClearance": "1/64 in" },
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
  const lines = [`# ${STARTER.head}`, `# ${STARTER.units({ units })}`, ...sectionLines(TABLE, "", { name, units })];
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
      return [...gap, `${indent}${key}:${isEmpty ? ` # ${STARTER.empty}` : ""}`, ...lines];
    }
    const value = starterValue(entry, full, asked);
    const comment = `${indent}# ${STARTER.row({ help: entry.help, allowed: allowedText(entry, asked.units) })}`;
    return [...gap, comment, value === undefined ? `${indent}# ${key}:` : `${indent}${key}: ${value}`];
  });
}

function starterValue(row: Row, path: string, { name, units }: StarterOptions): string | undefined {
  if (path === "name") return quoteYaml(name);
  if (path === "units") return units;
  const own = OWN[units][path];
  if (row.kind !== "number") return quoteYaml(own ?? row.default);
  if (path.startsWith("shop.printer.")) return numberText(row, "mm"); // printers are sold by the millimetre everywhere
  return own ?? numberText(row, units);
}

/** The default; in inches the size nearest to it that a maker in inches would plan. */
function numberText(row: NumberRow<unknown>, units: Units): string | undefined {
  if (typeof row.default !== "number") return row.default === undefined ? undefined : String(row.default);
  if (row.quantity !== "length") return formatDecimal(row.default, 6);
  return units === "mm" ? `${formatDecimal(row.default, 6)} mm` : roundToInchSize(row.default);
}

/**
 * To 1/8 in over an inch, to 1/32 over 1/8, to 1/64 over 1/32; under it thousandths, unless a rule shows it, and a tenth of
 * one where a hand's tolerance is that fine.
 */
function roundToInchSize(mm: number): string {
  const size = fromMillimetres(mm, "in");
  const step = size > 1 ? 1 / 8 : size > 1 / 8 ? 1 / 32 : 1 / 64;
  const planned = Math.round(size / step) * step;
  if (size >= 1 / 32 || Math.abs(planned - size) < ALIKE * size)
    return formatLength(toMillimetres(planned, "in"), "in");
  return `${formatDecimal(size, size < 0.002 ? 4 : 3)} in`;
}
const ALIKE = 0.02; // share by which a small size may differ and still be the rule's

/** Plain where YAML reads it back as the same text. */
const quoteYaml = (text: string): string =>
  /^[A-Za-z][\w./-]*$/.test(text) && !/^(true|false|null)$/i.test(text) ? text : JSON.stringify(text);
