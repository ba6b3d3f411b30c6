// How much room words take in a picture. Widths are on the wide side, so that what is apart here is apart in any plain face.
import type { Point } from "@lamplane/geometry";
import type { PictureMark } from "./picture.ts";

export type PictureTextMark = Extract<PictureMark, { kind: "text" }>;

/** Upright box, mm. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** Widths in ems, each the widest of its class in common sans-serif faces, from memory; `other` for every other sign. */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[il.,:;'|!jI]/, 0.36],
  [/[ frt()[\]/-]/, 0.46],
  [/[mwMW%@]/, 1],
  [/[A-Z]/, 0.78],
];
const OTHER = 0.66;
const BOLD = 1.1; // bold faces are a tenth wider
const ASCENT = 0.8; // of the em, over the baseline
const DESCENT = 0.25;
/** From one baseline to the next, of the em. */
export const LINE_HEIGHT = 1.3;

/** Length of a text on one line, mm. */
export const estimateTextWidth = (text: string, size: number, bold = false): number =>
  [...text].reduce((sum, sign) => sum + (WIDTHS.find(([kind]) => kind.test(sign))?.[1] ?? OTHER), 0) *
  size *
  (bold ? BOLD : 1);

/** Spaces at which a text may be broken: not between a number and its unit. */
const BREAK = /(?<!\d) | (?!mm|in\b|%)/;

/** A text's lines, none longer than `width` mm but for a single word that is. */
export function wrapLines(text: string, size: number, width: number, bold = false): string[] {
  const lines: string[] = [];
  for (const word of text.split(BREAK)) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && estimateTextWidth(longer, size, bold) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

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
