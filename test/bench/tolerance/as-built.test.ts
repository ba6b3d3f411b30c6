// What has been measured is known: its error shrinks to that of the reading, and the rest stays as it was.
import { expectedValue, toleranceReport } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import { designWith, WORKED } from "../../support/designs.ts";

const worked = designWith({ ...WORKED, "hand.placing": "marks" });
const withinOf = (design: Design, key: string): number => {
  const result = toleranceReport(design, { runs: 1000 }).results.find((each) => each.key === key)!;
  return "within" in result ? result.within : Number.NaN;
};
const measuring = (values: Partial<Design["measured"]>): Design => ({
  ...worked,
  measured: { ...worked.measured, ...values } as Design["measured"],
});

test("a measured angle, hole or place leaves the error of its reading", () => {
  const bed = expectedValue(worked, "bedAngle")!;
  expect(withinOf(measuring({ bedAngle: bed }), "wedgeAtPin")).toBeLessThan(withinOf(worked, "wedgeAtPin"));
  const hole = expectedValue(worked, "pinHoleFromEnd")!;
  expect(withinOf(measuring({ pinHoleFromEnd: hole }), "pinToRamp")).toBeLessThan(withinOf(worked, "pinToRamp"));
  const tips = {
    bedTipFromEnd: expectedValue(worked, "bedTipFromEnd")!,
    rampTipFromEnd: expectedValue(worked, "rampTipFromEnd")!,
  };
  expect(withinOf(measuring(tips), "mouthOpening")).toBeLessThan(0.6 * withinOf(worked, "mouthOpening"));
});

test("a step that is only marked done is not known any better", () => {
  expect(withinOf(measuring({ done: "cuts" }), "mouthOpening")).toBeCloseTo(withinOf(worked, "mouthOpening"), 9);
});
