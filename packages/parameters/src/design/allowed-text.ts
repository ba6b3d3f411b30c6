// What may stand in a row of the table, in words.
import { type NumberRow, type Row, UNIT_OF } from "../parameter.ts";
import { formatLimit, formatQuantity, type Units } from "../units.ts";

/** @param units unit in which a length's limits are written */
export function allowedText(row: Row, units: Units): string {
  if (row.kind === "choice") return row.choices.join(", ");
  if (row.kind === "text")
    return `text of up to ${row.maxLength} characters${row.pattern ? `: ${row.pattern.words}` : ""}`;
  return `${limitValueText(row.min, row, units)} to ${limitValueText(row.max, row, units)}${row.auto ? ", or auto" : ""}`;
}

function limitValueText(value: number, row: NumberRow, units: Units): string {
  if (row.quantity === "length") return formatLimit(value, units);
  return formatQuantity(value, UNIT_OF[row.quantity], 4);
}
