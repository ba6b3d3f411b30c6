// Where words go in a plot: near what they tell of, inside the frame, never over other words, off the lines where there is room.
import type { Point } from "@lamplane/geometry";
import { type Box, blockBox, boxContains, boxesOverlap } from "./text-layout.ts";

/** Words that want a place beside a point. */
export interface LabelRequest {
  readonly at: Point;
  readonly lines: readonly string[];
}

/** Where they went: upper left corner, the side on which they are flush, and the leader where they stand off. */
export interface PlacedLabel extends LabelRequest {
  readonly corner: Point;
  readonly flush: "left" | "right";
  readonly leader: readonly [Point, Point] | undefined;
}

const GRID = 1.5; // mm between the places that are tried
const GAP = 1; // mm round words that is kept free of other words
const NEAR = 2.5; // mm: closer than this, words need no leader
/** Costs in mm of distance: words over a line's sample point, over a point to be avoided, and a leader that runs through words. */
const OVER_LINE = 6;
const OVER_ANCHOR = 60;
const THROUGH_WORDS = 60;
const OVER_WORDS = 1e4;

/**
 * A place for each, in order. Every place of a grid over the frame is tried and the cheapest taken: distance, lines under the
 * words, leaders through words. @param avoid points of the lines, a millimetre or so apart
 */
export function placeLabels(
  wanting: readonly LabelRequest[],
  size: number,
  frame: Box,
  taken: readonly Box[],
  avoid: readonly Point[],
): PlacedLabel[] {
  const boxes = [...taken];
  const lines = [...avoid];
  return wanting.map((want) => {
    const anchors = wanting.filter((other) => other !== want).map(({ at }) => at);
    const best = cheapestPosition(want, size, frame, { boxes, avoid: lines, anchors });
    boxes.push(expandBox(blockBox(want.lines, size, best.corner), GAP));
    if (best.leader) lines.push(...sampleLine(best.leader));
    return best;
  });
}

/** What words keep off: other words, lines, and the points that other words tell of. */
interface Obstacles {
  readonly boxes: readonly Box[];
  readonly avoid: readonly Point[];
  readonly anchors: readonly Point[];
}

/** The places of the grid from the nearest on; the search ends where nearness alone costs more than what was found. */
function cheapestPosition(want: LabelRequest, size: number, frame: Box, obstacles: Obstacles): PlacedLabel {
  const box = blockBox(want.lines, size, { x: 0, y: 0 });
  const [width, height] = [box.right - box.left, box.high - box.low];
  const places: { readonly place: PlacedLabel; readonly box: Box; readonly cost: number }[] = [];
  for (let x = frame.left + GAP; x <= frame.right - GAP - width; x += GRID)
    for (let y = frame.low + GAP + height; y <= frame.high - GAP; y += GRID)
      places.push(labelCandidate(want, { left: x, right: x + width, low: y - height, high: y }));
  places.sort((a, b) => a.cost - b.cost);
  let best: { cost: number; place: PlacedLabel } | undefined;
  for (const { place, box: there, cost: near } of places) {
    if (best && near >= best.cost) break;
    const cost = near + positionCost(place, there, obstacles);
    if (!best || cost < best.cost) best = { cost, place };
  }
  // Words wider than the frame stand at its left edge, over what is there: they are still read.
  const left = frame.left + GAP;
  return (
    best?.place ?? labelCandidate(want, { left, right: left + width, low: frame.low, high: frame.high - GAP }).place
  );
}

/** Words in a box, with what their distance costs. */
function labelCandidate(want: LabelRequest, box: Box): { place: PlacedLabel; box: Box; cost: number } {
  const { x, y } = want.at;
  const nearest = { x: clamp(x, box.left, box.right), y: clamp(y, box.low, box.high) };
  const far = Math.hypot(nearest.x - x, nearest.y - y);
  const flush: PlacedLabel["flush"] = x > (box.left + box.right) / 2 ? "right" : "left";
  const leader: PlacedLabel["leader"] = far > NEAR ? [want.at, nearest] : undefined;
  return { place: { ...want, corner: { x: box.left, y: box.high }, flush, leader }, box, cost: Math.abs(far - GAP) };
}

/** What a place costs besides its distance. */
function positionCost({ at, leader }: PlacedLabel, box: Box, { boxes, avoid, anchors }: Obstacles): number {
  const wide = expandBox(box, GAP / 2);
  const free = expandBox(box, GAP);
  const through = leader ? sampleLine(leader).filter((p) => boxes.some((other) => boxContains(other, p))).length : 0;
  return (
    (boxContains(box, at) || boxes.some((other) => boxesOverlap(box, other)) ? OVER_WORDS : 0) +
    OVER_ANCHOR * anchors.filter((p) => boxContains(free, p)).length +
    OVER_LINE * avoid.filter((p) => boxContains(wide, p)).length +
    THROUGH_WORDS * through
  );
}

/** Points along a line, at most a millimetre apart, both ends among them. */
export function sampleLine([from, to]: readonly [Point, Point]): Point[] {
  const count = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y)) + 1;
  return Array.from({ length: count + 1 }, (_, i) => ({
    x: from.x + ((to.x - from.x) * i) / count,
    y: from.y + ((to.y - from.y) * i) / count,
  }));
}

const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

const expandBox = ({ left, right, low, high }: Box, by: number): Box => ({
  left: left - by,
  right: right + by,
  low: low - by,
  high: high + by,
});

/** A block that has its middle, or wants to have it, at a height. mm */
interface Block {
  middle: number;
  readonly height: number;
}

/**
 * Blocks one over the other in a column, each as near as can be to the height that it wants: none over another, those that
 * want to be higher above the others, all between `low` and `high` where they fit.
 */
export function spreadBlocks<T extends Block>(blocks: readonly T[], low: number, high: number): T[] {
  const placed = blocks.map((block) => ({ ...block }));
  const order = placed.toSorted((a, b) => a.middle - b.middle);
  let floor = low;
  for (const block of order) {
    block.middle = Math.max(block.middle, floor + block.height / 2);
    floor = block.middle + block.height / 2;
  }
  let ceiling = high;
  for (const block of order.toReversed()) {
    block.middle = Math.min(block.middle, ceiling - block.height / 2);
    ceiling = block.middle - block.height / 2;
  }
  return placed;
}
