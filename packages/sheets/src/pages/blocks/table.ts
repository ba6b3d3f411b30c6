// A table as a block: cells of words in columns, rows parted by thin lines.
import { measureText } from "../../pdf/typefaces.ts";
import type { PageBlock } from "./block.ts";
import { drawOnPage, TEXT_SIZE } from "./page-writer.ts";
import { linesHeight, wrapOnSheet } from "./text.ts";

const ROW_GAP = 1;

/** Cells of a row with the width of each column; the row is as high as its highest cell. */
interface Cell {
  readonly text: string;
  readonly bold?: boolean;
  readonly size?: number;
  /** Whether a line to write on follows its words. */
  readonly hasLine?: boolean;
}

/** A table by the widths of its columns, mm. */
export function tableBlock(rows: readonly (readonly Cell[])[], widths: readonly number[]): PageBlock {
  const laid = rows.map((cells) =>
    cells.map((cell, k) => ({ ...cell, lines: cell.text === "" ? [] : wrapOnSheet(cell.text, widths[k]! - 2, cell) })),
  );
  const high = laid.map((cells) => Math.max(...cells.map(({ lines, size }) => linesHeight(lines, size))) + ROW_GAP);
  const total = widths.reduce((sum, w) => sum + w, 0);
  return {
    width: total,
    height: high.reduce((sum, h) => sum + h, 0) + ROW_GAP,
    draw: (page, { left, top }) =>
      drawOnPage(page, (put) => {
        let y = top;
        laid.forEach((cells, i) => {
          let x = left;
          cells.forEach(({ lines, hasLine, ...style }, k) => {
            put.lines(lines, { left: x, top: y + ROW_GAP / 2 }, style);
            if (hasLine) {
              const foot = y + high[i]! - ROW_GAP / 2;
              const from = x + measureText(lines[0]!, style.size ?? TEXT_SIZE) + 1.5;
              put.rule({ left: from, top: foot }, { left: x + widths[k]!, top: foot }, "outline");
            }
            x += widths[k]!;
          });
          y += high[i]!;
          put.rule({ left, top: y }, { left: left + total, top: y }, "grid");
        });
      }),
  };
}

/** The same a row at a time, for a table that may be higher than what is left of its page. */
export const tableRows = (rows: readonly (readonly Cell[])[], widths: readonly number[]): PageBlock[] =>
  rows.map((row, i) => {
    const block = tableBlock([row], widths);
    return i < rows.length - 1 ? { ...block, height: block.height - ROW_GAP } : block;
  });
