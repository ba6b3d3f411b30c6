// Critical values against printed tables: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7, from memory of its tables.
import { describe, expect, it } from "vitest";
import {
  chiSquare99,
  NORMAL_95,
  NORMAL_95_ALL_DIRECTIONS,
  student95,
  student95AllDirections,
} from "../../../../packages/parameters/src/bench/survey/probability.ts";

describe("critical values", () => {
  it.each([
    [1, 12.706],
    [2, 4.303],
    [5, 2.571],
    [10, 2.228],
    [30, 2.042],
    [100, 1.984],
  ])("Student's t, two-sided 95 %%, %i degrees: %f", (freedom, printed) => {
    expect(student95(freedom)).toBeCloseTo(printed, 3);
  });

  it.each([
    [1, 215.707],
    [5, 5.409],
    [10, 3.708],
    [30, 2.922],
  ])("F, 95 %%, 3 and %i degrees: %f", (freedom, printed) => {
    expect(student95AllDirections(freedom) ** 2 / 3).toBeCloseTo(printed, 3);
  });

  it.each([
    [1, 6.635, 0.05],
    [2, 9.21, 0.02],
    [10, 23.209, 0.005],
    [40, 63.691, 0.005],
  ])("chi-square, 99 %%, %i degrees: %f", (freedom, printed, within) => {
    expect(Math.abs(chiSquare99(freedom) / printed - 1)).toBeLessThan(within);
  });

  it("approaches the normal values with many readings to spare", () => {
    expect(student95(400)).toBeGreaterThan(NORMAL_95);
    expect(student95(400)).toBeCloseTo(NORMAL_95, 1);
    expect(student95AllDirections(400)).toBeCloseTo(NORMAL_95_ALL_DIRECTIONS, 1);
  });
});
