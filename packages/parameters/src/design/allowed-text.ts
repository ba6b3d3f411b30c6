// What may stand in a row of the table, in words.
import { type NumberRow, type Row, UNIT_OF } from "../parameter.ts";
import { formatLimit, formatQuantity, type Units } from "../units.ts";
import { ALLOWED_VALUES } from "../words/design-faults.ts";

/** @param units unit in which a length's limits are written */
export function allowedText(row: Row, units: Units): string {
  if (row.kind === "choice") return row.choices.join(", ");
  if (row.kind === "text") return ALLOWED_VALUES.text({ most: row.maxLength, pattern: row.pattern?.words });
  if (row.kind === "lengths") {
    const { words, most } = row;
    return ALLOWED_VALUES.lengths({ words, most, min: formatLimit(row.min, units), max: formatLimit(row.max, units) });
  }
  const [min, max] = [row.min, row.max].map((limit) => limitValueText(limit, row, units)) as [string, string];
  return ALLOWED_VALUES.range({ min, max, auto: row.auto !== undefined });
}

function limitValueText(value: number, row: NumberRow, units: Units): string {
  if (row.quantity === "length") return formatLimit(value, units);
  return formatQuantity(value, UNIT_OF[row.quantity], 4);
}
