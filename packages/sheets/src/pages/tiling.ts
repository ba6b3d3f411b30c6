// A picture too large for a page, cut into equal tiles that overlap; each tile then lies on a page like any other picture.
import { type Orientation, type Paper, printableArea, type Size } from "./paper.ts";

/** Overlap of two tiles, mm: enough to glue, and to see the neighbour's edge by. */
export const OVERLAP = 12;
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
}

/** Row letter from the top and column number from the left: "A1". */
export const tileName = ({ row, column }: Pick<Tile, "row" | "column">): string =>
  `${String.fromCharCode("A".charCodeAt(0) + row)}${column + 1}`;

/** Whether a picture fits a page whole. */
export const fitsPage = ({ width, height }: Size, room: Size): boolean => width <= room.width && height <= room.height;

/** The tiles of a picture for pages of one orientation. */
export function tilePicture(picture: Size, paper: Paper, orientation: Orientation): Tiling {
  const page = printableArea(paper, orientation);
  const tall = picture.height > page.height - STRIP;
  const strip = { left: tall ? STRIP : 0, top: STRIP };
  const across = splitLength(picture.width, page.width - strip.left);
  const down = splitLength(picture.height, page.height - strip.top);
  const tiles = down.flatMap((y, row) =>
    across.map((x, column) => ({ row, column, left: x.from, top: y.from, width: x.length, height: y.length })),
  );
  return { rows: down.length, columns: across.length, tiles, strip };
}

/** Equal spans that cover a length, each at most `room` long, neighbours overlapping by `OVERLAP`; one where it fits. */
export function splitLength(length: number, room: number): { from: number; length: number }[] {
  if (length <= room) return [{ from: 0, length }];
  const count = Math.ceil((length - OVERLAP) / (room - OVERLAP) - 1e-9);
  const each = (length + (count - 1) * OVERLAP) / count;
  return Array.from({ length: count }, (_, i) => ({ from: i * (each - OVERLAP), length: each }));
}
