// Lengths and other numbers as makers write them, and as the shop reads them off a rule.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Fraction,
  formatAngle,
  formatBareLength,
  formatDecimal,
  formatDecimalLength,
  formatDimension,
  formatLength,
  formatLimit,
  formatNumber,
  formatPercent,
  formatScale,
  formatValue,
  fromMillimetres,
  parseLength,
  parseNumber,
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
    ["", "mm", /nothing stands here/],
    ["  ", "mm", /nothing stands here/],
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
    ["47 in/min", "feed", 1193.8],
    ["3 s", "time", 3],
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

const style = (units: Units, smallestFraction: Fraction = "1/64", bothUnits: "no" | "yes" = "no") => ({
  units,
  shop: { smallestFraction, bothUnits },
});

describe("a length as it is shown", () => {
  test.each<[number, Units, Fraction, string]>([
    [44.45, "mm", "1/64", "44.45 mm"],
    [44.456, "mm", "1/64", "44.46 mm"],
    [50, "mm", "1/64", "50 mm"],
    [-0.001, "mm", "1/64", "0 mm"],
    [0.003, "mm", "1/64", "under 0.01 mm"],
    [44.45, "in", "1/64", "1 3/4 in"],
    [88.16, "in", "1/32", "3 15/32 in (3.471)"],
    [44.55, "in", "1/64", "1 3/4+ in (1.754)"],
    [44.36, "in", "1/64", "1 3/4 in (1.746)"],
    [44.34, "in", "1/64", "1 3/4− in (1.746)"],
    [25.4, "in", "1/8", "1 in"],
    [0, "in", "1/8", "0 in"],
    [-0.001, "in", "1/8", "0 in"],
    [0.15, "in", "1/64", "0.006 in"],
    [0.003, "in", "1/64", "under 0.001 in"],
    [83.64, "in", "1/32", "3 9/32+ in (3.293)"],
    [16.51, "in", "1/32", "21/32 in (0.650)"],
    [3.1, "in", "1/64", "0.122 in"],
    [3.2, "in", "1/64", "1/8 in (0.126)"],
    [-0.3, "in", "1/64", "-0.012 in"],
    [-12.7, "in", "1/64", "-1/2 in"],
    [-12.8, "in", "1/64", "-1/2+ in (-0.504)"],
    [1.5875, "in", "1/16", "1/16 in"],
    [20, "in", "1/8", "3/4+ in (0.787)"],
    [8, "in", "1/32", "5/16 in (0.315)"],
  ])("%d mm for a maker in %s with %s", (mm, units, fraction, text) => {
    expect(formatLength(mm, style(units, fraction))).toBe(text);
  });
  test("+ and − from a quarter of a division on", () => {
    const quarter = (25.4 / 32) * 0.25;
    const at = (off: number) => formatLength(25.4 + off, style("in", "1/32")).replace(/ in.*/, "");
    expect([at(0.99 * quarter), at(1.01 * quarter), at(-0.99 * quarter), at(-1.01 * quarter)]).toEqual([
      "1",
      "1+",
      "1",
      "1−",
    ]);
  });
  test("both units only where they are asked for, the maker's first", () => {
    expect(formatLength(44.45, style("mm", "1/64", "yes"))).toBe("44.45 mm (1 3/4 in)");
    expect(formatLength(44.45, style("in", "1/64", "yes"))).toBe("1 3/4 in (44.45 mm)");
    expect(formatLength(0.15, style("in", "1/64", "yes"))).toBe("0.006 in (0.15 mm)");
    expect(formatLength(88.16, style("in", "1/32", "yes"))).toBe("3 15/32 in (3.471, 88.16 mm)");
    expect(formatLength(88.16, style("mm", "1/32", "yes"))).toBe("88.16 mm (3 15/32, 3.471 in)");
  });
  test("beside a dimension: bare mm; inches with their unit", () => {
    expect(formatDimension(83.64, style("mm"))).toBe("83.64");
    expect(formatDimension(88.16, style("in", "1/32"))).toBe("3 15/32 in (3.471)");
    expect(formatBareLength(88.16, style("in", "1/32"))).toBe("3 15/32 (3.471)");
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
  test("a reading finer than a caliper's in decimals", () => {
    expect(formatDecimalLength(2, { units: "in", decimals: { mm: 2, in: 4 } })).toBe("0.0787 in");
  });
});

describe("laws", () => {
  const lengths = fc.double({ min: -1000, max: 3000, noNaN: true });
  test("a length shown is read again within half of its last figure, in either unit", () => {
    const fractions = fc.constantFrom<Fraction>("1/8", "1/16", "1/32", "1/64");
    fc.assert(
      fc.property(lengths, fractions, fc.constantFrom<Units>("mm", "in"), (mm, fraction, units) => {
        fc.pre(mm < 0 || mm > 0.0128);
        const read = parseLength(formatLength(mm, style(units, fraction)), "mm");
        const half = units === "mm" ? 0.005 : 25.4 / 2000;
        // A fraction stands alone where it rounds to the same thousandth: that is one thousandth at most.
        expect(Math.abs(("value" in read ? read.value : Number.NaN) - mm)).toBeLessThan(2 * half + 1e-6);
      }),
    );
  });
  test("a value of any other unit, with as many decimals as it deserves (SI brochure, 5.4.3: a space before the unit)", () => {
    const shown = (value: number, unit: string) => formatValue(value, unit, style("mm"));
    expect(shown(47.5, "°")).toBe("47.5°");
    expect([shown(1.50994, ""), shown(0.00361, "")]).toEqual(["1.51", "0.0036"]);
    expect(shown(239.5968, "N")).toBe("240 N");
    expect(shown(6.168965, "MPa")).toBe("6.2 MPa");
    expect(shown(2.9641, "×")).toBe("2.96×");
    expect(shown(6.17147, "%")).toBe("6.2 %");
    expect(shown(21, "°C")).toBe("21 °C");
    expect(formatValue(0.5, "N/mm", style("in"))).toBe("0.5 N/mm");
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
