// Outlines moved sideways by a distance, exactly: lines stay lines, arcs stay arcs; corners are rounded on their outside.

import { intersections, subsegment } from "./intersection.ts";
import { distanceToChain } from "./nearest-point.ts";
import {
  type Arc,
  distance,
  type Outline,
  outlineArea,
  type Point,
  point,
  pointAlong,
  type Segment,
  segmentLength,
} from "./outline.ts";
import { ringTriples } from "./ring.ts";
import { EPSILON } from "./tolerances.ts";
import { atan2Deg } from "./trig.ts";

/** How near two ends must be to be one, mm: sums of sines and roots, not a maker's hand. */
const JOINED = 1e-5;
/** Area under which a loop is nothing but noise, mm². */
const LEAST_AREA = 1e-6;

/**
 * Everything at a distance from a closed outline, on one side of it, as closed loops: where a cutter's middle may go round
 * or within it. None where the cutter does not fit.
 * @param by mm to the right of the outline's direction: outward of one that runs counter-clockwise; below 0 to its left
 * @returns loops that run as the outline does, the largest first
 */
export function offsetOutline(outline: Outline, by: number): Outline[] {
  const raw = ringTriples(outline).flatMap(([before, segment]) => [
    ...cornerArc(before, segment, by),
    ...offsetSegment(segment, by),
  ]);
  const far = Math.abs(by) - JOINED;
  const kept = raw
    .flatMap((segment) => splitAtAll(segment, raw))
    .filter((piece) => distanceToChain(pointAlong(piece, 0.5), outline) >= far);
  return chainLoops(kept)
    .filter((loop) => Math.abs(outlineArea(loop)) > LEAST_AREA)
    .sort((a, b) => Math.abs(outlineArea(b)) - Math.abs(outlineArea(a)));
}

/** A segment moved to its right; nothing of an arc that shrinks to its centre. */
function offsetSegment(segment: Segment, by: number): Segment[] {
  if (segment.kind === "line") {
    const n = rightOf(directionAt(segment, 0));
    return [{ kind: "line", from: moved(segment.from, n, by), to: moved(segment.to, n, by) }];
  }
  const { centre, radius, sweep, from, to } = segment;
  const grown = radius + Math.sign(sweep) * by;
  if (grown < EPSILON) return [];
  const out = (p: Point) =>
    point(centre.x + ((p.x - centre.x) * grown) / radius, centre.y + ((p.y - centre.y) * grown) / radius);
  return [{ ...segment, from: out(from), to: out(to), radius: grown }];
}

/** The arc round a corner on the side where the two moved segments part. */
function cornerArc(before: Segment, after: Segment, by: number): Arc[] {
  const [a, b] = [directionAt(before, 1), directionAt(after, 0)];
  const turn = a.x * b.y - a.y * b.x;
  const bend = atan2Deg(turn, a.x * b.x + a.y * b.y);
  if (bend * Math.sign(by) < 1e-6) return [];
  const centre = after.from;
  const radius = Math.abs(by);
  return [
    {
      kind: "arc",
      centre,
      radius,
      sweep: bend,
      from: moved(centre, rightOf(a), by),
      to: moved(centre, rightOf(b), by),
    },
  ];
}

const moved = (p: Point, n: Point, by: number): Point => point(p.x + n.x * by, p.y + n.y * by);
const rightOf = ({ x, y }: Point): Point => point(y, -x);

/** Unit direction in which a segment runs at its beginning (share 0), its end (1) or between. */
export function directionAt(segment: Segment, share: number): Point {
  if (segment.kind === "line") {
    const length = distance(segment.from, segment.to);
    return point((segment.to.x - segment.from.x) / length, (segment.to.y - segment.from.y) / length);
  }
  const p = pointAlong(segment, share);
  const turn = Math.sign(segment.sweep) / segment.radius;
  return point(-(p.y - segment.centre.y) * turn, (p.x - segment.centre.x) * turn);
}

/** Whether an outline that runs counter-clockwise turns inward, to the right, from one segment to the next. */
export function isInnerCorner(before: Segment, after: Segment): boolean {
  const [a, b] = [directionAt(before, 1), directionAt(after, 0)];
  return a.x * b.y - a.y * b.x < -EPSILON;
}

function splitAtAll(segment: Segment, others: readonly Segment[]): Segment[] {
  const shares = others
    .filter((other) => other !== segment)
    .flatMap((other) => intersections(segment, other).map(({ shareOfFirst }) => shareOfFirst))
    .filter((share) => share > 0 && share < 1)
    .sort((a, b) => a - b);
  const stops = [0, ...shares, 1];
  return stops
    .slice(1)
    .map((stop, i) => subsegment(segment, stops[i]!, stop))
    .filter((piece) => segmentLength(piece) > JOINED / 10);
}

/** Pieces that end where another begins, as closed loops; a chain that does not close is dropped. */
function chainLoops(pieces: readonly Segment[]): Outline[] {
  const left = new Set(pieces);
  const loops: Outline[] = [];
  for (const first of pieces) {
    if (!left.delete(first)) continue;
    const loop = [first];
    for (let end = first.to; distance(end, first.from) > JOINED; ) {
      const next = [...left].find((piece) => distance(piece.from, end) <= JOINED);
      if (!next) break;
      left.delete(next);
      loop.push({ ...next, from: end });
      end = next.to;
    }
    const last = loop.at(-1)!;
    if (distance(last.to, first.from) > JOINED) continue;
    loop[loop.length - 1] = { ...last, to: first.from };
    loops.push(loop);
  }
  return loops;
}
