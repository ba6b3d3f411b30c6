// The point of exact segments that is nearest to a place, and how far it is.
import { type Arc, distance, orientation, type Point, point, pointAlong, type Segment } from "./outline.ts";
import { atan2Deg } from "./trig.ts";

/** Distance from a point to a chain of segments, mm. */
export function distanceToChain(p: Point, chain: readonly Segment[]): number {
  let nearest = Infinity;
  for (const segment of chain) nearest = Math.min(nearest, distanceToSegment(p, segment));
  return nearest;
}

/** Distance from a point to the nearest point of a segment, mm. */
export function distanceToSegment(p: Point, s: Segment): number {
  if (s.kind === "arc") return isOverArc(p, s) ? Math.abs(distance(p, s.centre) - s.radius) : distanceToEnds(p, s);
  return distance(p, pointAlong(s, shareOfLine(p, s)));
}

const distanceToEnds = (p: Point, { from, to }: Arc): number => Math.min(distance(p, from), distance(p, to));

/** Whether the ray from an arc's centre through a point meets the arc. */
function isOverArc(p: Point, { from, to, centre, sweep }: Arc): boolean {
  const [first, last] = sweep > 0 ? [from, to] : [to, from];
  const [isPastFirst, isBeforeLast] = [orientation(first, p, centre) >= 0, orientation(p, last, centre) >= 0];
  if (Math.abs(sweep) <= 180) return isPastFirst && isBeforeLast;
  return Math.abs(sweep) >= 360 || isPastFirst || isBeforeLast;
}

/** Smallest upright box about segments, exact for arcs: its lower left and upper right corners. */
export function segmentBounds(segments: readonly Segment[]): { min: Point; max: Point } {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  const include = (x: number, y: number) => {
    [left, low] = [Math.min(left, x), Math.min(low, y)];
    [right, high] = [Math.max(right, x), Math.max(high, y)];
  };
  for (const segment of segments) {
    include(segment.from.x, segment.from.y);
    include(segment.to.x, segment.to.y);
    if (segment.kind === "arc")
      for (const [x, y] of DIRECTIONS) {
        const p = point(segment.centre.x + x * segment.radius, segment.centre.y + y * segment.radius);
        if (isOverArc(p, segment)) include(p.x, p.y);
      }
  }
  return { min: point(left, low), max: point(right, high) };
}

/** Where a circle runs upright or level. */
const DIRECTIONS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/** The point of a segment that is nearest to another, and the share of the segment at which it lies. */
export function nearestOnSegment(p: Point, segment: Segment): { readonly at: Point; readonly share: number } {
  const share = Math.max(0, Math.min(1, nearestShare(p, segment)));
  return { at: pointAlong(segment, share), share };
}

function nearestShare(p: Point, segment: Segment): number {
  if (segment.kind === "line") return shareOfLine(p, segment);
  const ahead = degreesAlong(segment, p);
  if (ahead <= Math.abs(segment.sweep)) return ahead / Math.abs(segment.sweep);
  return distance(p, segment.from) < distance(p, segment.to) ? 0 : 1;
}

/** Share of a line's length at the foot of the perpendicular from a point; 0 for a line without length. */
function shareOfLine(p: Point, { from, to }: Segment): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return ((p.x - from.x) * dx + (p.y - from.y) * dy) / (dx * dx + dy * dy || 1);
}

/** Angle from an arc's beginning to a point, seen from its centre and in the direction of its sweep: 0 up to 360. */
export function degreesAlong({ centre, from, sweep }: Arc, p: Point): number {
  const turn = atan2Deg(p.y - centre.y, p.x - centre.x) - atan2Deg(from.y - centre.y, from.x - centre.x);
  return (turn * Math.sign(sweep) + 360) % 360;
}
