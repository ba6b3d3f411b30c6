// Passes by depth: how deep each goes, how the cutter gets down into the wood, how it comes to a wall and leaves it.
import {
  acosDeg,
  arc,
  cosDeg,
  directionAt,
  distanceToChain,
  type Outline,
  type Point,
  point,
  pointAlong,
  type Segment,
  segmentLength,
  sinDeg,
  tanDeg,
} from "@lamplane/geometry";
import type { Cutter } from "@lamplane/parameters/table";
import { pathLength, pathStretch, reversePath } from "./loop.ts";
import type { ToolpathWriter } from "./toolpath.ts";

/** Depths of the passes, below 0, the last at the bottom: as few as the cutter's step allows, all alike. */
export function passDepths(depth: number, step: number): number[] {
  const count = Math.max(1, Math.ceil(depth / step - 1e-9));
  return Array.from({ length: count }, (_, i) => -(depth * (i + 1)) / count);
}

/** Feed on a slope, so that the cutter sinks no faster than its plunge feed. */
const rampFeed = ({ feed, plunge }: Cutter, angle: number): number => Math.min(feed, plunge / sinDeg(angle));

/**
 * Down to a depth to and fro along the first stretch of a path that begins here; ends where it begins.
 * @param room how much of the path may be used, mm
 */
export function rampDown(to: ToolpathWriter, path: readonly Segment[], z: number, angle: number, room: number): void {
  const drop = to.at.z - z;
  if (drop <= 0) return;
  const ideal = drop / 2 / tanDeg(angle);
  const reach = Math.min(ideal, room, pathLength(path));
  const trips = Math.max(1, Math.ceil(ideal / reach - 1e-9));
  const way = pathStretch(path, 0, reach);
  const back = reversePath(way);
  const feed = rampFeed(to.cutter, angle);
  const start = to.at.z;
  for (let i = 1; i <= 2 * trips; i++) to.follow(i % 2 === 1 ? way : back, start - (drop * i) / 2 / trips, feed);
}

/** Down to a depth round and round a loop that begins here. */
export function spiralDown(to: ToolpathWriter, loop: readonly Segment[], z: number, angle: number): void {
  const drop = to.at.z - z;
  if (drop <= 0) return;
  const turns = Math.max(1, Math.ceil(drop / tanDeg(angle) / pathLength(loop) - 1e-9));
  const start = to.at.z;
  for (let i = 1; i <= turns; i++) to.follow(loop, start - (drop * i) / turns, rampFeed(to.cutter, angle));
}

/** A place on a loop at which the cutter may come to the wall and leave it on arcs. */
export interface Approach {
  /** Length along the loop, mm. */
  readonly along: number;
  readonly leadIn: readonly Segment[];
  readonly leadOut: readonly Segment[];
}

/**
 * Arcs from and to the wood's free side, tangent to the loop at a place of it.
 * @param side 1 where the free side is left of the loop's direction, -1 where it is right of it
 * @param turn degrees of each arc
 */
export function leadArcs(
  at: Point,
  direction: Point,
  side: 1 | -1,
  radius: number,
  turn: number,
): Omit<Approach, "along"> {
  const normal = point(-direction.y * side, direction.x * side);
  const centre = point(at.x + normal.x * radius, at.y + normal.y * radius);
  const [c, s] = [cosDeg(turn), sinDeg(turn)];
  const off = (sign: 1 | -1): Point =>
    point(
      centre.x - normal.x * radius * c + sign * direction.x * radius * s,
      centre.y - normal.y * radius * c + sign * direction.y * radius * s,
    );
  const sweep = turn * side;
  return { leadIn: [arc(off(-1), at, centre, sweep)], leadOut: [arc(at, off(1), centre, sweep)] };
}

/** Turn of an arc that leaves a wall by a distance: mm off, mm of radius. */
export const turnForOffset = (off: number, radius: number): number => acosDeg(Math.max(-1, 1 - off / radius));

interface Candidate {
  readonly along: number;
  readonly at: Point;
  readonly direction: Point;
  /** Straight run before and behind, mm; 0 on an arc. */
  readonly run: number;
}

/** Places on a loop to begin at, those with the most room on a straight run first. */
export function beginnings(loop: Outline): Candidate[] {
  let passed = 0;
  return loop
    .flatMap((segment) => {
      const [start, length] = [passed, segmentLength(segment)];
      passed += length;
      return [0.5, 0.25, 0.75, 0.1, 0.9].map((share) => ({
        along: start + share * length,
        at: pointAlong(segment, share),
        direction: directionAt(segment, share),
        run: segment.kind === "line" ? Math.min(share, 1 - share) * length : 0,
      }));
    })
    .sort((a, b) => b.run - a.run);
}

/** Whether the cutter's middle, going along a path, stays clear of an outline. */
export const staysClear = (path: readonly Segment[], outline: Outline, clear: number): boolean =>
  path.every((segment) =>
    Array.from({ length: 17 }, (_, i) => pointAlong(segment, i / 16)).every(
      (p) => distanceToChain(p, outline) >= clear - 1e-5,
    ),
  );
