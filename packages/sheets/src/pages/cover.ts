// The first page of the layout: how to print, check and join, what the lines mean, what is where, and a map of every tiled picture.
import { line, point, polygon } from "@lamplane/geometry";
import type { Units } from "@lamplane/parameters/units";
import { LINE_STYLES } from "../line-styles.ts";
import { drawPicture } from "../pdf/draw-picture.ts";
import { Marks, SHADES } from "../picture/marks.ts";
import type { LineKind } from "../picture/picture.ts";
import { SHEET } from "../words/sheets.ts";
import { type PageBlock, sideBySide, stackBlocks, withGaps } from "./blocks/block.ts";
import { drawMarks } from "./blocks/page-writer.ts";
import { linesBlock, wrapOnSheet } from "./blocks/text.ts";
import type { PictureLocation } from "./sheet.ts";
import { tileName } from "./tiling.ts";

const SIZE = 3.3;
const STEP = 4.9; // mm from line to line
const UNDER = 3; // mm under a block of lines
const SECOND = 100; // mm from the left edge to what stands beside the lines' samples
/** mm, the most that a map takes; neighbouring tiles' frames are drawn a little apart, since they overlap. */
const MAP = { height: 26, scale: 0.5, apart: 0.8 };
const SAMPLE = 24; // mm of each kind of line
const EXPLAINED: readonly LineKind[] = ["outline", "cut", "mark", "hidden", "axis", "thin"];
const GREYS = [
  { shade: SHADES.kerf, meaning: SHEET.kerf },
  { shade: SHADES.waste, meaning: SHEET.waste },
];

/** The cover's blocks, top to bottom. */
export function coverBlocks(
  units: Units,
  places: readonly PictureLocation[],
  before: number,
  width: number,
): PageBlock[] {
  const tiled = places.filter(({ tiling }) => tiling !== undefined);
  return [
    withGaps(
      linesBlock([SHEET.title], width, { size: TITLE_SIZE, bold: true, leading: TITLE_STEP / TITLE_SIZE, ascent: 1 }),
      0,
      UNDER,
    ),
    firstBold(SHEET.howToUse, width),
    ...(tiled.length > 0 ? [firstBold(SHEET.howToJoin, width)] : []),
    sideBySide(0, lineSamplesBlock(), pagesBlock(units, places, before, width - SECOND)),
    ...tiled.map((place) => mapBlock(place, before, width)),
  ];
}

const TITLE_SIZE = 5.2;
const TITLE_STEP = 9; // mm from the title to what follows
const LINES = { size: SIZE, leading: STEP / SIZE, ascent: 1 };

/** Lines whose first one is bold. */
const firstBold = ([first, ...rest]: readonly string[], width: number): PageBlock =>
  withGaps(
    stackBlocks(linesBlock([first!], width, { ...LINES, bold: true }), linesBlock(rest, width, LINES)),
    0,
    UNDER,
  );

/** A sample of every kind of line, and of the kerf's and the waste's grey. */
function lineSamplesBlock(): PageBlock {
  return {
    width: SECOND,
    height: (1 + EXPLAINED.length + GREYS.length) * STEP + 3,
    draw(page, { left, top }) {
      const marks = new Marks();
      const row = (i: number) => page.size.height - top - SIZE - i * STEP;
      const right = left + SAMPLE;
      marks.text(SHEET.lines, point(left, row(0)), { size: SIZE, bold: true });
      EXPLAINED.forEach((kind, i) => {
        const y = row(i + 1) + 1.2;
        marks.line(kind, line(point(left, y), point(right, y)));
      });
      GREYS.forEach(({ shade }, i) => {
        const [low, high] = [row(EXPLAINED.length + 1 + i) - 0.6, row(EXPLAINED.length + 1 + i) + 3];
        marks.area(shade, polygon(point(left, low), point(right, low), point(right, high), point(left, high)));
      });
      const meanings = [...EXPLAINED.map((kind) => LINE_STYLES[kind].meaning), ...GREYS.map(({ meaning }) => meaning)];
      meanings.forEach((meaning, i) => {
        marks.text(meaning, point(right + 3, row(i + 1)), { size: SIZE });
      });
      drawMarks(page, marks);
    },
  };
}

function pagesBlock(units: Units, places: readonly PictureLocation[], before: number, width: number): PageBlock {
  return firstBold(
    [
      SHEET.onWhichPage,
      ...places.map((place) => whereText(place, before)),
      "",
      ...wrapOnSheet(SHEET.units[units], width, LINES),
    ],
    width,
  );
}

function whereText({ picture, pages, tiling }: PictureLocation, before: number): string {
  const name = picture.name.replaceAll("-", " ");
  const [first, last] = [before + Math.min(...pages), before + Math.max(...pages)];
  return SHEET.onPages({ name, first, last, tiles: tiling ? pages.length : undefined });
}

/** The picture small, with its tiles, their names and pages over it. */
function mapBlock({ picture, pages, tiling }: PictureLocation, before: number, width: number): PageBlock {
  const height = Math.min(MAP.height, picture.height * MAP.scale);
  return {
    width,
    height: height + STEP + 4,
    draw(page, { left, top }) {
      const scale = Math.min(width / picture.width, height / picture.height);
      drawPicture(page.pdf, picture, { left, top: top + STEP, scale });
      const marks = new Marks({ shift: point(left, page.size.height - top - STEP) });
      marks.text(picture.title, point(0, 1.4), { size: SIZE, bold: true });
      tiling!.tiles.forEach((tile, i) => {
        const inset = ((tile.row + tile.column) % 2) * MAP.apart;
        const [from, to] = [tile.left * scale, (tile.left + tile.width) * scale];
        const [high, low] = [-tile.top * scale - inset, -(tile.top + tile.height) * scale + inset];
        marks.outline("hidden", polygon(point(from, low), point(to, low), point(to, high), point(from, high)));
        const name = SHEET.tileOnPage({ tile: tileName(tile), page: before + pages[i]! });
        marks.label(name, point((from + to) / 2, (low + high) / 2 - 1.2), {
          size: 3.6,
          bold: true,
          anchor: "middle",
        });
      });
      drawMarks(page, marks);
    },
  };
}
