// Figures and findings as lines for a terminal; nothing is told by colour.
import { MEASURED_ROWS, type UnreadValue } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { formatLength, formatValue } from "@lamplane/parameters/units";

/** A value with its unit, in the maker's unit first. */
export const formatInBothUnits = ({ units, shop }: Design, value: number, unit: string): string =>
  formatValue(value, unit, units, shop.smallestFraction);

/** The same in the maker's unit alone, where many stand side by side. */
const formatInOwnUnit = (design: Design, value: number, unit: string): string =>
  unit === "mm"
    ? formatLength(value, design.units, design.shop.smallestFraction)
    : formatInBothUnits(design, value, unit);

/** Values that were not read, each with what it is taken for. */
export const unreadText = (design: Design, unread: readonly UnreadValue[]): string =>
  unread.map(({ key, unit, taken }) => `${MEASURED_ROWS[key].name} ${formatInOwnUnit(design, taken, unit)}`).join(", ");

/** Rows of columns, each as wide as its widest. */
export const alignColumns = (rows: readonly (readonly string[])[]): string => alignRows(rows).join("\n");

/** The same as lines; all of one length where something follows them. */
export function alignRows(rows: readonly (readonly string[])[], isFull = false): string[] {
  const widths = (rows[0] ?? []).map((_, k) => Math.max(...rows.map((row) => row[k]!.length)));
  const lines = rows.map((row) => row.map((cell, k) => cell.padEnd(widths[k]!)).join("  "));
  return isFull ? lines : lines.map((line) => line.trimEnd());
}
