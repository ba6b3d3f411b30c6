// What stands over a layout picture: what it is, in bold, and below it how it is glued to the wood.
import { type Point, point } from "../../elevation/outline.ts";
import { LETTERING, type Marks } from "../marks.ts";

const LEADING = 1.45; // of the lettering's size, line to line

/** Height that a caption of so many lines takes, mm. */
export const captionHeight = (lines: number): number => LETTERING.heading * 1.2 + lines * LETTERING.small * LEADING;

/** Puts a caption over a picture, its last line on `above`; `left` is the picture's left edge as seen. */
export function caption(marks: Marks, heading: string, lines: readonly string[], above: Point): void {
  const anchor = marks.place.mirrored ? "end" : "start";
  const step = LETTERING.small * LEADING;
  lines.forEach((words, i) => {
    marks.text(words, point(above.x, above.y + (lines.length - 1 - i) * step), { size: LETTERING.small, anchor });
  });
  const over = above.y + lines.length * step + 0.4;
  marks.text(heading, point(above.x, over), { size: LETTERING.heading, bold: true, anchor });
}
