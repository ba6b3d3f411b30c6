// Bridges that hold a part in its stock: on straight runs only, spread round the outline.
import {
  distanceToChain,
  type Line,
  type Outline,
  type Point,
  point,
  pointAlong,
  segmentLength,
} from "@lamplane/geometry";
import { loopFrom, nearestAlong, pathLength, pathStretch } from "./loop.ts";

export interface TabRule {
  readonly width: number;
  readonly height: number;
  readonly spacing: number;
}

/** Fewest bridges that hold a part. */
const FEWEST = 2;
/** Between two places that are looked at, mm. */
const STEP = 2;
/** Straight run on either side of a bridge and the cutter beside it, mm. */
const BESIDE = 1;

/** The run that a bridge takes up of a straight side: the cutter stands beside it on both ends. */
export const tabRun = ({ width }: TabRule, diameter: number): number => width + diameter + 2 * BESIDE;

export type TabPlaces = { readonly tabs: readonly Point[] } | { readonly longestRun: number };

/**
 * Middles of the bridges on a part's outline; or the longest straight run of the cutter's way where there is no room for two.
 * @param ways of the cutter along the walls, the outer one first: shorter than the part's side where that ends in an inner corner
 */
export function placeTabs(outline: Outline, ways: readonly Outline[], rule: TabRule, diameter: number): TabPlaces {
  const way = ways[0]!;
  const run = tabRun(rule, diameter);
  const places = straightPlaces(way, run);
  const whole = pathLength(way);
  const wanted = Math.max(FEWEST, Math.ceil(whole / rule.spacing));
  const tabAt = (along: number): Point => pointAt(outline, nearestAlong(pointAt(way, along), outline).along);
  const chosen: number[] = [];
  for (let i = 0; i < wanted; i++) {
    const ideal = ((i + 0.5) * whole) / wanted;
    const free = places.filter((place) => chosen.every((other) => apart(place, other, whole) >= 2 * run));
    const byNearness = free.toSorted((a, b) => apart(a, ideal, whole) - apart(b, ideal, whole));
    const nearest = byNearness.find((along) => isLeftStanding(along, tabAt(along), ways, rule.width, diameter));
    if (nearest !== undefined) chosen.push(nearest);
  }
  if (chosen.length < FEWEST) return { longestRun: Math.max(0, ...way.filter(isLine).map(segmentLength)) };
  return { tabs: chosen.toSorted((a, b) => a - b).map(tabAt) };
}

/** Points looked at along and across a bridge, as shares of its length and width. */
const ALONG_BRIDGE = [0, 0.25, 0.5, 0.75, 1];
const ACROSS_BRIDGE = [-0.5, 0, 0.5];

/** Whether a bridge from the part over the kerf keeps clear of every other stretch of the ways: in a narrow slot it does not. */
function isLeftStanding(along: number, tab: Point, ways: readonly Outline[], width: number, diameter: number): boolean {
  const [way, ...more] = ways;
  const middle = pointAt(way!, along);
  const half = width / 2 + diameter / 2;
  const rest = pathStretch(loopFrom(way!, (along + half) % pathLength(way!)), 0, pathLength(way!) - 2 * half);
  const others = [rest, ...more].flat();
  const across = point(middle.x - tab.x, middle.y - tab.y); // half the kerf
  const size = Math.hypot(across.x, across.y);
  return ALONG_BRIDGE.every((share) =>
    ACROSS_BRIDGE.every((side) => {
      const x = tab.x + 2 * share * across.x - (side * width * across.y) / size;
      const y = tab.y + 2 * share * across.y + (side * width * across.x) / size;
      return distanceToChain(point(x, y), others) >= diameter / 2 - CLOSE;
    }),
  );
}
/** The cutter touches a bridge's ends, mm: sums of roots, not a maker's hand. */
const CLOSE = 1e-4;

const isLine = (segment: Outline[number]): segment is Line => segment.kind === "line";
const apart = (a: number, b: number, whole: number): number => Math.min(Math.abs(a - b), whole - Math.abs(a - b));

/** Lengths along a loop at which a bridge has its run on one straight side. */
function straightPlaces(outline: Outline, run: number): number[] {
  let passed = 0;
  return outline.flatMap((segment) => {
    const [start, length] = [passed, segmentLength(segment)];
    passed += length;
    const room = length - run;
    if (segment.kind !== "line" || room < 0) return [];
    const count = Math.floor(room / STEP) + 1;
    return Array.from(
      { length: count },
      (_, i) => start + run / 2 + (count === 1 ? room / 2 : (i * room) / (count - 1)),
    );
  });
}

function pointAt(outline: Outline, along: number): Point {
  let passed = 0;
  for (const segment of outline) {
    const length = segmentLength(segment);
    if (along <= passed + length) return pointAlong(segment, (along - passed) / length);
    passed += length;
  }
  return outline.at(-1)!.to;
}

export interface LoopSpan {
  readonly from: number;
  readonly to: number;
}

/** Where along a loop the cutter must stay over the bridges, in order. */
export function tabSpans(loop: Outline, tabs: readonly Point[], half: number): LoopSpan[] {
  return tabs
    .map((tab) => nearestAlong(tab, loop).along)
    .map((along) => ({ from: along - half, to: along + half }))
    .sort((a, b) => a.from - b.from);
}
