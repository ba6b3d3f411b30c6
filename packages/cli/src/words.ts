// Figures and findings as lines for a terminal; nothing is told by colour.
import type { Finding } from "@lamplane/parameters/checks";
import { type Design, rowAt } from "@lamplane/parameters/design";
import { lengthBoth, trimmed } from "@lamplane/parameters/units";

/** A value with its unit, in the maker's unit first. */
export function valueText(design: Design, value: number, unit: string): string {
  if (unit === "mm") return lengthBoth(value, design.units, design.shop.smallestFraction);
  return `${trimmed(value, unit === "" ? 4 : 2)}${unit}`;
}

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

function cureValue(design: Design, parameter: string, value: number | string): string {
  const row = rowAt(parameter);
  if (typeof value === "string" || row.kind !== "number") return String(value);
  return row.quantity === "length"
    ? lengthBoth(value, design.units, design.shop.smallestFraction)
    : `${value}${row.quantity === "angle" ? "°" : ""}`;
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
