// Corners of an outline that a round cutter does not get into.
import { type Outline, offsetOutline, type Point, pointAlong } from "@lamplane/geometry";
import type { CornerLeft } from "./limit.ts";
import { nearestAlong } from "./loop.ts";

/** Wood nearer than this to what was wanted is none, mm. */
const LEAST_GAP = 0.005;

/** @param by the cutter's radius to the right of the outline's direction, below 0 to its left */
export function cornersLeft(outline: Outline, by: number): CornerLeft[] {
  const ways = offsetOutline(outline, by);
  const radius = Math.abs(by);
  const places = outline.flatMap((segment) => [segment.from, ...(segment.kind === "arc" ? inner(segment) : [])]);
  return places.flatMap((at) => {
    const middle = Math.min(...ways.map((way) => nearestAlong(at, way).distance));
    if (!Number.isFinite(middle) || middle - radius < LEAST_GAP) return [];
    return [{ at, gap: middle - radius, along: Math.sqrt(middle ** 2 - radius ** 2) }];
  });
}

const inner = (segment: Outline[number]): Point[] => [0.25, 0.5, 0.75].map((share) => pointAlong(segment, share));
