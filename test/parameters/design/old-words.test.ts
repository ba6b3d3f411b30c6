// Choices by the words of older files: read as what they mean, and noted where they stand.
import { WORK_AFTER } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import { readDesign } from "../../../packages/parameters/src/design/index.ts";

const IRON = "iron: { width: 48, thickness: 3.6 }\n";

test.each([
  ["blank", "dry-fit"],
  ["glued", "glue-up"],
  ["trued", "shaping"],
] as const)("stage: %s is read as the step %s, with a note", (read, value) => {
  const reading = readDesign(`${IRON}stage: ${read}\n`, "");
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  expect(reading.design.stage).toBe(value);
  expect(reading.oldWords).toEqual([{ path: "stage", at: { line: 2, column: 8 }, read, value }]);
  expect(WORK_AFTER[value].drawn).toBe(read);
});

test("a step's own name has no note", () => {
  expect(readDesign(`${IRON}stage: glue-up\n`, "")).toMatchObject({
    ok: true,
    design: { stage: "glue-up" },
    oldWords: [],
    formerKeys: [],
    overShop: [],
  });
});

test.each(["toString", "__proto__", "constructor"])("stage: %s is no step", (word) => {
  expect(readDesign(`${IRON}stage: ${word}\n`, "").ok).toBe(false);
});

test.each([
  ["pinHoleFromToe", "pinHoleFromEnd", 92.3],
  ["bedTipX", "bedTipFromEnd", 80.1],
  ["rampTipX", "rampTipFromEnd", 79.6],
] as const)(
  "measured.%s counts from the finished toe: read as %s, half the trim further, with a note",
  (former, key, value) => {
    const reading = readDesign(`${IRON}body: { trim: 20 }\nmeasured: { ${former}: ${value} }\n`, "");
    if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
    expect(reading.design.measured[key]).toBeCloseTo(value + 10, 12);
    expect(reading.formerKeys).toEqual([{ at: { line: 3, column: 13 }, former, key }]);
  },
);

test("a former key beside the one that replaced it is no key, and a value of it is judged like any other", () => {
  expect(readDesign(`${IRON}measured: { bedTipX: 80, bedTipFromEnd: 92.7 }\n`, "").ok).toBe(false);
  expect(readDesign(`${IRON}measured: { bedTipX: 4000 }\n`, "").ok).toBe(false);
});
