// A board with its parts, knots and cuts: its wide face, and below it its edge. Cuts are numbered in the order of sawing.

import type { Board, BoardBox, BoardCuts, Span } from "@lamplane/bench/boards";
import { BOARDS } from "@lamplane/bench/words";
import { line, type Point, point, polygon } from "@lamplane/geometry";
import { formatScale } from "@lamplane/parameters/units";
import { Marks, SHADES } from "../picture/marks.ts";
import type { Picture } from "../picture/picture.ts";
import { framePicture } from "../picture/picture-frame.ts";

/** Letters by which parts stand on the drawing and in the list beside it. */
export const partLetter = (index: number): string => {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : `${letter}${Math.floor(index / 26) + 1}`;
};

const LETTER = { size: 3.2, bold: true, anchor: "middle" } as const;
const NUMBER = { size: 2.6, anchor: "middle" } as const;
/** mm between the two views, and round the board's own lettering. */
const APART = 12;
const KNOT_SHADE = 0.3;

/** One view: along the board to the right, the other axis up. */
interface View {
  readonly up: "y" | "z";
  readonly at: (along: number, up: number) => Point;
}

export function boardPicture(board: Board, own: BoardCuts, width: number): Picture {
  const scale = Math.min(0.5, (width - 30) / board.length);
  const height = board.thickness * scale;
  const views: readonly View[] = [
    { up: "y", at: (along, up) => point(along * scale, height + APART + up * scale) },
    { up: "z", at: (along, up) => point(along * scale, up * scale) },
  ];
  const marks = new Marks();
  for (const view of views) drawView(marks, board, own, view);
  const [face, edge] = views as [View, View];
  const heartUp = board.heart === "up";
  marks.text(heartUp ? BOARDS.heart : BOARDS.bark, edge.at(0, board.thickness + 2 / scale), { size: 2.6 });
  marks.text(heartUp ? BOARDS.bark : BOARDS.heart, edge.at(0, -4 / scale), { size: 2.6 });
  const title = BOARDS.drawing({ scale: formatScale(scale) });
  marks.text(title, face.at(0, board.width + 6 / scale), { size: 2.8, bold: true });
  return framePicture({ name: `board-${own.board + 1}`, title: `${board.name}: ${title}` }, marks.all);
}

function drawView(marks: Marks, board: Board, { parts, cuts }: BoardCuts, { up, at }: View): void {
  const rectangle = (along: Span, rise: Span) =>
    polygon(at(along.from, rise.from), at(along.to, rise.from), at(along.to, rise.to), at(along.from, rise.to));
  const size = up === "y" ? board.width : board.thickness;
  marks.area(SHADES.waste, rectangle({ from: 0, to: board.length }, { from: 0, to: size }));
  parts.forEach(({ box }, i) => {
    marks.area(0, rectangle(box.x, box[up])).outline("thin", rectangle(box.x, box[up]));
    marks.text(partLetter(i), letterPlace(box, up, at, parts.slice(0, i)), LETTER);
  });
  for (const knot of board.knots) {
    const rise = up === "y" ? (knot.across ?? { from: 0, to: size }) : { from: 0, to: size };
    marks.area(KNOT_SHADE, rectangle(knot, rise));
    if (up === "y") marks.label(BOARDS.knot, at((knot.from + knot.to) / 2, (rise.from + rise.to) / 2), NUMBER);
  }
  cuts.forEach(({ axis, kerf, piece }, i) => {
    if (axis !== "x" && axis !== up) return;
    const [along, rise] = axis === "x" ? [kerf, piece[up]] : [piece.x, kerf];
    marks.area(SHADES.kerf, rectangle(along, rise));
    const middle = (kerf.from + kerf.to) / 2;
    const places =
      axis === "x"
        ? [at(middle, piece[up].from), at(middle, piece[up].to)]
        : [at(piece.x.from, middle), at(piece.x.to, middle)];
    marks.line("cut", line(places[0]!, places[1]!));
    const end = places[1]!;
    marks.label(`${i + 1}`, axis === "x" ? point(end.x, end.y + 1) : point(end.x - 3, end.y - 0.9), NUMBER);
  });
  marks.outline("outline", rectangle({ from: 0, to: board.length }, { from: 0, to: size }));
}

/** In the middle of a part, moved along it past the letters of parts that lie before or behind it in this view. */
function letterPlace(
  box: BoardBox,
  up: "y" | "z",
  at: View["at"],
  before: readonly { readonly box: BoardBox }[],
): Point {
  const behind = before.filter(({ box: other }) => meets(other.x, box.x) && meets(other[up], box[up])).length;
  const along = (box.x.from + box.x.to) / 2 + behind * 0.06 * (box.x.to - box.x.from);
  const middle = at(along, (box[up].from + box[up].to) / 2);
  return point(middle.x, middle.y - 1.1);
}

const meets = (a: Span, b: Span): boolean => a.from < b.to && b.from < a.to;
