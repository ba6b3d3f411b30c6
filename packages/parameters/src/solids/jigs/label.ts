// Words on a jig: the best choice of lines, in the largest letters, as near as there is room to where they belong.
import { distance, type Point, point } from "@lamplane/geometry";
import type { Label } from "../../jigs/jig.ts";
import { freeMiddle, type Room, roomOn } from "./free-room.ts";
import { advanceOf, type Glyph, glyphOf, LETTER_HEIGHTS, STROKE } from "./lettering.ts";

/** Between a letter and the edge of its face, mm. */
const CLEAR = 1;
/** Between two labels, mm. */
const BETWEEN_LABELS = 2.5;
/** From line to line, and below the baseline, as shares of the letters' height. */
const LINE_PITCH = 1.6;
const BELOW = 0.25;

/** Letters in their places on a face. */
export interface Placed {
  readonly pieces: Glyph["pieces"];
  /** The lines that were chosen, label by label. */
  readonly lines: readonly (readonly string[])[];
}

/** All labels on a face, the last first come last served; undefined where one finds no room at all. */
export function placedLabels(labels: readonly Label[], rings: readonly (readonly Point[])[]): Placed | undefined {
  const found: { pieces: Glyph["pieces"]; lines: readonly string[] }[] = [];
  const all = [...rings];
  for (const label of labels) {
    const placed = placedLabel(label, roomOn(all, CLEAR));
    if (!placed) return undefined;
    found.push(placed);
    all.push(placed.taken);
  }
  return {
    pieces: found.flatMap(({ pieces }) => pieces),
    lines: found.map(({ lines }) => lines),
  };
}

function placedLabel({ choices, near, within }: Label, room: Room) {
  for (const choice of choices)
    for (const height of LETTER_HEIGHTS)
      for (const upright of within === undefined ? [false, true] : [false]) {
        const lines = choice.map((line) => lineOf(line.toUpperCase(), height));
        const width = Math.max(...lines.map((line) => line.width)) + STROKE;
        const high = height * (1 + LINE_PITCH * (lines.length - 1) + BELOW) + STROKE;
        const middle = upright ? freeMiddle(room, high, width, near) : freeMiddle(room, width, high, near);
        if (!middle || distance(middle, near) > (within ?? Number.POSITIVE_INFINITY)) continue;
        const pieces = lines.flatMap((line, i) => {
          const [x, y] = [-line.width / 2, high / 2 - STROKE / 2 - height * (1 + LINE_PITCH * i)];
          return line.pieces(x, y).map((piece) => movedPiece(piece, middle, upright));
        });
        return { pieces, lines: choice, taken: takenBy(middle, upright ? [high, width] : [width, high]) };
      }
  return undefined;
}

/** A rectangle round a label that the next ones stay out of; run clockwise, as a hole. */
function takenBy(middle: Point, [width, height]: readonly [number, number]): Point[] {
  const [w, h] = [width / 2 + BETWEEN_LABELS - CLEAR, height / 2 + BETWEEN_LABELS - CLEAR];
  return [point(-w, -h), point(-w, h), point(w, h), point(w, -h)].map((p) => point(p.x + middle.x, p.y + middle.y));
}

function lineOf(text: string, height: number) {
  let x = 0;
  const letters = [...text].map((letter) => {
    const from = x;
    x += advanceOf(letter, height);
    return { letter, from };
  });
  return {
    width: x,
    pieces: (left: number, base: number): Glyph["pieces"] =>
      letters.flatMap(({ letter, from }) =>
        glyphOf(letter, height).pieces.map((piece) => mapped(piece, (p) => point(p.x + left + from, p.y + base))),
      ),
  };
}

type Piece = Glyph["pieces"][number];

const mapped = ({ boundary, counters }: Piece, move: (p: Point) => Point): Piece => ({
  boundary: boundary.map(move),
  counters: counters.map((ring) => ring.map(move)),
});

const movedPiece = (piece: Piece, { x, y }: Point, upright: boolean): Piece =>
  mapped(piece, (p) => (upright ? point(x - p.y, y + p.x) : point(x + p.x, y + p.y)));
