// Figures and findings as lines for a terminal; nothing is told by colour.
import type { Unread } from "@lamplane/bench";
import type { Finding } from "@lamplane/bench/checks";
import { rowAt } from "@lamplane/parameters/design";
import { type Design, UNIT_OF } from "@lamplane/parameters/table";
import { lengthText, trimmed, valueText } from "@lamplane/parameters/units";

/** A value with its unit, in the maker's unit first. */
export const shownFor = ({ units, shop }: Design, value: number, unit: string): string =>
  valueText(value, unit, units, shop.smallestFraction);

/** The same in the maker's unit alone, where many stand side by side. */
const ownFor = (design: Design, value: number, unit: string): string =>
  unit === "mm" ? lengthText(value, design.units, design.shop.smallestFraction) : shownFor(design, value, unit);

/** Values that were not read, each with what it is taken for. */
export const unreadText = (design: Design, unread: readonly Unread[]): string =>
  unread.map(({ key, unit, taken }) => `${key} ${ownFor(design, taken, unit)}`).join(", ");

/** A finding on lines of its own: what, why, what would mend it, where the limit comes from. */
export function findingText(design: Design, { severity, code, message, cure, source }: Finding): string {
  const mend = cure?.map(({ parameter, value }) => `${parameter} ${cureValue(design, parameter, value)}`).join(", ");
  return [
    `${severity.toUpperCase().padEnd(8)} ${code}`,
    `         ${message}`,
    ...(mend ? [`         mended by: ${mend}`] : []),
    `         source: ${source}`,
  ].join("\n");
}

/** A cure's value as it can be typed back, in a file of either unit. */
export function typedValue(parameter: string, value: number | string): string {
  const row = rowAt(parameter);
  if (typeof value === "string" || row.kind !== "number") return String(value);
  const unit = UNIT_OF[row.quantity];
  return `${trimmed(value, 6)}${unit === "mm" ? " mm" : ""}`;
}

/** A cure's value as the maker reads it. */
export function cureValue(design: Design, parameter: string, value: number | string): string {
  const row = rowAt(parameter);
  return typeof value === "string" || row.kind !== "number"
    ? String(value)
    : shownFor(design, value, UNIT_OF[row.quantity]);
}

/** Rows of columns, each as wide as its widest. */
export function columns(rows: readonly (readonly string[])[]): string {
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
