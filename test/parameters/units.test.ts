// Lengths and other numbers as makers write them, and as the shop reads them off a rule.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Fraction,
  formatAngle,
  formatDecimal,
  formatDecimalLength,
  formatDimension,
  formatFineLength,
  formatLength,
  formatLengthInBoth,
  formatLimit,
  formatNumber,
  formatOnRule,
  formatPercent,
  formatScale,
  formatTypeable,
  formatValue,
  fromMillimetres,
  parseLength,
  parseNumber,
  type RoundingDirection,
  toMillimetres,
  type Units,
} from "../../packages/parameters/src/units.ts";

/** @see the international inch, 1959: 1 in = 25.4 mm exactly */
describe("a length that is understood", () => {
  test.each<[string, Units, number]>([
    ["44.5", "mm", 44.5],
    ["44.5 mm", "in", 44.5],
    ["44.5mm", "mm", 44.5],
    ["4.45 cm", "mm", 44.5],
    ["1.75in", "mm", 44.45],
    ["1.75 inches", "mm", 44.45],
    ['1.75"', "mm", 44.45],
    ["1 3/4 in", "mm", 44.45],
    ["1 3/4", "in", 44.45],
    ['1-3/4"', "mm", 44.45],
    ['3/4"', "mm", 19.05],
    ["1¾ in", "mm", 44.45],
    ["¾ in", "mm", 19.05],
    ["1¾″", "mm", 44.45],
    ["1 3⁄4 in", "mm", 44.45],
    ["1 3/4 ”", "mm", 44.45],
    [".5 in", "mm", 12.7],
    ["5/16", "in", 7.9375],
    ["1/64 in.", "mm", 0.396875],
    [" 12 MM ", "in", 12],
    ["5/4 in", "mm", 31.75],
    ["-3 mm", "mm", -3],
    ["-1/2 in", "mm", -12.7],
    ["-0", "mm", 0],
    ["0.12345678 mm", "mm", 0.123457],
    ["+5 mm", "mm", 5],
    ["−5 mm", "mm", -5],
    ["1-¾ in", "mm", 44.45],
    ["-1-3/4 in", "mm", -44.45],
    ["⅙ in", "mm", 4.233333],
    ["44.5\u00a0mm", "in", 44.5],
  ])("%s in a file in %s", (text, units, value) => {
    expect(parseLength(text, units)).toEqual({ value });
  });
});

describe("a length that is refused, and what is said", () => {
  test.each<[string, Units, RegExp]>([
    ["44,5 mm", "mm", /write 44\.5 mm/],
    ["1,500", "mm", /write 1500, or 1\.500/],
    ["5/16", "mm", /write 5\/16 in/],
    ["1 3/4", "mm", /write 1 3\/4 in/],
    ["1 ft", "mm", /feet .* 18 in/],
    ["2 feet", "in", /feet/],
    ["1'", "in", /feet/],
    ["1' 6\"", "in", /feet/],
    ["1 3/4 mm", "mm", /write 1\.75 mm/],
    ["1/2 cm", "in", /write 0\.5 cm/],
    ["1 7/4 in", "mm", /write 2\.75 in/],
    ["3/0 in", "mm", /over zero/],
    ["5 furlongs", "mm", /"furlongs" is not known; write mm, cm or in/],
    ["5 m", "mm", /"m" is not known/],
    ["1e3", "mm", /exponents .* number out/],
    ["1e308 mm", "mm", /exponents/],
    ["", "mm", /nothing is written/],
    ["  ", "mm", /nothing is written/],
    ["1.2.3", "mm", /such as 44\.5 mm/],
    ["mm", "mm", /such as 44\.5 mm/],
    ["--3", "mm", /such as/],
    ["1 2", "mm", /such as/],
    ["1/2/3 in", "mm", /such as/],
    ["nan", "mm", /not known/],
    ["9".repeat(400), "mm", /characters/],
    ["¾5 in", "mm", /such as 1 3\/4 in/],
    ["1¾5", "in", /such as 1 3\/4 in/],
    ["½¾ in", "mm", /such as 1 3\/4 in/],
    ["1 -3/4 in", "mm", /such as 1 3\/4 in/],
    ["1 - 3/4 in", "mm", /such as 1 3\/4 in/],
    ["1 3 / 4 5", "in", /such as 1 3\/4 in/],
    ["1 500 mm", "mm", /such as/],
    ["1,500 mm", "mm", /write 1500 mm, or 1\.500 mm/],
    ["4,5/8 in", "in", /comma .* fraction/],
    ["1.75''", "mm", /two single marks/],
    ["5 mm 3 in", "mm", /more than one number or unit/],
    ["44.5 mm (1 3/4 in)", "mm", /more than one number or unit/],
    ["5 mm in", "mm", /more than one number or unit/],
  ])("%s in a file in %s", (text, units, fault) => {
    expect(parseLength(text, units)).toEqual({ fault: expect.stringMatching(fault) });
  });
});

describe("other quantities", () => {
  test.each([
    ["47", "angle", 47],
    ["47°", "angle", 47],
    ["47.5 deg", "angle", 47.5],
    ["21 °C", "temperature", 21],
    ["-5°C", "temperature", -5],
    ["30 %", "humidity", 30],
    ["30% RH", "humidity", 30],
    ["30 %", "percent", 30],
    ["5 N/mm", "force per length", 5],
    ["0.25", "ratio", 0.25],
    ["2", "count", 2],
  ] as const)("%s as %s", (text, quantity, value) => {
    expect(parseNumber(text, quantity, "in")).toEqual({ value });
  });
  test.each([
    ["47 mm", "angle", /47 or 47°/],
    ["47°30'", "angle", /minutes .* 47\.5/],
    ["47 30 min", "angle", /minutes/],
    ["47 %", "angle", /slope .* degrees/],
    ["0.8 rad", "angle", /47 or 47°/],
    ["70 °F", "temperature", /21 or 21 °C/],
    ["30 °", "humidity", /30 %/],
    ["5 N", "force per length", /5 N\/mm/],
    ["0,25", "ratio", /write 0\.25/],
    ["2 %", "ratio", /such as 0\.25/],
    ["1e2", "count", /exponents/],
    ["", "angle", /nothing/],
  ] as const)("%s is refused as %s", (text, quantity, fault) => {
    expect(parseNumber(text, quantity, "mm")).toEqual({ fault: expect.stringMatching(fault) });
  });
  test("a length goes by the file's unit", () => {
    expect(parseNumber("1/2", "length", "in")).toEqual({ value: 12.7 });
  });
});

describe("a length as it is shown", () => {
  test.each<[number, Units, Fraction, string]>([
    [44.45, "mm", "1/64", "44.45 mm"],
    [44.456, "mm", "1/64", "44.46 mm"],
    [50, "mm", "1/64", "50 mm"],
    [-0.001, "mm", "1/64", "0 mm"],
    [44.45, "in", "1/64", "1 3/4 in"],
    [44.49, "in", "1/64", "1 3/4 in"],
    [44.55, "in", "1/64", "1 3/4 in (1.754 in)"],
    [44.35, "in", "1/64", "1 3/4 in (1.746 in)"],
    [25.4, "in", "1/8", "1 in"],
    [0, "in", "1/8", "0 in"],
    [0.15, "in", "1/64", "0.006 in"],
    [0.3, "in", "1/64", "0.012 in"],
    [83.64, "in", "1/32", "3 9/32 in (3.293 in)"],
    [16.51, "in", "1/32", "21/32 in (0.650 in)"],
    [3.1, "in", "1/64", "0.122 in"],
    [3.2, "in", "1/64", "1/8 in"],
    [-0.3, "in", "1/64", "-0.012 in"],
    [-12.7, "in", "1/64", "-1/2 in"],
    [1.5875, "in", "1/16", "1/16 in"],
    [20, "in", "1/8", "3/4 in (0.787 in)"],
  ])("%d mm for a maker in %s with %s", (mm, units, fraction, shown) => {
    expect(formatLength(mm, units, fraction)).toBe(shown);
  });
  test("in both units, the maker's first", () => {
    expect(formatLengthInBoth(44.45, "mm")).toBe("44.45 mm (1 3/4 in)");
    expect(formatLengthInBoth(44.45, "in")).toBe("1 3/4 in (44.45 mm)");
    expect(formatLengthInBoth(0.15, "in")).toBe("0.006 in (0.15 mm)");
    expect(formatLengthInBoth(83.64, "in", "1/32")).toBe("3 9/32 in (3.293 in, 83.64 mm)");
    expect(formatLengthInBoth(8, "mm", "1/16")).toBe("8 mm (5/16 in)");
    expect(formatLengthInBoth(8, "mm", "1/8")).toBe("8 mm (about 3/8 in)");
    expect(formatLengthInBoth(8, "in", "1/16")).toBe("5/16 in (0.315 in, 8 mm)");
    expect(formatLengthInBoth(0.001, "mm")).toBe("0 mm (0 in)");
    expect([formatLengthInBoth(0.04, "mm"), formatLengthInBoth(0.04, "in")]).toEqual(["0.04 mm", "0.002 in (0.04 mm)"]);
  });
  // 83.64 mm = 105.37 / 32 in: up is 106 / 32, down 105 / 32.
  test.each<[RoundingDirection, string]>([
    ["up", "3 5/16 in (3.293 in)"],
    ["down", "3 9/32 in (3.293 in)"],
    ["nearest", "3 9/32 in (3.293 in)"],
  ])("rounded %s", (way, shown) => expect(formatLength(83.64, "in", "1/32", way)).toBe(shown));
  test("a division reached to half of what can be held is the length, whichever way is safe", () => {
    for (const way of ["up", "down", "nearest"] as const)
      for (const mm of [44.41, 44.45, 44.49]) expect(formatLength(mm, "in", "1/64", way)).toBe("1 3/4 in");
  });
  test("beside a dimension: bare mm, the rule and the caliper, or thousandths alone", () => {
    expect(formatDimension(83.64, "mm", "1/32")).toBe("83.64");
    expect(formatDimension(83.64, "in", "1/32")).toBe("3 9/32 in (3.293)");
    expect(formatDimension(0.3, "in", "1/32")).toBe("0.012 in");
    expect(formatDimension(44.45, "in", "1/32")).toBe("1 3/4 in");
  });
  test("as one figure to type back: whatever the length, it is read again within half a thousandth, or as the rule shows it", () => {
    expect(["mm" as const, "in" as const].map((units) => formatTypeable(83.64, units, "1/32"))).toEqual([
      "83.64",
      "3.293 in",
    ]);
    expect(formatTypeable(44.45, "in", "1/32")).toBe("1 3/4 in");
  });
  test("limits in decimal inches", () => {
    expect(formatLimit(8, "mm")).toBe("8 mm");
    expect(formatLimit(8, "in")).toBe("0.315 in (8 mm)");
  });
  test("decimals without zeros, without a minus on zero", () => {
    expect([formatDecimal(1.5, 2), formatDecimal(-0.004, 2), formatDecimal(-1.005, 2)]).toEqual(["1.5", "0", "-1.01"]);
  });
  test("halves three ways, and all decimals where they are asked for", () => {
    // 1.005 lies just under the half as a double: IEEE 754, 1.005 = 1.00499999999999989...
    expect(
      (["tolerant", "scaled", "binary"] as const).map((halves) => formatNumber(1.005, { decimals: 2, halves })),
    ).toEqual(["1.01", "1", "1"]);
    // 0.615 lies under it too, yet 100 times it is 61.5 exactly.
    expect(
      (["tolerant", "scaled", "binary"] as const).map((halves) => formatNumber(0.615, { decimals: 2, halves })),
    ).toEqual(["0.62", "0.62", "0.61"]);
    const fixed = { decimals: 2, fixed: true };
    expect([formatNumber(-0.001, fixed), formatNumber(-0.001, { ...fixed, minusOnZero: true })]).toEqual([
      "0.00",
      "-0.00",
    ]);
    expect([formatNumber(1.5, { ...fixed, signed: true }), formatNumber(-1.5, { ...fixed, signed: true })]).toEqual([
      "+1.50",
      "-1.50",
    ]);
  });
  test("angles, shares and scales", () => {
    expect(formatAngle(47.5)).toBe("47.5°");
    expect([formatPercent(0.123, 0), formatPercent(0.0004, 1, 0.001)]).toEqual(["12 %", "under 0.1 %"]);
    expect([formatScale(2), formatScale(1 / 2.5), formatScale(0.5, " : ")]).toEqual(["2:1", "1:2.5", "1 : 2"]);
  });
  test("a length on the rule: what a caliper has beside it, instead of it or left out; thousandths alone for a small one", () => {
    const format = { units: "in" as const, smallestFraction: "1/32" as const };
    expect(formatOnRule(83.64, format)).toBe("3 9/32 in (3.293 in)");
    expect(formatOnRule(83.64, { ...format, caliper: "none" })).toBe("3 9/32 in");
    expect(formatOnRule(83.64, { ...format, caliper: "instead" })).toBe("3.293 in");
    expect(formatOnRule(2, format)).toBe("0.079 in");
    expect(formatOnRule(2, { ...format, smallInThousandths: false })).toBe("3/32 in (0.079 in)");
    expect(formatDecimalLength(2, { units: "in", decimals: { mm: 2, in: 4 } })).toBe("0.0787 in");
  });
});

test.each<[number, Units, string]>([
  [0.15, "mm", "0.15 mm"],
  [0.15, "in", "0.006 in (0.15 mm)"],
  [0, "mm", "0 mm"],
  [0.003, "mm", "under 0.01 mm"],
  [0.003, "in", "under 0.001 in (under 0.01 mm)"],
  [25.4, "in", "1.000 in (25.4 mm)"],
  [2.54, "in", "0.100 in (2.54 mm)"],
])("%d mm as feelers give it in %s is %s", (mm, units, text) => expect(formatFineLength(mm, units)).toBe(text));

describe("laws", () => {
  const lengths = fc.double({ min: -1000, max: 3000, noNaN: true });
  test("a length shown in inches lies within 0.05 mm of the length", () => {
    fc.assert(
      fc.property(lengths, fc.constantFrom<Fraction>("1/8", "1/16", "1/32", "1/64"), (mm, fraction) => {
        const told = formatLength(mm, "in", fraction);
        const read = parseLength(/\((.*)\)/.exec(told)?.[1] ?? told, "mm");
        expect(Math.abs(("value" in read ? read.value : Number.NaN) - mm)).toBeLessThan(0.0501);
        expect(told).not.toContain("mm");
      }),
    );
  });
  test("a value of any other unit, with as many decimals as it deserves (SI brochure, 5.4.3: a space before the unit)", () => {
    const shown = (value: number, unit: string) => formatValue(value, unit, "mm", "1/64");
    expect(shown(47.5, "°")).toBe("47.5°");
    expect(shown(1.50994, "")).toBe("1.5099");
    expect(shown(239.5968, "N")).toBe("240 N");
    expect(shown(6.168965, "MPa")).toBe("6.2 MPa");
    expect(shown(2.9641, "×")).toBe("2.96×");
    expect(shown(6.17147, "%")).toBe("6.17 %");
    expect(shown(21, "°C")).toBe("21 °C");
    expect(formatValue(0.5, "N/mm", "in", "1/64")).toBe("0.5 N/mm");
  });
  test("bare numbers of either unit come back", () => {
    fc.assert(
      fc.property(lengths, fc.constantFrom<Units>("mm", "in"), (mm, units) => {
        expect(toMillimetres(fromMillimetres(mm, units), units)).toBeCloseTo(mm, 6);
      }),
    );
  });
  test("any text is read to a finite number or refused in words", () => {
    const signs = fc.string({ unit: fc.constantFrom(..."0123456789./- ,e'\"″¾inmc°%N∞") });
    fc.assert(
      fc.property(fc.oneof(signs, fc.string()), fc.constantFrom<Units>("mm", "in"), (text, units) => {
        for (const quantity of ["length", "angle", "count"] as const) {
          const read = parseNumber(text, quantity, units);
          expect("value" in read ? Number.isFinite(read.value) : read.fault.length > 0).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });
});
