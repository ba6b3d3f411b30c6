// Figures and findings as lines for a terminal; nothing is told by colour.
import type { UnreadValue } from "@lamplane/bench";
import { type Finding, findingSentence } from "@lamplane/bench/checks";
import { rowAt } from "@lamplane/parameters/design";
import { type Design, UNIT_OF } from "@lamplane/parameters/table";
import { formatDecimal, formatValue, fromMillimetres } from "@lamplane/parameters/units";

/** Values that were not read, each with what it is taken for. */
export const unreadText = (design: Design, unread: readonly UnreadValue[]): string =>
  unread.map(({ key, unit, taken }) => `${key} ${formatValue(taken, unit, design)}`).join(", ");

/** A finding on lines of its own: what, why, what would mend it, where the limit comes from. */
export function findingText(design: Design, finding: Finding): string {
  const { severity, code, cure, source } = finding;
  const mend = cure
    ?.map(({ parameter, value }) => `${parameter} ${formatCureValue(design, parameter, value)}`)
    .join(", ");
  return [
    `${severity.toUpperCase().padEnd(8)} ${code}`,
    `         ${findingSentence(design, finding)}`,
    ...(mend ? [`         mended by: ${mend}`] : []),
    `         source: ${source}`,
  ].join("\n");
}

/** A cure's value as it can be typed back, in the maker's unit. */
export function formatTypedValue({ units }: Design, parameter: string, value: number | string): string {
  const row = rowAt(parameter);
  if (typeof value === "string" || row.kind !== "number") return String(value);
  if (UNIT_OF[row.quantity] !== "mm") return formatDecimal(value, 6);
  return `${formatDecimal(fromMillimetres(value, units), 6)} ${units}`;
}

/** A cure's value as the maker reads it. */
export function formatCureValue(design: Design, parameter: string, value: number | string): string {
  const row = rowAt(parameter);
  return typeof value === "string" || row.kind !== "number"
    ? String(value)
    : formatValue(value, UNIT_OF[row.quantity], design);
}

/** Rows of columns, each as wide as its widest. */
export function alignColumns(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, k) => Math.max(...rows.map((row) => row[k]!.length)));
  return rows
    .map((row) =>
      row
        .map((cell, k) => cell.padEnd(widths[k]!))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}
