// Which picture, or which tile of one, lies where on which page: as few pages as the two ways to turn a tile's page allow.
import type { Picture } from "../picture/picture.ts";
import { type FilledPage, pack } from "./packing.ts";
import { type Orientation, type Paper, pageRoom, type Size } from "./paper.ts";
import { fitsPage, type Tile, type Tiling, tileName, tilingOf } from "./tiling.ts";

/** A picture whole, or one of its tiles with the strips that name its joints; its size is what it takes on a page. */
export interface Piece extends Size {
  readonly picture: Picture;
  readonly part?: { readonly tiling: Tiling; readonly tile: Tile };
}
export type Sheet = FilledPage<Piece>;

/** Pages in the pictures' order: each stands where the first of what lies on it does. */
export function sheetsOf(pictures: readonly Picture[], paper: Paper): Sheet[] {
  const ways = (["landscape", "portrait"] as const).map((tiled) => {
    const pieces = pictures.flatMap((picture) => piecesOf(picture, paper, tiled));
    const first = ({ placed }: Sheet) => Math.min(...placed.map(({ item }) => pieces.indexOf(item)));
    return pack(pieces, paper).sort((a, b) => first(a) - first(b));
  });
  return ways.reduce((best, way) => (way.length < best.length ? way : best));
}

function piecesOf(picture: Picture, paper: Paper, tiled: Orientation): Piece[] {
  const { width, height } = picture;
  const whole = (["portrait", "landscape"] as const).some((turn) => fitsPage(picture, pageRoom(paper, turn)));
  if (whole) return [{ picture, width, height }];
  const tiling = tilingOf(picture, paper, tiled);
  const { left, top } = tiling.strip;
  return tiling.tiles.map((tile) => ({
    picture,
    width: tile.width + left,
    height: tile.height + top,
    part: { tiling, tile },
  }));
}

/** A picture in a word or two, for a page's head: its name, and its tile's. */
export const pieceWords = ({ picture, part }: Piece): string => {
  const name = picture.name.replaceAll("-", " ");
  return part ? `${name} ${tileName(part.tile)}` : name;
};

/** Where a picture went: a page, or a page for each of its tiles in order. Pages count from 1 among these sheets. */
export interface Whereabouts {
  readonly picture: Picture;
  readonly pages: readonly number[];
  readonly tiling?: Tiling;
}

export function whereabouts(pictures: readonly Picture[], sheets: readonly Sheet[]): Whereabouts[] {
  return pictures.map((picture) => {
    const found = sheets.flatMap(({ placed }, i) =>
      placed.filter(({ item }) => item.picture === picture).map(({ item }) => ({ page: i + 1, part: item.part })),
    );
    const tiling = found[0]?.part?.tiling;
    if (!tiling) return { picture, pages: found.map(({ page }) => page) };
    return { picture, tiling, pages: tiling.tiles.map((tile) => found.find(({ part }) => part?.tile === tile)!.page) };
  });
}
