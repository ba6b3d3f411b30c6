// Figures and findings as lines for a terminal; nothing is told by colour.
import type { UnreadValue } from "@lamplane/bench";
import { type Finding, findingSentence } from "@lamplane/bench/checks";
import { rowAt } from "@lamplane/parameters/design";
import { type Design, UNIT_OF } from "@lamplane/parameters/table";
import { formatDecimal, formatLength, formatOnRule, formatValue } from "@lamplane/parameters/units";

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
  unread.map(({ key, unit, taken }) => `${key} ${formatInOwnUnit(design, taken, unit)}`).join(", ");

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
export function formatTypedValue({ units, shop }: Design, parameter: string, value: number | string): string {
  const row = rowAt(parameter);
  if (typeof value === "string" || row.kind !== "number") return String(value);
  if (UNIT_OF[row.quantity] !== "mm") return formatDecimal(value, 6);
  if (units === "mm") return `${formatDecimal(value, 6)} mm`;
  return formatOnRule(value, { units, smallestFraction: shop.smallestFraction, caliper: "instead" });
}

/** A cure's value as the maker reads it. */
export function formatCureValue(design: Design, parameter: string, value: number | string): string {
  const row = rowAt(parameter);
  return typeof value === "string" || row.kind !== "number"
    ? String(value)
    : formatInOwnUnit(design, value, UNIT_OF[row.quantity]);
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
