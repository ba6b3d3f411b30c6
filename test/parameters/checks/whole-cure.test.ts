// The fewest changes that mend a plane: seen to mend it, and beside a brute-force search over the same parameters.
import { checkPlane, findingsOf, mayBeBuilt, wholeCure } from "@lamplane/parameters/checks";
import { rowAt, withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import { designWith, randomDesigns } from "../../support/designs.ts";

const healed = (design: Design, cures: readonly { parameter: string; value: number | string }[]): Design =>
  cures.reduce((d, { parameter, value }) => withValue(d, parameter, value), design);
const stops = (design: Design): string[] =>
  findingsOf(elevation(design))
    .filter(({ severity }) => severity === "stop")
    .map(({ code }) => code);

test("mends random designs that are stopped, within every row's limits, and asks nothing of those that are not", () => {
  let [stopped, mended] = [0, 0];
  for (const { design } of randomDesigns(77, 120)) {
    const plane = elevation(design);
    const cures = wholeCure(plane);
    if (mayBeBuilt(findingsOf(plane))) {
      expect(cures).toEqual([]);
      continue;
    }
    stopped++;
    if (!cures) continue;
    mended++;
    expect(stops(healed(design, cures))).toEqual([]);
    for (const { parameter, value } of cures) {
      const row = rowAt(parameter);
      if (row.kind === "number") expect(Number(value) >= row.min && Number(value) <= row.max, parameter).toBe(true);
    }
  }
  expect(stopped).toBeGreaterThan(20);
  expect(mended / stopped).toBeGreaterThan(0.8);
});

test("no single change on a fine grid mends what it says needs two", () => {
  const design = designWith({ "pin.height": 25, "body.trim": 4 });
  const cures = wholeCure(elevation(design))!;
  expect(cures).toHaveLength(2);
  const parameters = new Set(checkPlane(elevation(design)).flatMap((finding) => finding.parameters));
  expect(parameters.size).toBeGreaterThan(3);
  for (const parameter of parameters) {
    const row = rowAt(parameter);
    if (row.kind !== "number") continue;
    for (let share = 0; share <= 1; share += 1 / 400)
      expect(stops(withValue(design, parameter, row.min + share * (row.max - row.min))), parameter).not.toEqual([]);
  }
});

test("a stop that no one change ends is ended by two together", () => {
  const design = designWith({ "body.outline": "arched", "body.toeHeight": 90, "body.heelHeight": 90 });
  const finding = checkPlane(elevation(design)).find(({ code }) => code === "arch-impossible")!;
  expect(finding.cure).toHaveLength(2);
  expect(stops(healed(design, finding.cure!))).not.toContain("arch-impossible");
});
