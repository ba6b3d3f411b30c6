// Every parameter for a reader: a Markdown table derived from the table.
import { LIST_NAMES, listRows, type Row, rowsOf, TABLE, UNIT_OF } from "../table/index.ts";
import { allowedText } from "./allowed-text.ts";

/** Every parameter as a row of a Markdown table. */
export function parameterTable(): string {
  const head = ["| key | unit | default | allowed | meaning | source |", "| --- | --- | --- | --- | --- | --- |"];
  const items = LIST_NAMES.flatMap((name) => listRows(name));
  const rows = [...rowsOf(TABLE), ...items].map(({ path, row }) => {
    const unit = row.kind === "number" ? UNIT_OF[row.quantity] : row.kind === "lengths" ? "mm" : "";
    const cells = [`\`${path}\``, unit, defaultWords(row), limits(row), meaning(row), row.source];
    return `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
  });
  return `${[...head, ...rows].join("\n")}\n`;
}

function defaultWords(row: Row): string {
  if (row.kind !== "number") return row.kind === "text" && row.required ? "to be given" : `\`${row.default}\``;
  if (row.default === undefined) return row.required ? "to be given" : "not yet measured";
  return String(row.default);
}

function limits(row: Row): string {
  if (row.kind !== "number")
    return row.kind === "choice" ? row.choices.map((word) => `\`${word}\``).join(", ") : allowedText(row, "mm");
  return `${row.min} to ${row.max}${row.auto ? ", or `auto`" : ""}`;
}

const meaning = (row: Row): string =>
  (row.kind === "number" || row.kind === "lengths") && row.auto ? `${row.help} \`auto\`: ${row.auto}.` : row.help;
