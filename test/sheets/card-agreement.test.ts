// The card hangs up what the traveller's steps say: each setting on it is a number of its step, also once values are measured.
import { JOB_STEPS, type Step, stepWords } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { traveller } from "@lamplane/sheets";
import { describe, expect, test } from "vitest";
import { designWith, WORKED } from "../support/designs.ts";

const BUILT = {
  ...WORKED,
  "measured.ironThickness": 3.74,
  "measured.coreWidth": 49.2,
  "measured.cheekThickness": 7.9,
  "measured.rampAngle": 60.3,
  "measured.bedAngle": 47.3,
  "measured.pinHoleFromEnd": 105.4,
  "measured.wedgeTip": 2.8,
  "measured.done": "dry-fit",
  "measured.bedTipFromEnd": 93.4,
  "measured.rampTipFromEnd": 92.5,
};

const PLANES: Readonly<Record<string, Design>> = {
  "as planned": designWith(WORKED),
  "in inches": designWith({ ...WORKED, units: "in" }),
  "in layers": designWith({ ...WORKED, "core.layers": "auto" }),
  "as built to the glue-up": designWith(BUILT),
  "in layers, as built": designWith({ ...BUILT, "core.layers": "auto" }),
};

describe.each(Object.entries(PLANES))("%s", (_, design) => {
  const { setUps, steps } = traveller(design);

  test("every setting of the card is a number of its step", () => {
    expect(setUps.length).toBeGreaterThan(8);
    for (const { step, rows } of setUps) {
      const values = steps[step - 1]!.numbers.map(({ value, was }) => ({ value, was }));
      for (const { value, was } of rows) expect(values, JOB_STEPS[step - 1]).toContainEqual({ value, was });
    }
  });
});

test.each(Object.entries(PLANES))("%s: the card calls each step by its title", (_, design) => {
  const { setUps, steps } = traveller(design);
  for (const { step, title } of setUps) {
    expect(title).toBe(steps[step - 1]!.title);
    expect(title).toBe(stepWords(design, JOB_STEPS[step - 1] as Step).title);
  }
});

test("a jig on the page of a step that is done is the one that the step was done with", () => {
  const { steps } = traveller(designWith(BUILT));
  const jigsAt = (key: string) => steps.find((step) => step.key === key)!.jigs;
  const [bed, ramp] = jigsAt("cuts");
  expect([bed!.title, ramp!.title].join()).toMatch(/47°.*60°/);
  expect(jigsAt("wedge")[0]!.title).toContain("6°");
  const { numbers, jigs } = steps.find(({ key }) => key === "dry-fit")!;
  const gap = numbers.find(({ label }) => /[Gg]ap between block tips/.test(label))!.value;
  expect(jigs[0]!.title).toContain(gap);
});

test("a length that a measured value has changed stands beside the one planned, figure or not", () => {
  const { steps } = traveller(designWith(BUILT));
  const changed = steps.flatMap(({ numbers }) => numbers.filter(({ was }) => was !== undefined));
  const labels = changed.map(({ label }) => label).join();
  for (const part of [/shoulder to shoulder/, /[Gg]ap between block tips/, /Foot of the bed/, /Pegs in from/])
    expect(labels).toMatch(part);
});
