// A table as a block: cells of words in columns, rows parted by thin lines.
import type { PageBlock } from "./block.ts";
import { drawOnPage } from "./page-writer.ts";
import { linesHeight, wrapOnSheet } from "./text.ts";

const ROW_GAP = 1;

/** Cells of a row with the width of each column; the row is as high as its highest cell. */
interface Cell {
  readonly text: string;
  readonly bold?: boolean;
  readonly size?: number;
}

/** A table whose columns are told by their widths, mm. */
export function tableBlock(rows: readonly (readonly Cell[])[], widths: readonly number[]): PageBlock {
  const laid = rows.map((cells) =>
    cells.map((cell, k) => ({ ...cell, lines: wrapOnSheet(cell.text, widths[k]! - 2, cell) })),
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
          cells.forEach(({ lines, ...style }, k) => {
            put.lines(lines, { left: x, top: y + ROW_GAP / 2 }, style);
            x += widths[k]!;
          });
          y += high[i]!;
          put.rule({ left, top: y }, { left: left + total, top: y }, "grid");
        });
      }),
  };
}
