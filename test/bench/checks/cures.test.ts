// How a cure is searched for: on the row's steps, both ways, to its limit; in the remedies' order; two for a stop that no one ends.
import { checkPlane, checkWithoutCures, type Finding } from "@lamplane/bench/checks";
import { rowAt, valueAt, withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import { findCure, remedyPath, shareOfRange, smallestCure } from "../../../packages/bench/src/checks/cures.ts";
import type { Judgement } from "../../../packages/bench/src/checks/judgement.ts";
import { findingJudgements, judgeChecks } from "../../../packages/bench/src/checks/judgements.ts";
import type { Remedy } from "../../../packages/bench/src/checks/remedy.ts";
import { type Changes, designWith } from "../../support/designs.ts";

const planeWith = (changes: Changes = {}) => elevation(designWith(changes));
const makeRemedy = (parameter: string, toward: Remedy["toward"]): Remedy => ({ parameter, toward });
const found = (changes: Changes, code: string): Finding => {
  const finding = checkPlane(planeWith(changes)).find((each) => each.code === code);
  if (!finding) throw new Error(`no ${code}`);
  return finding;
};

test("the smallest step that resolves is found wherever it lies, up and down, from a value on a step and beside one", () => {
  const row = rowAt("body.trim") as { step: number; min: number; max: number };
  const [step, last] = [row.step, Math.round(row.max / row.step)];
  for (const from of [60, 60 + step / 3])
    for (const way of [1, -1]) {
      const plane = planeWith({ "body.trim": from });
      const all = Array.from({ length: last + 1 }, (_, i) => i * step).filter((value) => way * (value - from) > 1e-6);
      const nearest = way > 0 ? all : all.toReversed();
      for (const wanted of [...nearest.slice(0, 18), nearest.at(-2)!, nearest.at(-1)!]) {
        const resolves = ({ body }: Design) => way * (body.trim - wanted) >= -1e-6;
        const cure = smallestCure(plane, makeRemedy("body.trim", way > 0 ? "up" : "down"), resolves);
        expect(cure, `${from} to ${wanted}`).toMatchObject({ parameter: "body.trim" });
        expect(cure!.value).toBeCloseTo(wanted, 9);
      }
      expect(smallestCure(plane, makeRemedy("body.trim", way > 0 ? "up" : "down"), () => false)).toBeUndefined();
    }
});

test("a value at its row's limit goes no further", () => {
  for (const [value, toward] of [
    [120, "up"],
    [0, "down"],
  ] as const) {
    expect(remedyPath(planeWith({ "body.trim": value }), makeRemedy("body.trim", toward))?.last).toBe(0);
    expect(
      smallestCure(planeWith({ "body.trim": value }), makeRemedy("body.trim", toward), () => true),
    ).toBeUndefined();
  }
});

test("every limit is reached by its row's steps, none is passed, and a step from beside the grid is to the grid", () => {
  for (const parameter of ["body.trim", "bed.angle", "mouth.opening", "wedge.tip", "pin.endClearance", "hold.safety"]) {
    const row = rowAt(parameter) as { step: number; min: number; max: number };
    const middle = row.min + Math.round((row.max - row.min) / 2 / row.step) * row.step;
    const off = row.step * 0.4;
    const at = (value: number, toward: Remedy["toward"]) =>
      remedyPath(elevation(withValue(designWith(), parameter, value)), makeRemedy(parameter, toward))!;
    const [up, down] = [at(middle, "up"), at(middle, "down")];
    expect([up.valueAfter(1), down.valueAfter(1)]).toEqual([
      expect.closeTo(middle + row.step, 6),
      expect.closeTo(middle - row.step, 6),
    ]);
    expect([up.valueAfter(up.last), down.valueAfter(down.last)]).toEqual([
      expect.closeTo(row.max, 6),
      expect.closeTo(row.min, 6),
    ]);
    const [upOff, downOff] = [at(middle + off, "up"), at(middle + off, "down")];
    expect([upOff.valueAfter(1), downOff.valueAfter(1)]).toEqual([
      expect.closeTo(middle + row.step, 6),
      expect.closeTo(middle, 6),
    ]);
    expect([upOff.valueAfter(upOff.last), downOff.valueAfter(downOff.last)]).toEqual([
      expect.closeTo(row.max, 6),
      expect.closeTo(row.min, 6),
    ]);
  }
});

test("a cure is a plain number of the row's steps, without the dust of reckoning", () => {
  const { valueAfter, last } = remedyPath(planeWith({ "body.trim": 0 }), makeRemedy("body.trim", "up"))!;
  for (let steps = 0; steps <= last; steps++) expect(String(valueAfter(steps)).length).toBeLessThan(7);
});

test("what is auto is mended from what it has come out as, and a word cannot be moved", () => {
  const changes = { "bed.angle": 55, "body.outline": "arched" };
  const { top, frame, ramp, pin, wedgeLength, recess } = planeWith(changes);
  const comesOutAs: Readonly<Record<string, number>> = {
    "mouth.fromToe": 230 / 3, // a third of the length
    "body.toeHeight": 0.7 * 58,
    "body.heelHeight": 0.6 * 58,
    "body.crown": top.crownX,
    "ramp.radius": ramp.curve!.radius,
    "pin.height": pin.centre.y,
    "pin.tenonLength": 8, // half a mm less than the cheek, and the gap before it
    "wedge.length": wedgeLength,
    "recess.width": recess!.width,
    "recess.depth": 3.4 + 1.6,
  };
  expect(frame.mouthX).toBeCloseTo(230 / 3, 9);
  for (const [parameter, value] of Object.entries(comesOutAs)) {
    const { step } = rowAt(parameter) as { step: number };
    expect(valueAt(designWith(changes), parameter), parameter).toBe("auto");
    const way = remedyPath(planeWith(changes), makeRemedy(parameter, "up"))!;
    expect(way.valueAfter(0), parameter).toBeCloseTo(Math.floor(value / step + 1e-9) * step, 6);
  }
  expect(remedyPath(planeWith(), makeRemedy("ramp.angle", "down"))!.valueAfter(0)).toBe(60); // 107 − 47
  expect(remedyPath(planeWith(), makeRemedy("ramp.shape", "up"))).toBeUndefined();
  expect(remedyPath(planeWith(), makeRemedy("ramp.radius", "up"))).toBeUndefined(); // a straight ramp has none
});

test("a cure goes no further than it must (by hand)", () => {
  // Set in by half of 3.2 / sin 47 + 1 less the gap of the tips; 1 mm must be left beside that.
  const { cuts } = planeWith({ "body.trim": 4 });
  const wanted = Math.ceil(20 * (1 + cuts.setInToe)) / 10;
  expect(found({ "body.trim": 4 }, "blank-trim").cure).toEqual([{ parameter: "body.trim", value: wanted }]);
  expect(found({ "body.cheek": 3 }, "cheek-thickness").cure).toEqual([{ parameter: "body.cheek", value: 7.9 }]);
  expect(found({ "iron.bevel": 40 }, "clearance-angle").cure).toEqual([{ parameter: "iron.bevel", value: 37 }]);
});

const makeJudgement = (code: string, severity: "stop" | "warning", remedies: readonly Remedy[]): Judgement => ({
  ...findingJudgements(planeWith({ "body.trim": 4 }))[0]!,
  code,
  severity,
  remedies,
});

test("the first remedy that resolves is taken, not one after it; one that starts another stop is passed over", () => {
  const plane = planeWith({ "body.trim": 4 });
  const before = judgeChecks(plane);
  const kerf = makeRemedy("shop.kerf", "down");
  const trim = makeRemedy("body.trim", "up");
  const cure = (...remedies: Remedy[]) =>
    findCure(plane, makeJudgement("blank-trim", "stop", remedies), before)?.[0]?.parameter;
  expect([cure(trim, kerf), cure(kerf, trim)]).toEqual(["body.trim", "shop.kerf"]);
  // A mouth so far open that the blocks need not be slid together ends the complaint too, but not with the toe so near.
  const [opened, near] = [makeRemedy("mouth.opening", "up"), planeWith({ "body.trim": 4, "mouth.fromToe": 49 })];
  const openedAt = (from: typeof plane) =>
    findCure(from, makeJudgement("blank-trim", "stop", [opened]), judgeChecks(from));
  expect(openedAt(plane)?.[0]?.parameter).toBe("mouth.opening");
  expect(openedAt(near)).toBeUndefined();
});

test("two together are looked for where a stop has no single cure, not for a warning; neither goes further than it must", () => {
  const changes = { "body.outline": "arched", "body.toeHeight": 90, "body.heelHeight": 90, "body.crown": 115 };
  const { cure } = found(changes, "top-arcs");
  expect(cure).toHaveLength(2);
  expect(cure).toEqual(
    expect.arrayContaining(["body.heelHeight", "body.toeHeight"].map((parameter) => ({ parameter, value: 58 }))),
  );
  const plane = planeWith(changes);
  const remedies = [makeRemedy("body.toeHeight", "down"), makeRemedy("body.heelHeight", "down")];
  const asWarning = makeJudgement("top-arcs", "warning", remedies);
  expect(findCure(plane, asWarning, judgeChecks(plane))).toBeUndefined();
  expect(findCure(plane, { ...asWarning, severity: "stop" }, judgeChecks(plane))).toHaveLength(2);
});

test("of two together those that go the least part of their ways are taken", () => {
  const changes = { "body.outline": "arched", "body.toeHeight": 59, "body.heelHeight": 90, "body.crown": 115 };
  expect(found(changes, "top-arcs").cure).toEqual([
    { parameter: "body.toeHeight", value: 58 },
    { parameter: "body.heelHeight", value: 58 },
  ]);
});

test("what the bench has overtaken is no cure", () => {
  const plane = planeWith({ "iron.bevel": 40, "measured.done": "cuts" });
  const cure = findCure(
    plane,
    findingJudgements(plane).find(({ code }) => code === "clearance-angle")!,
    judgeChecks(plane),
  );
  expect(cure).toEqual([{ parameter: "iron.bevel", value: 37 }]);
  const bed = makeJudgement("clearance-angle", "warning", [makeRemedy("bed.angle", "up")]);
  expect(findCure(plane, bed, judgeChecks(plane))).toBeUndefined();
  const uncut = planeWith({ "iron.bevel": 40 });
  expect(findCure(uncut, bed, judgeChecks(uncut))).toEqual([{ parameter: "bed.angle", value: 50 }]);
});

test("what is cured is gone, and no warning stands against a cure", () => {
  const { cure } = found({ "pin.height": 25 }, "wedge-under-pin");
  const cured = cure!.reduce(
    (design, { parameter, value }) => withValue(design, parameter, value),
    designWith({ "pin.height": 25 }),
  );
  expect(checkWithoutCures(elevation(cured)).filter(({ severity }) => severity === "stop")).toEqual([]);
});

test("a change to a word counts as one of its parameter's whole range", () => {
  const raise = makeRemedy("pin.height", "up");
  expect(shareOfRange(planeWith(), raise, { parameter: "pin.height", value: "auto" })).toBe(1);
});
