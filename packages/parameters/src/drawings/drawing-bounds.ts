// How far a drawing reaches: exact for lines, arcs and circles. Notes are words beside the work and do not count.

import { atan2Deg, boundsOf, type Point, point, type Segment } from "@lamplane/geometry";
import type { Drawing, DrawingEntry } from "./drawing.ts";

/** Smallest upright box about all that is worked, mm. A drawing without work is our bug. */
export function drawingBounds(drawing: Drawing): { min: Point; max: Point } {
  const points = drawing.entries.flatMap(extremePoints);
  if (points.length === 0) throw new Error(`drawing "${drawing.title}" is empty`);
  return boundsOf(points);
}

function extremePoints(entry: DrawingEntry): Point[] {
  if (entry.kind === "note") return [];
  if (entry.kind === "circle") return quarterPoints(entry.circle.centre, entry.circle.radius);
  return (entry.kind === "outline" ? entry.outline : entry.segments).flatMap(segmentExtremes);
}

/** Ends of a segment, and of an arc the points where it runs level or upright. */
function segmentExtremes(segment: Segment): Point[] {
  const ends = [segment.from, segment.to];
  if (segment.kind === "line") return ends;
  const { centre, radius, sweep, from } = segment;
  const start = polarAngle(centre, from);
  const passed = quarterPoints(centre, radius).filter((_, quarter) => {
    const turn = sweep > 0 ? 90 * quarter - start : start - 90 * quarter;
    return ((turn % 360) + 360) % 360 <= Math.abs(sweep);
  });
  return [...ends, ...passed];
}

/** Direction of a point from another, degrees from the x axis. */
export const polarAngle = (centre: Point, p: Point): number => atan2Deg(p.y - centre.y, p.x - centre.x);

/** Points of a circle at 0, 90, 180 and 270 degrees. */
const quarterPoints = (centre: Point, radius: number): Point[] => [
  point(centre.x + radius, centre.y),
  point(centre.x, centre.y + radius),
  point(centre.x - radius, centre.y),
  point(centre.x, centre.y - radius),
];
