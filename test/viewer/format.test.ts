// Numbers as the sheet tells them: what the command tells of the same value, one space before a unit that wants one.
import { formatValue } from "@lamplane/parameters/units";
import { expect, test } from "vitest";
import { formatWithUnit } from "../../packages/viewer/src/state/format.ts";

test.each([
  [1234.4, "N", "1234 N"],
  [12.34, "MPa", "12.3 MPa"],
  [5.25, "N/mm", "5.25 N/mm"],
  [47, "°", "47°"],
  [2.5, "×", "2.5×"],
  [0.0123, "", "0.0123"],
])("%d %s", (value, unit, told) => {
  expect(formatWithUnit(value, unit, { units: "mm", smallestFraction: "1/64" })).toBe(told);
  expect(formatValue(value, unit, "mm", "1/64")).toBe(told);
});
