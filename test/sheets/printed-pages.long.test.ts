// Every page of every PDF of a pack, as pdf.js reads what it paints: nothing beyond what a printer reaches, no words over words, none
// struck through, none too small or too pale to read.
import { readFileSync } from "node:fs";
import { asBuiltPlane } from "@lamplane/bench";
import { makeSheets } from "@lamplane/export/content";
import { readDesign } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { routerPdf } from "@lamplane/sheets/pages";
import { beforeAll, describe, expect, test } from "vitest";
import { routerFiles } from "../../packages/export/src/router/files.ts";
import { runsThrough, wordsOverlap } from "../support/drawn-lines.ts";
import { type PdfMark, type PdfPageMarks, pdfMarks } from "../support/pdf-marks.ts";
import { cutter, withRouter } from "../support/router-designs.ts";

function example(name: string, units: "mm" | "in", paper: "A4" | "Letter"): Design {
  const file = `examples/${name}.yaml`;
  const reading = readDesign(readFileSync(file), file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return { ...reading.design, units, shop: { ...reading.design.shop, paper } };
}
const CUTTERS = [cutter("end-6", 6), cutter("drill-6", 6, { kind: "drill", step: 5 })];

/** What a desk printer leaves white: a quarter of an inch. Common practice, no published source. */
const WHITE_EDGE = 6.35;
/** The smallest letters that are printed to be read, mm of the em: 6 point. Common practice, no published source. */
const SMALLEST = (6 / 72) * 25.4;
/** The first page of the layout has small maps of its tiles; their words are not meant to be read. */
const isFullSize = (mark: PdfMark): boolean => mark.kind !== "words" || mark.size > 1.2;
/** Grey of 4.5:1 against white. @see WCAG 2.2, 1.4.3 */
const PALEST = 118;

describe.each([
  ["apprentice-smoother", "mm", "A4"],
  ["class/crooked-board", "in", "Letter"],
] as const)("%s in %s on %s", (name, units, paper) => {
  const pages: (PdfPageMarks & { readonly name: string })[] = [];
  beforeAll(async () => {
    const design = withRouter(example(name, units, paper), CUTTERS);
    const plane = asBuiltPlane(design);
    const files = await makeSheets({ design, plane, version: "0.2.0" });
    files.set("router.pdf", await routerPdf(routerFiles(plane, "0.2.0")!.sheets, { paper, version: "0.2.0" }));
    for (const [path, bytes] of files)
      if (path.endsWith(".pdf"))
        for (const [i, page] of (await pdfMarks(bytes as Uint8Array)).entries())
          if (!page.isClipped)
            pages.push({ ...page, name: `${path}, page ${i + 1}`, marks: page.marks.filter(isFullSize) });
  });

  /** What is found fault with, page by page. */
  const faults = (find: (page: PdfPageMarks) => readonly string[]) =>
    pages.flatMap((page) => find(page).map((fault) => `${page.name}: ${fault}`));

  test("nothing lies where a printer cannot reach", () => {
    expect(pages.length).toBeGreaterThan(25);
    const beyond = faults(({ width, height, marks }) =>
      marks
        .filter((mark) => placesOf(mark).some(({ x, y }) => Math.min(x, y, width - x, height - y) < WHITE_EDGE))
        .map((mark) => JSON.stringify(mark)),
    );
    expect(beyond).toEqual([]);
  });

  test("no words lie on other words", () => {
    const over = faults(({ marks }) => {
      const words = marks.filter((mark) => mark.kind === "words");
      return words.flatMap((a, i) =>
        words
          .slice(i + 1)
          .filter((b) => wordsOverlap(a, b, 0.25))
          .map((b) => `${a.text} | ${b.text}`),
      );
    });
    expect(over).toEqual([]);
  });

  test("no line runs through words, unless white is laid over it first", () => {
    // A plot's words may stand on its grid; "iron" is written within the iron, whose two edges its box touches.
    const struck = faults(({ marks }) => struckWords(marks).filter((text) => !/^(cap )?iron$/.test(text)));
    expect(struck.filter((fault) => !fault.startsWith("appendix.pdf"))).toEqual([]);
  });

  test("letters are large and dark enough to read", () => {
    const faint = faults(({ marks }) =>
      marks
        .filter((mark) => mark.kind === "words")
        .filter(({ size, grey }) => size < SMALLEST || grey > PALEST)
        .map(({ text, size, grey }) => `${text}, ${size} mm, grey ${grey}`),
    );
    expect(faint).toEqual([]);
  });
});

const placesOf = (mark: PdfMark) => (mark.kind === "line" ? mark.chords.flat() : mark.corners);

function struckWords(marks: readonly PdfMark[]): string[] {
  return marks.flatMap((mark, i) => {
    if (mark.kind !== "words") return [];
    const white = marks
      .slice(0, i)
      .findLastIndex((other) => other.kind === "fill" && other.grey > 250 && covers(other, mark));
    const strikes = marks.some(
      (line, k) => line.kind === "line" && k > white && line.chords.some((chord) => runsThrough(chord, mark, 0.3)),
    );
    return strikes ? [mark.text] : [];
  });
}

/** Whether a white patch holds the middle of words. */
function covers({ corners }: Extract<PdfMark, { kind: "fill" }>, words: Extract<PdfMark, { kind: "words" }>): boolean {
  const x = words.corners.reduce((sum, at) => sum + at.x, 0) / 4;
  const y = words.corners.reduce((sum, at) => sum + at.y, 0) / 4;
  const sides = corners.map((at, i) => {
    const next = corners[(i + 1) % corners.length]!;
    return (next.x - at.x) * (y - at.y) - (next.y - at.y) * (x - at.x);
  });
  return sides.every((side) => side >= -1e-9) || sides.every((side) => side <= 1e-9);
}
