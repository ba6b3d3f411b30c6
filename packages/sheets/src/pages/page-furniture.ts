// What every sheet carries: the plane's name, what is on the page, its number, and two bars to measure before it is used.
import { point, polygon } from "@lamplane/geometry";
import { toMillimetres } from "@lamplane/parameters/units";
import { measureText, type Typefaces } from "../pdf/typefaces.ts";
import { Marks } from "../picture/marks.ts";
import { PAPER } from "../words/papers.ts";
import { BAR_WORDS, CHECK_PRINT } from "../words/sheets.ts";
import { PAGE_MARGIN, type Size } from "./paper.ts";

export interface PageLabels {
  readonly plane: string;
  readonly what: string;
  readonly page: number;
  readonly pages: number;
  readonly version: string;
}

/** Lengths of the two bars, mm, and what is written at their ends. */
export const BARS = [
  { words: BAR_WORDS.mm, length: 100, step: 10 },
  { words: BAR_WORDS.in, length: toMillimetres(4, "in"), step: toMillimetres(0.5, "in") },
] as const;
const BAR = { line: 0.5, end: 3.6, step: 2, tick: 0.25 } as const;
const BAR_ROW = 6;
const HEADING = 3.6;
const SMALL = 2.7;

/** Head and foot of a page, in mm from its lower left corner. */
export function pageFurniture(page: Size, words: PageLabels, faces: Typefaces): Marks {
  const marks = new Marks();
  drawHead(marks, page, words, faces);
  BARS.forEach((bar, i) => {
    drawBar(marks, bar, PAGE_MARGIN + 1 + (BARS.length - 1 - i) * BAR_ROW);
  });
  const left = PAGE_MARGIN + BARS[1].length + 18;
  CHECK_PRINT.forEach((line, i) => {
    marks.text(line, point(left, PAGE_MARGIN + 8.6 - i * 3.7), { size: 2.7, bold: i === 0 });
  });
  return marks;
}

/** The plane's name, what is here and the page's number; what is here is set smaller where there is much of it. */
function drawHead(marks: Marks, { width, height }: Size, words: PageLabels, faces: Typefaces): void {
  const { plane, what, page, pages, version } = words;
  const y = height - PAGE_MARGIN - 3.6;
  const number = PAPER.page({ page, pages, version });
  const taken = measureText(plane, HEADING, true, faces) + measureText(number, SMALL, false, faces) + 10;
  const size = Math.min(HEADING, (width - 2 * PAGE_MARGIN - taken) / measureText(what, 1, false, faces));
  marks.text(plane, point(PAGE_MARGIN, y), { size: HEADING, bold: true });
  marks.text(what, point(PAGE_MARGIN + measureText(plane, HEADING, true, faces) + 5, y), { size });
  marks.text(number, point(width - PAGE_MARGIN, y), { size: SMALL, anchor: "end" });
  const [low, high] = [y - 2, y - 1.8];
  marks.area(
    1,
    polygon(
      point(PAGE_MARGIN, low),
      point(width - PAGE_MARGIN, low),
      point(width - PAGE_MARGIN, high),
      point(PAGE_MARGIN, high),
    ),
  );
}

/** A bar that is as long as it says from the outside of its left end to the outside of its right one. */
function drawBar(marks: Marks, { words, length, step }: (typeof BARS)[number], y: number): void {
  const box = (x: number, low: number, width: number, height: number) =>
    marks.area(
      1,
      polygon(point(x, low), point(x + width, low), point(x + width, low + height), point(x, low + height)),
    );
  const left = PAGE_MARGIN;
  box(left, y, length, BAR.line);
  box(left, y, BAR.tick, BAR.end);
  box(left + length - BAR.tick, y, BAR.tick, BAR.end);
  for (let x = step; x < length - 1e-6; x += step) box(left + x - BAR.tick / 2, y, BAR.tick, BAR.step);
  marks.text(words, point(left + length + 2, y), { size: 3.2 });
}
