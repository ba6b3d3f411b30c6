// Corners of an outline that a round cutter does not get into.
import { distance, type Outline, offsetOutline, type Point, pointAlong } from "@lamplane/geometry";
import type { CornerLeft } from "./limit.ts";
import { nearestAlong } from "./loop.ts";

/** Wood nearer than this to what was wanted is none, mm. */
const LEAST_GAP = 0.005;
/** Places of an arc that are looked at, its ends among them. */
const ON_ARC = 16;

/**
 * A corner once, at the place that the cutter stays furthest off.
 * @param by the cutter's radius to the right of the outline's direction, below 0 to its left
 */
export function cornersLeft(outline: Outline, by: number): CornerLeft[] {
  const ways = offsetOutline(outline, by);
  const radius = Math.abs(by);
  const left = placesOn(outline).flatMap(({ at, arc }): LeftPlace[] => {
    const middle = Math.min(...ways.map((way) => nearestAlong(at, way).distance));
    if (!Number.isFinite(middle) || middle - radius < LEAST_GAP) return [];
    return [{ at, arc, gap: middle - radius, along: Math.sqrt(middle ** 2 - radius ** 2) }];
  });
  return groupsOf(left).map(wholeCorner);
}

interface LeftPlace extends CornerLeft {
  /** The arc on which it lies; undefined at the beginning of a line. */
  readonly arc: Outline[number] | undefined;
}

const placesOn = (outline: Outline) =>
  outline.flatMap((segment): { at: Point; arc: LeftPlace["arc"] }[] =>
    segment.kind === "line"
      ? [{ at: segment.from, arc: undefined }]
      : Array.from({ length: ON_ARC + 1 }, (_, i) => ({ at: pointAlong(segment, i / ON_ARC), arc: segment })),
  );

/** Places one after the other on one arc, or so near that what is left at them is one piece. */
function groupsOf(places: readonly LeftPlace[]): LeftPlace[][] {
  const groups: LeftPlace[][] = [];
  const isOne = (a: LeftPlace, b: LeftPlace): boolean =>
    (a.arc !== undefined && a.arc === b.arc) || distance(a.at, b.at) <= a.along + b.along;
  for (const place of places) {
    const last = groups.at(-1);
    if (last && isOne(last.at(-1)!, place)) last.push(place);
    else groups.push([place]);
  }
  const [first, last] = [groups[0], groups.at(-1)];
  if (groups.length > 1 && isOne(last!.at(-1)!, first![0]!)) groups.splice(0, 1, [...groups.pop()!, ...first!]);
  return groups;
}

function wholeCorner(places: readonly LeftPlace[]): CornerLeft {
  const { at, gap } = places.reduce((a, b) => (b.gap > a.gap ? b : a));
  return { at, gap, along: Math.max(...places.map((place) => distance(at, place.at) + place.along)) };
}
