// A cure is never worse than its fault: one that brings another check to its limit comes after every one that does not.
import { withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import { type Design, TABLE } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { findCure, smallestCure } from "../../packages/bench/src/checks/cures.ts";
import type { Judgement } from "../../packages/bench/src/checks/judgement.ts";
import { isFinding, judgeChecks } from "../../packages/bench/src/checks/judgements.ts";
import { designWith, randomDesigns } from "../support/designs.ts";

const FAILING: readonly Design[] = randomDesigns(91, 40, (design) =>
  judgeChecks(elevation(design)).some((judgement) => judgement.remedies.length > 0 && isFinding(judgement)),
).map(({ design }) => design);

const marginOf = ({ relation, value, limit }: Judgement): number =>
  relation === "at most" ? limit - value : value - limit;

/** Checks, but the one that is cured, that a design leaves with no room, or with less than they lacked before. */
function pressed(code: string, before: Design, after: Design): string[] {
  const earlier = judgeChecks(elevation(before));
  return judgeChecks(elevation(after)).flatMap((each) => {
    if (each.code === code || each.relation === undefined || each.severity === "note") return [];
    const known = earlier.find((one) => one.code === each.code && one.subject === each.subject);
    const worse =
      known && known.limit === each.limit ? marginOf(each) < marginOf(known) - 1e-6 : each.severity !== "passed";
    const room = Math.max(Math.abs(each.limit) / 20, { mm: 0.1, "°": 0.25 }[each.unit] ?? 0);
    return worse && (each.severity !== "passed" || marginOf(each) < room) ? [each.code] : [];
  });
}

const rowsEnds = (path: string): readonly number[] => {
  const row = path.split(".").reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], TABLE) as {
    min?: number;
    max?: number;
  };
  return [row.min ?? Number.NaN, row.max ?? Number.NaN];
};

describe("cures of random failing designs", () => {
  test("one that leaves every other check its room is found before one that does not", () => {
    let [free, pressing] = [0, 0];
    for (const design of FAILING) {
      const plane = elevation(design);
      const all = judgeChecks(plane);
      const found = all.filter(isFinding);
      const stops = new Set(found.filter(({ severity }) => severity === "stop").map(({ code }) => code));
      for (const finding of found) {
        const cure = findCure(plane, finding, all);
        if (cure?.length !== 1) continue;
        const chosen = pressed(finding.code, design, withValue(design, cure[0]!.parameter, cure[0]!.value));
        const atEnd = rowsEnds(cure[0]!.parameter).includes(cure[0]!.value as number);
        if (chosen.length === 0 && !atEnd) {
          free++;
          continue;
        }
        pressing++;
        const resolves = (tried: Design) =>
          judgeChecks(elevation(tried))
            .filter(isFinding)
            .every(({ code, severity }) => code !== finding.code && (severity !== "stop" || stops.has(code)));
        for (const remedy of finding.remedies) {
          const other = smallestCure(plane, remedy, resolves);
          if (!other || rowsEnds(other.parameter).includes(other.value as number)) continue;
          const by = pressed(finding.code, design, withValue(design, other.parameter, other.value));
          expect(by, `${finding.code}: ${cure[0]!.parameter} before ${other.parameter}`).not.toEqual([]);
        }
      }
    }
    expect(free).toBeGreaterThan(30);
    expect(pressing).toBeGreaterThan(0);
  }, 120_000);

  test("in an inch design a length that cures stands on the maker's rule, or on a thousandth where a rule is too coarse", () => {
    let lengths = 0;
    for (const design of FAILING.slice(0, 16)) {
      const plane = elevation({ ...design, units: "in" });
      const all = judgeChecks(plane);
      const found = all.filter(isFinding);
      for (const finding of found)
        for (const { parameter, value } of findCure(plane, finding, all) ?? []) {
          const row = parameter.split(".").reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], TABLE);
          if ((row as { quantity?: string }).quantity !== "length") continue;
          lengths++;
          const inches = (value as number) / 25.4;
          const parts = (row as { step: number }).step < 0.1 ? 1000 : 64;
          expect(Math.abs(inches * parts - Math.round(inches * parts)), `${parameter} ${value}`).toBeLessThan(1e-4);
        }
    }
    expect(lengths).toBeGreaterThan(5);
  }, 120_000);
});

test("a cross pin without its shoulders is not cured by a tenon that breaks", () => {
  const plane = elevation(designWith({ "pin.diameter": 9, "pin.tenon": 8.5 }));
  const all = judgeChecks(plane);
  const shoulder = all.find(({ code }) => code === "pin-shoulder")!;
  const cure = findCure(plane, shoulder, all)!;
  expect(cure).toHaveLength(1);
  expect(pressed("pin-shoulder", plane.design, withValue(plane.design, cure[0]!.parameter, cure[0]!.value))).toEqual(
    [],
  );
});
