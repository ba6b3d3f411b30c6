// Lengths in a row: every way of writing them means the same, and what is wrong says what was read.
import { faultText, formatLengths, parseLengths, readDesign, setValue } from "@lamplane/parameters/design";
import { expect, test } from "vitest";

const IRON = "iron: { width: 48, thickness: 3.6 }\n";
const SHOP = { units: "mm", shop: { smallestFraction: "1/64", bothUnits: "no" } } as const;

function layersOf(source: string): string {
  const read = readDesign(source, "");
  if (!read.ok) throw new Error(read.faults.map(faultText).join("; "));
  return read.design.core.layers;
}
function faultOf(source: string): string {
  const read = readDesign(source, "");
  return read.ok ? "" : read.faults.map(faultText).join("; ");
}

test.each([
  ["a list", "core: { layers: [17.3, 15, 17.3] }"],
  ["a list over lines", "core:\n  layers:\n    - 17.3\n    - 15 # the recess\n    - 17.3"],
  ["a sum", "core: { layers: 17.3 + 15 + 17.3 }"],
  ["with units", 'core: { layers: "17.3 mm, 1.5 cm, 17.3 mm" }'],
])("%s", (_, core) => {
  expect(layersOf(`${IRON}${core}\n`)).toBe("17.3 mm + 15 mm + 17.3 mm");
});

test("inches of an inch design are kept in mm", () => {
  const source = "units: in\niron: { width: 1 7/8, thickness: 9/64 }\ncore: { layers: [3/4, 0.5, 3/4] }\n";
  expect(parseLengths(layersOf(source))).toEqual([19.05, 12.7, 19.05]);
  expect(formatLengths(layersOf(source), { ...SHOP, units: "in" })).toBe("3/4 in + 1/2 in + 3/4 in");
});

test("a word stays a word, and an absent one is whole", () => {
  expect(layersOf(`${IRON}core: { layers: auto }\n`)).toBe("auto");
  expect(layersOf(IRON)).toBe("whole");
  expect(parseLengths("auto")).toBeUndefined();
});

test.each([
  ["layers: whol", 'read "whol"; write one of whole, auto'],
  ["layers: [17.3, x]", 'read "x"'],
  ["layers: [17.3, 300]", "read 300; allowed"],
  ["layers: [17.3, [15]]", "read a list within the list"],
  ["layers: { a: 1 }", "read a group of keys"],
  [`layers: [${Array(16).fill(3).join(", ")}]`, "read 16 lengths; allowed: 15 at most"],
  ["layers: [-5, 3]", "read -5; allowed"],
  ["layers: []", "write"],
  ["layers:", "no value"],
])("refuses %s", (core, words) => {
  expect(faultOf(`${IRON}core: { ${core} }\n`)).toContain(words);
});

test("set in a file, a list gives way whole and everything else stays", () => {
  const source = `${IRON}core:\n  layers: [17.3, 15, 17.3]\n  board: 20 # as bought\n`;
  const set = setValue(source, "core.layers", "15.3 mm + 19 mm + 15.3 mm");
  expect(layersOf(set)).toBe("15.3 mm + 19 mm + 15.3 mm");
  expect(set.replace(/layers: .*/, "")).toBe(source.replace(/layers: .*/, ""));
  const overLines = `${IRON}core:\n  layers:\n    - 17.3\n    - 15\n  board: 20\n`;
  expect(layersOf(setValue(overLines, "core.layers", "auto"))).toBe("auto");
});

test("keep their lengths when the file's unit changes", () => {
  for (const layers of ["[17.3, 15, 17.3]", "17.3 + 15 + 17.3", "\n    - 17.3\n    - 15\n    - 17.3"]) {
    const switched = setValue(`${IRON}core:\n  layers: ${layers}\n`, "units", "in");
    expect(layersOf(switched), layers).toBe("17.3 mm + 15 mm + 17.3 mm");
  }
});
