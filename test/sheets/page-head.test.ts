// The head of a page keeps name, content and number apart and on the page, however long they are.
import { POINTS_PER_MM } from "@lamplane/parameters/units";
import { createPdf, pdfBytes } from "@lamplane/sheets/pdf";
import { expect, test } from "vitest";
import { headBlock } from "../../packages/sheets/src/pages/blocks/head.ts";
import { wordsOverlap } from "../support/drawn-lines.ts";
import { pdfMarks } from "../support/pdf-marks.ts";

const WIDTH = 192; // mm, A4 between its margins
const LEFT = 9;

async function headOf(name: string, what: string) {
  const pdf = createPdf({ title: "head" });
  pdf.doc.addPage({ size: [210 * POINTS_PER_MM, 60 * POINTS_PER_MM], margin: 0 });
  const block = headBlock({ name, what, number: "page 3 of 19 · lamplane 0.2.0" }, WIDTH);
  block.draw({ pdf, size: { width: 210, height: 60 } }, { left: LEFT, top: 9 });
  const [page] = await pdfMarks(await pdfBytes(pdf));
  return { block, marks: page!.marks, words: page!.marks.filter((mark) => mark.kind === "words") };
}

test.each([
  ["short", "jack", "Cut ramp and bed"],
  ["a long name", "w".repeat(60), "Cut ramp and bed"],
  [
    "long content",
    "jack",
    "Core, seen from your left, toe to the left · Bed, seen square to it · Right cheek, inside up, toe to the left · Wedge",
  ],
  [
    "both long",
    "w".repeat(60),
    "Core, seen from your left, toe to the left · Bed, seen square to it · Right cheek, inside up, toe to the left · Wedge",
  ],
])("with %s", async (kind, name, what) => {
  const { block, marks, words } = await headOf(name, what);
  const of = (text: string) =>
    words.find((word) => word.text === text.split(" ")[0] || word.text.startsWith(text.slice(0, 12)))!;
  for (const { corners, text } of words)
    for (const { x, y } of corners) {
      expect(x, text).toBeGreaterThan(LEFT - 0.1);
      expect(x, text).toBeLessThan(LEFT + WIDTH + 0.1);
      expect(y, text).toBeLessThan(9 + block.height);
    }
  for (const [i, word] of words.entries())
    for (const other of words.slice(i + 1))
      expect(wordsOverlap(word, other, 0.05), `${word.text} | ${other.text}`).toBe(false);
  const rule = marks.find((mark) => mark.kind === "line")!;
  const ends = rule.kind === "line" ? rule.chords.flat() : [];
  expect([Math.min(...ends.map(({ x }) => x)), Math.max(...ends.map(({ x }) => x))]).toEqual([
    expect.closeTo(LEFT, 2),
    expect.closeTo(LEFT + WIDTH, 2),
  ]);
  expect(Math.max(...words.flatMap(({ corners }) => corners.map(({ y }) => y)))).toBeLessThan(ends[0]!.y + 0.05);
  const [first, second] = [of(name), of(what)];
  expect(first.size).toBeGreaterThan(second.size * (kind === "a long name" ? 0.5 : 0.99));
  if (kind === "short") expect(Math.min(first.size, second.size)).toBeGreaterThan(3);
  // however long the name, what the page holds keeps a fifth of the line
  const reach = Math.max(
    ...words.filter(({ text }) => name.startsWith(text)).flatMap(({ corners }) => corners.map(({ x }) => x)),
  );
  expect(reach).toBeLessThan(LEFT + 0.8 * WIDTH);
});
