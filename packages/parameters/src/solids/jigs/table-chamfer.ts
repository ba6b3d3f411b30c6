// A ring's walls with their chamfer at the printer's table: slopes of 45° under straight sides, cones under arcs.
//
// A slope and a cone that do not run on into each other would meet in a parabola. Where an arc makes a corner, as a relief does,
// the chamfer therefore ends short of the corner on both sides, in an upright face, and the wall there goes down to the table.
import {
  distance,
  line,
  type Outline,
  type Point,
  point,
  pointAlong,
  polygonArea,
  type Segment,
  segmentLength,
  subsegment,
} from "@lamplane/geometry";
import {
  atLevel,
  type ConeSurface,
  edgeAtLevel,
  type Face,
  polygonLoop,
  polyline,
  reverseEdge,
  unitNormal,
  type Vec3,
  wallFace,
} from "@lamplane/geometry/mesh";
import { tessellateChain } from "../part-faces.ts";

/** Sine of the turn up to which two sides run on into each other. */
const TANGENT = 1e-7;
/** More than the least by which a chamfer ends short of a corner, so that its end faces never meet. */
const CLEARANCE = 1.2;

export interface ChamferedRing {
  /** The ring at its full size, cut where a chamfer ends. */
  readonly ring: Outline;
  /** The ring at the table. */
  readonly low: Outline;
  /** Walls and chamfers. */
  readonly faces: readonly Face[];
  /** What the chamfer takes off the prism once arcs are cut into chords, mm³. */
  readonly removed: number;
}

/** A length of the ring; `low` is the same moved into the solid, where it is chamfered. */
interface Run {
  readonly segment: Segment;
  readonly low?: Segment;
}

/** Walls of a ring with the solid to its left, up to a level, its edge at the table taken off by `size`. mm */
export function chamferRing(outline: Outline, size: number, top: number): ChamferedRing {
  const runs = offsetRuns(splitRuns(outline, size), size);
  return {
    ring: runs.map(({ segment }) => segment),
    low: lowRing(runs),
    faces: runs.flatMap((_, i) => runFaces(runs, i, size, top)),
    removed: runs.reduce((sum, run) => sum + removedVolume(run, size), 0),
  };
}

/** Whether the chamfer goes round a corner, and how far from it chamfers end that do not. */
function stopAt(before: Segment, after: Segment, size: number): { goesRound: boolean; stop: number } {
  const [a, b] = [normalAt(before, "to"), normalAt(after, "from")];
  const [sine, cosine] = [a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y];
  const bothLines = before.kind === "line" && after.kind === "line";
  const goesRound = bothLines || (cosine > 0 && Math.abs(sine) < TANGENT);
  // tan of half the turn, which the two normals make between them; positive where the solid has a corner.
  return { goesRound, stop: size * CLEARANCE * Math.max(1 / 2, sine / (1 + cosine)) };
}

/** The ring in lengths that are chamfered from end to end and lengths that are not. */
function splitRuns(outline: Outline, size: number): { segment: Segment; sloped: boolean }[] {
  const count = outline.length;
  const sloped = outline.map((_, i) => !turnsRound(outline, i, size));
  const corners = outline.map((segment, i) => stopAt(outline.at(i - 1)!, segment, size));
  const stop = (i: number) => {
    const passed = sloped.at(i - 1)! && sloped[i % count]!;
    const { goesRound, stop } = corners[i % count]!;
    return goesRound && passed ? 0 : stop;
  };
  const isTooShort = (i: number) => {
    const stops = stop(i) + stop(i + 1);
    return stops > 0 && stops > segmentLength(outline[i]!) - size;
  };
  for (let i = sloped.findIndex((is, k) => is && isTooShort(k)); i >= 0; ) {
    sloped[i] = false;
    i = sloped.findIndex((is, k) => is && isTooShort(k));
  }
  return outline.flatMap((segment, i) => {
    if (!sloped[i]) return [{ segment, sloped: false }];
    const length = segmentLength(segment);
    const [first, last] = [stop(i) / length, 1 - stop(i + 1) / length];
    return [
      ...(first > 0 ? [{ segment: subsegment(segment, 0, first), sloped: false }] : []),
      { segment: first > 0 || last < 1 ? subsegment(segment, first, last) : segment, sloped: true },
      ...(last < 1 ? [{ segment: subsegment(segment, last, 1), sloped: false }] : []),
    ];
  });
}

/** Whether a straight side is so short that its edge at the table would run backwards. */
function turnsRound(outline: Outline, i: number, size: number): boolean {
  const { kind, from, to } = outline[i]!;
  if (kind === "arc") return false;
  const own = normalAt(outline[i]!, "from");
  const low = offsetCorner(from, normalAt(outline.at(i - 1)!, "to"), own, size);
  const end = offsetCorner(to, own, normalAt(outline[(i + 1) % outline.length]!, "from"), size);
  return (to.x - from.x) * (end.x - low.x) + (to.y - from.y) * (end.y - low.y) < 0;
}

/** Each chamfered length with its edge at the table, which meets its neighbour's. */
function offsetRuns(runs: readonly { segment: Segment; sloped: boolean }[], by: number): Run[] {
  return runs.map(({ segment, sloped }, i): Run => {
    if (!sloped) return { segment };
    const [before, after] = [runs.at(i - 1)!, runs[(i + 1) % runs.length]!];
    const own = [normalAt(segment, "from"), normalAt(segment, "to")] as const;
    const from = offsetCorner(segment.from, before.sloped ? normalAt(before.segment, "to") : own[0], own[0], by);
    const to = offsetCorner(segment.to, own[1], after.sloped ? normalAt(after.segment, "from") : own[1], by);
    if (segment.kind === "line") return { segment, low: line(from, to) };
    const radius = segment.radius - by * Math.sign(segment.sweep);
    if (radius <= 0) throw new Error(`an arc of ${segment.radius} mm has no room for a chamfer of ${by} mm`);
    return { segment, low: { ...segment, from, to, radius } };
  });
}

/** The corner of two sides that are both moved to their left. */
function offsetCorner(at: Point, a: Point, b: Point, by: number): Point {
  const share = by / (1 + a.x * b.x + a.y * b.y);
  return point(at.x + (a.x + b.x) * share, at.y + (a.y + b.y) * share);
}

/** Direction into the solid, square to an end of a segment, of length 1. */
function normalAt(segment: Segment, end: "from" | "to"): Point {
  if (segment.kind === "line") {
    const { from, to } = segment;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    return point(-(to.y - from.y) / length, (to.x - from.x) / length);
  }
  const [at, { centre }] = [segment[end], segment];
  const length = Math.sign(segment.sweep) * distance(at, centre);
  return point((centre.x - at.x) / length, (centre.y - at.y) / length);
}

function lowRing(runs: readonly Run[]): Outline {
  return runs.flatMap(({ segment, low }, i) => {
    if (!low) return [segment];
    return [
      ...(runs.at(i - 1)!.low ? [] : [line(segment.from, low.from)]),
      low,
      ...(runs[(i + 1) % runs.length]!.low ? [] : [line(low.to, segment.to)]),
    ];
  });
}

/** Wall of a length, its chamfer, and the upright faces in which the chamfer ends. */
function runFaces(runs: readonly Run[], i: number, size: number, top: number): Face[] {
  const { segment, low } = runs[i]!;
  const [isAfterSlope, isBeforeSlope] = [!!runs.at(i - 1)!.low, !!runs[(i + 1) % runs.length]!.low];
  if (!low) {
    const levels = (hasSlope: boolean) => (hasSlope ? [0, size, top] : [0, top]);
    return [wallFace(segment, levels(isAfterSlope), levels(isBeforeSlope))];
  }
  const slopes = segment.kind === "line" ? slopeFaces(segment, low, size) : [coneFace(segment, low, size)];
  return [
    wallFace(segment, [size, top]),
    ...slopes,
    ...(isAfterSlope ? [] : [endFace(atLevel(segment.from, size), atLevel(segment.from, 0), atLevel(low.from, 0))]),
    ...(isBeforeSlope ? [] : [endFace(atLevel(segment.to, size), atLevel(low.to, 0), atLevel(segment.to, 0))]),
  ];
}

const endFace = (...corners: [Vec3, Vec3, Vec3]): Face => ({
  surface: { kind: "plane", normal: unitNormal(...corners) },
  loops: [polygonLoop(corners)],
});

/** The slope under a straight side; where a short side turns round on the way, two triangles. */
function slopeFaces({ from, to }: Segment, low: Segment, size: number): Face[] {
  const [a, b, c, d] = [atLevel(low.from, 0), atLevel(low.to, 0), atLevel(to, size), atLevel(from, size)];
  const turns = (to.x - from.x) * (low.to.x - low.from.x) + (to.y - from.y) * (low.to.y - low.from.y) < 0;
  if (turns) return [endFace(a, b, c), endFace(a, c, d)];
  return [{ surface: { kind: "plane", normal: unitNormal(a, b, c) }, loops: [polygonLoop([a, b, c, d])] }];
}

function coneFace(segment: Segment, low: Segment, size: number): Face {
  const [lower, upper] = [edgeAtLevel(low, 0), edgeAtLevel(segment, size)];
  return {
    surface: coneSurface(segment, low, size),
    loops: [[lower, ...polyline([lower.to, upper.to]), reverseEdge(upper), ...polyline([upper.from, lower.from])]],
  };
}

/** Under a rounded corner the cone grows upward; under a hole's wall, to the table. */
function coneSurface(segment: Segment, low: Segment, size: number): ConeSurface {
  if (segment.kind === "line" || low.kind === "line") throw new Error("only an arc has a cone");
  const convex = segment.sweep > 0;
  return {
    kind: "cone",
    origin: atLevel(segment.centre, convex ? 0 : size),
    axis: [0, 0, convex ? 1 : -1],
    radius: convex ? low.radius : segment.radius,
    halfAngle: 45,
    convex,
  };
}

/** Between wall and chamfer; its level areas run as the square of the height, which Simpson's rule sums exactly. mm³ */
function removedVolume({ segment, low }: Run, size: number): number {
  if (!low) return 0;
  const wall = tessellateChain([segment]);
  const chords = wall.length - 1;
  const atTable = wall.map((_, k) => pointAlong(low, k / chords));
  const half = wall.map((p, k) => point((p.x + atTable[k]!.x) / 2, (p.y + atTable[k]!.y) / 2));
  const areaTo = (inner: readonly Point[]) => polygonArea([...wall, ...[...inner].reverse()]);
  return (size * (areaTo(atTable) + 4 * areaTo(half))) / 6;
}
