// The 1:1 sheets: a cover, then every picture at exactly its size, tiled where it is larger than a page, several to a page where they fit.

import { point } from "@lamplane/geometry";
import { POINTS_PER_MM, type Units } from "@lamplane/parameters/units";
import { createPdf, type Pdf, pdfBytes } from "../pdf/document.ts";
import { drawPicture } from "../pdf/draw-picture.ts";
import type { Typefaces } from "../pdf/typefaces.ts";
import type { Picture } from "../picture/picture.ts";
import { PAPER } from "../words/papers.ts";
import { SHEET } from "../words/sheets.ts";
import { flowBlocks } from "./blocks/flow.ts";
import { headBlock } from "./blocks/head.ts";
import { coverBlocks } from "./cover.ts";
import { printCheckBlock } from "./page-furniture.ts";
import { FOOT_HEIGHT, type Orientation, PAGE_MARGIN, type Paper, pageSize, printableArea, type Size } from "./paper.ts";
import { locatePictures, type PicturePiece, type PrintedSheet, paginatePictures, pieceLabel } from "./sheet.ts";
import { makeTileMarks } from "./tile-marks.ts";
import { wordsOfTile } from "./tiling.ts";

export interface LayoutOptions {
  readonly paper: Paper;
  /** The plane's name. */
  readonly name: string;
  readonly version: string;
  readonly units: Units;
  readonly typefaces?: Typefaces;
}

/**
 * The layout as a PDF: the same pictures, paper, name and version give the same bytes.
 * @see ISO 32000-1:2008 for the format; every length is printed 1:1
 */
export async function layoutPdf(pictures: readonly Picture[], options: LayoutOptions): Promise<Uint8Array> {
  const { paper, name, units, typefaces } = options;
  const sheets = paginatePictures(pictures, paper);
  const places = locatePictures(pictures, sheets);
  const room = printableArea(paper, "portrait");
  // How many pages the cover takes does not depend on the numbers in it.
  const coverPages = (start: number) =>
    flowBlocks([{ blocks: coverBlocks(units, places, start, room.width) }], room.height);
  const before = coverPages(0).length;
  const cover = coverPages(before);
  const about = { title: SHEET.fileTitle({ name }), subject: SHEET.subject };
  const pdf = createPdf({ ...about, ...(typefaces ? { typefaces } : {}) });
  const pages = before + sheets.length;
  cover.forEach((blocks, i) => {
    const size = addPage(pdf, options, "portrait", { what: SHEET.readFirst, page: i + 1, pages });
    for (const { block, top } of blocks) block.draw({ pdf, size }, { left: room.left, top: room.top + top });
  });
  sheets.forEach((sheet, i) => {
    const what = sheet.placements.map(({ item }) => pieceLabel(item)).join(" · ");
    const page = addPage(pdf, options, sheet.orientation, { what, page: before + i + 1, pages });
    drawSheet(pdf, sheet, page);
  });
  return pdfBytes(pdf);
}

interface PageNumber {
  readonly what: string;
  readonly page: number;
  readonly pages: number;
}

/** A new page with its head and its bars. */
function addPage(pdf: Pdf, { paper, name, version }: LayoutOptions, turn: Orientation, numbered: PageNumber): Size {
  const size = pageSize(paper, turn);
  pdf.doc.addPage({ size: [size.width * POINTS_PER_MM, size.height * POINTS_PER_MM], margin: 0 });
  const { what, ...of } = numbered;
  const sheet = { pdf, size };
  const head = headBlock({ name, what, number: PAPER.page({ ...of, version }) }, size.width - 2 * PAGE_MARGIN);
  head.draw(sheet, { left: PAGE_MARGIN, top: PAGE_MARGIN });
  printCheckBlock().draw(sheet, { left: PAGE_MARGIN, top: size.height - PAGE_MARGIN - FOOT_HEIGHT });
  return size;
}

function drawSheet(pdf: Pdf, { placements }: PrintedSheet, page: Size): void {
  for (const { item, left, top } of placements) {
    if (item.part) drawTile(pdf, item, item.part, page, { left, top });
    else drawPicture(pdf, item.picture, { left, top });
  }
}

/** A tile, clipped exactly at its borders, with its joints. @param at the upper left of its strips */
function drawTile(
  pdf: Pdf,
  piece: PicturePiece,
  { tiling, tile }: NonNullable<PicturePiece["part"]>,
  page: Size,
  { left, top }: { readonly left: number; readonly top: number },
): void {
  const { doc } = pdf;
  const [x, y] = [left + tiling.strip.left, top + tiling.strip.top];
  const inPoints = [x, y, tile.width, tile.height].map((mm) => mm * POINTS_PER_MM);
  doc.save();
  doc.rect(...(inPoints as [number, number, number, number])).clip();
  drawPicture(pdf, wordsOfTile(piece.picture, tiling, tile), { left: x - tile.left, top: y - tile.top });
  doc.restore();
  const joints = makeTileMarks(tiling, tile, pieceLabel(piece), point(x, page.height - y));
  drawPicture(pdf, { height: page.height, marks: joints.all }, { left: 0, top: 0 });
}
