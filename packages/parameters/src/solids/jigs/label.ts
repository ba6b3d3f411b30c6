// Words on a jig: the best choice of lines, in the largest letters, as near as there is room to where they belong.
import { distance, type Point, point } from "@lamplane/geometry";
import type { JigLabel } from "../../jigs/jig.ts";
import { type FreeGrid, findFreeMiddle, makeFreeGrid } from "./free-grid.ts";
import { cachedGlyph, type Glyph, LETTER_HEIGHTS, letterAdvance, moveGlyph, STROKE } from "./lettering.ts";

/** Between a letter and the edge of its face, mm. */
const CLEAR = 1;
/** Between two labels, mm. */
const BETWEEN_LABELS = 2.5;
/** From line to line, and below the baseline, as shares of the letters' height. */
const LINE_PITCH = 1.6;
const BELOW = 0.25;

/** Letters in their places on a face. */
export interface LabelLayout {
  readonly letters: readonly Glyph[];
  /** The lines that were chosen, label by label. */
  readonly lines: readonly (readonly string[])[];
}

/** All labels on a face, the last first come last served; undefined where one finds no room at all. */
export function layOutLabels(
  labels: readonly JigLabel[],
  rings: readonly (readonly Point[])[],
): LabelLayout | undefined {
  const found: { letters: readonly Glyph[]; lines: readonly string[] }[] = [];
  const all = [...rings];
  for (const label of labels) {
    const placed = layOutLabel(label, makeFreeGrid(all, CLEAR));
    if (!placed) return undefined;
    found.push(placed);
    all.push(placed.taken);
  }
  return {
    letters: found.flatMap(({ letters }) => letters),
    lines: found.map(({ lines }) => lines),
  };
}

function layOutLabel({ choices, near, within }: JigLabel, room: FreeGrid) {
  for (const choice of choices)
    for (const height of LETTER_HEIGHTS)
      for (const upright of within === undefined ? [false, true] : [false]) {
        const lines = choice.map((line) => layOutLine(line.toUpperCase(), height));
        const width = Math.max(...lines.map((line) => line.width)) + STROKE;
        const high = height * (1 + LINE_PITCH * (lines.length - 1) + BELOW) + STROKE;
        const middle = upright ? findFreeMiddle(room, high, width, near) : findFreeMiddle(room, width, high, near);
        if (!middle || distance(middle, near) > (within ?? Number.POSITIVE_INFINITY)) continue;
        const letters = lines.flatMap((line, i) => {
          const [x, y] = [-line.width / 2, high / 2 - STROKE / 2 - height * (1 + LINE_PITCH * i)];
          return line.letters(x, y).map((letter) => placeLetter(letter, middle, upright));
        });
        return { letters, lines: choice, taken: labelFootprint(middle, upright ? [high, width] : [width, high]) };
      }
  return undefined;
}

/** A rectangle round a label that the next ones stay out of; run clockwise, as a hole. */
function labelFootprint(middle: Point, [width, height]: readonly [number, number]): Point[] {
  const [w, h] = [width / 2 + BETWEEN_LABELS - CLEAR, height / 2 + BETWEEN_LABELS - CLEAR];
  return [point(-w, -h), point(-w, h), point(w, h), point(w, -h)].map((p) => point(p.x + middle.x, p.y + middle.y));
}

function layOutLine(text: string, height: number) {
  let x = 0;
  const letters = [...text].map((letter) => {
    const from = x;
    x += letterAdvance(letter, height);
    return { letter, from };
  });
  return {
    width: x,
    letters: (left: number, base: number): Glyph[] =>
      letters.map(({ letter, from }) =>
        moveGlyph(cachedGlyph(letter, height), (p) => point(p.x + left + from, p.y + base)),
      ),
  };
}

const placeLetter = (letter: Glyph, { x, y }: Point, upright: boolean): Glyph =>
  moveGlyph(letter, (p) => (upright ? point(x - p.y, y + p.x) : point(x + p.x, y + p.y)));
