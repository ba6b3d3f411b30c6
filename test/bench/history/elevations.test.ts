// How often a question about a build works out an elevation: the history is folded once, whatever is asked of it.
import { buildState, expectedValue, MEASURED_KEYS, type MeasuredKey } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { travellerSteps } from "@lamplane/sheets";
import { afterAll, expect, test, vi } from "vitest";
import { designWith, WORKED } from "../../support/designs.ts";

const counter = vi.hoisted(() => {
  vi.resetModules(); // files share what is loaded: this one needs its own
  return { elevations: 0 };
});
afterAll(() => void vi.resetModules());
vi.mock(import("@lamplane/parameters/elevation"), async (original) => {
  const actual = await original();
  return {
    ...actual,
    elevation: (design) => {
      counter.elevations++;
      return actual.elevation(design);
    },
  };
});

const countElevations = (ask: () => unknown): number => {
  counter.elevations = 0;
  ask();
  return counter.elevations;
};

const worked = designWith(WORKED);

/** Readings a little off what is expected, each taken after those before it. */
function readingsOff(keys: readonly MeasuredKey[]): Design {
  const measured: Record<string, number | string | undefined> = { ...worked.measured };
  for (const key of keys)
    measured[key] = expectedValue({ ...worked, measured: { ...measured } as Design["measured"] }, key)! + 0.3;
  return { ...worked, measured: measured as Design["measured"] };
}

const EIGHT: readonly MeasuredKey[] = [
  "ironThickness",
  "coreWidth",
  "rampAngle",
  "bedAngle",
  "pinHoleHeight",
  "wedgeTip",
  "bedTipFromEnd",
  "rampTipFromEnd",
];

test.each([
  ["the first eight", MEASURED_KEYS.filter((key) => key !== "rampRadius").slice(0, 8)],
  ["eight from all over the work", EIGHT],
])("the build's state with %s measured: at most 30", (_, keys) => {
  expect(keys).toHaveLength(8);
  const design = readingsOff(keys);
  expect(countElevations(() => expect(buildState(design).lost.length).toBeGreaterThan(5))).toBeLessThanOrEqual(30);
});

test("the traveller's steps with eight measured: at most two for each step of the job", () => {
  const design = readingsOff(EIGHT);
  expect(countElevations(() => travellerSteps(design))).toBeLessThanOrEqual(30);
});
