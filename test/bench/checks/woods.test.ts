// Notes: a wood the tables do not hold or hold in part, a moisture out of range. They stop nothing and judge nothing.
import { checkPlane, checkWithoutCures, type Finding, mayBeBuilt, passedChecks } from "@lamplane/bench/checks";
import { elevation } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { type Changes, designWith } from "../../support/designs.ts";

const found = (changes: Changes): Finding[] => checkPlane(elevation(designWith(changes)));

test("an unknown wood is a note with the nearest names, told once for all parts made of it", () => {
  const [note, ...rest] = found({ "wood.body": "beach, american" });
  expect(rest).toEqual([]);
  expect(note).toMatchObject({ code: "wood-unknown", severity: "note", parameters: ["wood.body"], value: 0, limit: 1 });
  expect(note!.message).toMatch(/no "beach, american" \(wood\.body\); the nearest are "Beech, American"/);
  expect(note!.message).toMatch(/of the body, cross pin and wedge are not judged/);
  expect(note!.cure).toBeUndefined();
});

test("nothing is judged with a wood that is not known; with the body's name mended, all of it is", () => {
  const codes = (changes: Changes) => passedChecks(elevation(designWith(changes))).map(({ code }) => code);
  const resting = (code: string) =>
    /^(pin-may|pin-sags|tenon-may|cheek-may|core-closes|tenon-binds|tenon-proud)/.test(code);
  expect(codes({}).filter(resting)).toHaveLength(12);
  expect(codes({ "wood.body": "unobtainium" }).filter(resting)).toEqual([]);
  expect(codes({ "wood.wedge": "unobtainium" }).filter(resting)).toHaveLength(11);
});

test("pin and wedge of unknown woods are told apart, where they stand", () => {
  const notes = found({ "wood.pin": "purplehart", "wood.wedge": "…" });
  expect(notes.map(({ code, parameters, place }) => [code, ...parameters, place])).toEqual([
    ["wood-unknown", "wood.pin", "pinCentre"],
    ["wood-unknown", "wood.wedge", "wedgeTip"],
  ]);
  expect(notes[0]!.message).toMatch(/nearest are "Purpleheart"/);
  expect(notes[1]!.message).not.toMatch(/nearest/);
});

test("a property that the tables lack is named, and stops nothing", () => {
  const findings = found({ "wood.pin": "ipe" });
  expect(findings).toMatchObject([{ code: "wood-property-missing", severity: "note", value: 1, limit: 0 }]);
  expect(findings[0]!.message).toMatch(/give "Ipe" no compression across the grain\..*cross pin/);
  const [pear] = found({ "wood.body": "pear" });
  expect(pear).toMatchObject({ code: "wood-property-missing", value: 5 });
  expect(pear!.message).toMatch(/no compression along the grain.*no modulus of elasticity.*body, cross pin and wedge/);
  expect(mayBeBuilt(found({ "wood.pin": "ipe" }))).toBe(true);
  expect(found({ "wood.wedge": "pear" })).toEqual([]);
});

test.each<[side: string, changes: Changes, value: number, limit: number]>([
  ["down to 6 %", { "wood.driest.humidity": 20, "wood.driest.temperature": 21.1 }, 4.5, 6], // Wood Handbook, table 4-2
  ["up to 14 %", { "wood.dampest.humidity": 80, "wood.dampest.temperature": 21.1 }, 16, 14],
])("moisture beyond a published equation is a note: %s", (side, changes, value, limit) => {
  const wood = { "wood.body": "iroko", "pin.endClearance": 2, "body.sideClearance": 5, "pin.tenonLength": 7 };
  const note = (all: Changes) => found(all).find(({ code }) => code === "moisture-outside-equation");
  expect(note({ ...wood, ...changes })).toMatchObject({ severity: "note", unit: "%", limit });
  expect(note({ ...wood, ...changes })!.value).toBeCloseTo(value, 0);
  expect(note({ ...wood, ...changes })!.message).toContain(side);
  expect(note(wood)).toBeUndefined();
  expect(note({ ...changes, "wood.body": "beech, american" })).toBeUndefined();
});

test("a strength is told as a multiple of its load, and called indicative; a catch is told as one", () => {
  const message = (changes: Changes, code: string) =>
    checkWithoutCures(elevation(designWith(changes))).find((f) => f.code === code)?.message;
  expect(message({ "pin.tenon": 6 }, "tenon-may-shear")).toMatch(/fine shaving \(indicative\) is 2\.39×; at least 3×/);
  expect(message({ "hold.catchPerMm": 30 }, "tenon-may-crush")).toMatch(
    /load of a catch \(indicative\) is 0\.67×; at least 1×/,
  );
});
