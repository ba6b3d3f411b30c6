// A picture too large for a page, cut into tiles that overlap; each tile then lies on a page like any other picture.
import type { Picture } from "../picture/picture.ts";
import { type Orientation, type Paper, printableArea, type Size } from "./paper.ts";
import { seamObstacles, splitLength } from "./seams.ts";

/** Strips above and beside a tile, mm, in which its joints are named. */
const STRIP = 5;

export interface Tile extends Size {
  readonly row: number;
  readonly column: number;
  /** Left and upper edge in the picture, from its upper left corner. mm. */
  readonly left: number;
  readonly top: number;
}
export interface Tiling {
  readonly rows: number;
  readonly columns: number;
  /** Row by row from the top, each from the left. */
  readonly tiles: readonly Tile[];
  /** Width of the strip left of every tile and height of the one above, mm. */
  readonly strip: { readonly left: number; readonly top: number };
  /** Cuts and marks that a seam runs through, or nearer to than it should. */
  readonly crossings: number;
}

/** Row letter from the top and column number from the left: "A1". */
export const tileName = ({ row, column }: Pick<Tile, "row" | "column">): string =>
  `${String.fromCharCode("A".charCodeAt(0) + row)}${column + 1}`;

/** Whether a picture fits a page whole. */
export const fitsPage = ({ width, height }: Size, room: Size): boolean => width <= room.width && height <= room.height;

/** The tiles of a picture for pages of one orientation, parted where no cut or mark is drawn. */
export function tilePicture(picture: Picture, paper: Paper, orientation: Orientation): Tiling {
  const page = printableArea(paper, orientation);
  const tall = picture.height > page.height - STRIP;
  const strip = { left: tall ? STRIP : 0, top: STRIP };
  const across = splitLength(picture.width, page.width - strip.left, seamObstacles(picture, "upright"));
  const down = splitLength(picture.height, page.height - strip.top, seamObstacles(picture, "level"));
  const tiles = down.spans.flatMap((y, row) =>
    across.spans.map((x, column) => ({
      row,
      column,
      left: x.from,
      top: y.from,
      width: x.length,
      height: y.length,
    })),
  );
  return {
    rows: down.spans.length,
    columns: across.spans.length,
    tiles,
    strip,
    crossings: across.crossings + down.crossings,
  };
}
