// The printed layout, as poppler renders it: bars of the right length on every page, everything within the margins, tiles true and exact.

import { line, point, polygon } from "@lamplane/geometry";
import { type Elevation, elevation } from "@lamplane/parameters/elevation";
import { TABLE } from "@lamplane/parameters/table";
import { layoutPictures, type Picture } from "@lamplane/sheets";
import { layoutPdf, PAGE_MARGIN, type Paper } from "@lamplane/sheets/pages";
import { beforeAll, describe, expect, test } from "vitest";
import { OVERLAP, splitLength } from "../../packages/sheets/src/pages/seams.ts";
import { PAPER_SIZES } from "../outside/sheets.ts";
import { designWith, WORKED } from "../support/designs.ts";
import { requireProgram } from "../support/outside-programs.ts";
import { greyPages, longestRun, type Pixels, wordsOf } from "../support/pages.ts";

const PAPERS = TABLE.shop.paper.choices as readonly Paper[];
const jack = () => elevation(designWith({ ...WORKED, "body.length": 420, "mouth.fromToe": 140, name: "long-jack" }));
const layoutOf = (plane: Elevation, paper: Paper, units: "mm" | "in" = "mm") =>
  layoutPdf(layoutPictures(plane), { paper, name: plane.design.name, version: "0.0.0", units });
const toMm = (pixels: number, { dpi }: Pixels) => (pixels / dpi) * 25.4;

test("the papers are all that a design may ask for", () =>
  expect([...PAPERS].sort()).toEqual(Object.keys(PAPER_SIZES).sort()));

describe.each(PAPERS)("on %s", (paper) => {
  let bytes: Uint8Array;
  beforeAll(async () => {
    bytes = await layoutOf(jack(), paper);
  });

  test("pages have the paper's size, and both bars measure right within 0.1 mm on every page", (context) => {
    const pages = greyPages(requireProgram(context, "pdftoppm"), bytes, 300);
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) {
      const size = [toMm(page.width, page), toMm(page.height, page)].sort((a, b) => a - b);
      for (const i of [0, 1]) expect(Math.abs(size[i]! - PAPER_SIZES[paper]![i]!)).toBeLessThan(0.1);
      const bars = barLengths(page);
      expect(bars).toHaveLength(2);
      expect(Math.abs(bars[0]! - 100)).toBeLessThan(0.1);
      expect(Math.abs(bars[1]! - 101.6)).toBeLessThan(0.1);
    }
  });

  test("nothing is printed in the margins", (context) => {
    for (const page of greyPages(requireProgram(context, "pdftoppm"), bytes, 100)) {
      const clear = Math.floor(((PAGE_MARGIN - 0.3) / 25.4) * page.dpi); // half a line's width may stand over
      const inked: string[] = [];
      for (let y = 0; y < page.height; y++)
        for (let x = 0; x < page.width; x++) {
          const inMargin = x < clear || y < clear || x >= page.width - clear || y >= page.height - clear;
          if (inMargin && page.at(x, y) < 128) inked.push(`${x} ${y}`);
        }
      expect(inked).toEqual([]);
    }
  });

  test("no word lies outside the page's margins", (context) => {
    const words = wordsOf(requireProgram(context, "pdftotext"), bytes).filter(({ text }) => text.trim() !== "");
    expect(words.length).toBeGreaterThan(100);
    // A word that every tile's border cuts is still in the file; the clip, tested below, keeps it off the paper.
    const first = words.filter(({ page }) => page === 1);
    for (const { box, size, text } of first) {
      expect(box.left, text).toBeGreaterThan(PAGE_MARGIN - 0.5);
      expect(box.right, text).toBeLessThan(size.width - PAGE_MARGIN + 0.5);
      expect(box.bottom, text).toBeLessThan(size.height - PAGE_MARGIN + 1);
    }
  });

  test("every page says whose it is and which", (context) => {
    const words = wordsOf(requireProgram(context, "pdftotext"), bytes);
    const pages = Math.max(...words.map(({ page }) => page));
    for (let page = 1; page <= pages; page++) {
      const text = words.filter((word) => word.page === page).map((word) => word.text);
      expect(text).toContain("long-jack");
      expect(text.join(" ")).toContain(`page ${page} of ${pages}`);
      expect(text.join(" ")).toContain("100 mm");
      expect(text.join(" ")).toContain("4 in");
    }
  });
});

/** Lengths of the two lowest bars of a page, upper first, mm: rows whose longest dark run is between 95 and 105 mm. */
function barLengths(page: Pixels): number[] {
  const bars: { row: number; length: number }[] = [];
  for (let y = page.height - 1; y > page.height - (35 / 25.4) * page.dpi; y--) {
    const { from, to } = longestRun(page, y);
    const length = toMm(to - from, page);
    if (length < 95 || length > 105) continue;
    const same = bars.at(-1);
    if (same && same.row - y <= 2) {
      same.row = y;
      same.length = Math.max(same.length, length);
    } else bars.push({ row: y, length });
  }
  return bars.reverse().map(({ length }) => length);
}

test("the same bytes twice", async () => {
  const [first, second] = [await layoutOf(jack(), "A4"), await layoutOf(jack(), "A4")];
  expect(Buffer.compare(Buffer.from(first), Buffer.from(second))).toBe(0);
});

test("tiles of a black band are cut exactly at their borders and make up its length", async (context) => {
  const [width, height] = [700, 150];
  const band: Picture = {
    name: "band",
    title: "Band",
    width,
    height,
    marks: [
      {
        kind: "area",
        shade: 0.6,
        boundaries: [polygon(point(0, 20), point(width, 20), point(width, 40), point(0, 40))],
      },
    ],
  };
  const bytes = await layoutPdf([band], { paper: "A4", name: "band", version: "0", units: "mm" });
  const pages = greyPages(requireProgram(context, "pdftoppm"), bytes, 300).slice(1);
  expect(pages).toHaveLength(3); // (700 − 12) / (279 − 12), rounded up
  const lengths = pages.map((page) => {
    const rows = Array.from({ length: page.height }, (_, y) => longestRun(page, y, 200));
    const runs = rows
      .filter(({ from, to }) => toMm(to - from, page) > 150 && toMm(to - from, page) < 265)
      .map(({ from, to }) => to - from);
    return toMm(Math.max(...runs), page);
  });
  for (const length of lengths) expect(Math.abs(length - (width + 2 * OVERLAP) / 3)).toBeLessThan(0.2);
  expect(Math.abs(lengths.reduce((a, b) => a + b) - 2 * OVERLAP - width)).toBeLessThan(0.4); // three tiles, each read to a pixel of 0.085 mm, and trim lines 0.18 mm wide
});

test("spans cover a length from end to end with the overlap asked for", () => {
  for (let length = 20; length < 2000; length += 37.3)
    for (const room of [100, 192, 279.4]) {
      const found = splitLength(length, room).spans;
      expect(found[0]!.from).toBe(0);
      expect(found.at(-1)!.from + found.at(-1)!.length).toBeCloseTo(length, 9);
      for (const [i, span] of found.entries()) {
        expect(span.length).toBeLessThanOrEqual(room + 1e-9);
        const next = found[i + 1];
        if (next) expect(span.from + span.length - next.from).toBeCloseTo(OVERLAP, 9);
      }
    }
});

test("a tall picture is tiled in rows too", async (context) => {
  const tall: Picture = {
    name: "tall",
    title: "Tall",
    width: 300,
    height: 600,
    marks: [{ kind: "line", line: "outline", segments: [line(point(0, 0), point(300, 600))] }],
  };
  const bytes = await layoutPdf([tall], { paper: "A4", name: "tall", version: "0", units: "in" });
  const text = wordsOf(requireProgram(context, "pdftotext"), bytes)
    .map((word) => word.text)
    .join(" ");
  expect(text).toMatch(/tall A1\b/);
  expect(text).toMatch(/tall C2\b/);
  expect(text).toMatch(/trim here, lay over A1/);
});

test("words that one tile's edge would cut stand whole on its neighbour, and there alone; a tile says of what it is", async (context) => {
  const wide: Picture = {
    name: "side-board",
    title: "Board",
    width: 400,
    height: 60,
    marks: [
      { kind: "line", line: "outline", segments: [line(point(0, 30), point(400, 30))] },
      // a word every 4 mm, 12 mm wide or so: a seam, wherever it lies, runs through some
      ...Array.from({ length: 95 }, (_, i): Picture["marks"][number] => ({
        kind: "text",
        text: `w${i}w`,
        at: point(4 * i, 5 + (i % 9) * 6),
        size: 6,
      })),
    ],
  };
  const bytes = await layoutPdf([wide], { paper: "A4", name: "wide", version: "0", units: "mm" });
  const words = wordsOf(requireProgram(context, "pdftotext"), bytes).filter(({ page }) => page > 1);
  const counts = Array.from({ length: 95 }, (_, i) => words.filter(({ text }) => text === `w${i}w`).length);
  expect(Math.min(...counts)).toBe(1);
  // what both tiles have whole, in the strip by which they overlap, stands on both
  const twice = counts.filter((count) => count === 2).length;
  expect(twice).toBeLessThanOrEqual(OVERLAP / 4);
  const text = words.map((word) => word.text).join(" ");
  expect(text).toMatch(/side board A1: edge of A2 lies here/);
  expect(text).toMatch(/side board A2: trim here, lay over A1/);
});
