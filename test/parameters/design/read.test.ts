// Design files that are read, and every way in which one is refused, with its place.
import { describe, expect, test } from "vitest";
import { type Design, type Fault, faultText, readDesign } from "../../../packages/parameters/src/design/index.ts";
import { LIST_NAMES, TABLE } from "../../../packages/parameters/src/table/index.ts";

const IRON = "iron: { width: 48, thickness: 3.6 }\n";

const SAMPLE = `name: apprentice-smoother
units: mm
iron:    { width: 48, thickness: 3.6, length: 150, bevel: 28 }
capIron: { thickness: 3.2, hump: 1.0, setback: 0.4, screwHead: { diameter: 16, height: 3.4, fromEdge: 48 } }
body:    { length: 230, height: 58, cheek: 8, sideClearance: 1.6, trim: 25.4, outline: arched }
bed:     { angle: 47, featherChamfer: 3 }
ramp:    { angle: auto, shape: auto }
mouth:   { fromToe: auto, opening: 0.15 }
sole:    { allowance: 3 }
recess:  { width: auto, depth: auto, cutter: 12.7 }
wedge:   { angle: 6, tip: 3, tipFromEdge: 22 }
pin:     { section: flatted, diameter: 12.7, tenon: 9.5, height: auto }
pegs:    { diameter: 6, perEnd: 2 }  # two to a block
wood:    { body: "beech, american", pin: same, rings: 20, driest: { temperature: 21, humidity: 30 } }
shop:    { kerf: 3.2, millingAllowance: 1.5, paper: A4, smallestFraction: 1/64 }
measured: {}                          # what came out at the bench
`;

function designIn(source: string | Uint8Array): Design {
  const reading = readDesign(source, "plane.yaml");
  if (!reading.ok) throw new Error(reading.faults.map((fault) => `${fault.line}: ${faultText(fault)}`).join("\n"));
  return reading.design;
}

function faultsIn(source: string | Uint8Array): Fault[] {
  const reading = readDesign(source, "plane.yaml");
  return reading.ok ? [] : reading.faults;
}

describe("a file that is understood", () => {
  test("gets every default, keeps auto, leaves out what is not measured", () => {
    const design = designIn(IRON);
    expect(design.iron.width).toBe(48);
    expect(design.bed.angle).toBe(TABLE.bed.angle.default);
    expect(design.mouth.fromToe).toBe("auto");
    expect(design.wood.body).toBe("beech, american");
    expect(design).not.toHaveProperty("measured.iron");
  });
  test("units govern bare numbers wherever they stand", () => {
    const design = designIn("iron: { width: 2, thickness: 1/8, length: 150 mm }\nbody: { length: 9 }\nunits: in\n");
    expect(design.iron).toMatchObject({ width: 50.8, thickness: 3.175, length: 150 });
    expect(design.body.length).toBe(228.6);
    expect(design.body.cheek).toBe(7.9375); // 5/16 in
    expect(design.bed.angle).toBe(47);
  });
  test.each([
    ["BOM", `\ufeff${IRON}`],
    ["CRLF", `# plane\r\niron:\r\n  width: 48\r\n  thickness: 3.6\r\n`],
    ["JSON", '{"iron": {"width": 48, "thickness": 3.6}}'],
    ["a document mark", `---\n${IRON}`],
    ["measured, empty", `${IRON}measured: {}\n`],
    ["measured, nothing", `${IRON}measured:\n`],
    ["bytes", new TextEncoder().encode(`\ufeff${IRON}`)],
    ["comments with brackets", `# [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[\n${IRON}`],
    ["brackets in a text", `${IRON}wood: { body: "${"[".repeat(50)}" }`],
    ["brackets in a text over two lines", `${IRON}wood:\n  body: "${"[".repeat(25)}\n    ${"[".repeat(25)}"`],
    ["a quoted number", 'iron: { width: "48", thickness: 3.6 mm }'],
    ["a replacement character in a comment", new TextEncoder().encode(`# \ufffd\n${IRON}`)],
  ])("%s", (_, source) => {
    expect(designIn(source).iron.width).toBe(48);
  });
  test("the sample of the design's own description", () => {
    const design = designIn(SAMPLE);
    expect(design.name).toBe("apprentice-smoother");
    expect(design.capIron.screwHead).toEqual({ diameter: 16, height: 3.4, fromEdge: 48 });
    expect(design.wood).toMatchObject({ body: "beech, american", pin: "same", rings: 20 });
  });
  test("what was given is told from what was filled in", () => {
    const reading = readDesign(`${IRON}wood: { driest: { humidity: 25 } }\nbody: {}\n`, "");
    expect(reading.ok && [...reading.givenPaths].sort()).toEqual([
      "iron.thickness",
      "iron.width",
      "wood.driest.humidity",
    ]);
  });
  test("fractions, units and auto", () => {
    const design = designIn(
      'units: mm\niron: { width: 1 3/4 in, thickness: 1/8" }\nbed: { angle: 50° }\nramp: { angle: auto }\nwood: { driest: { humidity: 25 % } }\nshop: { smallestFraction: 1/32 }\n',
    );
    expect(design.iron.width).toBe(44.45);
    expect(design.bed.angle).toBe(50);
    expect(design.ramp.angle).toBe("auto");
    expect(design.wood.driest.humidity).toBe(25);
    expect(design.shop.smallestFraction).toBe("1/32");
  });
});

/** What follows a sound iron on line 1: source, line, column, path, message. */
describe("a fault, its place, and what is said", () => {
  test.each<[string, number, number, string, RegExp]>([
    ["body: { lenght: 230 }", 2, 9, "body.lenght", /did you mean length\?/],
    ["body: { widht: 230 }", 2, 9, "body.widht", /did you mean .*iron\.width/],
    ["iron2: 4", 2, 1, "iron2", /did you mean iron\?/],
    ["cap_iron: {}", 2, 1, "cap_iron", /did you mean capIron\?/],
    ["bed: { cheek: 8 }", 2, 8, "bed.cheek", /belongs in body\.cheek/],
    ["body.cheek: 8", 2, 1, "body.cheek", /write it nested, body: \{ cheek: … \}/],
    ["xyzzyxyzzy: 8", 2, 1, "xyzzyxyzzy", new RegExp(`known here: name, units, .*${LIST_NAMES.join(", ")}`)],
    ["baords: []", 2, 1, "baords", /did you mean boards\?/],
    ["cutter: 6", 2, 1, "cutter", /did you mean cutters or recess\.cutter\?/],
    ["pin: { clearance: 0.2 }", 2, 8, "pin.clearance", /did you mean tenonClearance or endClearance\?/],
    ["__proto__: { a: 1 }", 2, 1, "__proto__", /is not a key/],
    ["constructor: 1", 2, 1, "constructor", /is not a key/],
    ["body: { length: long }", 2, 17, "body.length", /write/],
    ["body: { length: [1, 2] }", 2, 17, "body.length", /read a list; write 60 mm to 900 mm/],
    ["body: { length: { a: 1 } }", 2, 17, "body.length", /read a group of keys/],
    ["body: { length: true }", 2, 17, "body.length", /read true/],
    ["body:\n  length: 20", 3, 11, "body.length", /read 20; allowed: 60 mm to 900 mm/],
    ["body:\n  length: 1 in", 3, 11, "body.length", /read 1 in; allowed: 60 mm to 900 mm/],
    ["body: { length: .nan }", 2, 17, "body.length", /not a finite number/],
    ["body: { length: -.inf }", 2, 17, "body.length", /not a finite number/],
    ["body: { length: 1e308 }", 2, 17, "body.length", /exponents/],
    ["body: { length: 0x40 }", 2, 17, "body.length", /not known|such as/],
    ["body: { length: 44,5 mm }", 2, 17, "body.length", /.*/],
    ["iron2: { width: 44,5 mm }", 2, 1, "iron2", /did you mean/],
    ["pin: { tenon: 9,5 mm }", 2, 17, "pin.5 mm", /decimals with a point/],
    ["wood: { body: beech, american }", 2, 22, "wood.american", /in quotes/],
    ["units: inch\nbody: { length: 9 }", 2, 8, "units", /one of mm, in/],
    ["body: { length: null }", 2, 17, "body.length", /no value; write/],
    ["body: { length: auto }", 2, 17, "body.length", /auto cannot stand here/],
    ["bed: { angle: 70 }", 2, 15, "bed.angle", /read 70; allowed: 35° to 65°/],
    ["pegs: { perEnd: 1.5 }", 2, 17, "pegs.perEnd", /whole number/],
    ["body: 5", 2, 7, "body", /is a section/],
    ["body: []", 2, 7, "body", /is a section/],
    ["body: { outline: archd }", 2, 18, "body.outline", /one of flat, arched\. Did you mean arched/],
    ["shop: { paper: 4 }", 2, 16, "shop.paper", /A4, Letter/],
    ["name: 5", 2, 7, "name", /in quotes/],
    ['name: ""', 2, 7, "name", /empty/],
    ["name: a/b", 2, 7, "name", /letters, digits/],
    [`name: ${"a".repeat(61)}`, 2, 7, "name", /61 characters; allowed: 60/],
    ['wood: { body: "oak\\u202e" }', 2, 15, "wood.body", /hidden character/],
    ['wood: { body: "oak\\n" }', 2, 15, "wood.body", /hidden character/],
    ["body: { length: 230, length: 240 }", 2, 22, "body.length", /on line 2 already/],
    ["iron: {}", 2, 1, "iron", /on line 1 already/],
    ["body: &b { length: 230 }", 2, 10, "body", /anchors/],
    ["body: !!map { length: 230 }", 2, 13, "body", /tags/],
    ["body: { length: !mine 230 }", 2, 23, "body.length", /tags/],
    ["body: { <<: { length: 230 } }", 2, 9, "body", /merge keys/],
    ["body: { ? [a] : 1 }", 2, 11, "body", /a key is one word/],
    ["measured: { coreWide: 49.7 }", 2, 13, "measured.coreWide", /is not a key of measured; did you mean coreWidth/],
    ["measured: 5", 2, 11, "measured", /section/],
    ["--- \nname: b", 2, 1, "", /second document/],
    ["body: { length: 230", 3, 1, "", /not YAML/],
    ["# \u202e", 2, 3, "", /U\+202E/],
    ["# \u0007", 2, 3, "", /U\+0007/],
  ])("%s", (rest, line, column, path, message) => {
    const faults = faultsIn(`${IRON}${rest}\n`);
    expect(faults[0]).toMatchObject({ file: "plane.yaml", line, column, path });
    const text = faultText(faults[0]!);
    expect(text).toMatch(message);
    expect(path !== "" && text.startsWith(`${path} `), "its place names the path already").toBe(false);
  });

  test.each<[string, string | Uint8Array, RegExp]>([
    ["empty", "", /empty/],
    ["only a comment", "# plane\n", /empty/],
    ["a list", "- 1\n", /keys and values/],
    ["a word", "plane", /keys and values/],
    ["a number", "5", /keys and values/],
    ["NUL", `${IRON}\0`, /UTF-8/],
    ["binary", new Uint8Array([0x50, 0x4b, 3, 4, 0xff, 0xfe]), /UTF-8/],
    ["UTF-16", new Uint8Array([0xff, 0xfe, 0x69, 0]), /UTF-8/],
    ["too large", "#".repeat(256 * 1024 + 1), /256 kB/],
    ["deep brackets", `a: ${"[".repeat(100_000)}`, /nested/],
    ["deep marks", "- ".repeat(100_000), /nested/],
    ["deep questions", "? ".repeat(100_000), /nested/],
    ["deep indents", Array.from({ length: 700 }, (_, i) => `${" ".repeat(i)}a:`).join("\n"), /nested/],
    // The parser's own stack is no guard: running out of it was once seen to end the process inside a regular expression.
    ["deep, in quotes that run over lines", "[ 'a\n', ".repeat(20_000), /nested/],
    ["deep, in double quotes", '["\n",'.repeat(30_000), /nested/],
    [
      "deep dashes over growing indents",
      Array.from({ length: 40 }, (_, i) => `${" ".repeat(8 * i)}- - - -`).join("\n"),
      /nested/,
    ],
    ["a directive", `%YAML 1.1\n---\n${IRON}`, /%YAML line/],
    ["alias bomb", "a: &a [1]\nb: *a\n", /anchors/],
    ["a loose alias", "iron: *none\n", /aliases|Unresolved/],
    ["missing", "name: a\n", /^missing: Greatest width of the iron/],
  ])("the whole file: %s", (_, source, message) => {
    expect(faultsIn(source).map(faultText).join("\n")).toMatch(message);
  });

  test("an odd character's place in bytes", () => {
    const bytes = new Uint8Array([...new TextEncoder().encode("a: 1\nbb"), 0xff]);
    expect(faultsIn(bytes)[0]).toMatchObject({ line: 2, column: 3 });
  });
  test("limits in the file's unit and in mm", () => {
    const [fault] = faultsIn("units: in\niron: { width: 0.2, thickness: 1/8 }\n");
    expect(faultText(fault!)).toBe("read 0.2, that is 0.2 in (5.08 mm); allowed: 0.315 in (8 mm) to 4.724 in (120 mm)");
  });
  test("a key without a value is told on its own line", () => {
    const faults = faultsIn("iron:\n  width:\n  thickness: 3.6\nbody:\n");
    expect(faults.map(({ line, path }) => [line, path])).toEqual([
      [2, "iron.width"],
      [4, "body"],
    ]);
  });
  test("lengths are not judged by a unit that was refused", () => {
    const faults = faultsIn("units: inch\niron: { width: 2, thickness: 1/8 }\nbed: { angle: 99 }\n");
    expect(faults.map(({ path }) => path)).toEqual(["units", "bed.angle"]);
  });
  test("too deep is told where it is too deep", () => {
    expect(faultsIn(`a: 1\nb: ${"[".repeat(100)}`)).toMatchObject([{ line: 2, column: 35 }]);
  });
  test("all at once, by place", () => {
    const faults = faultsIn("zzzzzz: 1\nbed: { angle: 99 }\nname: 5\niron:\n  widht: 48\nbody: { length: x }\n");
    expect(faults.map(({ line, path }) => `${line} ${path}`)).toEqual([
      "1 zzzzzz",
      "2 bed.angle",
      "3 name",
      "4 iron.width",
      "4 iron.thickness",
      "5 iron.widht",
      "6 body.length",
    ]);
  });
  test("a hundred are shown, and how many more there are", () => {
    const faults = faultsIn(IRON + Array.from({ length: 30_000 }, (_, i) => `k${i}:`).join("\n"));
    expect(faults).toHaveLength(101);
    expect(faults[100]).toMatchObject({ code: "more-faults", count: 29900 });
  });
});
