// Root-sum-square: shares, and what one step must be held to; the published end gauge stands in test/outside.
import { type Budget, errorBudget, requiredTolerance, type ToleratedError } from "@lamplane/bench";
import { expect, test } from "vitest";
import { END_GAUGE } from "../../outside/statistics.ts";

const error = (
  key: string,
  tolerance: number,
  derivative = 1,
  step = "glue-up",
): ToleratedError & { derivative: number } => ({
  key,
  label: key,
  step,
  parameter: `hand.${key}`,
  unit: "mm",
  tolerance,
  derivative,
});

const sumOfShares = ({ lines }: Budget) => lines.reduce((sum, { share }) => sum + share, 0);

test("shares are of the variance and make 1: 3 and 4 make 5, 0.36 and 0.64", () => {
  const made = errorBudget([error("a", 3), error("b", 2, -2)]);
  expect(made.within).toBeCloseTo(5, 12);
  expect(made.worst).toBe(7);
  expect(made.lines.map(({ share }) => share)).toEqual([expect.closeTo(0.36, 12), expect.closeTo(0.64, 12)]);
  expect(sumOfShares(END_GAUGE)).toBeCloseTo(1, 12);
});

test("nothing at all makes 0, not a number divided by nothing", () => {
  expect(errorBudget([])).toEqual({ lines: [], within: 0, worst: 0 });
  expect(errorBudget([error("a", 0)]).lines[0]!.share).toBe(0);
});

test("held to what is needed, the whole is what was wanted", () => {
  const [a, b] = [error("a", 3), error("b", 2, -2)];
  const whole = errorBudget([a, b]);
  const held = requiredTolerance(whole, whole.lines[1]!, 3.5);
  expect(errorBudget([a, { ...b, tolerance: held.tolerance! }]).within).toBeCloseTo(3.5, 12);
  const all = [a, b].map((one) => ({ ...one, tolerance: one.tolerance * held.allTimes }));
  expect(errorBudget(all).within).toBeCloseTo(3.5, 12);
  expect(requiredTolerance(whole, whole.lines[1]!, 2.9)).toEqual({ others: 3, allTimes: expect.closeTo(0.58, 12) });
});
