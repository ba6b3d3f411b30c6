// The first page of the layout: how to print, check and join, what the lines mean, what is where, and a map of every tiled picture.
import { line, point, polygon } from "@lamplane/parameters/elevation";
import { type LineKind, Marks, type Picture } from "@lamplane/parameters/pictures";
import { LINE_STYLES } from "../line-styles.ts";
import type { Pdf } from "../pdf/document.ts";
import { drawPicture } from "../pdf/draw-picture.ts";
import { MARGIN, type Room, type Size } from "./paper.ts";
import type { Tiling } from "./tiling.ts";

/** A picture and where it went: its pages, or its tiles in order with the page of the first. */
export interface Whereabouts {
  readonly picture: Picture;
  readonly page: number;
  readonly tiling?: Tiling;
}

/** A piece of the cover: how high it is, and how it is drawn below a place, both in mm down the page. */
export interface Piece {
  readonly height: number;
  draw(pdf: Pdf, page: Size, room: Room, top: number): void;
}

const SIZE = 3.4;
const STEP = 5;
const MAP_HEIGHT = 34; // mm, the most that a map's picture takes
const EXPLAINED: readonly LineKind[] = ["outline", "cut", "mark", "hidden", "axis", "thin"];

/** The cover's pieces, top to bottom. */
export function coverPieces(plane: string, units: "mm" | "in", places: readonly Whereabouts[]): Piece[] {
  const tiled = places.filter(({ tiling }) => tiling !== undefined);
  return [
    textPiece([{ words: plane, size: 7, bold: true }], 9),
    textPiece([{ words: "Layout, true size, to be glued on the wood", size: 4.6 }], 8),
    textPiece(HOW_TO_USE.map((words) => ({ words, size: SIZE, bold: words.startsWith("1.") }))),
    ...(tiled.length > 0 ? [textPiece(HOW_TO_JOIN.map((words, i) => ({ words, size: SIZE, bold: i === 0 })))] : []),
    linesPiece(),
    textPiece([
      { words: "On which page", size: SIZE, bold: true },
      ...places.map((place) => ({ words: whereText(place), size: SIZE, bold: false })),
    ]),
    textPiece([{ words: lengthsText(units), size: SIZE, bold: false }]),
    ...tiled.map(mapPiece),
  ];
}

const HOW_TO_USE = [
  "1. Print every page at 100 % (“actual size”), one side only.",
  "2. On every page measure the 100 mm bar and the 4 in bar with the rule you work with.",
  "    Paper moves with damp: measure again just before you glue it down.",
  "3. Check the distances written on a picture with a rule before you cut; where paper and number",
  "    differ, the number holds.",
  "4. Each picture says which side of which piece it is glued to. Let it dry, then saw to the wood's side of the line.",
  "5. Follow each machine's manual, local rules and trained practice. Never hold a short block by hand at a saw.",
];
const HOW_TO_JOIN = [
  "To join tiles (A1, A2 … from the left; B below A)",
  "Trim each tile along its line marked “trim here”. Lay it over its neighbour so that its cut edge lies on the dashed",
  "line and the halves of the register marks make whole circles. Glue, and measure across the joint.",
];

const lengthsText = (units: "mm" | "in"): string =>
  units === "mm"
    ? "Lengths without a unit are in millimetres."
    : "Lengths are in inches; what no fraction reaches is added in mm.";

function whereText({ picture, page, tiling }: Whereabouts): string {
  const last = page + (tiling?.tiles.length ?? 1) - 1;
  const pages =
    last > page
      ? `pages ${page} to ${last}, tiles ${tiling!.tiles[0]!.name} to ${tiling!.tiles.at(-1)!.name}`
      : `page ${page}`;
  return `${picture.title}: ${pages}`;
}

interface Line {
  readonly words: string;
  readonly size: number;
  readonly bold?: boolean;
}

function textPiece(lines: readonly Line[], step = STEP): Piece {
  return {
    height: lines.length * step + 2,
    draw(pdf, page, room, top) {
      const marks = new Marks();
      lines.forEach(({ words, size, bold = false }, i) => {
        marks.text(words, point(room.left, page.height - top - size - i * step), { size, bold });
      });
      drawOnPage(pdf, page, marks);
    },
  };
}

/** A sample of every kind of line, and of the kerf's and the waste's grey. */
function linesPiece(): Piece {
  const rows = EXPLAINED.length + 2;
  return {
    height: (rows + 1) * STEP + 3,
    draw(pdf, page, room, top) {
      const marks = new Marks();
      const y = (row: number) => page.height - top - SIZE - row * STEP;
      const words = (row: number, text: string) => marks.text(text, point(room.left + 40, y(row)), { size: SIZE });
      marks.text("Lines", point(room.left, y(0)), { size: SIZE, bold: true });
      EXPLAINED.forEach((kind, i) => {
        const height = y(i + 1) + 1.2;
        marks.line(kind, line(point(room.left, height), point(room.left + 36, height)));
        words(i + 1, LINE_STYLES[kind].meaning);
      });
      [
        { shade: 0.45, text: "the saw's kerf" },
        { shade: 0.1, text: "waste between the cuts" },
      ].forEach(({ shade, text }, i) => {
        const [low, row] = [y(EXPLAINED.length + 1 + i) - 0.6, EXPLAINED.length + 1 + i];
        const [left, right] = [room.left, room.left + 36];
        marks.area(
          shade,
          polygon(point(left, low), point(right, low), point(right, low + 3.6), point(left, low + 3.6)),
        );
        words(row, text);
      });
      drawOnPage(pdf, page, marks);
    },
  };
}

/** The picture small, with its tiles, their names and pages over it. */
function mapPiece({ picture, page: firstPage, tiling }: Whereabouts): Piece {
  const { tiles } = tiling!;
  const widest = 210 - 2 * MARGIN;
  const scale = Math.min(widest / picture.width, MAP_HEIGHT / picture.height, 0.5);
  return {
    height: picture.height * scale + STEP + 4,
    draw(pdf, page, room, top) {
      const left = room.left;
      const below = top + STEP;
      drawPicture(pdf, picture, { left, top: below, scale });
      const marks = new Marks({ shift: point(left, page.height - below) });
      marks.text(`Map: ${picture.title}`, point(0, 1.6), { size: SIZE, bold: true });
      tiles.forEach((tile, i) => {
        const [x, y] = [tile.left * scale, -tile.top * scale];
        const [w, h] = [tile.width * scale, tile.height * scale];
        const inset = (i % 2) * 0.8; // neighbours overlap: their frames are told apart
        marks.outline(
          "hidden",
          polygon(point(x, y - h + inset), point(x + w, y - h + inset), point(x + w, y - inset), point(x, y - inset)),
        );
        marks.label(`${tile.name}, page ${firstPage + i}`, point(x + w / 2, y - h / 2 - 1.4), {
          size: 4,
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

/** Pieces shared out over as many pages as they need. */
export function coverPages(pieces: readonly Piece[], room: Room): Piece[][] {
  const pages: Piece[][] = [[]];
  let used = 0;
  for (const piece of pieces) {
    if (used + piece.height > room.height && used > 0) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)!.push(piece);
    used += piece.height;
  }
  return pages;
}
