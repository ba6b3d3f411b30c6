// Bridges that hold a part in its stock: on straight runs only, spread round the outline.
import { type Line, type Outline, type Point, pointAlong, segmentLength } from "@lamplane/geometry";
import { nearestAlong, pathLength } from "./loop.ts";

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
 * @param way of the cutter along the wall: shorter than the part's side where that ends in an inner corner
 */
export function placeTabs(outline: Outline, way: Outline, rule: TabRule, diameter: number): TabPlaces {
  const run = tabRun(rule, diameter);
  const places = straightPlaces(way, run);
  const whole = pathLength(way);
  const wanted = Math.max(FEWEST, Math.ceil(whole / rule.spacing));
  const chosen: number[] = [];
  for (let i = 0; i < wanted; i++) {
    const ideal = ((i + 0.5) * whole) / wanted;
    const free = places.filter((place) => chosen.every((other) => apart(place, other, whole) >= 2 * run));
    const nearest = free.toSorted((a, b) => apart(a, ideal, whole) - apart(b, ideal, whole))[0];
    if (nearest !== undefined) chosen.push(nearest);
  }
  if (chosen.length < FEWEST) return { longestRun: Math.max(0, ...way.filter(isLine).map(segmentLength)) };
  const beside = chosen.toSorted((a, b) => a - b).map((along) => pointAt(way, along));
  return { tabs: beside.map((p) => pointAt(outline, nearestAlong(p, outline).along)) };
}

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

export interface Interval {
  readonly from: number;
  readonly to: number;
}

/** Where along a loop the cutter must stay over the bridges, in order. */
export function tabIntervals(loop: Outline, tabs: readonly Point[], half: number): Interval[] {
  return tabs
    .map((tab) => nearestAlong(tab, loop).along)
    .map((along) => ({ from: along - half, to: along + half }))
    .sort((a, b) => a.from - b.from);
}
