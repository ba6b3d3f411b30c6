// Drills as they are sold: the nearest at or over a hole, in the maker's unit.
import fc from "fast-check";
import { expect, test } from "vitest";
import { LETTER_DRILLS, NUMBER_DRILLS } from "../../packages/parameters/src/units/drill-chart.ts";
import { drillFor } from "../../packages/parameters/src/units.ts";

test.each([
  [0.391, "25/64 in"],
  [0.390625, "25/64 in"],
  [0.392, "letter X (0.397 in)"],
  [0.25, "1/4 in"],
  [0.2, "No. 7 (0.201 in)"],
  [0.193, "No. 10 (0.1935 in)"],
  [1.01, "1 1/64 in"],
] as const)("a hole of %d in: %s", (inches, name) => expect(drillFor(inches * 25.4, "in")!.name).toBe(name));

test.each([
  [9.7, "9.7 mm"],
  [9.72, "9.8 mm"],
  [9.704, "9.7 mm"],
  [14.1, "14.5 mm"],
  [6, "6 mm"],
] as const)("a hole of %d mm: %s", (mm, name) => expect(drillFor(mm, "mm")!.name).toBe(name));

test("none over the largest", () => expect(drillFor(60, "mm")).toBeUndefined());

test("never under the hole by what a caliper shows, never over by more than the next that is sold", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2, max: 25, noNaN: true }),
      fc.constantFrom("mm" as const, "in" as const),
      (mm, units) => {
        const { diameter } = drillFor(mm, units)!;
        expect(diameter - mm).toBeGreaterThan(-0.0128);
        expect(diameter - mm).toBeLessThanOrEqual(units === "in" ? 25.4 / 64 : mm < 13.9 ? 0.1 + 1e-9 : 0.5);
      },
    ),
  );
});

test("the gauges run without a slip: numbers fall, letters rise, and meet", () => {
  expect([NUMBER_DRILLS.length, LETTER_DRILLS.length]).toEqual([80, 26]);
  const rising = [...NUMBER_DRILLS].reverse().concat(LETTER_DRILLS);
  for (const [i, size] of rising.entries()) if (i > 0) expect(size).toBeGreaterThan(rising[i - 1]!);
});
