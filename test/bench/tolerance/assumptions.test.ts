// What of an answer is an assumption of ours, and the answer at half and at double of it, from whole reports of changed designs.
import { type ResultTolerance, toleranceReport, toleranceText } from "@lamplane/bench";
import { rowAt } from "@lamplane/parameters/design";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, WORKED } from "../../support/designs.ts";

const FEW = { runs: 200 };
const resultsOf = (changes: Changes) =>
  toleranceReport(designWith({ ...WORKED, ...changes }), FEW).results.filter(
    (result): result is ResultTolerance => "assumptions" in result,
  );

describe("an assumption of ours", () => {
  test("is named with its share: creep makes 47 % of the mouth's spread", () => {
    const [mouth] = resultsOf({});
    expect(mouth!.assumptions.map(({ parameter }) => parameter)).toEqual(["hand.creep"]);
    expect(mouth!.assumptions[0]!.share).toBeCloseTo(0.47, 2);
  });

  test("is every line above 1 % whose row has no source, and no other", () => {
    for (const placing of ["contact", "marks"])
      for (const { lines, assumptions } of resultsOf({ "hand.placing": placing })) {
        const wanted = lines.filter(
          (line) => line.share >= 0.01 && /our assumption/.test(rowAt(line.parameter).source),
        );
        expect(assumptions.map(({ key }) => key).sort()).toEqual(wanted.map(({ key }) => key).sort());
      }
  });

  test("tells what a whole report tells of the design with half and with twice as much", () => {
    let compared = 0;
    for (const { key, assumptions } of resultsOf({}))
      for (const { parameter, tolerance, withinAtHalf, withinAtDouble } of assumptions)
        for (const [times, told] of [
          [0.5, withinAtHalf],
          [2, withinAtDouble],
        ] as const) {
          const changed = resultsOf({ [parameter]: times * tolerance }).find((result) => result.key === key)!;
          expect(told, `${key} by ${parameter}`).toBeCloseTo(changed.within, 9);
          compared++;
        }
    expect(compared).toBeGreaterThan(4);
  });

  test("is none once the maker has set a number of his own, or has measured what it was assumed for", () => {
    expect(resultsOf({ "hand.creep": 0.12 })[0]!.assumptions).toEqual([]);
    const design = designWith(WORKED);
    const measured = { ...design.measured, bedTipFromEnd: 92.82, rampTipFromEnd: 92.28 };
    const [mouth] = toleranceReport({ ...design, measured }, FEW).results as ResultTolerance[];
    expect(mouth!.assumptions).toEqual([]);
  });

  test("stands in the text under its result, in the maker's unit", () => {
    const design = designWith({ ...WORKED, units: "in" });
    const text = toleranceText(toleranceReport(design, FEW), design, true).join("\n");
    expect(text).toMatch(
      /creep under clamps ±0\.004 in \(47 %\) is our assumption, without a source\. At half of it: ±0\.\d{3} in; at double: ±0\.\d{3} in\. Set your own: hand\.creep\./,
    );
    expect(toleranceText(toleranceReport(design, FEW), design).join("\n")).toMatch(
      /^Our assumptions, without a source: creep under clamps.* Set your own: hand\.creep,/m,
    );
  });
});
