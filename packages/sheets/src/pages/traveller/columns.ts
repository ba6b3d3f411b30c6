// Where the traveller's columns stand on a page.

import { type Paper, pageSize, type Size } from "../paper.ts";

/** mm of paper round everything, and for head and foot. */
const MARGIN = 9;
const HEAD = 9;
const FOOT = 7;
const GUTTER = 10;

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
