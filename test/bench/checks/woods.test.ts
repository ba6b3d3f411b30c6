// Notes: a wood the tables do not hold or hold in part, a moisture out of range. They stop nothing and judge nothing.
import { checkPlane, checkWithoutCures, type Finding, mayBeBuilt, passedChecks } from "@lamplane/bench/checks";
import { elevation } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { type Changes, designWith } from "../../support/designs.ts";

const found = (changes: Changes): Finding[] => checkPlane(elevation(designWith(changes)));

test("an unknown wood is a note with the nearest names, told once for all parts made of it", () => {
  const [note, ...rest] = found({ "wood.body": "beach, american" });
  expect(rest).toEqual([]);
  expect(note).toMatchObject({ code: "wood-name", severity: "note", parameters: ["wood.body"], value: 0, limit: 1 });
  expect(note!.data).toMatchObject({ wood: "beach, american", parts: ["body", "pin", "wedge"] });
  expect(note!.data!.nearest![0]).toBe("Beech, American");
  expect(note!.cure).toBeUndefined();
});

test("nothing that rests on a wood is judged where its name is not known, and all else is", () => {
  const codes = (changes: Changes) => passedChecks(elevation(designWith(changes))).map(({ code }) => code);
  const strength = (code: string) => /^(pin-(bending|sag)|(tenon|cheek)-(shear|bending|bearing))$/.test(code);
  const year = (code: string) => code.endsWith("-over-year");
  const resting = codes({}).filter((code) => strength(code) || year(code));
  expect(resting.some(strength) && resting.some(year)).toBe(true);
  const unknownBody = codes({ "wood.body": "unobtainium" });
  expect(unknownBody.filter((code) => resting.includes(code))).toEqual([]);
  const unknownWedge = codes({ "wood.wedge": "unobtainium" });
  const lost = resting.filter((code) => !unknownWedge.includes(code));
  expect(lost.length).toBeGreaterThan(0);
  for (const code of lost) expect(code).toMatch(/^wedge-.*-over-year$/);
  for (const known of [unknownBody, unknownWedge])
    expect(codes({}).filter((code) => !resting.includes(code) && !known.includes(code))).toEqual([]);
});

test("pin and wedge of unknown woods are told apart, where they stand", () => {
  const notes = found({ "wood.pin": "purplehart", "wood.wedge": "…" });
  expect(notes.map(({ code, parameters, place }) => [code, ...parameters, place])).toEqual([
    ["wood-name", "wood.pin", "pinCentre"],
    ["wood-name", "wood.wedge", "wedgeTip"],
  ]);
  expect(notes[0]!.data).toMatchObject({ nearest: expect.arrayContaining(["Purpleheart"]), parts: ["pin"] });
  expect(notes[1]!.data).toMatchObject({ nearest: [], parts: ["wedge"] });
});

test("a property that the tables lack is named, and stops nothing", () => {
  // Ipe is stiff: such a pin sags less than the year moves it, and the wedge comes loose.
  const findings = found({ "wood.pin": "ipe" }).filter(({ code }) => code !== "wedge-hold-over-year");
  expect(findings).toMatchObject([{ code: "wood-properties", severity: "note", value: 1, limit: 0 }]);
  expect(findings[0]!.data).toEqual({ wood: "Ipe", missing: ["compressionAcross"], parts: ["pin"] });
  const [pear] = found({ "wood.body": "pear" });
  expect(pear).toMatchObject({ code: "wood-properties", value: 5 });
  expect(pear!.data).toMatchObject({
    missing: expect.arrayContaining(["compressionAlong", "elasticity"]),
    parts: ["body", "pin", "wedge"],
  });
  expect(mayBeBuilt(found({ "wood.pin": "ipe" }))).toBe(true);
  expect(found({ "wood.wedge": "pear" })).toEqual([]);
});

test.each<[relation: string, changes: Changes, value: number, limit: number]>([
  ["at least", { "wood.driest.humidity": 20, "wood.driest.temperature": 21.1 }, 4.5, 6], // Wood Handbook, table 4-2
  ["at most", { "wood.dampest.humidity": 80, "wood.dampest.temperature": 21.1 }, 16, 14],
])("moisture beyond a published equation is a note: %s", (relation, changes, value, limit) => {
  const wood = { "wood.body": "iroko", "pin.endClearance": 2, "body.sideClearance": 5, "pin.tenonLength": 7 };
  const note = (all: Changes) => found(all).find(({ code }) => code === "moisture-range");
  expect(note({ ...wood, ...changes })).toMatchObject({ severity: "note", relation, unit: "%", limit });
  expect(note({ ...wood, ...changes })!.value).toBeCloseTo(value, 0);
  expect(note(wood)).toBeUndefined();
  expect(note({ ...changes, "wood.body": "beech, american" })).toBeUndefined();
});

test("a strength is judged over its load in a fine shaving and in a catch, and the worse is reported", () => {
  const strength = (changes: Changes, code: string) =>
    checkWithoutCures(elevation(designWith(changes))).find((f) => f.code === code);
  const shaving = strength({ "pin.tenon": 6 }, "tenon-shear");
  expect(shaving).toMatchObject({ subject: "tenonShear-in-shaving", limit: 3, unit: "×" });
  expect(shaving!.value).toBeCloseTo(2.39, 2);
  const inCatch = strength({ "hold.catchPerMm": 30 }, "tenon-bearing");
  expect(inCatch).toMatchObject({ subject: "tenonCrushing-in-catch", limit: 1, unit: "×" });
  expect(inCatch!.value).toBeCloseTo(0.67, 2);
});
