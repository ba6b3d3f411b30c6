// The 1:1 sheets: a cover, then every picture at exactly its size, tiled where it is larger than a page, several to a page where they fit.
import type { Picture } from "@lamplane/parameters/pictures";
import type { Units } from "@lamplane/parameters/units";
import { POINTS_PER_MM } from "@lamplane/parameters/units";
import { newPdf, type Pdf, pdfBytes } from "../pdf/document.ts";
import { drawPicture } from "../pdf/draw-picture.ts";
import type { Typefaces } from "../pdf/typefaces.ts";
import { coverPages, coverPieces, type Whereabouts } from "./cover.ts";
import { emptyPage, type FilledPage, pack } from "./packing.ts";
import { pageFurniture } from "./page-furniture.ts";
import { type Orientation, type Paper, pageRoom, pageSize, type Size } from "./paper.ts";
import { tileMarks } from "./tile-marks.ts";
import { fitsPage, STRIP, type Tile, type Tiling, tilingOf } from "./tiling.ts";

export interface LayoutOptions {
  readonly paper: Paper;
  /** The plane's name. */
  readonly name: string;
  readonly version: string;
  readonly units: Units;
  readonly typefaces?: Typefaces;
}

/** A tile on a page of its own, or a whole picture beside others. */
type Sheet = FilledPage<Picture> & { readonly tile?: { picture: Picture; tiling: Tiling; tile: Tile } };

/**
 * The layout as a PDF: the same pictures, paper, name and version give the same bytes.
 * @see ISO 32000-1:2008 for the format; every length is printed 1:1
 */
export async function layoutPdf(pictures: readonly Picture[], options: LayoutOptions): Promise<Uint8Array> {
  const { paper, name, version, units, typefaces } = options;
  const sheets = sheetsOf(pictures, paper);
  const room = pageRoom(paper, "portrait");
  // The cover names pages, and its own length depends on what it says but not on the numbers.
  const length = coverPages(coverPieces(name, units, whereabouts(pictures, sheets, 0)), room).length;
  const cover = coverPages(coverPieces(name, units, whereabouts(pictures, sheets, length)), room);
  const pdf = newPdf({
    title: `${name}: layout, true size`,
    subject: "1:1 sheets to glue on wood",
    ...(typefaces ? { typefaces } : {}),
  });
  const pages = cover.length + sheets.length;
  const open = (orientation: Orientation, what: string, page: number): Size => {
    const size = pageSize(paper, orientation);
    pdf.doc.addPage({ size: [size.width * POINTS_PER_MM, size.height * POINTS_PER_MM], margin: 0 });
    const furniture = pageFurniture(size, { plane: name, what, page, pages, version });
    drawPicture(pdf, { height: size.height, marks: furniture.all }, { left: 0, top: 0 });
    return size;
  };
  cover.forEach((pieces, i) => {
    const size = open("portrait", "layout: read this first", i + 1);
    let { top } = room;
    for (const piece of pieces) {
      piece.draw(pdf, size, room, top);
      top += piece.height;
    }
  });
  sheets.forEach((sheet, i) => {
    drawSheet(pdf, sheet, open(sheet.orientation, sheetWords(sheet), cover.length + i + 1));
  });
  return pdfBytes(pdf);
}

function sheetsOf(pictures: readonly Picture[], paper: Paper): Sheet[] {
  const whole = (["portrait", "landscape"] as const).map((orientation) => pageRoom(paper, orientation));
  const small = pictures.filter((picture) => whole.some((room) => fitsPage(picture, room)));
  const sheets: Sheet[] = pictures
    .filter((picture) => !small.includes(picture))
    .flatMap((picture) => tileSheets(picture, paper));
  pack<Picture>(small, paper, sheets);
  return sheets;
}

/** A page for each tile; what lies below the tile is a page's free room. */
function tileSheets(picture: Picture, paper: Paper): Sheet[] {
  const tiling = tilingOf(picture, paper);
  const { width } = pageRoom(paper, tiling.orientation);
  return tiling.tiles.map((tile) => ({
    ...emptyPage<Picture>(tiling.orientation),
    shelves: [{ top: 0, height: tile.height + STRIP, used: width }],
    tile: { picture, tiling, tile },
  }));
}

function whereabouts(pictures: readonly Picture[], sheets: readonly Sheet[], before: number): Whereabouts[] {
  return pictures.map((picture) => {
    const at = sheets.findIndex(
      ({ tile, placed }) => tile?.picture === picture || placed.some(({ item }) => item === picture),
    );
    const { tile } = sheets[at]!;
    return { picture, page: before + at + 1, ...(tile?.picture === picture ? { tiling: tile.tiling } : {}) };
  });
}

const shortName = (picture: Picture): string => picture.name.replaceAll("-", " ");

function sheetWords({ tile, placed }: Sheet): string {
  const whole = placed.map(({ item }) => shortName(item));
  const part = tile ? [`${shortName(tile.picture)}, tile ${tile.tile.name} of ${tile.tiling.tiles.length}`] : [];
  return [...part, ...whole].join(" · ");
}

function drawSheet(pdf: Pdf, { tile, placed }: Sheet, page: Size): void {
  if (tile) drawTile(pdf, tile.picture, tile.tiling, tile.tile, page);
  for (const { item, left, top } of placed) drawPicture(pdf, item, { left, top });
}

/** A tile, clipped exactly at its borders, with its joints. */
function drawTile(pdf: Pdf, picture: Picture, tiling: Tiling, tile: Tile, page: Size): void {
  const { doc } = pdf;
  const { left, top } = tiling.room;
  const [x, y, w, h] = [left, top, tile.width, tile.height].map((mm) => mm * POINTS_PER_MM) as [
    number,
    number,
    number,
    number,
  ];
  doc.save();
  doc.rect(x, y, w, h).clip();
  drawPicture(pdf, picture, { left: left - tile.left, top: top - tile.top });
  doc.restore();
  drawPicture(pdf, { height: page.height, marks: tileMarks(tiling, tile, page).all }, { left: 0, top: 0 });
}
