// What stands in a design where nothing is given, in either unit.
import type { Row } from "../parameter.ts";
import { fromMillimetres, toMillimetres, type Units } from "../units/inch.ts";

/** What stands in a design in this unit where nothing is given. Lengths mm. */
export function defaultIn<R extends Row>(row: R, units: Units): R["default"] {
  if (units === "mm") return row.default;
  if (row.kind === "choice") return row.inches ?? row.default;
  if (row.kind !== "number" || row.quantity !== "length" || typeof row.default !== "number") return row.default;
  if (row.metric) return row.default;
  return toMillimetres(row.inches ?? commonInches(fromMillimetres(row.default, "in")), "in");
}

/**
 * The size next to a length that a maker in inches would plan, inches: to 1/8 over an inch, to 1/32 over 1/8, to 1/64 over
 * 1/32; under it thousandths, unless a rule shows it, and a tenth of one where a hand's tolerance is that fine.
 */
export function commonInches(size: number): number {
  const step = size > 1 ? 1 / 8 : size > 1 / 8 ? 1 / 32 : 1 / 64;
  const planned = Math.round(size / step) * step;
  if (size >= 1 / 32 || Math.abs(planned - size) < ALIKE * size) return planned;
  return Number(size.toFixed(size < 0.002 ? 4 : 3));
}
const ALIKE = 0.02; // share by which a small size may differ and still be the rule's
