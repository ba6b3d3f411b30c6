// Views of a step: each at the largest scale that its room allows, composed into one picture.
import { point } from "@lamplane/geometry";
import { formatScale } from "@lamplane/parameters/units";
import { LETTERING } from "../picture/marks.ts";
import type { Picture, PictureMark } from "../picture/picture.ts";
import { framePicture, marksBounds, translateMark } from "../picture/picture-frame.ts";
import { Sketch } from "./sketch.ts";

/** Scales that a drawing may have. @see ISO 5455:1979 (from memory) for 2:1, 5:1, 1:2, 1:5, 1:10; the steps between keep small pages readable */
const SCALES = [10, 5, 4, 3, 2, 1.5, 1, 1 / 1.5, 1 / 2, 1 / 2.5, 1 / 3, 1 / 4, 1 / 5, 1 / 6, 1 / 8, 1 / 10, 1 / 15];

/** Room for a view on the paper, mm; `most` is the largest scale that it may have. */
export interface ViewRoom {
  readonly width: number;
  readonly height: number;
  readonly most?: number;
}
export const WHOLE: ViewRoom = { width: 186, height: 66, most: 1 };
export const HALF: ViewRoom = { width: 90, height: 62, most: 1 };

/** A view at the largest scale at which it goes into its room, its name and scale over it. */
export function scaledView(name: string, room: ViewRoom, draw: (sketch: Sketch) => void): readonly PictureMark[] {
  const scales = SCALES.filter((scale) => scale <= (room.most ?? 1));
  for (const [i, scale] of scales.entries()) {
    const sketch = new Sketch(scale);
    draw(sketch);
    const { min, max } = marksBounds(sketch.marks.all);
    sketch.marks.text(`${name} (${formatScale(scale)})`, point(min.x, max.y + 2.6), {
      size: LETTERING.small,
      bold: true,
    });
    const whole = marksBounds(sketch.marks.all);
    const marks = moveTextToTop(sketch.marks.all);
    const fits = whole.max.x - whole.min.x <= room.width && whole.max.y - whole.min.y <= room.height;
    if (fits || i === scales.length - 1) return marks;
  }
  return [];
}

/** Words with the white under them over everything else: a line that comes later does not run through them. */
function moveTextToTop(marks: readonly PictureMark[]): PictureMark[] {
  const isPatch = (i: number) => {
    const mark = marks[i];
    return mark?.kind === "area" && mark.shade === 0 && marks[i + 1]?.kind === "text";
  };
  const isWords = marks.map((mark, i) => mark.kind === "text" || isPatch(i));
  return [...marks.filter((_, i) => !isWords[i]), ...marks.filter((_, i) => isWords[i])];
}

/** A drawing of something that is no part of the plane, at a size of its own; `scale` draws it smaller with words as large. */
export function diagram(name: string, draw: (sketch: Sketch) => void, scale = 1): readonly PictureMark[] {
  const sketch = new Sketch(scale);
  draw(sketch);
  const { min, max } = marksBounds(sketch.marks.all);
  sketch.marks.text(name, point(min.x, max.y + 2.6), { size: LETTERING.small, bold: true });
  return sketch.marks.all;
}

/** mm. */
export const BETWEEN_VIEWS = 6;

/** One view below another as one view, left edges in line. */
export function stackViews(upper: readonly PictureMark[], lower: readonly PictureMark[]): readonly PictureMark[] {
  const [above, below] = [marksBounds(upper), marksBounds(lower)];
  const shift = point(above.min.x - below.min.x, above.min.y - BETWEEN_VIEWS - below.max.y);
  return [...upper, ...lower.map((mark) => translateMark(mark, shift))];
}

/** Whether views go beside each other in a row. */
export const fitInRow = (views: readonly (readonly PictureMark[])[], width = WHOLE.width): boolean =>
  views.reduce((sum, marks) => sum + marksBounds(marks).max.x - marksBounds(marks).min.x, 0) +
    (views.length - 1) * BETWEEN_VIEWS <=
  width;

/** Views beside each other, in rows no wider than `width`, as one picture. */
export function composeViews(
  about: Pick<Picture, "name" | "title" | "description">,
  views: readonly (readonly PictureMark[])[],
  width = WHOLE.width,
): Picture {
  const placed: PictureMark[] = [];
  let [left, top, low] = [0, 0, 0];
  for (const marks of views) {
    const { min, max } = marksBounds(marks);
    if (left > 0 && left + max.x - min.x > width) [left, top] = [0, low - BETWEEN_VIEWS];
    const shift = point(left - min.x, top - max.y);
    placed.push(...marks.map((mark) => translateMark(mark, shift)));
    left += max.x - min.x + BETWEEN_VIEWS;
    low = Math.min(low, top - (max.y - min.y));
  }
  return framePicture(about, placed);
}
