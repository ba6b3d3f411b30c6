// Words on a page: wrapped to a width, put down from the top, with boxes to tick and lines to write on.
import { line, point, polygon } from "@lamplane/geometry";
import { drawPicture } from "../../pdf/draw-picture.ts";
import { measureText } from "../../pdf/typefaces.ts";
import { Marks } from "../../picture/marks.ts";
import type { PageBlock, PageOffset, TravellerPage } from "./flow.ts";

/** Height of the letters' em, mm: read on a bench at arm's length. */
export const TEXT_SIZE = 3.15;
export const SMALL_TEXT_SIZE = 2.8;
/** From one baseline to the next, of the em. */
const LEADING = 1.33;
/** From a line's top to its baseline, of the em. */
const ASCENT = 0.95;

export interface TextStyle {
  readonly size?: number;
  readonly bold?: boolean;
}

/** A text's lines, none wider than `width` mm; a word that is wider by itself is broken. */
export function wrapText(text: string, width: number, { size = TEXT_SIZE, bold = false }: TextStyle = {}): string[] {
  const fits = (words: string) => measureText(words, size, bold) <= width;
  const lines: string[] = [];
  for (const word of text.split(" ").flatMap((whole) => breakWord(whole, fits))) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && fits(longer)) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function breakWord(word: string, fits: (words: string) => boolean): string[] {
  if (fits(word) || word.length < 2) return [word];
  let count = word.length - 1;
  while (count > 1 && !fits(word.slice(0, count))) count--;
  return [word.slice(0, count), ...breakWord(word.slice(count), fits)];
}

export const linesHeight = (lines: readonly string[], size = TEXT_SIZE): number => lines.length * size * LEADING;

/** Marks put down with y counted from the page's top. */
export function drawOnPage({ pdf, size }: TravellerPage, draw: (put: PageWriter) => void): void {
  const marks = new Marks();
  const up = (left: number, top: number) => point(left, size.height - top);
  draw({
    lines: (lines, { left, top }, { size: em = TEXT_SIZE, bold = false } = {}) => {
      lines.forEach((words, i) => {
        marks.text(words, up(left, top + (i * LEADING + ASCENT) * em), { size: em, bold });
      });
    },
    text: (words, { left, top }, { size: em = TEXT_SIZE, bold = false, anchor = "start" } = {}) => {
      marks.text(words, up(left, top + ASCENT * em), { size: em, bold, anchor });
    },
    rule: (from, to, kind = "thin") => {
      marks.line(kind, line(up(from.left, from.top), up(to.left, to.top)));
    },
    box: ({ left, top }, width, height, kind = "thin") => {
      marks.outline(kind, rectangle(up(left, top), width, height));
    },
    fill: ({ left, top }, width, height, shade) => {
      marks.area(shade, rectangle(up(left, top), width, height));
    },
  });
  drawPicture(pdf, { height: size.height, marks: marks.all }, { left: 0, top: 0 });
}

export interface PageWriter {
  lines(lines: readonly string[], at: PageOffset, style?: TextStyle): void;
  text(words: string, at: PageOffset, style?: TextStyle & { readonly anchor?: "start" | "middle" | "end" }): void;
  rule(from: PageOffset, to: PageOffset, kind?: "thin" | "outline" | "grid"): void;
  box(at: PageOffset, width: number, height: number, kind?: "thin" | "outline"): void;
  fill(at: PageOffset, width: number, height: number, shade: number): void;
}

const rectangle = (corner: { x: number; y: number }, width: number, height: number) =>
  polygon(
    point(corner.x, corner.y),
    point(corner.x, corner.y - height),
    point(corner.x + width, corner.y - height),
    point(corner.x + width, corner.y),
  );

/** A square to tick; one that is ticked already carries a cross. */
export function drawTickBox(put: PageWriter, { left, top }: PageOffset, ticked = false): void {
  const side = TICK_SIZE;
  put.box({ left, top }, side, side, "outline");
  if (!ticked) return;
  put.rule({ left, top }, { left: left + side, top: top + side }, "outline");
  put.rule({ left, top: top + side }, { left: left + side, top }, "outline");
}
export const TICK_SIZE = 3;

/** A paragraph. */
export function paragraphBlock(text: string, width: number, style: TextStyle = {}, after = 1.2): PageBlock {
  const lines = wrapText(text, width, style);
  return {
    height: linesHeight(lines, style.size) + after,
    draw: (page, at) => drawOnPage(page, (put) => put.lines(lines, at, style)),
  };
}

/** A heading within a group. */
export const headingBlock = (text: string, width: number, size = 3.8): PageBlock =>
  withGapBefore(paragraphBlock(text, width, { size, bold: true }, 0.8), 1.2);

const withGapBefore = (block: PageBlock, gap: number): PageBlock => ({
  height: block.height + gap,
  draw: (page, { left, top }) => block.draw(page, { left, top: top + gap }),
});

export interface TickStyle {
  readonly numbered?: boolean;
  readonly ticked?: boolean;
  /** mm between two sentences. */
  readonly gap?: number;
}

/** Sentences each with a box to tick, numbered where the order counts. */
export function checklistBlock(
  sentences: readonly string[],
  width: number,
  { numbered = false, ticked = false, gap = 1.1 }: TickStyle = {},
): PageBlock {
  const indent = numbered ? 10.5 : 5.5;
  const rows = sentences.map((sentence) => wrapText(sentence, width - indent));
  return {
    height: rows.reduce((sum, lines) => sum + linesHeight(lines) + gap, 0),
    draw: (page, { left, top }) =>
      drawOnPage(page, (put) => {
        let y = top;
        rows.forEach((lines, i) => {
          drawTickBox(put, { left, top: y + 0.5 }, ticked);
          if (numbered) put.text(`${i + 1}.`, { left: left + indent - 1.2, top: y }, { anchor: "end", bold: true });
          put.lines(lines, { left: left + indent, top: y });
          y += linesHeight(lines) + gap;
        });
      }),
  };
}

/** Blocks beside each other, each with its left edge. */
export const sideBySide = (...blocks: readonly { readonly block: PageBlock; readonly left: number }[]): PageBlock => ({
  height: Math.max(...blocks.map(({ block }) => block.height)),
  draw: (page, at) => {
    for (const { block, left } of blocks) block.draw(page, { left: at.left + left, top: at.top });
  },
});

/** Blocks one below the other as one. */
export const stackBlocks = (...blocks: readonly PageBlock[]): PageBlock => ({
  height: blocks.reduce((sum, { height }) => sum + height, 0),
  draw: (page, at) => {
    let { top } = at;
    for (const block of blocks) {
      block.draw(page, { left: at.left, top });
      top += block.height;
    }
  },
});
