// Rows that are absent until the bench has given them. The table is given such a section here, whatever it holds by itself.
import { Ajv2020 } from "ajv/dist/2020.js";
import { afterAll, expect, test, vi } from "vitest";
import { parse } from "yaml";

vi.hoisted(() => void vi.resetModules()); // files share what is loaded: this one needs its own
afterAll(() => void vi.resetModules());

vi.mock("../../../packages/parameters/src/table/index.ts", async (original) => {
  const table = await original<typeof import("../../../packages/parameters/src/table/index.ts")>();
  const { measuredAngle, measuredLength } = await import("../../../packages/parameters/src/parameter.ts");
  const described = { name: "core", help: "Core as it came out.", source: "measured" };
  const measured = {
    coreWidth: measuredLength({ min: 5, max: 200, ...described }),
    bed: { angle: measuredAngle({ min: 30, max: 70, ...described }) },
  };
  return { ...table, TABLE: { ...table.TABLE, measured } };
});

const { completeDesign, designSchema, readDesign, starterDesign, valueAt, setValue } = await import(
  "../../../packages/parameters/src/design/index.ts"
);

const IRON = "iron: { width: 48, thickness: 3.6 }\n";

test.each(["", "measured: {}\n", "measured:\n", "measured:\n  # coreWidth: 50\n", "measured: { bed: {} }\n"])(
  "not yet measured: %j",
  (rest) => {
    const reading = readDesign(IRON + rest, "");
    expect(reading).toMatchObject({ ok: true, givenPaths: new Set(["iron.width", "iron.thickness"]) });
    if (!reading.ok) return;
    expect(valueAt(reading.design, "measured.coreWidth")).toBeUndefined();
    expect(reading.design).toHaveProperty("measured", { bed: {} });
  },
);

test("a measured value is read, and judged by its row", () => {
  const reading = readDesign("units: in\niron: { width: 2, thickness: 1/8 }\nmeasured: { coreWidth: 2 }\n", "");
  expect(reading.ok && valueAt(reading.design, "measured.coreWidth")).toBe(50.8);
  const bad = readDesign(`${IRON}measured: { coreWidth: 300 }\n`, "");
  expect(bad).toMatchObject({ ok: false, faults: [{ path: "measured.coreWidth", line: 2, column: 24 }] });
  expect(completeDesign({ iron: { width: 48, thickness: 3.6 }, measured: { coreWidth: undefined } }).ok).toBe(true);
});

test.each([
  ["measured: {} # later\n", "measured: { coreWidth: 49.7 } # later\n"],
  ["measured:\n", "measured: { coreWidth: 49.7 }\n"],
  ["measured: # later\n  # coreWidth:\n", "measured: { coreWidth: 49.7 } # later\n  # coreWidth:\n"],
  ["", "measured:\n  coreWidth: 49.7\n"],
])("written into %j", (before, after) => {
  expect(setValue(IRON + before, "measured.coreWidth", 49.7)).toBe(IRON + after);
});

test.each(["mm", "in"] as const)("the starter in %s and the schema agree with the reader", (units) => {
  const source = starterDesign("plane", units);
  expect(source.match(/^measured:/gm)).toHaveLength(1);
  expect(readDesign(source, "")).toMatchObject({ ok: true });
  const measured = setValue(source, "measured.coreWidth", 50.8);
  const reading = readDesign(measured, "");
  expect(reading.ok && valueAt(reading.design, "measured.coreWidth")).toBe(50.8);
  const validate = new Ajv2020({ strict: false }).compile(designSchema());
  expect([validate(parse(source)), validate(parse(measured))]).toEqual([true, true]);
});
