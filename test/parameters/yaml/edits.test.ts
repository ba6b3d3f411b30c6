// Edits by offsets: made at once as if made one by one from the end; those that clash are refused.
import fc from "fast-check";
import { expect, test } from "vitest";
import { setValue } from "../../../packages/parameters/src/design/index.ts";
import { applyEdits, type Edit } from "../../../packages/parameters/src/yaml/edits.ts";

test("several edits in any order, every offset that of the text before", () => {
  const edits = [
    { start: 11, end: 13, text: "50" },
    { start: 0, end: 3, text: "mouth" },
    { start: 13, end: 13, text: " # degrees" },
  ];
  expect(applyEdits("bed: angle=47", edits)).toBe("mouth: angle=50 # degrees");
});

test("are those of splicing from the last to the first", () => {
  const texts = fc.string({ minLength: 1, maxLength: 30 });
  const cuts = fc.array(fc.tuple(fc.nat(30), fc.string({ maxLength: 4 })), { maxLength: 8 });
  fc.assert(
    fc.property(texts, cuts, (text, drawn) => {
      const offsets = [...new Set(drawn.map(([at]) => Math.min(at, text.length)))].sort((a, b) => a - b);
      const edits: Edit[] = [];
      for (let i = 0; i + 1 < offsets.length; i += 2)
        edits.push({ start: offsets[i]!, end: offsets[i + 1]!, text: drawn[i]![1] });
      const letters = [...Array(text.length).keys()].map((i) => text[i]!);
      for (const { start, end, text: by } of edits.toReversed()) letters.splice(start, end - start, by);
      expect(applyEdits(text, edits)).toBe(letters.join(""));
    }),
  );
});

test.each([
  [
    "two over the same stretch",
    [
      { start: 0, end: 3, text: "" },
      { start: 2, end: 4, text: "" },
    ],
  ],
  ["one beyond the end", [{ start: 3, end: 9, text: "" }]],
  ["one that ends before it starts", [{ start: 3, end: 2, text: "" }]],
] as const)("%s", (_, edits) => {
  expect(() => applyEdits("angle", edits)).toThrow(/does not fit/);
});

test("a bare length in a block of text keeps its line end when the file's unit changes", () => {
  const source = "iron:\n  width: |\n    2\n  thickness: 1/8\nunits: in\n";
  expect(setValue(source, "units", "mm")).toBe("iron:\n  width: 2 in\n  thickness: 1/8 in\nunits: mm\n");
});
