// Lines to write feeler gaps on: a row for each place of the straightedge, a cell for each station along it.

import type { ReadingRow } from "../../traveller/step.ts";
import { STEP_PAGE } from "../../words/papers.ts";
import { type PageBlock, stackBlocks } from "../blocks/block.ts";
import { drawOnPage, SMALL_TEXT_SIZE } from "../blocks/page-writer.ts";
import { headingBlock, linesHeight, wrapOnSheet } from "../blocks/text.ts";

/** Share of the width for where the straightedge lies. */
const PLACEMENT = 0.42;
/** mm between two cells, and from a station's name to the line under it: a carpenter's pencil writes between. */
const GAP = 2.4;
const WRITE = 5.4;

/** Rows with two lines at each station, the thickest leaf that goes in before the thinnest that does not. */
export const readingsBlock = (rows: readonly ReadingRow[], width: number): PageBlock =>
  stackBlocks(headingBlock(STEP_PAGE.gaps, width, 3.3), ...rows.map((row) => rowBlock(row, width)));

function rowBlock({ placement, ends, stations }: ReadingRow, width: number): PageBlock {
  const left = PLACEMENT * width;
  const lines = [placement, ends].flatMap((words) => wrapOnSheet(words, left - 2, { size: SMALL_TEXT_SIZE }));
  const high = Math.max(linesHeight(lines, SMALL_TEXT_SIZE), SMALL_TEXT_SIZE + WRITE) + 0.6;
  const each = (width - left) / stations.length;
  return {
    width,
    height: high,
    draw: (page, { left: x, top }) =>
      drawOnPage(page, (put) => {
        put.lines(lines, { left: x, top }, { size: SMALL_TEXT_SIZE });
        stations.forEach((station, i) => {
          const from = x + left + i * each;
          const foot = top + SMALL_TEXT_SIZE + WRITE - 0.8;
          const half = (each - GAP) / 2;
          put.text(STEP_PAGE.station({ station }), { left: from, top }, { size: SMALL_TEXT_SIZE });
          put.rule({ left: from, top: foot }, { left: from + half - 1, top: foot }, "outline");
          put.text("/", { left: from + half, top: foot - 3.4 }, { anchor: "middle" });
          put.rule({ left: from + half + 1, top: foot }, { left: from + each - GAP, top: foot }, "outline");
        });
        put.rule({ left: x, top: top + high - 0.3 }, { left: x + width, top: top + high - 0.3 }, "grid");
      }),
  };
}
