// Lengths in decimals: each wish of a format is kept in either unit, and what is written is the length to its last decimal.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatDecimalLength, formatLength, formatLimit, type Units } from "../../packages/parameters/src/units.ts";
import { expectDecimalLength, expectLength } from "../support/figures-in-text.ts";

const DECIMALS = { mm: 3, in: 4 } as const;
const lengths = fc.double({ min: -400, max: 400, noNaN: true });
const unit = fc.constantFrom<Units>("mm", "in");

describe("a length in decimals", () => {
  test("is the length to the decimals of its unit, without zeros at its end or with them all", () => {
    fc.assert(
      fc.property(lengths, unit, fc.boolean(), (mm, units, fixed) => {
        expectDecimalLength(formatDecimalLength(mm, { units, decimals: DECIMALS, fixed }), mm, units, DECIMALS, fixed);
      }),
    );
  });
  test.each<Units>(["mm", "in"])(
    "in %s bare, signed, with zeros, or with a minus on nothing, only where it is asked for",
    (units) => {
      const one = units === "mm" ? 1 : 25.4;
      const text = (share: number, format: object) =>
        formatDecimalLength(share * one, { units, decimals: { mm: 2, in: 2 }, ...format });
      expect(text(1.5, {})).toBe(`1.5 ${units}`);
      expect(text(1.5, { bare: true })).toBe("1.5");
      expect(text(1.5, { fixed: true })).toBe(`1.50 ${units}`);
      expect([text(1.5, { signed: true }), text(-1.5, { signed: true })]).toEqual([`+1.5 ${units}`, `-1.5 ${units}`]);
      expect([text(-0.001, {}), text(-0.001, { fixed: true, minusOnZero: true })]).toEqual([
        `0 ${units}`,
        `-0.00 ${units}`,
      ]);
      // 0.615 as a double lies just under its half, yet 100 times it is 61.5 exactly.
      if (units === "mm")
        expect([text(0.615, { halves: "binary" }), text(0.615, { halves: "scaled" })]).toEqual(["0.61 mm", "0.62 mm"]);
    },
  );
});

test("a length as the maker reads it is within half a hundredth of a millimetre, or half a thousandth of an inch", () => {
  fc.assert(
    fc.property(lengths, unit, fc.constantFrom("1/8", "1/16", "1/32", "1/64"), (mm, units, smallestFraction) => {
      fc.pre(Math.abs(mm) > 0.0128);
      expectLength(formatLength(mm, { units, shop: { smallestFraction, bothUnits: "no" } }), mm, units);
    }),
  );
});

test("a limit in inches has its millimetres behind it", () => {
  fc.assert(
    fc.property(lengths, (mm) => {
      const [, inches, metric] = /^(.*? in) \((.*? mm)\)$/.exec(formatLimit(mm, "in"))!;
      expectDecimalLength(inches!, mm, "in", { mm: 3, in: 3 });
      expectDecimalLength(metric!, mm, "mm", { mm: 3, in: 3 });
      expectDecimalLength(formatLimit(mm, "mm"), mm, "mm", { mm: 3, in: 3 });
    }),
  );
});
