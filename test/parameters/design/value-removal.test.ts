// One value taken out of a maker's file: it is gone, its comment and everything else is still there.
import { readDesign, removeValue, setValue, starterDesign, withValue } from "@lamplane/parameters/design";
import { rowsOf, TABLE } from "@lamplane/parameters/table";
import fc from "fast-check";
import { expect, test } from "vitest";

const IRON = "iron: { width: 48, thickness: 3.6 }";

test.each<[string, string, string, string]>([
  [
    "a line of a block",
    `${IRON}\nmeasured:\n  coreWidth: 48.2\n  bedAngle: 45\n`,
    "coreWidth",
    `${IRON}\nmeasured:\n  bedAngle: 45\n`,
  ],
  [
    "its comment stays",
    `${IRON}\nmeasured:\n  coreWidth: 48.2 # caliper\n`,
    "coreWidth",
    `${IRON}\nmeasured:\n  # caliper\n`,
  ],
  [
    "the first between braces",
    `${IRON}\nmeasured: { coreWidth: 48.2, bedAngle: 45 }`,
    "coreWidth",
    `${IRON}\nmeasured: { bedAngle: 45 }`,
  ],
  [
    "the last between braces",
    `${IRON}\nmeasured: { coreWidth: 48.2, bedAngle: 45 }`,
    "bedAngle",
    `${IRON}\nmeasured: { coreWidth: 48.2 }`,
  ],
  ["the only one between braces", `${IRON}\nmeasured: { coreWidth: 48.2 }`, "coreWidth", `${IRON}\nmeasured: {  }`],
  [
    "braces over lines",
    `${IRON}\nmeasured: {\n  coreWidth: 48.2, # one\n  bedAngle: 45, # two\n}\n`,
    "bedAngle",
    `${IRON}\nmeasured: {\n  coreWidth: 48.2, # one\n  # two\n}\n`,
  ],
  [
    "the last between braces, behind a comment that ends in a comma",
    `${IRON}\nmeasured: { coreWidth: 48.2, # by caliper,\n  bedAngle: 45 }\n`,
    "bedAngle",
    `${IRON}\nmeasured: { coreWidth: 48.2, # by caliper,\n   }\n`,
  ],
  [
    "the first between braces, a comment before its comma",
    `${IRON}\nmeasured: {coreWidth: 48.2 # by caliper, twice\n  , bedAngle: 45 }\n`,
    "coreWidth",
    `${IRON}\nmeasured: { # by caliper, twice\n  bedAngle: 45 }\n`,
  ],
  [
    "CRLF",
    `${IRON}\r\nmeasured:\r\n  coreWidth: 48.2\r\n  bedAngle: 45\r\n`,
    "coreWidth",
    `${IRON}\r\nmeasured:\r\n  bedAngle: 45\r\n`,
  ],
  ["no last line end", `${IRON}\nmeasured:\n  coreWidth: 48.2`, "coreWidth", `${IRON}\nmeasured:\n`],
  [
    "JSON",
    `{"iron": {"width": 48, "thickness": 3.6}, "measured": {"coreWidth": 48.2, "bedAngle": 45}}`,
    "bedAngle",
    `{"iron": {"width": 48, "thickness": 3.6}, "measured": {"coreWidth": 48.2}}`,
  ],
  ["BOM", `\ufeff${IRON}\nmeasured: {coreWidth: 48.2}`, "coreWidth", `\ufeff${IRON}\nmeasured: {}`],
  ["one that is not there", `${IRON}\n`, "coreWidth", `${IRON}\n`],
])("%s", (_, source, key, expected) => {
  expect(removeValue(source, `measured.${key}`)).toBe(expected);
  expect(readDesign(expected, "").ok).toBe(true);
});

test("what no design can be without stays; a text that is no design is our bug", () => {
  expect(() => removeValue(IRON, "iron.width")).toThrow(/cannot be without iron.width/);
  expect(() => removeValue(IRON, "iron.weight")).toThrow(/no parameter/);
  expect(() => removeValue("iron: {}", "bed.angle")).toThrow(/sound design/);
});

const MEASURED = rowsOf(TABLE).flatMap(({ path, row }) =>
  path.startsWith("measured.") && row.kind === "number" ? [{ path, row }] : [],
);
const SOURCES = [
  `${IRON}\n# the end`,
  `${IRON}\nmeasured: # at the bench\n`,
  `${IRON}\nmeasured: {}\n`,
  starterDesign("plane", "in"),
  `{"iron": {"width": 48, "thickness": 3.6}}`,
];

test("written in and taken back, in any order: the others are as they were, and so is every comment", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...SOURCES),
      fc.shuffledSubarray(MEASURED, { minLength: 1, maxLength: 6 }),
      fc.nat(),
      (source, rows, pick) => {
        const full = rows.reduce((text, { path, row }) => setValue(text, path, row.min), source);
        const gone = rows[pick % rows.length]!.path;
        const before = readDesign(full, "");
        const left = removeValue(full, gone);
        const after = readDesign(left, "");
        if (!before.ok || !after.ok) throw new Error(JSON.stringify([before, after]));
        expect(after.design).toEqual(withValue(before.design, gone, undefined));
        expect(left.match(/#.*$/gm)).toEqual(source.match(/#.*$/gm));
      },
    ),
  );
});
