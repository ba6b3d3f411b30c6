// The first page of the layout: how to print, check and join, what the lines mean, what is where, and a map of every tiled picture.
import { line, point, polygon } from "@lamplane/geometry";
import type { Units } from "@lamplane/parameters/units";
import { LINE_STYLES } from "../line-styles.ts";
import type { Pdf } from "../pdf/document.ts";
import { drawPicture } from "../pdf/draw-picture.ts";
import { Marks, SHADES } from "../picture/marks.ts";
import type { LineKind } from "../picture/picture.ts";
import type { PrintableArea, Size } from "./paper.ts";
import type { PictureLocation } from "./sheet.ts";
import { tileName } from "./tiling.ts";

/** A block of the cover: how high it is, and how it is drawn below a height of the page, mm down from its upper edge. */
export interface CoverBlock {
  readonly height: number;
  draw(pdf: Pdf, page: Size, room: PrintableArea, top: number): void;
}

const SIZE = 3.3;
const STEP = 4.9;
/** mm, the most that a map takes; neighbouring tiles' frames are drawn a little apart, since they overlap. */
const MAP = { height: 26, scale: 0.5, apart: 0.8 };
const SAMPLE = 24; // mm of each kind of line
const EXPLAINED: readonly LineKind[] = ["outline", "cut", "mark", "hidden", "axis", "thin"];
const GREYS = [
  { shade: SHADES.kerf, meaning: "the saw's kerf" },
  { shade: SHADES.waste, meaning: "waste between the cuts" },
];

/** The cover's blocks, top to bottom. */
export function coverBlocks(units: Units, places: readonly PictureLocation[], before: number): CoverBlock[] {
  const tiled = places.filter(({ tiling }) => tiling !== undefined);
  return [
    textBlock([{ text: "Layout, true size, to be glued on the wood", size: 5.2, bold: true }], 9),
    textBlock(HOW_TO_USE.map((text, i) => ({ text, bold: i === 0 }))),
    ...(tiled.length > 0 ? [textBlock(HOW_TO_JOIN.map((text, i) => ({ text, bold: i === 0 })))] : []),
    placeBeside(lineSamplesBlock(), pagesBlock(units, places, before), 100),
    ...tiled.map((place) => mapBlock(place, before)),
  ];
}

const HOW_TO_USE = [
  "1. Print every page at 100 % (“actual size”), on one side only.",
  "2. On every page measure the 100 mm bar and the 4 in bar with the rule that you work with. Paper moves",
  "    with damp: measure again just before you glue it down.",
  "3. Before a cut, check the distances written on the picture with a rule. Where paper and number differ,",
  "    the number holds.",
  "4. Each picture says which side of which piece it is glued to. Let the glue dry before you cut.",
  "5. Follow each machine's manual, local rules and trained practice. Never hold a short block by hand at a saw.",
];
const HOW_TO_JOIN = [
  "To join tiles (A1, A2 … from the left; B below A)",
  "Cut each tile out roughly, then trim it at its line “trim here” and lay it over its neighbour, so that its edge lies",
  "on the dashed line and the halves of the register marks make whole circles. Glue, and measure across the joint.",
];

interface TextLine {
  readonly text: string;
  readonly size?: number;
  readonly bold?: boolean;
}

function textBlock(lines: readonly TextLine[], step = STEP): CoverBlock {
  return {
    height: lines.length * step + 3,
    draw(pdf, page, room, top) {
      const marks = new Marks();
      lines.forEach(({ text, size = SIZE, bold = false }, i) => {
        marks.text(text, point(room.left, page.height - top - size - i * step), { size, bold });
      });
      drawOnPage(pdf, page, marks);
    },
  };
}

/** Two blocks side by side, the second `apart` mm to the right. */
const placeBeside = (left: CoverBlock, right: CoverBlock, apart: number): CoverBlock => ({
  height: Math.max(left.height, right.height),
  draw(pdf, page, room, top) {
    left.draw(pdf, page, room, top);
    right.draw(pdf, page, { ...room, left: room.left + apart }, top);
  },
});

/** A sample of every kind of line, and of the kerf's and the waste's grey. */
function lineSamplesBlock(): CoverBlock {
  return {
    height: (1 + EXPLAINED.length + GREYS.length) * STEP + 3,
    draw(pdf, page, room, top) {
      const marks = new Marks();
      const row = (i: number) => page.height - top - SIZE - i * STEP;
      const [left, right] = [room.left, room.left + SAMPLE];
      marks.text("Lines", point(left, row(0)), { size: SIZE, bold: true });
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
      drawOnPage(pdf, page, marks);
    },
  };
}

function pagesBlock(units: Units, places: readonly PictureLocation[], before: number): CoverBlock {
  return textBlock([
    { text: "On which page", bold: true },
    ...places.map((place) => ({ text: whereText(place, before) })),
    { text: "" },
    {
      text:
        units === "mm"
          ? "Lengths without a unit are millimetres."
          : "Where no fraction shows a length, it is in thousandths, for the caliper.",
    },
  ]);
}

function whereText({ picture, pages, tiling }: PictureLocation, before: number): string {
  const name = picture.name.replaceAll("-", " ");
  const [first, last] = [before + Math.min(...pages), before + Math.max(...pages)];
  const on = first === last ? `page ${first}` : `pages ${first} to ${last}`;
  return tiling ? `${name}: ${on}, in ${pages.length} tiles (map below)` : `${name}: ${on}`;
}

/** The picture small, with its tiles, their names and pages over it. */
function mapBlock({ picture, pages, tiling }: PictureLocation, before: number): CoverBlock {
  const height = Math.min(MAP.height, picture.height * MAP.scale);
  return {
    height: height + STEP + 4,
    draw(pdf, page, room, top) {
      const scale = Math.min(room.width / picture.width, height / picture.height);
      drawPicture(pdf, picture, { left: room.left, top: top + STEP, scale });
      const marks = new Marks({ shift: point(room.left, page.height - top - STEP) });
      marks.text(picture.title, point(0, 1.4), { size: SIZE, bold: true });
      tiling!.tiles.forEach((tile, i) => {
        const inset = ((tile.row + tile.column) % 2) * MAP.apart;
        const [left, right] = [tile.left * scale, (tile.left + tile.width) * scale];
        const [high, low] = [-tile.top * scale - inset, -(tile.top + tile.height) * scale + inset];
        marks.outline("hidden", polygon(point(left, low), point(right, low), point(right, high), point(left, high)));
        const name = `${tileName(tile)}: page ${before + pages[i]!}`;
        marks.label(name, point((left + right) / 2, (low + high) / 2 - 1.2), {
          size: 3.6,
          bold: true,
          anchor: "middle",
        });
      });
      drawOnPage(pdf, page, marks);
    },
  };
}

const drawOnPage = (pdf: Pdf, page: Size, marks: Marks): void =>
  drawPicture(pdf, { height: page.height, marks: marks.all }, { left: 0, top: 0 });

/** Blocks shared out over as many pages as they need. */
export function coverPages(blocks: readonly CoverBlock[], room: Size): CoverBlock[][] {
  const pages: CoverBlock[][] = [[]];
  let used = 0;
  for (const block of blocks) {
    if (used + block.height > room.height && used > 0) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)!.push(block);
    used += block.height;
  }
  return pages;
}
