// How much room words take in a picture. Widths are on the wide side, so that what is apart here is apart in any plain face.
import type { Point } from "@lamplane/geometry";
import type { PictureMark } from "./picture.ts";
import { estimateTextWidth } from "./text-metrics.ts";
import { NOT_BEFORE_UNIT, wrapText } from "./text-wrap.ts";

export type PictureTextMark = Extract<PictureMark, { kind: "text" }>;

/** Upright box, mm. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

const ASCENT = 0.8; // of the em, over the baseline
const DESCENT = 0.25;
/** From one baseline to the next, of the em. */
export const LINE_HEIGHT = 1.3;

/** A text's lines, none longer than `width` mm but for a single word that is. */
export const wrapLines = (text: string, size: number, width: number, bold = false): string[] =>
  wrapText(text, width, { measure: estimateTextWidth, size, bold, breakAt: NOT_BEFORE_UNIT });

/** Box of a level text. */
export function textBox({ text, at, size, anchor = "start", bold = false }: PictureTextMark): Box {
  const width = estimateTextWidth(text, size, bold);
  const left = anchor === "start" ? at.x : anchor === "end" ? at.x - width : at.x - width / 2;
  return { left, right: left + width, low: at.y - DESCENT * size, high: at.y + ASCENT * size };
}

/** Box of lines under each other. @param at its upper left corner */
export const blockBox = (lines: readonly string[], size: number, at: Point): Box => ({
  left: at.x,
  right: at.x + Math.max(...lines.map((text) => estimateTextWidth(text, size))),
  high: at.y,
  low: at.y - blockHeight(lines, size),
});

export const blockHeight = (lines: readonly string[], size: number): number =>
  (ASCENT + DESCENT + LINE_HEIGHT * (lines.length - 1)) * size;

/** The lines of a block as marks, flush on the left or the right of its box. @param at the box's upper left corner */
export function blockMarks(
  lines: readonly string[],
  size: number,
  at: Point,
  flush: "left" | "right" = "left",
): PictureTextMark[] {
  const { right } = blockBox(lines, size, at);
  return lines.map((text, i) => ({
    kind: "text",
    text,
    size,
    at: { x: flush === "left" ? at.x : right, y: at.y - (ASCENT + LINE_HEIGHT * i) * size },
    anchor: flush === "left" ? "start" : "end",
  }));
}

export const boxesOverlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.low < b.high && b.low < a.high;

export const boxContains = ({ left, right, low, high }: Box, { x, y }: Point): boolean =>
  x > left && x < right && y > low && y < high;
