// A parameter's value as a maker reads it.
import { UNIT_OF } from "../table/index.ts";
import { formatValue, type LengthStyle } from "../units.ts";
import { formatLengths } from "./lengths.ts";
import { rowAt } from "./path.ts";

/** With its unit where it is a number: "55°", "3 mm"; a word as it stands. @throws Error for a path that the table does not have */
export function formatParameter(path: string, value: number | string, style: LengthStyle): string {
  const row = rowAt(path);
  if (row.kind === "lengths") return formatLengths(String(value), style);
  return typeof value === "number" && row.kind === "number"
    ? formatValue(value, UNIT_OF[row.quantity], style)
    : String(value);
}
