// A block of a page: so wide and so high, drawn anywhere; blocks one below the other or beside each other make a block.
import { POINTS_PER_MM } from "@lamplane/parameters/units";
import type { Pdf } from "../../pdf/document.ts";
import type { Size } from "../paper.ts";

/** A place on the page: mm from its upper left corner. */
export interface PageOffset {
  readonly left: number;
  readonly top: number;
}

export interface SheetPage {
  readonly pdf: Pdf;
  readonly size: Size;
}

/** Something so wide and so high, mm, drawn with its upper left corner at a place. */
export interface PageBlock extends Size {
  draw(page: SheetPage, at: PageOffset): void;
}

export const EMPTY_BLOCK: PageBlock = { width: 0, height: 0, draw: () => {} };

/** Blocks one below the other as one. */
export const stackBlocks = (...blocks: readonly PageBlock[]): PageBlock => ({
  width: Math.max(...blocks.map(({ width }) => width)),
  height: blocks.reduce((sum, { height }) => sum + height, 0),
  draw: (page, at) => {
    let { top } = at;
    for (const block of blocks) {
      block.draw(page, { left: at.left, top });
      top += block.height;
    }
  },
});

/** Blocks beside each other as one, `gap` mm between them. */
export const sideBySide = (gap: number, ...blocks: readonly PageBlock[]): PageBlock => ({
  width: blocks.reduce((sum, { width }) => sum + width, (blocks.length - 1) * gap),
  height: Math.max(...blocks.map(({ height }) => height)),
  draw: (page, at) => {
    let { left } = at;
    for (const block of blocks) {
      block.draw(page, { left, top: at.top });
      left += block.width + gap;
    }
  },
});

/** A block drawn smaller, words and lines and all. */
export const scaledBlock = (block: PageBlock, scale: number): PageBlock =>
  scale === 1
    ? block
    : {
        width: block.width * scale,
        height: block.height * scale,
        draw: (page, at) => {
          const { doc } = page.pdf;
          doc.save();
          doc.scale(scale, { origin: [at.left * POINTS_PER_MM, at.top * POINTS_PER_MM] });
          block.draw(page, at);
          doc.restore();
        },
      };

/** A block with room over and under it, mm. */
export const withGaps = (block: PageBlock, before: number, after = 0): PageBlock => ({
  width: block.width,
  height: block.height + before + after,
  draw: (page, { left, top }) => block.draw(page, { left, top: top + before }),
});
