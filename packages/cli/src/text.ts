// Figures and findings as lines for a terminal; nothing is told by colour.
import { MEASURED_ROWS, type UnreadValue } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";

/** Values that were not read, each with what it is taken for. */
export const unreadText = (design: Design, unread: readonly UnreadValue[]): string =>
  unread.map(({ key, unit, taken }) => `${MEASURED_ROWS[key].name} ${formatValue(taken, unit, design)}`).join(", ");

/** Rows of columns, each as wide as its widest. */
export const alignColumns = (rows: readonly (readonly string[])[]): string => alignRows(rows).join("\n");

/** The same as lines; all of one length where something follows them. */
export function alignRows(rows: readonly (readonly string[])[], isFull = false): string[] {
  const widths = (rows[0] ?? []).map((_, k) => Math.max(...rows.map((row) => row[k]!.length)));
  const lines = rows.map((row) => row.map((cell, k) => cell.padEnd(widths[k]!)).join("  "));
  return isFull ? lines : lines.map((line) => line.trimEnd());
}
