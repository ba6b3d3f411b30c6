// The report as a whole: every design, whatever its findings, gets finite figures, shares that make 1, and words.
import { type ResultTolerance, type ToleranceReport, toleranceReport, toleranceText } from "@lamplane/bench";
import { checkPlane, mayBeBuilt } from "@lamplane/bench/checks";
import { elevation } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, randomDesigns, WORKED } from "../../support/designs.ts";

const RUNS = 200;
const reportOf = (changes: Changes): ToleranceReport => toleranceReport(designWith(changes), { runs: RUNS });
const mouthOf = ({ results }: ToleranceReport) => results[0] as ResultTolerance;

/** Every number anywhere in plain data. */
const numbersIn = (data: unknown): number[] =>
  typeof data === "number" ? [data] : data && typeof data === "object" ? Object.values(data).flatMap(numbersIn) : [];

test("every design gets finite figures, shares that make 1, and words without a hole", () => {
  let unsound = 0;
  for (const { design, changes } of randomDesigns(23, 80)) {
    const units = Number(changes["iron.width"]) > 50 ? "in" : "mm";
    const asked = { ...design, units } as const;
    if (!mayBeBuilt(checkPlane(elevation(design)))) unsound++;
    const report = toleranceReport(asked, { runs: RUNS });
    const numbers = numbersIn(report);
    expect(numbers.length).toBeGreaterThan(100);
    expect(numbers.every(Number.isFinite)).toBe(true);
    for (const result of report.results) {
      expect("lines" in result).toBe(true);
      const { lines, steps, shares, within, worst } = result as ResultTolerance;
      for (const parts of [lines, steps, shares])
        expect(parts.reduce((sum: number, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      expect(within).toBeGreaterThan(0);
      expect(worst).toBeGreaterThanOrEqual(within);
    }
    for (const all of [false, true])
      expect(toleranceText(report, asked, all).join("\n")).not.toMatch(/NaN|undefined|Infinity|null|-0\.0+ /);
  }
  expect(unsound).toBeGreaterThan(10);
});

describe("an error that is none", () => {
  test("is left out when its tolerance is 0", () => {
    const keys = (changes: Changes) => mouthOf(reportOf({ ...WORKED, ...changes })).lines.map(({ key }) => key);
    expect(keys({})).toContain("creep");
    expect(keys({ "hand.creep": 0 })).not.toContain("creep");
    expect(keys({ "hand.creep": 0 })).toContain("edgeHeight");
  });
  test("is not asked of a plane that cannot have it: no cap iron, no curve, the other placing", () => {
    const all = (changes: Changes) =>
      new Set(
        reportOf(changes).results.flatMap((result) => ("lines" in result ? result.lines.map(({ key }) => key) : [])),
      );
    expect(all(WORKED).has("capIronThickness")).toBe(true);
    expect(all({ ...WORKED, "capIron.thickness": 0 }).has("capIronThickness")).toBe(false);
    expect([all(WORKED).has("rampForm"), all({ "bed.angle": 57 }).has("rampForm")]).toEqual([false, true]);
    const marks = all({ ...WORKED, "hand.placing": "marks" });
    expect([marks.has("frontPlace"), marks.has("edgeHeight")]).toEqual([true, false]);
  });
  test("makes a mouth that is as planned when there is no other", () => {
    const none = { "hand.creep": 0, "hand.edgeHeight": 0, "hand.planing": 0, "hand.sawAngle": 0 };
    const report = reportOf({ ...WORKED, ...none });
    expect(mouthOf(report)).toMatchObject({ within: 0, worst: 0, lines: [], deciding: undefined });
    expect(toleranceText(report, designWith(WORKED))[0]).toMatch(
      /^Mouth 0\.15 mm, exactly: every tolerance that moves it is 0/,
    );
    const { low, high } = report.trial.results.mouthOpening;
    expect([low, high]).toEqual([expect.closeTo(0.15, 9), expect.closeTo(0.15, 9)]);
  });
});

describe("the maker's question", () => {
  test("names the step that decides: with a poor saw and marks, the ramp's cut", () => {
    const poor = { "hand.placing": "marks", "hand.sawAngle": 2, "hand.placement": 0.05, "hand.creep": 0.02 };
    expect(mouthOf(reportOf({ ...WORKED, ...poor })).deciding).toMatchObject({ key: "rampAngle", step: "ramp cut" });
  });
  test("held as told, the mouth comes within what is wanted", () => {
    const wide = { ...WORKED, "hand.creep": 0.3 };
    const { tolerance } = reportOf({ ...wide, "hand.mouthWithin": 0.2 }).mouth.needed!;
    expect(tolerance).toBeLessThan(0.3);
    expect(mouthOf(reportOf({ ...wide, "hand.creep": tolerance! })).within).toBeCloseTo(0.2, 6);
  });
  test("says where one step alone is not enough, and where all is well already", () => {
    const words = (changes: Changes) => {
      const design = designWith({ ...WORKED, ...changes });
      return toleranceText(toleranceReport(design, { runs: RUNS }), design).join("\n");
    };
    expect(words({ "hand.mouthWithin": 0.05 })).toMatch(/alone is not enough\. Hold every step to 34 %/);
    expect(words({ "hand.mouthWithin": 0.5 })).toMatch(/Better than the ±0\.5 mm wanted: /);
    expect(words({ "sole.allowance": 0.05, "mouth.opening": 0 })).toMatch(/too small to stop short of/);
  });
  test("the other placing is what a report of it says", () => {
    const by = (placing: string) => reportOf({ ...WORKED, "hand.placing": placing });
    expect(by("contact").mouth.placedOtherwise).toBeCloseTo(mouthOf(by("marks")).within, 12);
    expect(by("marks").mouth.placedOtherwise).toBeCloseTo(mouthOf(by("contact")).within, 12);
  });
});

test("after the glue-up the allowance is what is still to come off, and nothing is said of placing the block otherwise", () => {
  // By hand: the front block 0.28 nearer to the toe than its 79.582 opens the mouth sooner, by 0.282 / (cot 47 + cot 60) = 0.187.
  const glued = designWith({ ...WORKED, "measured.rampTipFromEnd": 12.7 + 79.3 });
  const report = toleranceReport(glued, { runs: RUNS });
  expect(report.mouth.allowance).toBeCloseTo(3 - 0.187, 3);
  const words = toleranceText(report, glued).join("\n");
  expect(words).toMatch(/once 2\.81 mm is planed off/);
  expect(words).not.toMatch(/^Front block .* instead: /m);
  expect(toleranceText(reportOf(WORKED), designWith(WORKED)).join("\n")).toMatch(/^Front block .* instead: mouth ±/m);
});

test("no unit runs into the next word", () => {
  const inches = designWith({ ...WORKED, units: "in" });
  for (const all of [false, true])
    expect(toleranceText(toleranceReport(inches, { runs: RUNS }), inches, all).join("\n")).not.toMatch(/\bin in\b/);
});
