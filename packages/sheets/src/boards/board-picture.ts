// A board with its parts, knots and cuts: its wide face, and below it its edge. Cuts are numbered in the order of sawing.

import type { Board, BoardCuts, Span } from "@lamplane/bench/boards";
import { BOARDS } from "@lamplane/bench/words";
import { line, type Point, point, polygon } from "@lamplane/geometry";
import { formatScale } from "@lamplane/parameters/units";
import { Marks, SHADES } from "../picture/marks.ts";
import type { Picture } from "../picture/picture.ts";
import { framePicture } from "../picture/picture-frame.ts";
import { type Box, boxesOverlap } from "../picture/text-layout.ts";
import { textWidth } from "../picture/text-metrics.ts";

/** Letters by which parts stand on the drawing and in the list beside it. */
export const partLetter = (index: number): string => {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : `${letter}${Math.floor(index / 26) + 1}`;
};

interface LabelType {
  readonly size: number;
  readonly bold: boolean;
}
const LETTER: LabelType = { size: 2.8, bold: true };
const NUMBER: LabelType = { size: 2.2, bold: false };
/** mm between the two views, and round the board's own lettering. */
const APART = 12;
const KNOT_SHADE = 0.3;
/** Scales that a drawing may have, the largest first. */
const SCALES = [2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30].map((times) => 1 / times);

/** One view: from the end to the right; the face with the left edge above, as from the end one sees it, the edge with the face above. */
interface View {
  readonly up: "y" | "z";
  readonly at: (along: number, up: number) => Point;
}

export function boardPicture(board: Board, own: BoardCuts, width: number): Picture {
  const room = (width - 30) / board.length;
  const scale = SCALES.find((each) => each <= room) ?? room;
  const height = board.thickness * scale;
  const views: readonly View[] = [
    { up: "y", at: (along, up) => point(along * scale, height + APART + (board.width - up) * scale) },
    { up: "z", at: (along, up) => point(along * scale, up * scale) },
  ];
  const marks = new Marks();
  for (const view of views) drawView(marks, board, own, view);
  const [face, edge] = views as [View, View];
  const heartUp = board.heart === "up";
  marks.text(heartUp ? BOARDS.heart : BOARDS.bark, edge.at(0, board.thickness + 2 / scale), { size: 2.6 });
  marks.text(heartUp ? BOARDS.bark : BOARDS.heart, edge.at(0, -4 / scale), { size: 2.6 });
  marks.text(BOARDS.end, face.at(-2 / scale, board.width / 2), { size: 2.6, anchor: "middle", turn: 90 });
  marks.text(BOARDS.leftEdge, face.at(0, -2 / scale), { size: 2.6 });
  const title = BOARDS.drawing({ scale: formatScale(scale) });
  marks.text(title, face.at(0, -7 / scale), { size: 2.8, bold: true });
  return framePicture({ name: `board-${own.board + 1}`, title: `${board.name}: ${title}` }, marks.all);
}

function drawView(marks: Marks, board: Board, { parts, cuts }: BoardCuts, { up, at }: View): void {
  const rectangle = (along: Span, rise: Span) =>
    polygon(at(along.from, rise.from), at(along.to, rise.from), at(along.to, rise.to), at(along.from, rise.to));
  const whole: Span = { from: 0, to: up === "y" ? board.width : board.thickness };
  const boardOutline = rectangle({ from: 0, to: board.length }, whole);
  const knots = board.knots.map((knot) => ({ along: knot, rise: (up === "y" && knot.across) || whole }));
  const seen = cuts.flatMap((cut, i) => (cut.axis === "x" || cut.axis === up ? [{ ...cut, number: i + 1 }] : []));
  marks.area(SHADES.waste, boardOutline);
  for (const { box } of parts) marks.area(0, rectangle(box.x, box[up])).outline("thin", rectangle(box.x, box[up]));
  for (const { along, rise } of knots) marks.area(KNOT_SHADE, rectangle(along, rise));
  for (const { axis, kerf, piece } of seen) {
    const [along, rise] = axis === "x" ? [kerf, piece[up]] : [piece.x, kerf];
    const middle = (kerf.from + kerf.to) / 2;
    marks.area(SHADES.kerf, rectangle(along, rise));
    if (axis === "x") marks.line("cut", line(at(middle, rise.from), at(middle, rise.to)));
    else marks.line("cut", line(at(along.from, middle), at(along.to, middle)));
  }
  marks.outline("outline", boardOutline);

  const label = placingLabels(marks);
  for (const { axis, kerf, piece, number } of seen) {
    const middle = (kerf.from + kerf.to) / 2;
    if (axis === "x") label(`${number}`, [pointAbove(at(middle, piece[up].from), at(middle, piece[up].to))], NUMBER);
    else label(`${number}`, placesBetween(at(piece.x.to, middle), at(piece.x.from, middle)), NUMBER);
  }
  for (const { along, rise } of up === "y" ? knots : [])
    label(BOARDS.knot, [at((along.from + along.to) / 2, (rise.from + rise.to) / 2)], NUMBER);
  parts.forEach(({ box }, i) => {
    const height = (box[up].from + box[up].to) / 2;
    const [middle, end, start] = [(box.x.from + box.x.to) / 2, box.x.to, box.x.from].map((x) => at(x, height));
    label(partLetter(i), [...placesBetween(middle!, end!), ...placesBetween(middle!, start!)], LETTER);
  });
}

/** mm from one place that is tried to the next. */
const STEP = 2;

/** Places on the way from one point to another, level. */
const placesBetween = (from: Point, to: Point): Point[] => {
  const way = to.x - from.x;
  const count = Math.floor(Math.abs(way) / STEP);
  return Array.from({ length: count }, (_, i) => point(from.x + Math.sign(way) * STEP * (i + 0.75), from.y));
};

const pointAbove = (a: Point, b: Point): Point => point(a.x, Math.max(a.y, b.y) + 2);

/** Writes words in the middle of the first of some places where they meet no others; at the first where all are taken. */
function placingLabels(marks: Marks): (words: string, places: readonly Point[], type: LabelType) => void {
  const taken: Box[] = [];
  return (words, places, { size, bold }) => {
    const half = textWidth(words, size, bold) / 2 + 0.3;
    const boxAt = ({ x, y }: Point): Box => ({
      left: x - half,
      right: x + half,
      low: y - 0.55 * size,
      high: y + 0.55 * size,
    });
    const place = places.find((each) => taken.every((other) => !boxesOverlap(other, boxAt(each)))) ?? places[0];
    if (!place) return;
    taken.push(boxAt(place));
    marks.label(words, point(place.x, place.y - 0.36 * size), { size, bold, anchor: "middle" });
  };
}
