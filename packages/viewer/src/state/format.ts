// Numbers as they stand on the sheet, and back: the design's unit for lengths, degrees for angles.
import { rowAt } from "@lamplane/parameters/design";
import type { NumberRow, Row } from "@lamplane/parameters/table";
import { UNIT_OF } from "@lamplane/parameters/table";
import {
  formatAngle,
  formatDecimal,
  formatDimension,
  formatValue,
  type LengthStyle,
  parseNumber,
  toMillimetres,
} from "@lamplane/parameters/units";
import { MEASURED_NAME } from "../words/page.ts";

/** A number for the drawing: bare mm (the title block tells the unit), degrees, inches. */
export function formatOnDrawing(value: number, unit: string, style: LengthStyle): string {
  if (unit === "°") return formatAngle(value);
  if (unit !== "mm") return formatDecimal(value, 3);
  return formatDimension(value, style).replace(" in", "″");
}

export const parseInput = (text: string, row: NumberRow, { units }: LengthStyle) =>
  parseNumber(text, row.quantity, units);

const COARSE = 0.1; // mm: rows that step by this or more step by the rule's smallest fraction in an inch design

/** What one press of an arrow key is worth, mm or degrees. */
export function stepSize(row: NumberRow, { units, shop }: LengthStyle): number {
  if (row.quantity !== "length" || units === "mm" || row.step < COARSE) return row.step;
  return toMillimetres(1 / Number(shop.smallestFraction.slice(2)), "in");
}

/** A value some steps on, on the table's side of its limits. */
export function stepValue(value: number, steps: number, row: NumberRow, style: LengthStyle): number {
  const next = Math.round((value + steps * stepSize(row, style)) * 1e6) / 1e6;
  return Math.min(row.max, Math.max(row.min, row.quantity === "count" ? Math.round(next) : next));
}

/** A key in words: `bedTip` is "bed tip". */
export const keyInWords = (key: string): string => key.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();

/** What a maker calls a parameter, or what was measured of it. */
export function parameterName(path: string): string {
  const { name } = rowAt(path);
  return path.startsWith("measured.") ? MEASURED_NAME(name) : name;
}

/** A row's limits in words. */
export function limitsText(row: Row, style: LengthStyle): string {
  if (row.kind !== "number") return row.kind === "choice" ? row.choices.join(", ") : "";
  const unit = UNIT_OF[row.quantity];
  return `${formatValue(row.min, unit, style)} to ${formatValue(row.max, unit, style)}`;
}
