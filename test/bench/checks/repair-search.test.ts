// The fewest changes that mend a plane: seen to mend it, and beside a brute-force search over the same parameters.
import { checkPlane, checkWithoutCures, findRepair, mayBeBuilt } from "@lamplane/bench/checks";
import { rowAt, withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import { designWith, randomDesigns } from "../../support/designs.ts";

const applyCures = (design: Design, cures: readonly { parameter: string; value: number | string }[]): Design =>
  cures.reduce((d, { parameter, value }) => withValue(d, parameter, value), design);
const stops = (design: Design): string[] =>
  checkWithoutCures(elevation(design))
    .filter(({ severity }) => severity === "stop")
    .map(({ code }) => code);

test("mends random designs that are stopped, within every row's limits, and asks nothing of those that are not", () => {
  let [stopped, mended] = [0, 0];
  for (const { design } of randomDesigns(77, 120)) {
    const plane = elevation(design);
    const cures = findRepair(plane);
    if (mayBeBuilt(checkWithoutCures(plane))) {
      expect(cures).toEqual([]);
      continue;
    }
    stopped++;
    if (!cures) continue;
    mended++;
    expect(stops(applyCures(design, cures))).toEqual([]);
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
  const cures = findRepair(elevation(design))!;
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
  const finding = checkPlane(elevation(design)).find(({ code }) => code === "top-arcs")!;
  expect(finding.cure).toHaveLength(2);
  expect(stops(applyCures(design, finding.cure!))).not.toContain("top-arcs");
});

/** Five stops that have nothing to do with one another, and how little ends each (by hand). */
const APART: readonly [parameter: string, given: number, cured: string, enough: number][] = [
  ["body.trim", 4, "body.trim", 6.9], // 1 mm beside what the blocks are slid together by: see the cures
  ["body.cheek", 3, "body.cheek", 4],
  ["iron.bevel", 45, "iron.bevel", 44], // 3 degrees under a bed of 47
  ["pin.tenon", 12.5, "pin.diameter", 13.5], // a shoulder of 0.5: 8 of 273 steps, where the tenon would go 8 of 105
  ["recess.depth", 3, "recess.depth", 3.6], // 0.2 under a head of 3.4
];
const apart = (some: typeof APART) =>
  findRepair(
    elevation(designWith({ "pegs.perEnd": 0, ...Object.fromEntries(some.map(([path, given]) => [path, given])) })),
  );

test.each([1, 2, 4])("%i stops apart from one another take as many changes, none further than it must go", (count) => {
  for (const some of [APART.slice(0, count), APART.slice(-count)])
    expect(apart(some)?.toSorted(byName)).toEqual(
      some.map(([, , parameter, value]) => ({ parameter, value })).toSorted(byName),
    );
});
const byName = (a: { parameter: string }, b: { parameter: string }) => a.parameter.localeCompare(b.parameter);

test("five changes are another plane", () => expect(apart(APART)).toBeUndefined());

test("of changes that end a stop alike the one is taken that goes the least part of its way", () => {
  // A cutter of 25 in a recess of 19: the cutter down 6 of 23, the recess up 6 of 81, its clearance up 6 of 17.
  const design = designWith({ "recess.cutter": 25 });
  const [alone] = checkPlane(elevation(design)).filter(({ code }) => code === "recess-cutter");
  expect(alone?.cure).toEqual([{ parameter: "recess.cutter", value: 19 }]);
  expect(findRepair(elevation(design))).toEqual([{ parameter: "recess.width", value: 25 }]);
});

test("what the bench has overtaken is no part of it", () => {
  const { "body.trim": trim, "body.cheek": cheek } = { "body.trim": 4, "body.cheek": 3 };
  const cut = designWith({ "body.trim": trim, "body.cheek": cheek, "pegs.perEnd": 0, "measured.done": "core" });
  expect(findRepair(elevation(cut))).toBeUndefined();
});
