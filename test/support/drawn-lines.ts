// A picture's lines, grey areas and words as plain geometry, worked out apart from the code that draws them.
import { tessellate } from "@lamplane/geometry";
import { type LineKind, type Picture, textCorners } from "@lamplane/sheets";

export interface Place {
  readonly x: number;
  readonly y: number;
}
export type Chord = readonly [Place, Place];
type Segment = Parameters<typeof tessellate>[0][number];

const chordsOf = (segments: readonly Segment[]): Chord[] =>
  segments.flatMap((segment) => {
    const ends = [...tessellate([segment], 0.01), segment.to];
    return ends.slice(1).map((to, i): Chord => [ends[i]!, to]);
  });

export interface DrawnLine {
  readonly line: LineKind;
  readonly segments: readonly Segment[];
  readonly chords: readonly Chord[];
  readonly closed: boolean;
}

/** Lines of every kind but a plot's grid. */
export const linesOf = ({ marks }: Picture): DrawnLine[] =>
  marks.flatMap((mark) =>
    mark.kind === "line" && mark.line !== "grid"
      ? [
          {
            line: mark.line,
            segments: mark.segments,
            chords: chordsOf(mark.segments),
            closed: mark.closed === true,
          },
        ]
      : [],
  );

/** Grey areas: neither the white under words nor what is black, an arrow's head or a dot. */
export const greysOf = ({
  marks,
}: Picture): { readonly corners: readonly Place[]; readonly chords: readonly Chord[] }[] =>
  marks.flatMap((mark) => {
    if (mark.kind !== "area" || mark.shade === 0 || mark.shade === 1) return [];
    const segments = mark.boundaries.flat();
    return [{ corners: segments.map(({ from }) => from), chords: chordsOf(segments) }];
  });

export function distanceToChord(p: Place, [a, b]: Chord): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square));
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy);
}

export const distanceToChords = (p: Place, chords: readonly Chord[]): number =>
  chords.reduce((least, chord) => Math.min(least, distanceToChord(p, chord)), Number.POSITIVE_INFINITY);

/** Words with the four corners of their box in order. */
export interface WordBox {
  readonly text: string;
  readonly corners: readonly [Place, Place, Place, Place];
}

export const wordBoxesOf = ({ marks }: Picture): WordBox[] =>
  marks.flatMap((mark) => {
    if (mark.kind !== "text" || mark.text === "") return [];
    const [a, b, c, d] = textCorners(mark);
    return [{ text: mark.text, corners: [a!, c!, d!, b!] }];
  });

const sidesOf = (corners: WordBox["corners"]): Chord[] => corners.map((at, i) => [at, corners[(i + 1) % 4]!]);

/** Whether two convex figures share more than a strip `slack` wide. @see separating axes: no line parts two convex figures that meet */
export function convexOverlap(
  a: readonly Place[],
  b: readonly Place[],
  sides: readonly Chord[],
  slack: number,
): boolean {
  return sides.every(([from, to]) => {
    const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
    const [nx, ny] = [(to.y - from.y) / length, (from.x - to.x) / length];
    const [first, second] = [a, b].map((figure) => figure.map(({ x, y }) => x * nx + y * ny));
    return Math.max(...first!) > Math.min(...second!) + slack && Math.max(...second!) > Math.min(...first!) + slack;
  });
}

export const wordsOverlap = (a: WordBox, b: WordBox, slack: number): boolean =>
  boundsMeet(a.corners, b.corners) &&
  convexOverlap(a.corners, b.corners, [...sidesOf(a.corners), ...sidesOf(b.corners)], slack);

/** Whether a chord runs more than `slack` deep through a box of words. */
export const runsThrough = (chord: Chord, box: WordBox, slack: number): boolean =>
  boundsMeet(box.corners, chord) &&
  convexOverlap(box.corners, chord, sidesOf(box.corners), slack) &&
  crosses(chord, box);

const boundsMeet = (a: readonly Place[], b: readonly Place[]): boolean =>
  (["x", "y"] as const).every((axis) => {
    const [first, second] = [a, b].map((places) => places.map((at) => at[axis]));
    return Math.max(...first!) > Math.min(...second!) && Math.max(...second!) > Math.min(...first!);
  });

/** Whether the box has corners on both sides of the chord's line. */
function crosses([from, to]: Chord, { corners }: WordBox): boolean {
  const sides = corners.map(({ x, y }) => (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x));
  return Math.min(...sides) < 0 && Math.max(...sides) > 0;
}

/** Whether two chords have their ends on either side of each other. */
export function chordsCross([a, b]: Chord, [c, d]: Chord): boolean {
  const side = (p: Place, q: Place, r: Place) => Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}
