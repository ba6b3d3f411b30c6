// Where words go in a plot: near what they tell of, inside the frame, never over other words, off the lines where there is room.
import type { Point } from "../elevation/outline.ts";
import { type Box, blockBox, blockHeight, holds, overlap } from "./words.ts";

/** Words that want a place beside a point. */
export interface Wanting {
  readonly at: Point;
  readonly lines: readonly string[];
}

/** Where they went: upper left corner, the side on which they are flush, and the leader where they stand off. */
export interface Placed extends Wanting {
  readonly corner: Point;
  readonly flush: "left" | "right";
  readonly leader: readonly [Point, Point] | undefined;
}

const GRID = 1.5; // mm between the places that are tried
const GAP = 1; // mm round words that is kept free of other words
const NEAR = 2.5; // mm: closer than this, words need no leader
/** Costs in mm of distance: words over a line's sample point, over a point told of, and a leader that runs through words. */
const OVER_LINE = 6;
const OVER_ANCHOR = 60;
const THROUGH_WORDS = 60;
const OVER_WORDS = 1e4;

/**
 * A place for each, in order. Every place of a grid over the frame is tried and the cheapest taken: distance, lines under the
 * words, leaders through words. @param avoid points of the lines, a millimetre or so apart
 */
export function placed(
  wanting: readonly Wanting[],
  size: number,
  frame: Box,
  taken: readonly Box[],
  avoid: readonly Point[],
): Placed[] {
  const boxes = [...taken];
  const lines = [...avoid];
  return wanting.map((want) => {
    const anchors = wanting.filter((other) => other !== want).map(({ at }) => at);
    const best = cheapest(want, size, frame, { boxes, avoid: lines, anchors });
    boxes.push(grown(blockBox(want.lines, size, best.corner), GAP));
    if (best.leader) lines.push(...samples(best.leader));
    return best;
  });
}

/** What words keep off: other words, lines, and the points that other words tell of. */
interface Obstacles {
  readonly boxes: readonly Box[];
  readonly avoid: readonly Point[];
  readonly anchors: readonly Point[];
}

function cheapest(want: Wanting, size: number, frame: Box, obstacles: Obstacles): Placed {
  const { right, left } = blockBox(want.lines, size, { x: 0, y: 0 });
  const [width, height] = [right - left, blockHeight(want.lines, size)];
  let best: { cost: number; place: Placed } | undefined;
  for (let x = frame.left + GAP; x <= frame.right - GAP - width; x += GRID)
    for (let y = frame.low + GAP + height; y <= frame.high - GAP; y += GRID) {
      const place = placeAt(want, size, { x, y });
      const bound = best?.cost ?? Number.POSITIVE_INFINITY;
      const cost = costOf(place, size, obstacles, bound);
      if (cost < bound) best = { cost, place };
    }
  // Words wider than the frame stand at its left edge, over what is there: they are still read.
  return best?.place ?? placeAt(want, size, { x: frame.left + GAP, y: frame.high - GAP });
}

function placeAt(want: Wanting, size: number, corner: Point): Placed {
  const box = blockBox(want.lines, size, corner);
  const nearest = { x: clamped(want.at.x, box.left, box.right), y: clamped(want.at.y, box.low, box.high) };
  const far = Math.hypot(nearest.x - want.at.x, nearest.y - want.at.y);
  const flush = want.at.x > (box.left + box.right) / 2 ? "right" : "left";
  return { ...want, corner, flush, leader: far > NEAR ? [want.at, nearest] : undefined };
}

/** Cost of a place; what is beyond `bound` need not be exact. */
function costOf(place: Placed, size: number, { boxes, avoid, anchors }: Obstacles, bound: number): number {
  const box = blockBox(place.lines, size, place.corner);
  const middle = { x: clamped(place.at.x, box.left, box.right), y: clamped(place.at.y, box.low, box.high) };
  const distance = Math.hypot(middle.x - place.at.x, middle.y - place.at.y);
  let cost = Math.abs(distance - GAP) + (boxes.some((other) => overlap(box, other)) ? OVER_WORDS : 0);
  if (holds(box, place.at)) cost += OVER_WORDS;
  if (cost >= bound) return cost;
  const wide = grown(box, GAP / 2);
  cost += OVER_ANCHOR * anchors.filter((p) => holds(grown(box, GAP), p)).length;
  cost += OVER_LINE * avoid.filter((p) => holds(wide, p)).length;
  if (cost >= bound || !place.leader) return cost;
  return cost + THROUGH_WORDS * samples(place.leader).filter((p) => boxes.some((other) => holds(other, p))).length;
}

/** Points along a line, at most a millimetre apart, both ends among them. */
export function samples([from, to]: readonly [Point, Point]): Point[] {
  const count = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y)) + 1;
  return Array.from({ length: count + 1 }, (_, i) => ({
    x: from.x + ((to.x - from.x) * i) / count,
    y: from.y + ((to.y - from.y) * i) / count,
  }));
}

const clamped = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

export const grown = ({ left, right, low, high }: Box, by: number): Box => ({
  left: left - by,
  right: right + by,
  low: low - by,
  high: high + by,
});

/**
 * Middles of blocks beside each other in a column: as near as can be to those wanted, in the same order, none over another,
 * all between `low` and `high` where they fit. @param heights of the blocks, mm
 */
export function spread(wanted: readonly number[], heights: readonly number[], low: number, high: number): number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]! || a - b);
  const middles = [...wanted];
  let floor = low;
  for (const i of order) {
    middles[i] = Math.max(wanted[i]!, floor + heights[i]! / 2);
    floor = middles[i]! + heights[i]! / 2;
  }
  let ceiling = high;
  for (const i of order.toReversed()) {
    middles[i] = Math.min(middles[i]!, ceiling - heights[i]! / 2);
    ceiling = middles[i]! - heights[i]! / 2;
  }
  return middles;
}
