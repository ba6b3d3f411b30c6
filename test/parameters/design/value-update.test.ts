// One value written into a maker's file: the value reads back, and nothing else has moved.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  completeDesign,
  readDesign,
  setValue,
  starterDesign,
  valueAt,
  withValue,
} from "../../../packages/parameters/src/design/index.ts";
import {
  type Design,
  defaultIn,
  type NumberRow,
  type Row,
  rowsOf,
  TABLE,
} from "../../../packages/parameters/src/table/index.ts";

const FILE = `# my plane
name: first   # mine
iron:    { width: 48, thickness: 3.6 }   # caliper
bed:
    angle: 47 # as found

    # a note at the end

wood: {
  body: "beech, american", # from the shed
}
`;

describe("what changes in the text", () => {
  test.each<[string, string, number | string, string, string]>([
    ["a value between braces", "iron.width", 50.5, "width: 48,", "width: 50.5,"],
    ["a value on its own line", "bed.angle", 45, "angle: 47 #", "angle: 45 #"],
    ["a text in quotes", "wood.body", "maple, sugar", '"beech, american"', '"maple, sugar"'],
    ["a plain text", "name", "second", "name: first ", "name: second "],
    ["a text that looks like a number", "name", "7", "name: first ", 'name: "7" '],
    ["a key between braces", "iron.length", 150, "3.6 }", "3.6, length: 150 }"],
    ["a key behind a trailing comma", "wood.rings", 30, 'american",', 'american", rings: 30,'],
    ["a key in a block", "bed.featherChamfer", 2, "# as found\n", "# as found\n    featherChamfer: 2\n"],
    ["a word", "pin.height", "auto", "# from the shed\n}\n", "# from the shed\n}\npin:\n  height: auto\n"],
    [
      "a section in a section",
      "capIron.screwHead.height",
      3,
      "shed\n}\n",
      "shed\n}\ncapIron:\n  screwHead:\n    height: 3\n",
    ],
    ["a fraction", "shop.smallestFraction", "1/32", "shed\n}\n", "shed\n}\nshop:\n  smallestFraction: 1/32\n"],
  ])("%s", (_, path, value, before, after) => {
    expect(FILE).toContain(before);
    expect(setValue(FILE, path, value)).toBe(FILE.replace(before, after));
  });
  test.each<[string, string, string, string]>([
    [
      "CRLF",
      "iron:\r\n  width: 48\r\n  thickness: 3\r\n",
      "iron.length",
      "iron:\r\n  width: 48\r\n  thickness: 3\r\n  length: 150\r\n",
    ],
    [
      "no last line end",
      "iron: {width: 48, thickness: 3}",
      "pegs.diameter",
      "iron: {width: 48, thickness: 3}\npegs:\n  diameter: 150",
    ],
    [
      "an empty section",
      "iron: {width: 48, thickness: 3}\nbed: {}",
      "bed.angle",
      "iron: {width: 48, thickness: 3}\nbed: { angle: 150 }",
    ],
    [
      "JSON",
      '{"iron": {"width": 48, "thickness": 3}}',
      "bed.angle",
      '{"iron": {"width": 48, "thickness": 3}, "bed": { "angle": 150 }}',
    ],
    ["BOM", "\ufeffiron: {width: 48, thickness: 3}", "iron.width", "\ufeffiron: {width: 150, thickness: 3}"],
    [
      "a folded text",
      "name: >-\n  first\niron: {width: 48, thickness: 3}",
      "name",
      'name: "150"\niron: {width: 48, thickness: 3}',
    ],
    [
      "a document's end",
      "iron: {width: 48, thickness: 3}\n...\n",
      "bed.angle",
      "iron: {width: 48, thickness: 3}\nbed:\n  angle: 150\n...\n",
    ],
  ])("%s", (_, source, path, expected) => {
    expect(setValue(source, path, path === "name" ? "150" : 150)).toBe(expected);
  });
  test("in a file in inches: bare where that is exact, else mm", () => {
    const source = "units: in\niron: { width: 2, thickness: 1/8 }\n";
    expect(setValue(source, "iron.width", 44.45)).toContain("width: 1.75,");
    expect(setValue(source, "iron.width", 44.5)).toContain("width: 44.5 mm,");
    expect(setValue(source, "bed.angle", 45)).toContain("angle: 45");
  });
  test("a file whose unit changes keeps its lengths: those without a unit of their own are told in the old one", () => {
    const mm = `iron: { width: 48, thickness: 3.60 } # by caliper\nbody: { length: 9 in }\nbed: { angle: 50 }\n`;
    expect(setValue(mm, "units", "in")).toBe(
      `iron: { width: 48 mm, thickness: 3.60 mm } # by caliper\nbody: { length: 9 in }\nbed: { angle: 50 }\nunits: in\n`,
    );
    expect(setValue(mm, "units", "mm")).toBe(`${mm}units: mm\n`);
    const inches = `units: in\niron: { width: 2, thickness: "1/8" }\nbody: { length: 9-1/2" , height: 58 mm }\npin: { height: auto }\n`;
    expect(setValue(inches, "units", "mm")).toBe(
      `units: mm\niron: { width: 2 in, thickness: 1/8 in }\nbody: { length: 9-1/2" , height: 58 mm }\npin: { height: auto }\n`,
    );
    expect(setValue('{"iron": {"width": 48, "thickness": 3.6}}', "units", "in")).toBe(
      '{"iron": {"width": "48 mm", "thickness": "3.6 mm"}, "units": "in"}',
    );
  });
  test("a path that is not there and a text that is no design are our bugs", () => {
    expect(() => setValue(FILE, "bed", 1)).toThrow(/no parameter/);
    expect(() => setValue(FILE, "bed.angel", 1)).toThrow(/no parameter/);
    expect(() => setValue("iron: {}", "bed.angle", 45)).toThrow(/sound design/);
  });
});

const SOURCES = [
  FILE,
  starterDesign("plane", "mm"),
  starterDesign("plane", "in"),
  "iron: {width: 48 mm, thickness: 3.6 mm}\nunits: in",
  '{"units": "in", "iron": {"width": "48 mm", "thickness": "3.6 mm"}}',
];

/** A value that the row allows. */
function allowedBy(row: Row): fc.Arbitrary<number | string> {
  if (row.kind === "choice") return fc.constantFrom(...row.choices);
  if (row.kind === "text")
    return row.pattern
      ? fc.stringMatching(/^[a-z0-9][a-z0-9._-]{0,20}$/).filter((text) => row.pattern!.regex.test(text))
      : fc.stringMatching(/^[a-zA-Z0-9"'#:,{}[\]&*!|>%@` -]{1,20}$/).filter((text) => text.trim() !== "");
  if (row.kind === "lengths") return fc.oneof(fc.constantFrom(...row.words), fc.constant("17.3 mm + 15 mm + 17.3 mm"));
  return numberOf(row);
}

function numberOf(row: NumberRow): fc.Arbitrary<number | string> {
  const places = row.quantity === "count" ? 1 : 1e6;
  const number = fc
    .double({ min: row.min, max: row.max, noNaN: true })
    .map((value) => Math.round(value * places) / places + 0);
  return row.auto === undefined ? number : fc.oneof(number, fc.constant("auto"));
}

test("a changed unit changes no length that is given; what is not given is the unit's default", () => {
  const numbers = rowsOf(TABLE).flatMap(({ path, row }) => (row.kind === "number" ? [{ path, row }] : []));
  const some = fc.shuffledSubarray(numbers, { maxLength: 8 });
  fc.assert(
    fc.property(fc.constantFrom(...SOURCES), some, fc.constantFrom("mm", "in"), (source, rows, units) => {
      const text = rows.reduce((now, { path, row }) => setValue(now, path, row.min), source);
      const [before, after] = [text, setValue(text, "units", units)].map((t) => readDesign(t, ""));
      if (!before?.ok || !after?.ok) throw new Error(JSON.stringify([before, after]));
      const lengths = (design: Design) =>
        Object.fromEntries([...before.givenPaths].map((path) => [path, valueAt(design, path)]));
      expect(lengths(after.design)).toEqual({
        ...lengths(before.design),
        ...(before.givenPaths.has("units") ? { units } : {}),
      });
      for (const { path, row } of rowsOf(TABLE))
        if (!after.givenPaths.has(path)) expect(valueAt(after.design, path), path).toEqual(defaultIn(row, units));
    }),
  );
});

test("at every path, any allowed value reads back and no other has changed", () => {
  const rows = rowsOf(TABLE).filter(({ path }) => path !== "units");
  const cases = fc
    .constantFrom(...rows)
    .chain(({ path, row }) => fc.record({ path: fc.constant(path), value: allowedBy(row) }));
  fc.assert(
    fc.property(fc.constantFrom(...SOURCES), cases, (source, { path, value }) => {
      const before = readDesign(source, "");
      const after = readDesign(setValue(source, path, value), "");
      if (!before.ok || !after.ok) throw new Error(JSON.stringify([before, after]));
      expect(after.design).toEqual(withValue(before.design, path, value));
      expect(after.givenPaths).toEqual(new Set([...before.givenPaths, path]));
      expect(valueAt(after.design, path)).toBe(value);
      expect(completeDesign(after.design)).toMatchObject({ ok: true, design: after.design });
    }),
    { numRuns: 500 },
  );
});

test("every comment is still there", () => {
  const comments = (text: string) => text.match(/#.*$/gm);
  for (const { path, row } of rowsOf(TABLE))
    for (const source of [FILE, starterDesign("plane", "mm")])
      if (row.kind === "number") expect(comments(setValue(source, path, row.min))).toEqual(comments(source));
});
