// Tables of the traveller: numbers with what they were, blanks to write in, the stock list. Rows part by thin lines.

import { measureText } from "../../pdf/typefaces.ts";
import type { Blank, Caution, StepNumber } from "../../traveller/step.ts";
import { STEP_PAGE } from "../../words/papers.ts";
import { type PageBlock, stackBlocks } from "../blocks/block.ts";
import { drawOnPage, SMALL_TEXT_SIZE, TEXT_SIZE } from "../blocks/page-writer.ts";
import { tableBlock } from "../blocks/table.ts";
import { headingBlock, linesHeight, wrapOnSheet } from "../blocks/text.ts";

export interface NumbersStyle {
  readonly size?: number;
  /** Rows of other blocks under or over this one whose values begin in the same line. */
  readonly alignedWith?: readonly StepNumber[];
}

/** Numbers of a step: label, value, small beside it what was planned, and a line where it is read again. */
export function numbersBlock(
  rows: readonly StepNumber[],
  width: number,
  { size = TEXT_SIZE, alignedWith = rows }: NumbersStyle = {},
): PageBlock {
  const small = SMALL_TEXT_SIZE;
  const columnFor = (texts: readonly string[], em: number, bold: boolean, most: number) => {
    const widest = Math.max(0, ...texts.map((text) => measureText(text, em, bold)));
    return widest === 0 ? 0 : Math.min(widest + 3, most * width);
  };
  const value = Math.max(
    16,
    columnFor(
      alignedWith.map((row) => row.value),
      size,
      true,
      0.44,
    ),
  );
  const note = columnFor(rows.map(numberNote), small, false, 0.3);
  const read = rows.some(({ isRead }) => isRead) ? READ : 0;
  const widths = [width - value - note - read, value, note, read];
  const cells = rows.map((row) => [
    { text: row.label, size },
    { text: row.value, bold: true, size },
    { text: numberNote(row), size: small },
    { text: row.isRead ? STEP_PAGE.read : "", size: small, hasLine: row.isRead === true },
  ]);
  return tableBlock(cells, widths);
}
/** mm for a number to be written. */
const READ = 20;

const numberNote = ({ was }: StepNumber): string => (was === undefined ? "" : STEP_PAGE.was({ was }));

/** Blanks to write measured values in. */
export function blanksBlock(blanks: readonly Blank[], width: number): PageBlock {
  return stackBlocks(headingBlock(STEP_PAGE.measure, width, 3.5), ...blanks.map((blank) => blankBlock(blank, width)));
}

const LINE = 8; // mm for a line to write on with a carpenter's pencil

function blankBlock({ key, label, expected, measured, times = 1 }: Blank, width: number): PageBlock {
  const foretold = STEP_PAGE.expected({ expected });
  const lines = wrapOnSheet(label, width);
  const beside = measureText(foretold, SMALL_TEXT_SIZE) + 3 + measureText(lines.at(-1)!, TEXT_SIZE) <= width;
  const below = beside ? [] : wrapOnSheet(foretold, width, { size: SMALL_TEXT_SIZE });
  const textHeight = linesHeight(lines) + linesHeight(below, SMALL_TEXT_SIZE);
  return {
    width,
    height: textHeight + LINE + 1.5,
    draw: (page, { left, top }) =>
      drawOnPage(page, (put) => {
        put.lines(lines, { left, top });
        const last = top + linesHeight(lines.slice(1));
        if (beside)
          put.text(foretold, { left: left + width, top: last + 0.3 }, { size: SMALL_TEXT_SIZE, anchor: "end" });
        put.lines(below, { left, top: top + linesHeight(lines) }, { size: SMALL_TEXT_SIZE });
        const foot = top + textHeight + LINE - 1;
        const name = STEP_PAGE.key({ key });
        put.text(name, { left, top: foot - 4.2 }, { bold: true, size: TEXT_SIZE });
        const from = left + measureText(name, TEXT_SIZE, true) + 2;
        const each = (left + width - 2 - from + GAP) / times;
        for (let i = 0; i < times; i++)
          put.rule({ left: from + i * each, top: foot }, { left: from + (i + 1) * each - GAP, top: foot }, "outline");
        if (measured !== undefined) put.text(measured, { left: from + 1, top: foot - 4.4 }, { bold: true });
      }),
  };
}
const GAP = 2.5; // mm between two lines to write on

/** Cautions in a box with a heavy left edge. */
export function cautionsBlock(cautions: readonly Caution[], width: number): PageBlock {
  const bar = 1.4;
  const inner = width - bar - 4;
  const rows = cautions.map(({ text }) => wrapOnSheet(text, inner, { size: CAUTION_SIZE }));
  const gap = 1.3;
  const height = rows.reduce((sum, lines) => sum + linesHeight(lines, CAUTION_SIZE) + gap, 0) + 6;
  return {
    width,
    height: height + 2,
    draw: (page, { left, top }) =>
      drawOnPage(page, (put) => {
        put.box({ left, top }, width, height);
        put.fill({ left, top }, bar, height, 1);
        put.text(STEP_PAGE.caution, { left: left + bar + 2, top: top + 1 }, { bold: true, size: 3.2 });
        let y = top + 5.6;
        for (const lines of rows) {
          put.lines(lines, { left: left + bar + 2, top: y }, { size: CAUTION_SIZE });
          y += linesHeight(lines, CAUTION_SIZE) + gap;
        }
      }),
  };
}
const CAUTION_SIZE = 2.95;
