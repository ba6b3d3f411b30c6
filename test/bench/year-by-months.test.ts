// The year a second way: month by month, the moisture equation in its Fahrenheit form, and every size integrated in small
// steps of that moisture with the handbook's printed coefficients; the figures know the two ends of the year only.
import { allFigures } from "@lamplane/bench";
import { elevation } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, WORKED } from "../support/designs.ts";

/**
 * Equilibrium moisture, %, by the equation's constants for °F.
 * @see Wood Handbook (FPL-GTR-113, 1999), eq. 3-3, from memory
 */
function moistureFahrenheit(celsius: number, humidity: number): number {
  const t = 32 + 1.8 * celsius;
  const w = 330 + 0.452 * t + 0.00415 * t * t;
  const k = 0.791 + 0.000463 * t - 0.000000844 * t * t;
  const k1 = 6.34 + 0.000775 * t - 0.0000935 * t * t;
  const k2 = 1.09 + 0.0284 * t - 0.0000904 * t * t;
  const kh = (k * humidity) / 100;
  return (1800 / w) * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh ** 2) / (1 + k1 * kh + k1 * k2 * kh ** 2));
}

/** Points of table 4-2 of the Wood Handbook (FPL-GTR-190, 2010), °C, %, %: from memory. */
const TABLE_POINTS = [
  [21.1, 30, 6.2],
  [21.1, 50, 9.2],
  [10, 60, 11.2],
  [4.4, 65, 12.3],
] as const;

/** Change of a size for each percent of moisture. @see Wood Handbook, table 13-5, maple, sugar: from memory */
const MAPLE = { tangential: 0.00353, radial: 0.00165 };

const CHANGES: Changes = {
  ...WORKED,
  "wood.body": "maple, sugar",
  "wood.rings": 0,
  "wood.driest.temperature": 21,
  "wood.driest.humidity": 32,
  "wood.dampest.temperature": 24,
  "wood.dampest.humidity": 68,
};
const figures = Object.fromEntries(
  allFigures(elevation(designWith(CHANGES))).map(({ key, value }) => [key, value]),
) as Record<string, number>;

/** Air of the months from the driest to the dampest and back, as a cosine. */
const MONTHS = Array.from({ length: 13 }, (_, month) => {
  const damp = (1 - Math.cos((month * Math.PI) / 6)) / 2;
  return { temperature: 21 + 3 * damp, humidity: 32 + 36 * damp };
});
const MOISTURES = MONTHS.map(({ temperature, humidity }) => moistureFahrenheit(temperature, humidity));
const AS_CUT = (MOISTURES[0]! + MOISTURES[6]!) / 2;

/** States of a system in every month, from what it is as cut, by Runge and Kutta's midpoint steps of a thousandth of a percent. */
function throughMonths(asCut: number, slope: (state: number) => number): number[] {
  const carried = (state: number, from: number, to: number): number => {
    const steps = Math.ceil(Math.abs(to - from) * 1000);
    const step = (to - from) / Math.max(1, steps);
    let now = state;
    for (let i = 0; i < steps; i++) now += step * slope(now + (step / 2) * slope(now));
    return now;
  };
  const states = [carried(asCut, AS_CUT, MOISTURES[0]!)];
  for (let month = 1; month < MOISTURES.length; month++)
    states.push(carried(states.at(-1)!, MOISTURES[month - 1]!, MOISTURES[month]!));
  return states;
}
const least = (values: readonly number[]) => Math.min(...values);
const most = (values: readonly number[]) => Math.max(...values);

test.each(TABLE_POINTS)(
  "the Fahrenheit form has the table's moisture at %d °C and %d %%: %d",
  (celsius, humidity, printed) => {
    expect(Math.abs(moistureFahrenheit(celsius, humidity) - printed)).toBeLessThan(0.06);
  },
);

describe("month by month", () => {
  test("the wood comes to the driest and the dampest moisture that the figures tell", () => {
    expect(Math.abs(least(MOISTURES) - figures.moistureDriest!)).toBeLessThan(0.05);
    expect(Math.abs(most(MOISTURES) - figures.moistureDampest!)).toBeLessThan(0.05);
    expect(Math.abs(AS_CUT - figures.moistureAsCut!)).toBeLessThan(0.05);
  });

  test("the core, the room beside the iron and the body's height are those of the figures", () => {
    // Each small step counts from what the wood has come to; the handbook's change counts from what it was: (C·ΔM)² / 2 apart.
    const core = throughMonths(49.6, () => MAPLE.tangential * 49.6);
    expect(least(core)).toBeCloseTo(figures.coreWidthDriest!, 2);
    expect(most(core)).toBeCloseTo(figures.coreWidthDampest!, 2);
    expect(least(core) - 48).toBeCloseTo(figures.sideGapLeast!, 2);
    const compounded = throughMonths(49.6, (width) => MAPLE.tangential * width);
    expect(Math.abs(least(compounded) - figures.coreWidthDriest!)).toBeLessThan(0.01);
    const height = throughMonths(58, () => MAPLE.radial * 58);
    expect(most(height) - least(height)).toBeCloseTo(figures.heightChange!, 2);
  });

  test("bed, ramp and mouth turn as small turns add up: dβ = sin β · cos β for each part of height", () => {
    const radian = Math.PI / 180;
    const turned = (angle: number) =>
      throughMonths(angle * radian, (now) => MAPLE.radial * Math.sin(now) * Math.cos(now)).map((now) => now / radian);
    const [bed, ramp] = [turned(47), turned(60)];
    expect(least(bed)).toBeCloseTo(figures.bedAngleDriest!, 2);
    expect(most(bed)).toBeCloseTo(figures.bedAngleDampest!, 2);
    expect(least(ramp)).toBeCloseTo(figures.rampAngleDriest!, 2);
    expect(most(ramp)).toBeCloseTo(figures.rampAngleDampest!, 2);
    // The bed's foot and the ramp's stay; an iron of 3.6 on a steeper bed covers less of the sole.
    const mouths = bed.map((angle) => 0.15 + 3.6 / Math.sin(47 * radian) - 3.6 / Math.sin(angle * radian));
    expect(mouths[0]!).toBeCloseTo(figures.mouthDriest!, 3);
    expect(mouths[6]!).toBeCloseTo(figures.mouthDampest!, 3);
  });
});
