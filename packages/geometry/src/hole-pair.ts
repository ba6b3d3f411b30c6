// Two equal holes in a plate, placed so that the least wood about them, to every edge and between the two, is largest.

import { intersections } from "./intersection.ts";
import { distanceToSegment } from "./nearest-point.ts";
import { directionAt, isInnerCorner } from "./offset.ts";
import {
  type Arc,
  type Circle,
  distance,
  type Outline,
  type Point,
  point,
  type Segment,
  tessellate,
} from "./outline.ts";
import { polygonHolds } from "./polygon-contact.ts";
import { ringTriples } from "./ring.ts";
import { EPSILON } from "./tolerances.ts";

export interface HolePair {
  readonly holes: readonly [Circle, Circle];
  /** Least wood between a hole's rim and an edge, or between the two rims, mm. Below 0 the holes have no room. */
  readonly wood: number;
}

const STEPS = 40; // halvings: a block of 500 mm is closed in on to a billionth of a millimetre

/**
 * The best places of two holes within an outline.
 * @param outline counter-clockwise
 * @see plane geometry: the holes' centres are the farthest pair of the outline set in by wood + radius
 */
export function widestHolePair(outline: Outline, radius: number): HolePair {
  const corners = tessellate(outline);
  const size = Math.max(...corners.map((p) => distance(p, corners[0]!)));
  let [low, high] = [0, size];
  let best = farthestPair(outline, corners, low);
  for (let i = 0; i < STEPS; i++) {
    const inset = (low + high) / 2;
    const pair = farthestPair(outline, corners, inset);
    if (pair && distance(...pair) >= inset + radius) [low, best] = [inset, pair];
    else high = inset;
  }
  const [a, b] = (best ?? [corners[0]!, corners[0]!]).toSorted((p, q) => p.x - q.x || p.y - q.y) as [Point, Point];
  return {
    holes: [
      { centre: a, radius },
      { centre: b, radius },
    ],
    wood: low - radius,
  };
}

/** The two points farthest apart of all that lie `inset` or more inside the outline; undefined where none does. */
function farthestPair(outline: Outline, corners: readonly Point[], inset: number): [Point, Point] | undefined {
  const edges = insetEdges(outline, inset);
  const isInside = (p: Point) =>
    outline.every((s) => distanceToSegment(p, s) >= inset - EPSILON / 100) && polygonHolds(corners, p);
  const met = edges.flatMap((a, i) => edges.slice(i + 1).flatMap((b) => intersections(a, b).map(({ at }) => at)));
  const vertices = [...met, ...edges.map(({ from }) => from)].filter(isInside);
  const bulges = edges.filter((s): s is Arc => s.kind === "arc" && s.sweep > 0 && s.sweep < 360);
  const onBulges = bulges.flatMap((arc) =>
    [...vertices, ...bulges.map(({ centre }) => centre)].flatMap((p) => farSide(arc, p)),
  );
  const candidates = [...vertices, ...onBulges.filter(isInside)];
  return candidates
    .flatMap((a, i) => candidates.slice(i).map((b): [Point, Point] => [a, b]))
    .reduce<[Point, Point] | undefined>(
      (best, [a, b]) => (best && distance(best[0], best[1]) >= distance(a, b) ? best : [a, b]),
      undefined,
    );
}

/** The outline's edges moved inward, and a circle about each corner that points inward. */
function insetEdges(outline: Outline, inset: number): Segment[] {
  const moved = outline.flatMap((s) => insetSegment(s, inset));
  const round = ringTriples(outline).flatMap(([before, s]) =>
    isInnerCorner(before, s) ? [fullCircle(s.from, inset)] : [],
  );
  return [...moved, ...round];
}

function insetSegment(s: Segment, inset: number): Segment[] {
  const put = (p: Point, along: Point) => point(p.x - along.y * inset, p.y + along.x * inset);
  const [from, to] = [put(s.from, directionAt(s, 0)), put(s.to, directionAt(s, 1))];
  if (s.kind === "line") return [{ kind: "line", from, to }];
  const radius = s.radius - Math.sign(s.sweep) * inset;
  return radius > EPSILON ? [{ ...s, from, to, radius }] : [];
}

const fullCircle = (centre: Point, radius: number): Arc => {
  const start = point(centre.x + radius, centre.y);
  return { kind: "arc", from: start, to: start, centre, radius, sweep: 360 };
};

/** The point of an arc's circle farthest from `p`. */
function farSide({ centre, radius }: Arc, p: Point): Point[] {
  const away = distance(p, centre);
  if (away < EPSILON) return [];
  const k = radius / away;
  return [point(centre.x + (centre.x - p.x) * k, centre.y + (centre.y - p.y) * k)];
}
