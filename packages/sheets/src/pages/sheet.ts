// Which picture, or which tile of one, lies where on which page: the way to turn a tile's page that parts fewest lines, then the one of fewest pages.
import type { Picture } from "../picture/picture.ts";
import { type FilledPage, packPages } from "./packing.ts";
import { type Orientation, type Paper, printableArea, type Size } from "./paper.ts";
import { fitsPage, type Tile, type Tiling, tileName, tilePicture } from "./tiling.ts";

/** A picture whole, or one of its tiles with the strips that name its joints; its size is what it takes on a page. */
export interface PicturePiece extends Size {
  readonly picture: Picture;
  readonly part?: { readonly tiling: Tiling; readonly tile: Tile };
}
export type PrintedSheet = FilledPage<PicturePiece>;

/** Pages in the pictures' order: each stands where the first of what lies on it does. */
export function paginatePictures(pictures: readonly Picture[], paper: Paper): readonly PrintedSheet[] {
  const ways = (["landscape", "portrait"] as const).map((tiled) => {
    const pieces = pictures.flatMap((picture) => splitPicture(picture, paper, tiled));
    const first = ({ placements }: PrintedSheet) => Math.min(...placements.map(({ item }) => pieces.indexOf(item)));
    const sheets = packPages(pieces, paper).sort((a, b) => first(a) - first(b));
    const tilings = new Set(pieces.flatMap(({ part }) => (part ? [part.tiling] : [])));
    return { sheets, crossings: [...tilings].reduce((sum, { crossings }) => sum + crossings, 0) };
  });
  return ways.reduce((best, way) => (isBetter(way, best) ? way : best)).sheets;
}

interface TiledSheets {
  readonly sheets: readonly PrintedSheet[];
  readonly crossings: number;
}
const isBetter = (a: TiledSheets, b: TiledSheets): boolean =>
  a.crossings === b.crossings ? a.sheets.length < b.sheets.length : a.crossings < b.crossings;

function splitPicture(picture: Picture, paper: Paper, tiled: Orientation): PicturePiece[] {
  const { width, height } = picture;
  const whole = (["portrait", "landscape"] as const).some((turn) => fitsPage(picture, printableArea(paper, turn)));
  if (whole) return [{ picture, width, height }];
  const tiling = tilePicture(picture, paper, tiled);
  const { left, top } = tiling.strip;
  return tiling.tiles.map((tile) => ({
    picture,
    width: tile.width + left,
    height: tile.height + top,
    part: { tiling, tile },
  }));
}

/** A picture in a word or two, for a page's head: its name, and its tile's. */
export const pieceLabel = ({ picture, part }: PicturePiece): string => {
  const name = picture.name.replaceAll("-", " ");
  return part ? `${name} ${tileName(part.tile)}` : name;
};

/** Where a picture went: a page, or a page for each of its tiles in order. Pages count from 1 among these sheets. */
export interface PictureLocation {
  readonly picture: Picture;
  readonly pages: readonly number[];
  readonly tiling?: Tiling;
}

export function locatePictures(pictures: readonly Picture[], sheets: readonly PrintedSheet[]): PictureLocation[] {
  return pictures.map((picture) => {
    const found = sheets.flatMap(({ placements }, i) =>
      placements.filter(({ item }) => item.picture === picture).map(({ item }) => ({ page: i + 1, part: item.part })),
    );
    const tiling = found[0]?.part?.tiling;
    if (!tiling) return { picture, pages: found.map(({ page }) => page) };
    return { picture, tiling, pages: tiling.tiles.map((tile) => found.find(({ part }) => part?.tile === tile)!.page) };
  });
}
