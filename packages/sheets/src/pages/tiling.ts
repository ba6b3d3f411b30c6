// A picture too large for a page, cut into tiles that overlap; each tile then lies on a page like any other picture.
import type { Picture, TextMark } from "../picture/picture.ts";
import { textCorners } from "../picture/picture-frame.ts";
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

/** The picture without the words, and the white under them, that the tile's edge would cut and another tile has whole. */
export function wordsOfTile(picture: Picture, { tiles }: Tiling, tile: Tile): Picture {
  const isLeftOut = (mark: TextMark) => {
    const corners = textCorners(mark);
    const isIn = ({ left, top, width, height }: Tile) =>
      corners.map(
        ({ x, y }) => x >= left && x <= left + width && picture.height - y >= top && picture.height - y <= top + height,
      );
    const here = isIn(tile);
    return here.includes(false) && tiles.some((other) => isIn(other).every((inside) => inside));
  };
  const left = picture.marks.map((mark) => mark.kind === "text" && isLeftOut(mark));
  const isPatch = (i: number) => {
    const mark = picture.marks[i]!;
    return mark.kind === "area" && mark.shade === 0 && picture.marks[i + 1]?.kind === "text";
  };
  return { ...picture, marks: picture.marks.filter((_, i) => !left[i] && !(isPatch(i) && left[i + 1])) };
}
