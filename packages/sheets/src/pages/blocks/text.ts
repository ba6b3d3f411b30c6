// Words as blocks: lines, paragraphs, headings, checklists, tables.
import { measureText } from "../../pdf/typefaces.ts";
import { wrapText } from "../../picture/text-wrap.ts";
import { type PageBlock, type PageOffset, withGaps } from "./block.ts";
import { drawOnPage, LEADING, type PageWriter, TEXT_SIZE, type TextStyle } from "./page-writer.ts";

/** A text's lines as a sheet has them, none wider than `width` mm; a word that is wider by itself is broken. */
export const wrapOnSheet = (
  text: string,
  width: number,
  { size = TEXT_SIZE, bold = false }: TextStyle = {},
): string[] => wrapText(text, width, { measure: measureText, size, bold, breakWords: true });

export const linesHeight = (lines: readonly string[], size = TEXT_SIZE, leading = LEADING): number =>
  lines.length * size * leading;

/** A square to tick; one that is ticked already carries a cross. */
export function drawTickBox(put: PageWriter, { left, top }: PageOffset, ticked = false): void {
  const side = TICK_SIZE;
  put.box({ left, top }, side, side, "outline");
  if (!ticked) return;
  put.rule({ left, top }, { left: left + side, top: top + side }, "outline");
  put.rule({ left, top: top + side }, { left: left + side, top }, "outline");
}
const TICK_SIZE = 3;

/** Lines as they stand. */
export const linesBlock = (lines: readonly string[], width: number, style: TextStyle = {}): PageBlock => ({
  width,
  height: linesHeight(lines, style.size, style.leading),
  draw: (page, at) => drawOnPage(page, (put) => put.lines(lines, at, style)),
});

/** A paragraph. */
export const paragraphBlock = (text: string, width: number, style: TextStyle = {}, after = 1.2): PageBlock =>
  withGaps(linesBlock(wrapOnSheet(text, width, style), width, style), 0, after);

/** A heading within a group. */
export const headingBlock = (text: string, width: number, size = 3.8): PageBlock =>
  withGaps(paragraphBlock(text, width, { size, bold: true }, 0.8), 1.2);

export interface TickStyle {
  readonly numbered?: boolean;
  /** mm between two sentences. */
  readonly gap?: number;
}

/** Sentences each with a box to tick, numbered where the order counts. */
export function checklistBlock(
  sentences: readonly string[],
  width: number,
  { numbered = false, gap = 1.1 }: TickStyle = {},
): PageBlock {
  const indent = numbered ? 10.5 : 5.5;
  const rows = sentences.map((sentence) => wrapOnSheet(sentence, width - indent));
  return {
    width,
    height: rows.reduce((sum, lines) => sum + linesHeight(lines) + gap, 0),
    draw: (page, { left, top }) =>
      drawOnPage(page, (put) => {
        let y = top;
        rows.forEach((lines, i) => {
          drawTickBox(put, { left, top: y + 0.5 });
          if (numbered) put.text(`${i + 1}.`, { left: left + indent - 1.2, top: y }, { anchor: "end", bold: true });
          put.lines(lines, { left: left + indent, top: y });
          y += linesHeight(lines) + gap;
        });
      }),
  };
}
