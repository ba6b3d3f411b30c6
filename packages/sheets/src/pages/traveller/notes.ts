// Lines for the maker's own notes, where a page has room left.
import { STEP_PAGE } from "../../words/papers.ts";
import type { PageBlock } from "../blocks/block.ts";
import { drawOnPage } from "../blocks/page-writer.ts";

/** mm from one line to the next; a pencil writes between. */
const LINE = 8;
const HEADING = 6;
const MOST_LINES = 4;

/** As many lines as the blocks of a page leave room for; none where there is no room for two. */
export function notesBlock(
  blocks: readonly PageBlock[],
  size: { readonly width: number; readonly height: number },
): PageBlock[] {
  const left = size.height - blocks.reduce((sum, { height }) => sum + height, 0) - HEADING;
  const lines = Math.min(MOST_LINES, Math.floor(left / LINE));
  if (lines < 2) return [];
  const { width } = size;
  return [
    {
      width,
      height: HEADING + lines * LINE,
      draw: (page, { left: x, top }) =>
        drawOnPage(page, (put) => {
          put.text(STEP_PAGE.notes, { left: x, top: top + 1.2 }, { bold: true });
          for (let i = 1; i <= lines; i++)
            put.rule(
              { left: x, top: top + HEADING + i * LINE - 1 },
              { left: x + width, top: top + HEADING + i * LINE - 1 },
              "grid",
            );
        }),
    },
  ];
}
