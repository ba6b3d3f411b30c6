// Tables of the traveller: numbers with what they were, blanks to write in, the stock list. Rows part by thin lines.

import { measureText } from "../../pdf/typefaces.ts";
import type { Blank, Caution, StepNumber } from "../../traveller/step.ts";
import { type PageBlock, stackBlocks } from "../blocks/block.ts";
import { drawOnPage, SMALL_TEXT_SIZE, TEXT_SIZE } from "../blocks/page-writer.ts";
import { tableBlock } from "../blocks/table.ts";
import { headingBlock, linesHeight, wrapOnSheet } from "../blocks/text.ts";

/** Numbers of a step: label, value, and small beside it what was planned. */
export function numbersBlock(rows: readonly StepNumber[], width: number): PageBlock {
  const value = Math.max(16, ...rows.map((row) => measureText(row.value, TEXT_SIZE, true) + 3));
  const note = Math.max(0, ...rows.map((row) => measureText(numberNote(row), SMALL_TEXT_SIZE) + 3));
  const [valueWidth, noteWidth] = [Math.min(value, 0.4 * width), note > 3 ? Math.min(note, 0.34 * width) : 0];
  const widths = [width - valueWidth - noteWidth, valueWidth, ...(noteWidth > 0 ? [noteWidth] : [])];
  const cells = rows.map((row) => [
    { text: row.label },
    { text: row.value, bold: true },
    ...(noteWidth > 0 ? [{ text: numberNote(row), size: SMALL_TEXT_SIZE }] : []),
  ]);
  return tableBlock(cells, widths);
}

const numberNote = ({ was }: StepNumber): string => (was === undefined ? "" : `was ${was}`);

/** Blanks to write measured values in. */
export function blanksBlock(blanks: readonly Blank[], width: number): PageBlock {
  return stackBlocks(
    headingBlock("Measure and write down", width, 3.5),
    ...blanks.map((blank) => blankBlock(blank, width)),
  );
}

const LINE = 8; // mm for a line to write on with a carpenter's pencil

function blankBlock({ key, label, expected, measured, times = 1 }: Blank, width: number): PageBlock {
  const lines = wrapOnSheet(label, width);
  const textHeight = linesHeight(lines);
  const foretold = wrapOnSheet(`expected ${expected}`, width, { size: SMALL_TEXT_SIZE });
  return {
    width,
    height: textHeight + LINE + linesHeight(foretold, SMALL_TEXT_SIZE) + 1.5,
    draw: (page, { left, top }) =>
      drawOnPage(page, (put) => {
        put.lines(lines, { left, top });
        const foot = top + textHeight + LINE - 1;
        put.text(`${key} =`, { left, top: foot - 4.2 }, { bold: true, size: TEXT_SIZE });
        const from = left + measureText(`${key} =`, TEXT_SIZE, true) + 2;
        const each = (left + width - 2 - from + GAP) / times;
        for (let i = 0; i < times; i++)
          put.rule({ left: from + i * each, top: foot }, { left: from + (i + 1) * each - GAP, top: foot }, "outline");
        if (measured !== undefined) put.text(measured, { left: from + 1, top: foot - 4.4 }, { bold: true });
        put.lines(foretold, { left, top: foot + 0.8 }, { size: SMALL_TEXT_SIZE });
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
        put.text("CAUTION", { left: left + bar + 2, top: top + 1 }, { bold: true, size: 3.2 });
        let y = top + 5.6;
        for (const lines of rows) {
          put.lines(lines, { left: left + bar + 2, top: y }, { size: CAUTION_SIZE });
          y += linesHeight(lines, CAUTION_SIZE) + gap;
        }
      }),
  };
}
const CAUTION_SIZE = 2.95;
