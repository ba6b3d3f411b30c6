// Words, rules and boxes put down on a page, counted from its upper left corner.
import { line, point, polygon } from "@lamplane/geometry";
import { drawPicture } from "../../pdf/draw-picture.ts";
import { Marks } from "../../picture/marks.ts";
import type { PageOffset, SheetPage } from "./block.ts";

/** Height of the letters' em, mm: read on a bench at arm's length. */
export const TEXT_SIZE = 3.15;
export const SMALL_TEXT_SIZE = 2.8;
/** From one baseline to the next, of the em. */
export const LEADING = 1.33;
/** From a line's top to its baseline, of the em. */
const ASCENT = 0.95;

export interface TextStyle {
  readonly size?: number;
  readonly bold?: boolean;
  /** From one baseline to the next, of the em. */
  readonly leading?: number;
  /** From the first line's top to its baseline, of the em. */
  readonly ascent?: number;
}

/** Marks put down with y counted from the page's top. */
export function drawOnPage(page: SheetPage, draw: (put: PageWriter) => void): void {
  const { size } = page;
  const marks = new Marks();
  const up = (left: number, top: number) => point(left, size.height - top);
  draw({
    lines: (lines, { left, top }, { size: em = TEXT_SIZE, bold = false, leading = LEADING, ascent = ASCENT } = {}) => {
      lines.forEach((words, i) => {
        marks.text(words, up(left, top + (i * leading + ascent) * em), { size: em, bold });
      });
    },
    text: (words, { left, top }, { size: em = TEXT_SIZE, bold = false, anchor = "start" } = {}) => {
      marks.text(words, up(left, top + ASCENT * em), { size: em, bold, anchor });
    },
    rule: (from, to, kind = "thin") => {
      marks.line(kind, line(up(from.left, from.top), up(to.left, to.top)));
    },
    box: ({ left, top }, width, height, kind = "thin") => {
      marks.outline(kind, rectangle(up(left, top), width, height));
    },
    fill: ({ left, top }, width, height, shade) => {
      marks.area(shade, rectangle(up(left, top), width, height));
    },
  });
  drawMarks(page, marks);
}

/** Marks on a page with y counted from its foot. */
export const drawMarks = ({ pdf, size }: SheetPage, marks: Marks): void =>
  drawPicture(pdf, { height: size.height, marks: marks.all }, { left: 0, top: 0 });

export interface PageWriter {
  lines(lines: readonly string[], at: PageOffset, style?: TextStyle): void;
  text(words: string, at: PageOffset, style?: TextStyle & { readonly anchor?: "start" | "middle" | "end" }): void;
  rule(from: PageOffset, to: PageOffset, kind?: "thin" | "outline" | "grid"): void;
  box(at: PageOffset, width: number, height: number, kind?: "thin" | "outline"): void;
  fill(at: PageOffset, width: number, height: number, shade: number): void;
}

const rectangle = (corner: { x: number; y: number }, width: number, height: number) =>
  polygon(
    point(corner.x, corner.y),
    point(corner.x, corner.y - height),
    point(corner.x + width, corner.y - height),
    point(corner.x + width, corner.y),
  );
