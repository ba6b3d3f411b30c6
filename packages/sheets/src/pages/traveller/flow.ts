// Blocks of words and pictures one below the other in columns; a group that goes into a column is never parted.

import type { Pdf } from "../../pdf/document.ts";
import { type Paper, pageSize, type Size } from "../paper.ts";

/** A place on the page: mm from its upper left corner. */
export interface PageOffset {
  readonly left: number;
  readonly top: number;
}

/** Something so high, drawn with its upper left corner at a place. */
export interface PageBlock {
  readonly height: number;
  draw(page: TravellerPage, at: PageOffset): void;
}

export interface TravellerPage {
  readonly pdf: Pdf;
  readonly size: Size;
}

/** Blocks that belong together. Where they are too high for a column they part between two blocks, under `again`. */
export interface BlockGroup {
  readonly blocks: readonly PageBlock[];
  /** Heading where the group goes on in another column. */
  readonly continuation?: PageBlock;
  /** Whether it begins a column of its own. */
  readonly startsColumn?: boolean;
}

export interface PlacedBlock {
  readonly block: PageBlock;
  readonly top: number;
}

/** mm of paper round everything, and for head and foot. */
const MARGIN = 9;
const HEAD = 9;
const FOOT = 7;
const GUTTER = 10;
const BETWEEN_GROUPS = 7;

/** Pages of one paper: how large, how many columns side by side, and where they stand. */
export interface Columns {
  readonly size: Size;
  readonly lefts: readonly number[];
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** A4 and Letter are read upright, one column; the sheets twice their size lie across and carry two such columns. */
export function columnLayout(paper: Paper): Columns {
  const across = paper === "A3" || paper === "Tabloid";
  const size = pageSize(paper, across ? "landscape" : "portrait");
  const count = across ? 2 : 1;
  const width = (size.width - 2 * MARGIN - (count - 1) * GUTTER) / count;
  const lefts = Array.from({ length: count }, (_, i) => MARGIN + i * (width + GUTTER));
  return { size, lefts, top: MARGIN + HEAD, width, height: size.height - 2 * MARGIN - HEAD - FOOT };
}

/** What stands in each column, column by column through all pages. */
export function flowBlocks(groups: readonly BlockGroup[], height: number): PlacedBlock[][] {
  const columns: PlacedBlock[][] = [[]];
  let used = 0;
  const next = () => {
    columns.push([]);
    used = 0;
  };
  const put = (block: PageBlock) => {
    columns.at(-1)!.push({ block, top: used });
    used += block.height;
  };
  for (const { blocks, continuation, startsColumn } of groups) {
    const whole = blocks.reduce((sum, block) => sum + block.height, 0);
    if (used > 0) used += BETWEEN_GROUPS;
    if (used > 0 && (startsColumn || used + whole > height) && columns.at(-1)!.length > 0) next();
    for (const [i, block] of blocks.entries()) {
      if (used > 0 && used + block.height > height) {
        next();
        if (continuation && i > 0) put(continuation);
      }
      put(block);
    }
  }
  return columns.filter((column) => column.length > 0);
}
