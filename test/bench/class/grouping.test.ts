// Core widths shared by a class: as few as there can be, and the cheapest of those, held against every way there is.
import { uniformGenerator } from "@lamplane/geometry/numerics";
import { expect, test } from "vitest";
import {
  type Group,
  groupPreferences,
  type Preference,
  totalDeviation,
} from "../../../packages/bench/src/class/grouping.ts";

/** Sizes of all choices of `count` of the values: the cheapest, each plane with the nearest value that it can take. */
function cheapestByTrying(preferences: readonly Preference[], values: readonly number[], count: number): number {
  const costOf = (chosen: readonly number[]) =>
    preferences.reduce((sum, { preferred, least, most }) => {
      const off = chosen.filter((v) => v >= least - 1e-9 && v <= most + 1e-9).map((v) => Math.abs(v - preferred));
      return sum + Math.min(Number.POSITIVE_INFINITY, ...off);
    }, 0);
  const choose = (from: number, chosen: readonly number[]): number =>
    chosen.length === count
      ? costOf(chosen)
      : Math.min(
          Number.POSITIVE_INFINITY,
          ...values.slice(from).map((value, i) => choose(from + i + 1, [...chosen, value])),
        );
  return choose(0, []);
}

const isSound = (preferences: readonly Preference[], groups: readonly Group[]): boolean =>
  groups
    .flatMap(({ members }) => members)
    .toSorted((a, b) => a - b)
    .every((member, i) => member === i) &&
  groups.every(({ value, members }) =>
    members.every((i) => value >= preferences[i]!.least - 1e-9 && value <= preferences[i]!.most + 1e-9),
  );

test("500 small classes: as few groups as trying every choice of widths finds, and no dearer", () => {
  const random = uniformGenerator(16);
  let severalGroups = 0;
  for (let k = 0; k < 500; k++) {
    const step = 0.5;
    const preferences = Array.from({ length: 1 + Math.floor(random() * 5) }, (): Preference => {
      const preferred = Math.round((48 + random() * 4) * 10) / 10;
      return { preferred, least: preferred - 0.3 - random(), most: preferred + 0.3 + random() };
    });
    const values = Array.from({ length: 15 }, (_, i) => 46.5 + i * step);
    let fewest = 1;
    while (!Number.isFinite(cheapestByTrying(preferences, values, fewest))) fewest += 1;
    const found = groupPreferences(preferences, { step })!;
    expect(found.length, JSON.stringify(preferences)).toBe(fewest);
    expect(totalDeviation(preferences, found)).toBeCloseTo(cheapestByTrying(preferences, values, fewest), 9);
    expect(isSound(preferences, found)).toBe(true);
    if (fewest > 1) severalGroups += 1;
    const more = Math.min(fewest + 1, preferences.length);
    const asked = groupPreferences(preferences, { step, groups: more })!;
    expect(totalDeviation(preferences, asked)).toBeCloseTo(cheapestByTrying(preferences, values, more), 9);
  }
  expect(severalGroups).toBeGreaterThan(100);
});

test("fewer groups than the limits allow are refused, and a plane that can take one width only has it", () => {
  const preferences = [48, 50, 52].map((preferred) => ({ preferred, least: preferred - 0.8, most: preferred + 0.8 }));
  expect(groupPreferences(preferences, { step: 0.1, groups: 2 })).toBeUndefined();
  const cut = { preferred: 49.613, least: 49.613, most: 49.613 };
  expect(groupPreferences([cut, { preferred: 50, least: 49, most: 51 }], { step: 0.1 })).toEqual([
    { value: 49.613, members: [0, 1] },
  ]);
});

test("500 planes are grouped in a second or two", () => {
  const random = uniformGenerator(4);
  const preferences = Array.from({ length: 500 }, (): Preference => {
    const preferred = Math.round((44 + random() * 16) * 20) / 20;
    return { preferred, least: preferred - 0.8, most: preferred + 1.6 };
  });
  const found = groupPreferences(preferences, { step: 0.1 })!;
  expect(isSound(preferences, found)).toBe(true);
  // No two groups' outermost planes can share a width: by the spans of their limits alone fewer cannot do.
  let [lower, reach] = [0, Number.NEGATIVE_INFINITY];
  for (const { least, most } of preferences.toSorted((a, b) => a.most - b.most))
    if (least > reach) [lower, reach] = [lower + 1, most];
  expect(found.length).toBe(lower);
});
