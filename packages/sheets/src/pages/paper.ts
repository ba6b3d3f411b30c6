// Papers and what a page of each leaves for pictures, once the printer's margins, the head and the bars are taken off. mm.
import type { Design } from "@lamplane/parameters/table";
import { toMillimetres } from "@lamplane/parameters/units";

export type Paper = Design["shop"]["paper"];
export type Orientation = "portrait" | "landscape";
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Upright sizes. @see ISO 216:2007: A4, A3; ASME Y14.1 (ANSI A and B): Letter, Tabloid */
const PAPERS: Readonly<Record<Paper, Size>> = {
  A4: { width: 210, height: 297 },
  A3: { width: 297, height: 420 },
  Letter: { width: toMillimetres(8.5, "in"), height: toMillimetres(11, "in") },
  Tabloid: { width: toMillimetres(11, "in"), height: toMillimetres(17, "in") },
};

/** What no printer is asked to print on, on every side. */
export const PAGE_MARGIN = 9;
export const HEAD_HEIGHT = 7;
export const FOOT_HEIGHT = 13;

export function pageSize(paper: Paper, orientation: Orientation): Size {
  const { width, height } = PAPERS[paper];
  return orientation === "portrait" ? { width, height } : { width: height, height: width };
}

/** Room for pictures on a page: its left and top from the page's upper left corner, and its size. */
export interface PrintableArea extends Size {
  readonly left: number;
  readonly top: number;
}

export function printableArea(paper: Paper, orientation: Orientation): PrintableArea {
  const { width, height } = pageSize(paper, orientation);
  return {
    left: PAGE_MARGIN,
    top: PAGE_MARGIN + HEAD_HEIGHT,
    width: width - 2 * PAGE_MARGIN,
    height: height - 2 * PAGE_MARGIN - HEAD_HEIGHT - FOOT_HEIGHT,
  };
}
