// What is derived from the table: completed plain values, single values, schema, Markdown table, starter design.
import { checkWithoutCures } from "@lamplane/bench/checks";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import {
  completeDesign,
  type Design,
  designSchema,
  parameterTable,
  readDesign,
  starterDesign,
  valueAt,
  withValue,
} from "../../../packages/parameters/src/design/index.ts";
import { elevation } from "../../../packages/parameters/src/elevation/index.ts";
import { LIST_NAMES, listRows, rowsOf, TABLE } from "../../../packages/parameters/src/table/index.ts";

const IRON = { iron: { width: 48, thickness: 3.6 } };

function completed(values: unknown): Design {
  const reading = completeDesign(values);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.design;
}

describe("plain values", () => {
  test("are completed as a file is", () => {
    const fromFile = readDesign("iron: { width: 48, thickness: 3.6 }", "");
    const givenPaths = new Set(["iron.width", "iron.thickness"]);
    expect(fromFile).toEqual({
      ok: true,
      givenPaths,
      slips: [],
      oldWords: [],
      formerKeys: [],
      overShop: [],
      design: completed({ ...IRON, measured: {}, body: undefined }),
    });
  });
  test("are mm whatever the units say", () => {
    expect(completed({ ...IRON, units: "in" }).iron.width).toBe(48);
  });
  test("a whole design completes to itself", () => {
    const design = completed({ ...IRON, units: "in" });
    expect(completed(design)).toEqual(design);
  });
  const looped: Record<string, unknown> = { ...IRON };
  looped.body = looped;
  test.each<[string, unknown, string]>([
    ["nothing", undefined, ""],
    ["null", null, ""],
    ["a list", [], ""],
    ["no iron", {}, "iron.width"],
    ["not a number", { ...IRON, bed: { angle: Number.NaN } }, "bed.angle"],
    ["endless", { ...IRON, bed: { angle: Number.POSITIVE_INFINITY } }, "bed.angle"],
    ["huge", { ...IRON, body: { length: 1e308 } }, "body.length"],
    ["a function", { ...IRON, bed: () => 1 }, "bed"],
    ["unknown", { ...IRON, bend: {} }, "bend"],
    ["itself inside", looped, "body.iron"],
    ["measured", { ...IRON, measured: { a: 1 } }, "measured.a"],
  ])("%s", (_, values, path) => {
    const reading = completeDesign(values);
    expect(reading.ok ? undefined : reading.faults[0]).toMatchObject({ path, line: 0, column: 0, file: "" });
  });
});

describe("one value", () => {
  const design = completed(IRON);
  test("is found at each path of the table", () => {
    for (const { path, row } of rowsOf(TABLE))
      if (row.default !== undefined) expect(valueAt(design, path)).toBe(row.default);
  });
  test("changes in a copy only", () => {
    const other = withValue(design, "capIron.screwHead.height", 5);
    expect(valueAt(other, "capIron.screwHead.height")).toBe(5);
    expect(design).toEqual(completed(IRON));
    expect(other.body).toBe(design.body);
    expect(valueAt(withValue(design, "iron.length", undefined), "iron.length")).toBeUndefined();
  });
  test.each(["", "iron", "iron.widht", "iron.width.kind", "__proto__", "constructor.name"])("no path: %s", (path) => {
    expect(() => valueAt(design, path)).toThrow(/no parameter/);
    expect(() => withValue(design, path, 1)).toThrow(/no parameter/);
  });
});

describe("schema", () => {
  const validate = new Ajv2020({
    strict: true,
    allowUnionTypes: true,
    strictTypes: false,
    strictRequired: false,
  }).compile(designSchema());
  test.each<[string, boolean]>([
    ["iron: { width: 48, thickness: 3.6 }", true],
    ["iron: { width: 1 3/4 in, thickness: 3.6 }\nramp: { angle: auto }", true],
    ["iron: { width: 48, thickness: 3.6 }\nunits: in", false],
    ["iron: { width: 2, thickness: 1/8 }\nunits: in", true],
    ["iron: { width: 2, thickness: 3.6 }", false],
    ["iron: { width: 48 }", false],
    ["{}", false],
    ["iron: { width: 48, thickness: 3.6, widht: 1 }", false],
    ["iron: { width: 48, thickness: 3.6 }\nstage: done", false],
    ["iron: { width: 48, thickness: 3.6 }\nstage: glue-up", true],
    ["iron: { width: 48, thickness: 3.6 }\nstage: glued", true],
    ["iron: { width: 48, thickness: 3.6 }\npegs: { perEnd: 1.5 }", false],
    ["iron: { width: auto, thickness: 3.6 }", false],
    ["iron: { width: 48, thickness: 3.6 }\nname: a/b", false],
    ["iron: { width: 48, thickness: 3.6 }\nmeasured:", true],
  ])("%s is %s, as the reader says", (source, valid) => {
    expect(validate(parse(source))).toBe(valid);
    expect(readDesign(source, "").ok).toBe(valid);
  });
  test.each(["mm", "in"] as const)("takes the starter in %s", (units) => {
    validate(parse(starterDesign("first-plane", units)));
    expect(validate.errors).toBeNull();
  });
  test("takes a design as JSON", () => {
    expect(validate(JSON.parse(JSON.stringify(completed(IRON))))).toBe(true);
  });
});

describe("told to the maker", () => {
  test("the Markdown table has a row of six cells for each parameter", () => {
    const lines = parameterTable().trimEnd().split("\n");
    expect(lines).toHaveLength(rowsOf(TABLE).length + LIST_NAMES.flatMap((name) => listRows(name)).length + 2);
    for (const line of lines) expect(line.split(/(?<!\\)\|/)).toHaveLength(8);
    expect(lines).toContainEqual(expect.stringMatching(/^\| `bed\.angle` \| ° \| 47 \| 35 to 65 \| \S/));
    expect(lines).toContainEqual(expect.stringMatching(/^\| `iron\.width` \| mm \| to be given \|/));
  });
  test("the starter in mm reads back as the defaults", () => {
    const source = starterDesign("first-plane", "mm");
    const expected = completed({ name: "first-plane", units: "mm", iron: { width: 48, thickness: 3.6 } });
    const givenPaths = new Set(
      rowsOf(TABLE).flatMap(({ path, row }) => (row.default === undefined && !path.startsWith("iron.") ? [] : [path])),
    );
    expect(readDesign(source, "new.yaml")).toEqual({
      ok: true,
      givenPaths,
      slips: [],
      oldWords: [],
      formerKeys: [],
      overShop: [],
      design: expected,
    });
    for (const { row } of rowsOf(TABLE)) expect(source).toContain(row.help);
  });
  test("the starter in inches gives inch sizes next to the defaults, and a plane that no check stops", () => {
    const source = starterDesign("first-plane", "in");
    const reading = readDesign(source, "new.yaml");
    if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
    for (const { path, row } of rowsOf(TABLE)) {
      const value = valueAt(reading.design, path);
      if (path === "iron.width" || path === "iron.thickness" || row.kind !== "number") continue;
      if (typeof value !== "number" || typeof row.default !== "number") {
        expect(value, path).toEqual(row.default);
        continue;
      }
      if (path === "pin.tenonClearance") {
        // Twist drills in inches are sold by the 64th: ASME B94.11M, fractional sizes (from memory)
        const drill = ((elevation(reading.design).pinSize.tenon + value) / 25.4) * 64;
        expect(Math.abs(drill - Math.round(drill)), path).toBeLessThan(1e-9);
        continue;
      }
      // Nearest 1/8 in over an inch, 1/32 over 1/8, 1/64 over 1/32, then thousandths or tenths of one: half of each is the most it is off.
      const most =
        row.default > 25.4 ? 25.4 / 16 : row.default > 3.175 ? 25.4 / 64 : row.default > 0.79 ? 25.4 / 128 : 0.0128;
      const off = Math.abs(value - row.default);
      expect(off, path).toBeLessThanOrEqual(row.quantity === "length" ? most + 1e-9 : 0);
    }
    expect(source.replaceAll(/#.*/g, "").match(/\d mm/g)).toHaveLength(3); // a printer's length, width and height
    expect(source).toMatch(/paper: Letter\n/);
    expect(checkWithoutCures(elevation(reading.design)).filter(({ severity }) => severity === "stop")).toEqual([]);
  });
  test("a file of two lines in inches is the starter's plane: 3/8 tenons, 1/8 allowance, 1/4 pegs", () => {
    const [short, whole] = [
      "units: in\niron: { width: 2, thickness: 1/8 }\n",
      starterDesign("plane", "in", { iron: { width: "2", thickness: "1/8" } }),
    ].map((text) => {
      const reading = readDesign(text, "");
      if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
      return reading.design;
    });
    expect(short).toEqual(whole);
    const inches = [elevation(short!).pinSize.tenon, short!.sole.allowance, short!.pegs.diameter].map((mm) =>
      Number((mm / 25.4).toFixed(9)),
    );
    expect(inches).toEqual([3 / 8, 1 / 8, 1 / 4]);
    expect(short!.shop.printer.width).toBe(220);
    for (const { path, row } of rowsOf(TABLE)) {
      const value = valueAt(short!, path);
      if (row.kind !== "number" || typeof value !== "number") continue;
      expect(value >= row.min && value <= row.max, path).toBe(true);
    }
  });
  test.each(["true", "5", "a: b", 'a"b', "~"])("a name such as %s is told by the reader, not by YAML", (name) => {
    const reading = readDesign(starterDesign(name, "mm"), "");
    const paths = reading.ok ? [] : reading.faults.map(({ path }) => path);
    expect(paths).toEqual(/^[A-Za-z0-9]+$/.test(name) ? [] : ["name"]);
  });
});
