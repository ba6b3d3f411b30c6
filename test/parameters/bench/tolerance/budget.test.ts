// Root-sum-square against the published end gauge; shares; what one step must be held to.
import { type Budget, budget, type Held, needed } from "@lamplane/parameters/bench";
import { describe, expect, test } from "vitest";

const error = (key: string, tolerance: number, derivative = 1, step = "glue-up"): Held & { derivative: number } => ({
  key,
  label: key,
  step,
  parameter: `hand.${key}`,
  unit: "mm",
  tolerance,
  derivative,
});

/**
 * JCGM 100:2008, H.1: end gauge of 50 mm. Standard 25 nm, the comparator's scatter 5.8, its random 3.9 and systematic
 * errors 6.7 nm, difference of expansion 1e-6/√3 per °C at −0.1 °C, difference of temperature 0.05/√3 °C at 11.5e-6 per °C.
 * Read in the documentation of GTC (MSL, New Zealand), which gives the same parts: 25, 5.8, 3.9, 6.7, 2.88679, 16.599.
 */
const GAUGE = 50000623; // nm
const endGauge = budget([
  error("standard", 25),
  error("scatter", 5.8),
  error("comparator random", 3.9),
  error("comparator systematic", 6.7),
  error("difference of expansion", 1e-6 / Math.sqrt(3), 0.1 * GAUGE),
  error("difference of temperature", 0.05 / Math.sqrt(3), -11.5e-6 * GAUGE),
]);

describe("JCGM 100:2008, example H.1", () => {
  test("combines to 32 nm", () => expect(Math.round(endGauge.within)).toBe(32));
  test("of the parts that GTC gives", () => {
    const [standard, scatter, , , expansion, temperature] = endGauge.lines.map(({ effect }) => effect);
    expect([standard, scatter]).toEqual([25, 5.8]);
    expect(expansion).toBeCloseTo(2.88679, 4);
    expect(temperature).toBeCloseTo(16.599, 3);
  });
  test("at worst by the plain sum of the parts", () =>
    expect(endGauge.worst).toBeCloseTo(25 + 5.8 + 3.9 + 6.7 + 2.88679 + 16.599, 3));
});

const sumOfShares = ({ lines }: Budget) => lines.reduce((sum, { share }) => sum + share, 0);

test("shares are of the variance and make 1: 3 and 4 make 5, 0.36 and 0.64", () => {
  const made = budget([error("a", 3), error("b", 2, -2)]);
  expect(made.within).toBeCloseTo(5, 12);
  expect(made.worst).toBe(7);
  expect(made.lines.map(({ share }) => share)).toEqual([expect.closeTo(0.36, 12), expect.closeTo(0.64, 12)]);
  expect(sumOfShares(endGauge)).toBeCloseTo(1, 12);
});

test("nothing at all makes 0, not a number divided by nothing", () => {
  expect(budget([])).toEqual({ lines: [], within: 0, worst: 0 });
  expect(budget([error("a", 0)]).lines[0]!.share).toBe(0);
});

test("held to what is needed, the whole is what was wanted", () => {
  const [a, b] = [error("a", 3), error("b", 2, -2)];
  const whole = budget([a, b]);
  const held = needed(whole, whole.lines[1]!, 3.5);
  expect(budget([a, { ...b, tolerance: held.tolerance! }]).within).toBeCloseTo(3.5, 12);
  const all = [a, b].map((one) => ({ ...one, tolerance: one.tolerance * held.allTimes }));
  expect(budget(all).within).toBeCloseTo(3.5, 12);
  expect(needed(whole, whole.lines[1]!, 2.9)).toEqual({ others: 3, allTimes: expect.closeTo(0.58, 12) });
});
