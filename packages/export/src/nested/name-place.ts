// Where a part's name stands on it: in the middle of its longest stretch of wood.
import { type Outline, type Point, point, ringPairs, tessellate } from "@lamplane/geometry";

export interface NamePlace {
  /** Middle of the stretch. */
  readonly at: Point;
  /** Length of the stretch, mm. */
  readonly room: number;
  readonly isUpright: boolean;
}

/** Lines looked along in each direction. */
const LINES = 15;
/** Wood wanted on both sides of the line, mm. */
const HALF_NAME = 5;
/** A stretch upwards is taken where it is so much longer: level words read better. */
const UPRIGHT_FROM = 1.3;

/** @param outlines of a part and its openings */
export function namePlace(outlines: readonly Outline[]): NamePlace {
  const loops = outlines.map((outline) => tessellate(outline, 0.2));
  const level = longestStretch(loops);
  const upright = longestStretch(loops.map((corners) => corners.map(({ x, y }) => point(y, x))));
  return upright.room > UPRIGHT_FROM * level.room
    ? { at: point(upright.at.y, upright.at.x), room: upright.room, isUpright: true }
    : { ...level, isUpright: false };
}

function longestStretch(loops: readonly (readonly Point[])[]): { at: Point; room: number } {
  const heights = loops.flat().map(({ y }) => y);
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const middle = (low + high) / 2;
  const stretches = Array.from({ length: LINES }, (_, i) => low + ((high - low) * (i + 1)) / (LINES + 1)).flatMap((y) =>
    [y - HALF_NAME, y + HALF_NAME]
      .map((beside) => woodAt(loops, beside))
      .reduce(overlaps, woodAt(loops, y))
      .map(({ from, to }) => ({ at: point((from + to) / 2, y), room: to - from })),
  );
  const rank = ({ at, room }: { at: Point; room: number }) => room - Math.abs(at.y - middle) / 2;
  return stretches.reduce((a, b) => (rank(b) > rank(a) ? b : a), { at: point(loops[0]![0]!.x, middle), room: 0 });
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What both lists of stretches have in common. */
const overlaps = (a: readonly Stretch[], b: readonly Stretch[]): Stretch[] =>
  a.flatMap((one) =>
    b
      .map((other) => ({ from: Math.max(one.from, other.from), to: Math.min(one.to, other.to) }))
      .filter(({ from, to }) => to > from),
  );

/** Stretches of wood along a level line. */
function woodAt(loops: readonly (readonly Point[])[], y: number): Stretch[] {
  const crossings = loops.flatMap((corners) => crossingsAt(corners, y)).sort((a, b) => a - b);
  return crossings.flatMap((from, i) =>
    i % 2 === 0 && i + 1 < crossings.length ? [{ from, to: crossings[i + 1]! }] : [],
  );
}

const crossingsAt = (corners: readonly Point[], y: number): number[] =>
  ringPairs(corners).flatMap(([a, b]) => (a.y > y === b.y > y ? [] : [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)]));
