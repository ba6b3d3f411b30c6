// Numbers as they stand on the sheet: bare mm, inches with their mark, angles.
import { expect, test } from "vitest";
import { formatOnDrawing } from "../../packages/viewer/src/state/format.ts";

const shop = { smallestFraction: "1/64", bothUnits: "no" } as const;

test.each([
  [44.45, "mm", "mm", "44.45"],
  [44.45, "mm", "in", "1 3/4″"],
  [88.16, "mm", "in", "3 15/32″ (3.471)"],
  [47, "°", "in", "47°"],
  [0.0123, "", "mm", "0.012"],
] as const)("%d %s in a design in %s", (value, unit, units, text) =>
  expect(formatOnDrawing(value, unit, { units, shop })).toBe(text),
);
