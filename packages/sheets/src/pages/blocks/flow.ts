// Blocks of words and pictures one below the other in columns; a group that goes into a column is never parted.

import type { PageBlock } from "./block.ts";

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

const BETWEEN_GROUPS = 7; // mm

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
