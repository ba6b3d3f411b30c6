// A closed way of the cutter, measured along itself from its first point.
import {
  distance,
  nearestOnSegment,
  type Outline,
  type Point,
  reverseSegment,
  type Segment,
  segmentLength,
  subsegment,
} from "@lamplane/geometry";

/** Length under which a piece of a way is nothing, mm. */
const NOTHING = 1e-6;

export const pathLength = (path: readonly Segment[]): number => path.reduce((sum, s) => sum + segmentLength(s), 0);

export const reversePath = (path: readonly Segment[]): Segment[] => path.map(reverseSegment).reverse();

/** What of an open path lies between two lengths along it, mm. */
export function pathStretch(path: readonly Segment[], from: number, to: number): Segment[] {
  let passed = 0;
  return path.flatMap((segment) => {
    const length = segmentLength(segment);
    const [low, high] = [Math.max(0, from - passed), Math.min(length, to - passed)];
    passed += length;
    return high - low > NOTHING ? [subsegment(segment, low / length, high / length)] : [];
  });
}

/** The loop begun at a length along it. */
export const loopFrom = (loop: Outline, start: number): Segment[] => {
  const length = pathLength(loop);
  return [...pathStretch(loop, start, length), ...pathStretch(loop, 0, start)];
};

/** Where along a loop it is nearest to a point, mm from its first point, and how near. */
export function nearestAlong(p: Point, loop: Outline): { readonly along: number; readonly distance: number } {
  let [passed, best] = [0, { along: 0, distance: Number.POSITIVE_INFINITY }];
  for (const segment of loop) {
    const { at, share } = nearestOnSegment(p, segment);
    const length = segmentLength(segment);
    const off = distance(p, at);
    if (off < best.distance) best = { along: passed + share * length, distance: off };
    passed += length;
  }
  return best;
}
