// The sampler and the runs against the derivatives, within their own statistical error; known quantiles stand in test/outside.
import {
  type Distribution,
  type ResultTolerance,
  summarizeValues,
  type ToleranceReport,
  toleranceReport,
} from "@lamplane/bench";
import { normalGenerator, uniformGenerator } from "@lamplane/geometry/numerics";
import type { Design } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, randomDesigns, WORKED } from "../../support/designs.ts";

/** Far enough that an honest figure fails once in sixteen thousand: normal, two-sided (from memory). */
const FAR = 4;

const HAND_LENGTHS_AND_ANGLES = Object.entries(designWith().hand).filter(
  (entry): entry is [string, number] => typeof entry[1] === "number" && entry[0] !== "mouthWithin",
);
const handTimes = (factor: number): Changes =>
  Object.fromEntries(HAND_LENGTHS_AND_ANGLES.map(([key, value]) => [`hand.${key}`, value * factor]));

describe("the sampler", () => {
  const N = 400_000;
  test("fills 64 boxes evenly: chi-square at 63 below 114, its 99.99 % point (Wilson and Hilferty)", () => {
    const uniform = uniformGenerator(2);
    const boxes = new Array<number>(64).fill(0);
    for (let i = 0; i < N; i++) boxes[Math.floor(uniform() * 64)]!++;
    const chiSquare = boxes.reduce((sum, n) => sum + (n - N / 64) ** 2 / (N / 64), 0);
    expect(chiSquare).toBeLessThan(114);
    expect(chiSquare).toBeGreaterThan(26); // the lower end: too even is not random
  });

  test("knows its seed and nothing else", () => {
    const first = (seed: number) => Array.from({ length: 50 }, normalGenerator(uniformGenerator(seed)));
    expect(first(7)).toEqual(first(7));
    expect(new Set([0, 1, 2, 7, 2 ** 32 - 1].map((seed) => first(seed).join()))).toHaveProperty("size", 5);
  });
});

test("percentiles lie straight between neighbours; the middle of 1 … 5 is 3", () => {
  const { middle, mean, deviation } = summarizeValues(Float64Array.of(5, 3, 1, 2, 4));
  expect([middle, mean]).toEqual([3, 3]);
  expect(deviation).toBeCloseTo(Math.sqrt(2.5), 12);
});

test("percentiles are those of the sorted values, whatever their order and how often they are repeated", () => {
  const uniform = uniformGenerator(4);
  for (const count of [2, 3, 40, 41, 1000, 4097])
    for (const steps of [3, 1e9]) {
      const values = Float64Array.from({ length: count }, () => Math.floor(uniform() * steps) - steps / 2);
      const sorted = [...values].sort((a, b) => a - b);
      const between = (share: number) => {
        const at = (count - 1) * share;
        const [below, above] = [sorted[Math.floor(at)]!, sorted[Math.ceil(at)]!];
        return below + (at - Math.floor(at)) * (above - below);
      };
      for (const order of [values, Float64Array.from(sorted), Float64Array.from(sorted).reverse()]) {
        const { low, middle, high } = summarizeValues(order.slice());
        const wanted = [between(0.025), between(0.5), between(0.975)];
        for (const [i, value] of [low, middle, high].entries()) expect(value).toBeCloseTo(wanted[i]!, 6);
      }
    }
});

const withRange = (report: ToleranceReport) =>
  report.results.flatMap((result) =>
    "within" in result ? [[result, report.trial.results[result.key]] as [ResultTolerance, Distribution]] : [],
  );

test("with tolerances a hundredth as large, the runs and the derivatives say the same", () => {
  const runs = 20_000;
  for (const { changes } of randomDesigns(17, 12)) {
    const report = toleranceReport(designWith({ ...changes, ...handTimes(0.01) }), { runs, seed: 9 });
    for (const [{ key, within, planned }, { mean, deviation, middle }] of withRange(report)) {
      const sigma = within / 2;
      expect(Math.abs(deviation / sigma - 1), key).toBeLessThan(FAR / Math.sqrt(2 * runs) + 1e-3);
      expect(Math.abs(mean - planned), key).toBeLessThan((FAR * sigma) / Math.sqrt(runs) + 1e-3 * sigma);
      expect(Math.abs(middle - planned), key).toBeLessThan((1.26 * FAR * sigma) / Math.sqrt(runs) + 1e-3 * sigma);
    }
  }
});

describe("shares of the runs", () => {
  const trialOf = (changes: Changes) => toleranceReport(designWith(changes), { runs: 20_000 }).trial;
  const spread = FAR * Math.sqrt(0.25 / 20_000);

  test("a mouth planned shut is still closed in half of them", () =>
    expect(Math.abs(trialOf({ ...WORKED, "mouth.opening": 0 }).closed - 0.5)).toBeLessThan(spread));
  test("a thin iron's tips collide, but not with a chamfer", () => {
    const thin = { "iron.thickness": 3.175, "bed.angle": 45, "ramp.angle": 62, "sole.allowance": 3.175 };
    expect(trialOf({ ...thin, "bed.featherChamfer": 0 }).collide).toBeGreaterThan(0.99); // by 0.22 ± 0.13
    expect(trialOf({ ...thin, "bed.featherChamfer": 3.175 }).collide).toBe(0);
  });
  test("stopping short by two standard deviations comes too late in 2.275 %, 1 − Φ(2) (from memory)", () =>
    expect(Math.abs(trialOf(WORKED).tooLate - 0.02275)).toBeLessThan(
      FAR * Math.sqrt((0.02275 * 0.978) / 20_000) + 0.001,
    ));
});

test("set, read and repeat leaves the planing times the growth, and the reading", () => {
  const report = toleranceReport(designWith(WORKED), { runs: 50_000 });
  const { afterRepeat } = report.mouth;
  expect(afterRepeat.within).toBeCloseTo(Math.hypot(0.05 * 1.5099, 0.03), 4);
  const { low, middle, high } = report.trial.mouthAfterRepeat;
  expect(middle).toBeCloseTo(0.15, 2);
  expect((high - low) / 2).toBeGreaterThan(0.9 * afterRepeat.within);
  expect((high - low) / 2).toBeLessThan(1.1 * afterRepeat.within);
});

test("the same seed makes the same runs, another seed others", () => {
  const design: Design = designWith(WORKED);
  const at = (seed: number) => toleranceReport(design, { seed, runs: 500 }).trial.results;
  expect(at(4)).toEqual(at(4));
  expect(at(5).mouthOpening.mean).not.toBe(at(4).mouthOpening.mean);
});
