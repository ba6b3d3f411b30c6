// Where a part's name stands on it: in the middle of its longest stretch of wood.
import { type Outline, type Point, point, tessellate } from "@lamplane/geometry";

export interface NamePlace {
  /** Middle of the stretch. */
  readonly at: Point;
  /** Length of the stretch, mm. */
  readonly room: number;
  readonly isUpright: boolean;
}

/** Lines looked along in each direction; none on a side, which an opening may touch. */
const LINES = 15;
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
  let best = { at: point(0, 0), room: 0 };
  for (let i = 1; i <= LINES; i++) {
    const y = low + ((high - low) * i) / (LINES + 1);
    const crossings = loops.flatMap((corners) => crossingsAt(corners, y)).sort((a, b) => a - b);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const [from, to] = [crossings[k]!, crossings[k + 1]!];
      const isMiddle =
        Math.abs(i - (LINES + 1) / 2) < Math.abs(best.at.y - (low + high) / 2) / ((high - low) / (LINES + 1));
      if (to - from > best.room + 0.5 || (to - from > best.room - 0.5 && isMiddle))
        best = { at: point((from + to) / 2, y), room: to - from };
    }
  }
  return best;
}

const crossingsAt = (corners: readonly Point[], y: number): number[] =>
  corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    return a.y > y === b.y > y ? [] : [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)];
  });
