// Bare lengths that fit their parameter only, or far better, in the other unit: 1.75 in a file in mm, 44.5 in one in inches.
import type { NumberRow } from "../parameter.ts";
import { defaultIn } from "../table/index.ts";
import { formatLimit, isBareLength, parseLength, type Units } from "../units.ts";
import { UNIT_SLIP } from "../words/number-faults.ts";
import type { SourcePosition } from "../yaml/fault.ts";

/** A bare length that its limits allow, but that is far from usual while in the other unit it would be. */
export interface UnitSlip {
  readonly path: string;
  readonly at: SourcePosition;
  /** As it was typed. */
  readonly read: string;
  /** Unit in which it was read. */
  readonly units: Units;
}

/** How many times under or over its default a length is asked about. */
const FAR = 8;
/** How many times under or over it the other reading may be. */
const NEAR = 2;

const otherUnit = (units: Units): Units => (units === "mm" ? "in" : "mm");

/** Whether a bare length in limits is likely one of the other unit. @param value mm, as read */
export function isUnitSlip(row: NumberRow, read: string, value: number, units: Units): boolean {
  const usual = defaultIn(row, units);
  const other = otherReading(row, read, units);
  if (other === undefined || typeof usual !== "number" || usual <= 0 || value <= 0) return false;
  return times(value, usual) > FAR && times(other, usual) <= NEAR;
}

const times = (a: number, b: number): number => Math.max(a / b, b / a);

/** What a bare length would be in the other unit, mm; undefined where it has a unit or the limits refuse that too. */
function otherReading(row: NumberRow, read: string, units: Units): number | undefined {
  const reading = isBareLength(read) ? parseLength(read, otherUnit(units)) : undefined;
  return reading && "value" in reading && reading.value >= row.min && reading.value <= row.max
    ? reading.value
    : undefined;
}

/** What to write where a length out of its limits was meant in the other unit; nothing where it fits neither. */
export const otherUnitText = (row: NumberRow, read: string, units: Units): string =>
  row.quantity === "length" && otherReading(row, read, units) !== undefined
    ? UNIT_SLIP.outOfLimits({ other: `${read} ${otherUnit(units)}` })
    : "";

/** The question in one sentence, without its place. */
export function unitSlipText({ path, read, units }: UnitSlip, row: NumberRow): string {
  const usual = formatLimit(Number(defaultIn(row, units)), units);
  const [own, other] = [`${read} ${units}`, `${read} ${otherUnit(units)}`];
  return UNIT_SLIP.question({ path, own, usual, other });
}
