// How far a point is from exact segments.

import { distance, orientation, type Point, point, type Segment } from "./outline.ts";

/** Distance from a point to a chain of segments, mm. */
export function distanceToChain(p: Point, chain: readonly Segment[]): number {
  let nearest = Infinity;
  for (const segment of chain) nearest = Math.min(nearest, distanceToSegment(p, segment));
  return nearest;
}

/** Distance from a point to the nearest point of a segment, mm. */
export function distanceToSegment(p: Point, s: Segment): number {
  if (s.kind === "arc") {
    const [first, last] = s.sweep > 0 ? [s.from, s.to] : [s.to, s.from];
    const over =
      Math.abs(s.sweep) <= 180 && orientation(first, p, s.centre) >= 0 && orientation(p, last, s.centre) >= 0;
    return over ? Math.abs(distance(p, s.centre) - s.radius) : distanceToEnds(p, s);
  }
  const [dx, dy] = [s.to.x - s.from.x, s.to.y - s.from.y];
  const share = ((p.x - s.from.x) * dx + (p.y - s.from.y) * dy) / (dx * dx + dy * dy);
  return share > 0 && share < 1
    ? distance(p, point(s.from.x + dx * share, s.from.y + dy * share))
    : distanceToEnds(p, s);
}

const distanceToEnds = (p: Point, { from, to }: Segment): number => Math.min(distance(p, from), distance(p, to));
