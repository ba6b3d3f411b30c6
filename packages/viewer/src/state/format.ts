// Numbers as they stand on the sheet, and back: the design's unit for lengths, degrees for angles.
import type { NumberRow, Row } from "@lamplane/parameters/table";
import { UNIT_OF } from "@lamplane/parameters/table";
import { inMillimetres, oneFigure, readNumberText, trimmed, valueText } from "@lamplane/parameters/units";

export interface Style {
  readonly units: "mm" | "in";
  readonly smallestFraction: "1/8" | "1/16" | "1/32" | "1/64";
}

/** A number for the drawing: bare mm (the title block tells the unit), degrees, inches as a fraction or else in decimals. */
export function drawnText(value: number, unit: string, { units, smallestFraction }: Style): string {
  if (unit === "°") return `${trimmed(value, 2)}°`;
  if (unit !== "mm") return trimmed(value, 3);
  return oneFigure(value, units, smallestFraction).replace(" in", "″");
}

/** A number with its unit, both units of length. */
export const toldText = (value: number, unit: string, style: Style): string =>
  valueText(value, unit, style.units, style.smallestFraction);

export const readText = (text: string, row: NumberRow, { units }: Style) => readNumberText(text, row.quantity, units);

const COARSE = 0.1; // mm: rows that step by this or more step by the rule's smallest fraction in an inch design

/** What one press of an arrow key is worth, mm or degrees. */
export function stepOf(row: NumberRow, { units, smallestFraction }: Style): number {
  if (row.quantity !== "length" || units === "mm" || row.step < COARSE) return row.step;
  return inMillimetres(1 / Number(smallestFraction.slice(2)), "in");
}

/** A value some steps on, on the table's side of its limits. */
export function stepped(value: number, steps: number, row: NumberRow, style: Style): number {
  const next = Math.round((value + steps * stepOf(row, style)) * 1e6) / 1e6;
  return Math.min(row.max, Math.max(row.min, row.quantity === "count" ? Math.round(next) : next));
}

/** A parameter's path in words: `capIron.screwHead.fromEdge` is "cap iron screw head from edge". */
export const nameOf = (path: string): string =>
  path
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .replaceAll(".", " ")
    .toLowerCase();

/** A figure's key in words. */
export const figureName = (key: string): string => PLACES[key] ?? nameOf(key);

/** Places along the sole, whose keys name a direction that only the code knows. */
const PLACES: Readonly<Record<string, string>> = {
  mouthX: "edge from toe",
  bedTipX: "bed's tip from toe",
  rampTipX: "ramp's tip from toe",
  pinX: "pin from toe",
  pinY: "pin over the sole",
  setInToe: "front block inside the cheeks' toe end",
  setInHeel: "bed block inside the cheeks' heel end",
};

/** A row's limits in words. */
export function limitsOf(row: Row, style: Style): string {
  if (row.kind !== "number") return row.kind === "choice" ? row.choices.join(", ") : "";
  const unit = UNIT_OF[row.quantity];
  return `${toldText(row.min, unit, style)} to ${toldText(row.max, unit, style)}`;
}
