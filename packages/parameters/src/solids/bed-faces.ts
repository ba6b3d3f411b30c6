// The bed with its recess, as bed block and body share it: bed face with a notch, recess floor, its walls and its lower end.
import {
  cosDeg,
  FAR,
  line,
  type Outline,
  type Point,
  polygonArea,
  reverseOutline,
  type Segment,
  sinDeg,
  splitAtIntersection,
  tessellate,
} from "@lamplane/geometry";
import {
  atLevel,
  type Edge,
  type Face,
  levelFace,
  placeSegment,
  polyline,
  reverseEdge,
  reverseLoop,
  type Surface,
  unitNormal,
  type Vec3,
  wallFace,
  wallFaces,
} from "@lamplane/geometry/mesh";
import type { Elevation } from "../elevation/elevation.ts";
import { bedToPlane, planeToBed } from "../elevation/frame.ts";
import { type Recess, recessEdge } from "../elevation/recess.ts";
import { recessProfile } from "../elevation/recess-profile.ts";
import { tessellateChain } from "./part-faces.ts";

export interface BedFaces {
  readonly faces: readonly Face[];
  /** Top of the bed block from the heel, in two: over the wood, and over the recess as far as the bed. */
  readonly topOverWood: readonly Segment[];
  readonly topOverRecess: readonly Segment[];
  /** z of the recess's sides; 0 without a recess. */
  readonly half: number;
  /** Wood that the recess takes, mm³, its arcs in chords. */
  readonly removed: number;
}

type RecessedPlane = Elevation & { readonly recess: Recess };
const hasRecess = (plane: Elevation): plane is RecessedPlane => plane.recess !== undefined;

type SplitTop = NonNullable<ReturnType<typeof splitAtIntersection>>;

/** Bed and recess over a core of half width `c`. `bedChain` runs up the bed, `top` from the heel to the bed's top. */
export function bedFaces(plane: Elevation, bedChain: readonly Segment[], top: readonly Segment[], c: number): BedFaces {
  if (!hasRecess(plane)) {
    const faces = wallFaces(reverseOutline(bedChain), -c, c);
    return { faces, topOverWood: top, topOverRecess: [], half: 0, removed: 0 };
  }
  const { recess, frame } = plane;
  const floorLevel = -frame.thickness - recess.depth;
  const floor = line(bedToPlane(frame, recess.low, floorLevel), bedToPlane(frame, FAR, floorLevel));
  const split = splitAtIntersection(top, [floor]);
  if (!split) throw new Error("the recess does not come out of the top of the bed");
  return recess.madeBy === "layers" ? setBackFaces(plane, bedChain, split, c) : pocketFaces(plane, bedChain, split, c);
}

/** Bed and recess of a core in one piece: a pocket cut into the bed, with its arcs. */
function pocketFaces(plane: RecessedPlane, bedChain: readonly Segment[], split: SplitTop, c: number): BedFaces {
  const { recess, frame } = plane;
  const { from: shoulder, to: bedTop } = bedChain.at(-1)!;
  const half = recess.width / 2;
  const bedLevel = -frame.thickness;
  const floorLevel = bedLevel - recess.depth;
  const edge = recessEdge(recess, planeToBed(frame, bedTop).s);
  const onBed = recessEdgeAt(plane, edge, bedLevel, bedTop);
  const onFloor = recessEdgeAt(plane, edge, floorLevel, split.at);
  const surface: Surface = { kind: "plane", normal: [-sinDeg(frame.bedAngle), cosDeg(frame.bedAngle), 0] };
  const boundary = [atLevel(bedTop, -c), atLevel(shoulder, -c), atLevel(shoulder, c), atLevel(bedTop, c)];
  const bedLoop = [
    ...polyline([...boundary, atLevel(bedTop, half)]),
    ...reverseLoop(onBed),
    ...polyline([atLevel(bedTop, -half), atLevel(bedTop, -c)]),
  ];
  const floorLoop = [...onFloor, ...polyline([atLevel(split.at, half), atLevel(split.at, -half)])];
  const side = recessSide(plane, edge, [bedLevel, floorLevel], split.after);
  const section = [bedTop, ...recessLowCorners(plane, floorLevel), ...tessellate(split.after)];
  return {
    faces: [
      ...wallFaces(reverseOutline(bedChain.slice(0, -1)), -c, c),
      { surface, loops: [bedLoop] },
      { surface, loops: [floorLoop] },
      levelFace([side], -half, "above"),
      levelFace([side], half, "below"),
      ...onBed.slice(1, -1).map((upper, i) => recessWall(upper, onFloor[i + 1]!)),
    ],
    topOverWood: split.before,
    topOverRecess: split.after,
    half,
    removed: recessVolume(plane, tessellateChain(edge), section),
  };
}

/** Bed and recess of a layered core: the notch is a prism across its middle layers. */
function setBackFaces(
  { recess, frame }: RecessedPlane,
  bedChain: readonly Segment[],
  { before, after, at }: SplitTop,
  c: number,
): BedFaces {
  const { from: shoulder, to: bedTop } = bedChain.at(-1)!;
  const half = recess.width / 2;
  const notch = recessProfile(frame, recess, at, -frame.thickness);
  const low = notch.at(-1)!.to;
  const side: Outline = [...after, line(bedTop, low), ...reverseOutline(notch)];
  const bedLoop = polyline([
    atLevel(bedTop, -c),
    atLevel(shoulder, -c),
    atLevel(shoulder, c),
    atLevel(bedTop, c),
    atLevel(bedTop, half),
    atLevel(low, half),
    atLevel(low, -half),
    atLevel(bedTop, -half),
    atLevel(bedTop, -c),
  ]);
  return {
    faces: [
      ...wallFaces(reverseOutline(bedChain.slice(0, -1)), -c, c),
      { surface: { kind: "plane", normal: [-sinDeg(frame.bedAngle), cosDeg(frame.bedAngle), 0] }, loops: [bedLoop] },
      ...wallFaces(notch, -half, half),
      levelFace([side], -half, "above"),
      levelFace([side], half, "below"),
    ],
    topOverWood: before,
    topOverRecess: after,
    half,
    removed: Math.abs(polygonArea(tessellate(side))) * 2 * half,
  };
}

/** The recess's edge at a level of the iron's coordinates, its two ends laid on the top of the bed or the recess. */
function recessEdgeAt({ frame, recess }: RecessedPlane, edge: readonly Segment[], v: number, top: Point): Edge[] {
  const place = ({ x, y }: Point): Vec3 => atLevel(bedToPlane(frame, x, v), y);
  const axis: Vec3 = [sinDeg(frame.bedAngle), -cosDeg(frame.bedAngle), 0];
  const half = recess.width / 2;
  return edge.map((segment, i) => ({
    ...placeSegment(segment, { place, axis }),
    ...(i === 0 ? { from: atLevel(top, -half) } : {}),
    ...(i === edge.length - 1 ? { to: atLevel(top, half) } : {}),
  }));
}

/** The wall of the recess's lower end between an edge on the bed and the one under it on the floor. */
function recessWall(upper: Edge, lower: Edge): Face {
  const loop = [upper, ...polyline([upper.to, lower.to]), reverseEdge(lower), ...polyline([lower.from, upper.from])];
  if (upper.kind === "line")
    return { surface: { kind: "plane", normal: unitNormal(upper.from, upper.to, lower.to) }, loops: [loop] };
  const { centre: origin, axis, radius } = upper;
  return { surface: { kind: "cylinder", origin, axis, radius, convex: false }, loops: [loop] };
}

/** Outline of the recess's straight side, down the bed, to the floor, up it, and back over the top. */
function recessSide(
  { frame }: Elevation,
  edge: readonly Segment[],
  [bedLevel, floorLevel]: readonly [number, number],
  top: readonly Segment[],
): Outline {
  const low = edge[0]!.to.x;
  const [onBed, onFloor] = [bedToPlane(frame, low, bedLevel), bedToPlane(frame, low, floorLevel)];
  return [line(top.at(-1)!.to, onBed), line(onBed, onFloor), line(onFloor, top[0]!.from), ...top];
}

const recessLowCorners = ({ recess, frame }: RecessedPlane, floorLevel: number): Point[] => [
  bedToPlane(frame, recess.low, -frame.thickness),
  bedToPlane(frame, recess.low, floorLevel),
];

/** Full-width prism over the recess's side, less what the cutter leaves standing in its lower corners. mm³ */
function recessVolume({ recess }: RecessedPlane, edge: readonly Point[], side: readonly Point[]): number {
  const { width, depth, low } = recess;
  const standing = width * (edge[0]!.x - low) - Math.abs(polygonArea(edge));
  return Math.abs(polygonArea(side)) * width - depth * standing;
}

/** Top of bed block or body from the heel to the bed: whole over the wood, in two strips beside the recess. */
export function topOverBedFaces(
  { topOverWood, topOverRecess, half: h }: BedFaces,
  w: number,
  bedTop: readonly number[],
): Face[] {
  const woodEnd = h > 0 ? [-w, -h, h, w] : bedTop;
  const ends = h > 0 ? [bedTop.filter((z) => z <= -h), bedTop.filter((z) => z >= h)] : [];
  return [
    ...topOverWood.map((s, i) => wallFace(s, [-w, w], i === topOverWood.length - 1 ? woodEnd : [-w, w])),
    ...ends.flatMap((end) =>
      topOverRecess.map((s, i) => {
        const whole = [end[0]!, end.at(-1)!];
        return wallFace(s, whole, i === topOverRecess.length - 1 ? end : whole);
      }),
    ),
  ];
}
