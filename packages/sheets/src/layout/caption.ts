// Words of a layout picture: over it what it is and how it is glued to the wood, within it what each place is.
import { type Point, point } from "@lamplane/geometry";
import { LETTERING, type Marks } from "../picture/marks.ts";
import { fittingTextSize } from "./format.ts";

const LEADING = 1.45; // of the lettering's size, line to line

/** Puts a caption over a picture, its last line on `above`; `left` is the picture's left edge as seen. */
export function drawCaption(marks: Marks, heading: string, lines: readonly string[], above: Point): void {
  const anchor = marks.transform.mirrored ? "end" : "start";
  const step = LETTERING.small * LEADING;
  lines.forEach((words, i) => {
    marks.text(words, point(above.x, above.y + (lines.length - 1 - i) * step), { size: LETTERING.small, anchor });
  });
  const over = above.y + lines.length * step + 0.4;
  marks.text(heading, point(above.x, over), { size: LETTERING.heading, bold: true, anchor });
}

/** Lines of words one below the other about a middle, as large as the room allows; the first is bold. */
export function drawTextBlock(marks: Marks, lines: readonly string[], x: number, room: number, y: number): void {
  lines.forEach((words, i) => {
    const size = fittingTextSize(words, room, i === 0 ? LETTERING.heading : LETTERING.usual, i === 0);
    if (size !== undefined) marks.label(words, point(x, y - i * 5), { size, anchor: "middle", bold: i === 0 });
  });
}
