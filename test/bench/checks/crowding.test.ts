// When a change that ends one complaint is said to bring another check to its limit: both sides of what counts as near, in each unit.

import { rowAt } from "@lamplane/parameters/design";
import { describe, expect, test } from "vitest";
import { crowdedChecks, isAtRowsEnd, marginOf } from "../../../packages/bench/src/checks/crowding.ts";
import type { Judgement } from "../../../packages/bench/src/checks/judgement.ts";

const judged = (changes: Partial<Judgement>): Judgement =>
  ({
    code: "throat",
    subject: "throatAtTop",
    severity: "passed",
    relation: "at least",
    parameters: [],
    unit: "mm",
    advice: "throat",
    place: "rampTop",
    remedies: [],
    source: "",
    value: 10,
    limit: 5,
    ...changes,
  }) as unknown as Judgement;

const crowded = (before: Partial<Judgement>, after: Partial<Judgement>) =>
  crowdedChecks("another", [judged(before)], [judged(after)]).length > 0;

test("the room is on the right side of the limit, and there is none where the limit is no bound", () => {
  expect(marginOf(judged({ relation: "at least", value: 7, limit: 5 }))).toBe(2);
  expect(marginOf(judged({ relation: "at most", value: 7, limit: 5 }))).toBe(-2);
  const unbounded: Partial<Judgement> = { relation: undefined as never };
  expect(marginOf(judged(unbounded))).toBeUndefined();
});

describe("a check that still passes is crowded", () => {
  // About a limit of 0 a share of it is nothing: a tenth of a millimetre, or a quarter of a degree, is what the bench can still tell.
  test.each([
    ["mm", 0, 0.1],
    ["°", 0, 0.25],
    ["×", 0, 0],
    ["mm", 20, 1],
    ["°", 40, 2],
    ["×", 2, 0.1],
    ["mm", -20, 1],
    ["mm", 1, 0.1],
    ["°", 1, 0.25],
  ])("in %s with a limit of %d nearer than %d to it", (unit, limit, near) => {
    for (const [relation, sense] of [
      ["at least", 1],
      ["at most", -1],
    ] as const) {
      const at = (room: number) => ({ unit, limit, relation, value: limit + sense * room });
      if (near > 0) expect(crowded(at(near + 5), at(near * 0.99)), relation).toBe(true);
      expect(crowded(at(near + 5), at(near * 1.01 + 1e-6)), relation).toBe(false);
    }
  });
  test("only where the change brought it nearer", () => {
    expect(crowded({ value: 5.05 }, { value: 5.04 })).toBe(true);
    expect(crowded({ value: 5.04 }, { value: 5.04 })).toBe(false);
    expect(crowded({ value: 5.03 }, { value: 5.04 })).toBe(false);
  });
});

describe("a check that complains", () => {
  const warned: Partial<Judgement> = { severity: "warning", value: 3 };
  test("is crowded where it is worse than before, however far beyond", () => {
    expect(crowded({ value: 10 }, warned)).toBe(true);
    expect(crowded({ ...warned, value: 3.1 }, warned)).toBe(true);
    expect(crowded({ ...warned, value: 2.9 }, warned)).toBe(false);
  });
  test("and where it is new, or is judged by another limit than before", () => {
    expect(crowdedChecks("another", [], [judged(warned)])).toHaveLength(1);
    expect(crowded({ ...warned, value: 2, limit: 4 }, warned)).toBe(true);
    expect(crowdedChecks("another", [], [judged({ value: 5.01 })])).toEqual([]);
  });
  test("not the one that the change is for, nor a mere note", () => {
    expect(crowdedChecks("throat", [judged({ value: 10 })], [judged(warned)])).toEqual([]);
    expect(crowded({ value: 10 }, { ...warned, severity: "note" })).toBe(false);
  });
  test("each subject by itself", () => {
    const other = judged({ ...warned, subject: "pinToRamp" as never });
    expect(
      crowdedChecks("another", [judged({ value: 2 }), other], [judged({ value: 2.5, severity: "stop" }), other]),
    ).toEqual([]);
  });
});

test("a change goes to its row's end at the least and the most that the row allows, and nowhere between", () => {
  const row = rowAt("wedge.angle") as { min: number; max: number };
  const ends = (value: number | string) => isAtRowsEnd({ parameter: "wedge.angle", value } as never);
  expect([ends(row.min), ends(row.max), ends((row.min + row.max) / 2)]).toEqual([true, true, false]);
  expect([ends(row.min + 0.01), ends(row.max - 0.01), ends("auto")]).toEqual([false, false, false]);
});
