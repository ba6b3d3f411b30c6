// Views of a step: as large together as the room for them allows, beside each other or in rows, composed into one picture.
import { point } from "@lamplane/geometry";
import { formatScale } from "@lamplane/parameters/units";
import { LETTERING } from "../picture/marks.ts";
import type { Picture, PictureMark } from "../picture/picture.ts";
import { framePicture, marksBounds, translateMark } from "../picture/picture-frame.ts";
import { textWidth } from "../picture/text-metrics.ts";
import { NOT_BEFORE_UNIT, wrapText } from "../picture/text-wrap.ts";
import { type NamePlace, Sketch } from "./sketch.ts";

/** Scales that a drawing may have. @see ISO 5455:1979 (from memory) for 2:1, 5:1, 1:2, 1:5, 1:10; the steps between fill a page better */
const SCALES = [
  ...[10, 8, 6, 5, 4, 3, 2.5, 2, 1.5, 1.25, 1],
  ...[1.25, 1.5, 1.75, 2, 2.25, 2.5, 3, 3.5, 4, 5, 6, 8, 10, 15].map((times) => 1 / times),
];

/** Room for a picture on the paper, mm. */
export interface PictureRoom {
  readonly width: number;
  readonly height: number;
  /** Beside the drawing unless it says otherwise. */
  readonly names?: NamePlace;
}
/** Where nothing says how much room there is. */
export const STEP_ROOM: PictureRoom = { width: 186, height: 96 };

export interface StepView {
  /** Its scale stands behind its name, but for a diagram. */
  readonly name: string;
  readonly draw: (sketch: Sketch) => void;
  /** The largest scale that it may have; 2 unless it says otherwise. */
  readonly most?: number;
  /** The smallest; that of the list unless it says otherwise. */
  readonly least?: number;
  /** Of something that is no part of the plane: true to no scale. */
  readonly isDiagram?: boolean;
}

/** mm between two views; the title of the lower one stands in it. */
const BETWEEN_VIEWS = 6;
const USUALLY_MOST = 2;

/** Draws views in the arrangement that lets them be largest. */
export function composeViews(
  about: Pick<Picture, "name" | "title" | "description">,
  room: PictureRoom,
  views: readonly StepView[],
): Picture {
  const drawn = views.map((view) => scaledMarks(view, room));
  const arrangements = rowsOf(views.length).map((rows) => fitRows(rows, drawn, room));
  const best = arrangements.reduce((found, next) => (next.worth > found.worth ? next : found));
  return framePicture(about, placeRows(best.rows, drawn, best.steps));
}

/** A view at every scale that it may have, largest first, each drawn when it is asked for. */
interface ScaledView {
  readonly scales: readonly number[];
  marks(step: number): readonly PictureMark[];
  size(step: number): PictureRoom;
}

function scaledMarks(view: StepView, room: PictureRoom): ScaledView {
  const scales = SCALES.filter((scale) => scale <= (view.most ?? USUALLY_MOST) && scale >= (view.least ?? 0));
  const drawn = new Map<number, { readonly marks: readonly PictureMark[]; readonly size: PictureRoom }>();
  const at = (step: number) => {
    const known = drawn.get(step);
    if (known) return known;
    const marks = drawView(view, scales[step]!, room);
    const { min, max } = marksBounds(marks);
    const made = { marks, size: { width: max.x - min.x, height: max.y - min.y } };
    drawn.set(step, made);
    return made;
  };
  return { scales, marks: (step) => at(step).marks, size: (step) => at(step).size };
}

function drawView({ name, draw, isDiagram }: StepView, scale: number, { width, names }: PictureRoom): PictureMark[] {
  const sketch = new Sketch(scale, names);
  draw(sketch);
  sketch.nameBelow(width);
  const { min, max } = marksBounds(sketch.marks.all);
  const title = isDiagram ? name : `${name} (${formatScale(scale)})`;
  const rows = wrapText(title, width, { measure: boldWidth, size: LETTERING.small, breakAt: NOT_BEFORE_UNIT });
  for (const [i, row] of rows.toReversed().entries())
    sketch.marks.text(row, point(min.x, max.y + 2.6 + i * TITLE_LEADING), { size: LETTERING.small, bold: true });
  return moveTextToTop(sketch.marks.all);
}

const boldWidth = (words: string, size: number): number => textWidth(words, size, true);
/** mm from one line of a title to the next. */
const TITLE_LEADING = 3.5;

/** Words with the white under them over everything else: a line that comes later does not run through them. */
function moveTextToTop(marks: readonly PictureMark[]): PictureMark[] {
  const isPatch = (i: number) => {
    const mark = marks[i];
    return mark?.kind === "area" && mark.shade === 0 && marks[i + 1]?.kind === "text";
  };
  const isWords = marks.map((mark, i) => mark.kind === "text" || isPatch(i));
  return [...marks.filter((_, i) => !isWords[i]), ...marks.filter((_, i) => isWords[i])];
}

/** Every way to set so many views in rows, in their order, each row as the numbers of its views. */
function rowsOf(count: number): number[][][] {
  const ways = Array.from({ length: 2 ** (count - 1) }, (_, breaks) => {
    const rows: number[][] = [[0]];
    for (let i = 1; i < count; i++) {
      if (breaks & (1 << (i - 1))) rows.push([i]);
      else rows.at(-1)!.push(i);
    }
    return rows;
  });
  return ways;
}

interface FittedRows {
  readonly rows: readonly (readonly number[])[];
  /** Each view's place among its scales. */
  readonly steps: readonly number[];
  readonly worth: number;
}

/** The largest scales at which rows go into the room: of what is too wide or too high, the view that gains most by it gives way first. */
function fitRows(rows: readonly (readonly number[])[], views: readonly ScaledView[], room: PictureRoom): FittedRows {
  const steps = views.map(() => 0);
  const size = (i: number) => views[i]!.size(steps[i]!);
  const rowWidth = (row: readonly number[]) =>
    row.reduce((sum, i) => sum + size(i).width, (row.length - 1) * BETWEEN_VIEWS);
  const rowHeight = (row: readonly number[]) => Math.max(...row.map((i) => size(i).height));
  for (;;) {
    const height = rows.reduce((sum, row) => sum + rowHeight(row), (rows.length - 1) * BETWEEN_VIEWS);
    const widest = rows.reduce((a, b) => (rowWidth(a) >= rowWidth(b) ? a : b));
    const tooWide = rowWidth(widest) > room.width ? widest : undefined;
    if (!tooWide && height <= room.height) return { rows, steps, worth: worthOf(views, steps) };
    const highest = rows.map((row) => row.reduce((a, b) => (size(a).height >= size(b).height ? a : b)));
    const mayGive = (tooWide ?? highest).filter((i) => steps[i]! < views[i]!.scales.length - 1);
    if (mayGive.length === 0) {
      const over = Math.max(0, height - room.height) + TOO_WIDE * Math.max(0, rowWidth(widest) - room.width);
      return { rows, steps, worth: -TOO_LARGE * over };
    }
    const side = tooWide ? "width" : "height";
    const gain = (i: number) => gainByStep(views[i]!, steps[i]!, side);
    const gives = mayGive.reduce((a, b) => (gain(a) >= gain(b) ? a : b));
    steps[gives]!++;
  }
}

/** mm that a view gains by its next smaller scale, for as much of its scale as that costs. */
function gainByStep(view: ScaledView, step: number, side: "width" | "height"): number {
  const lost = Math.log(view.scales[step]! / view.scales[step + 1]!);
  return (view.size(step)[side] - view.size(step + 1)[side]) / lost;
}

/** A doubling of one view outweighs half of another, whatever their own scales; the first counts as two. */
const worthOf = (views: readonly ScaledView[], steps: readonly number[]): number =>
  views.reduce((sum, { scales }, i) => sum + (i === 0 ? FIRST : 1) * Math.log(scales[steps[i]!]!), 0);
const FIRST = 2;
/** What does not fit is worth less than whatever fits, the less for each mm; a page has more room under a drawing than beside it. */
const TOO_LARGE = 1e3;
const TOO_WIDE = 10;

function placeRows(
  rows: readonly (readonly number[])[],
  views: readonly ScaledView[],
  steps: readonly number[],
): PictureMark[] {
  const placed: PictureMark[] = [];
  let top = 0;
  for (const row of rows) {
    let left = 0;
    for (const i of row) {
      const marks = views[i]!.marks(steps[i]!);
      const { min, max } = marksBounds(marks);
      const shift = point(left - min.x, top - max.y);
      placed.push(...marks.map((mark) => translateMark(mark, shift)));
      left += max.x - min.x + BETWEEN_VIEWS;
    }
    top -= Math.max(...row.map((i) => views[i]!.size(steps[i]!).height)) + BETWEEN_VIEWS;
  }
  return placed;
}

export const view = (
  name: string,
  draw: (sketch: Sketch) => void,
  options: Omit<StepView, "name" | "draw"> = {},
): StepView => ({
  name,
  draw,
  ...options,
});
