// Whether a part of a given length goes into a piece of wood with its grain along its length, where, and how long it could be.
import { type Point, point, polygonArea, type Transform2, transformPoint } from "@lamplane/geometry";
import { innerFitPolygon } from "./inner-fit.ts";

/** A part that may be made shorter: a shorter one always lies within a longer one. */
export interface PartByLength {
  /** Corners for a length, convex; its own length lies at `lies` degrees from x. mm. */
  readonly corners: (length: number) => readonly Point[];
  readonly lies: number;
  readonly length: number;
  /** How far its length may lie from the grain, degrees. */
  readonly runOut: number;
}

export interface PartFit {
  /** Turn, mirror and shift of the part's own corners; undefined where it does not go in. */
  readonly place: Transform2 | undefined;
  /** Angle between the part's length and the grain where it is placed, or where the longest one would lie. Degrees. */
  readonly fromGrain: number;
  /** Longest of its kind that goes in, mm; 0 where none does. Never under the part's length where the part goes in. */
  readonly longest: number;
  /** How much too long it is, mm; 0 where it goes in. */
  readonly tooLongBy: number;
}

/** Turns that are tried: a saw's fence is set no finer by eye. Degrees. */
const STEP = 0.25;
/** No piece shorter than this is worth telling of, mm. */
const SHORTEST = 1;
const NEAR_ENOUGH = 1e-3; // mm: a hundredth of what a maker can hold

/** One way of laying a part: turned end for end, turned over, and its length at `off` degrees from the grain. */
interface Laying {
  readonly off: number;
  readonly turn: number;
  readonly mirrored: boolean;
}

/**
 * The placement with the least run-out; the part may also be turned end for end and turned over.
 * @param container convex, counter-clockwise, its grain along x. mm.
 */
export function findPlacement(container: readonly Point[], part: PartByLength): PartFit {
  const turns = anglesWithin(part.runOut);
  const longest = findLongest(container, part, turns);
  if (longest.length < part.length) {
    const fromGrain = Math.abs(longest.off);
    return { place: undefined, fromGrain, longest: longest.length, tooLongBy: part.length - longest.length };
  }
  const best = [...turns, longest.off]
    .sort((a, b) => Math.abs(a) - Math.abs(b))
    .flatMap((off) => roomiestPlacement(container, part, off))[0]!;
  return { ...best, longest: longest.length, tooLongBy: 0 };
}

function anglesWithin(runOut: number): number[] {
  const steps = Math.floor(runOut / STEP + 1e-9);
  return Array.from({ length: 2 * steps + 1 }, (_, i) => (i - steps) * STEP);
}

const layingsAt = (part: PartByLength, off: number): Laying[] =>
  [0, 180].flatMap((end) => [false, true].map((mirrored) => ({ off, turn: off + end - part.lies, mirrored })));

const shiftsFor = (
  container: readonly Point[],
  part: PartByLength,
  length: number,
  { turn, mirrored }: Laying,
): Point[] =>
  innerFitPolygon(
    container,
    part.corners(length).map((p) => transformPoint(p, { turn, mirrored })),
  );

/** The way with most room about the part at one turn, in the middle of that room; nothing where it does not go in. */
function roomiestPlacement(container: readonly Point[], part: PartByLength, off: number) {
  const found = layingsAt(part, off)
    .map((way) => ({ way, shifts: shiftsFor(container, part, part.length, way) }))
    .filter(({ shifts }) => shifts.length > 0)
    .sort((a, b) => polygonArea(b.shifts) - polygonArea(a.shifts))[0];
  if (!found) return [];
  const { turn, mirrored } = found.way;
  return [{ place: { turn, mirrored, shift: meanCorner(found.shifts) }, fromGrain: Math.abs(off) }];
}

/** Mean of the corners: inside every convex polygon, one shut to a line or a point too. */
const meanCorner = (corners: readonly Point[]): Point =>
  point(
    corners.reduce((sum, p) => sum + p.x, 0) / corners.length,
    corners.reduce((sum, p) => sum + p.y, 0) / corners.length,
  );

/** The longest part of all turns: the best of the steps, then closed in on between its neighbours. */
function findLongest(container: readonly Point[], part: PartByLength, turns: readonly number[]) {
  let best = { length: 0, off: 0 };
  const look = (off: number) => {
    const length = longestAtAngle(container, part, off, best.length);
    if (length > best.length) best = { length, off };
  };
  for (const off of turns) look(off);
  for (let step = STEP / 2; step > STEP / 300; step /= 2)
    for (const off of [best.off - step, best.off + step]) if (Math.abs(off) <= part.runOut) look(off);
  return best;
}

/** Longest part at one turn, whichever way; 0 where it is no longer than `known`. */
function longestAtAngle(container: readonly Point[], part: PartByLength, off: number, known: number): number {
  const ways = layingsAt(part, off);
  const goesIn = (length: number) => ways.some((way) => shiftsFor(container, part, length, way).length > 0);
  let fits = Math.max(known + NEAR_ENOUGH, SHORTEST);
  if (container.length < 3 || !goesIn(fits)) return 0;
  let fails = fits + 2 * Math.max(...container.map((p) => Math.hypot(p.x - container[0]!.x, p.y - container[0]!.y)));
  while (fails - fits > NEAR_ENOUGH / 10) {
    const middle = (fits + fails) / 2;
    if (goesIn(middle)) fits = middle;
    else fails = middle;
  }
  return fits;
}
