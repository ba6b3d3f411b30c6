// The bed with its recess, as bed block and body share it: bed face with a notch, recess floor, its walls and its lower end.
import { FAR, line, type Point, type Segment, splitAtIntersection, tessellate } from "@lamplane/geometry";
import type { Elevation } from "../elevation/elevation.ts";
import { ironToPlane, planeToIron } from "../elevation/frame.ts";
import { recessEdge } from "../elevation/recess.ts";
import { atWidth, planarFace, quad, type Rib, rib, strips, type Triangle, type Vec3 } from "./faces.ts";
import { polygonArea } from "./prism.ts";

/** The open chain's corners, both ends included. */
export const tessellateChain = (chain: readonly Segment[]): Point[] =>
  chain.length === 0 ? [] : [...tessellate(chain), chain.at(-1)!.to];

export interface BedFaces {
  readonly triangles: Triangle[];
  /** Top of the bed block from the heel, in two: over the wood, and over the recess as far as the bed. */
  readonly topOverWood: readonly Point[];
  readonly topOverRecess: readonly Point[];
  /** z of the recess's sides; 0 without a recess. */
  readonly half: number;
  /** Wood that the recess takes, mm³. */
  readonly removed: number;
}

/** Bed and recess over a core of half width `c`. `bedChain` runs up the bed, `top` from the heel to the bed's top. */
export function bedFaces(plane: Elevation, bedChain: readonly Segment[], top: readonly Segment[], c: number): BedFaces {
  const bed = tessellateChain(bedChain);
  const [shoulder, bedTop] = [bed.at(-2)!, bed.at(-1)!];
  const { recess } = plane;
  const below = strips(
    bed
      .slice(0, -1)
      .reverse()
      .map((p) => rib(p, -c, c)),
    -c,
    c,
  );
  if (!recess) {
    const face = strips([rib(bedTop, -c, c), rib(shoulder, -c, c)], -c, c);
    return {
      triangles: [...below, ...face],
      topOverWood: tessellateChain(top),
      topOverRecess: [bedTop],
      half: 0,
      removed: 0,
    };
  }
  const half = recess.width / 2;
  const deep = -plane.design.iron.thickness - recess.depth;
  const split = splitAtIntersection(top, [
    line(ironToPlane(plane.frame, recess.low, deep), ironToPlane(plane.frame, FAR, deep)),
  ]);
  if (!split) throw new Error("the recess does not come out of the top of the bed");
  const topOverRecess = tessellateChain(split.after);
  const edge = tessellateChain(recessEdge(recess, planeToIron(plane.frame, bedTop).s));
  const onBed = edge.map(({ x, y }): Vec3 => atWidth(ironToPlane(plane.frame, x, -plane.design.iron.thickness), y));
  const onFloor = edge.map(({ x, y }): Vec3 => atWidth(ironToPlane(plane.frame, x, deep), y));
  onBed[0] = atWidth(bedTop, -half);
  onBed[onBed.length - 1] = atWidth(bedTop, half);
  onFloor[0] = atWidth(topOverRecess[0]!, -half);
  onFloor[onFloor.length - 1] = atWidth(topOverRecess[0]!, half);
  const face = planarFace([
    [atWidth(bedTop, -c), atWidth(shoulder, -c), atWidth(shoulder, c), atWidth(bedTop, c), ...[...onBed].reverse()],
  ]);
  const side = [
    onBed[0]!,
    onBed[1]!,
    onFloor[1]!,
    onFloor[0]!,
    ...topOverRecess.slice(1, -1).map((p) => atWidth(p, -half)),
  ];
  const otherSide = side.map(([x, y]): Vec3 => [x, y, half]).reverse();
  const walls = onBed.slice(1, -2).flatMap((b, i) => quad(b, onBed[i + 2]!, onFloor[i + 2]!, onFloor[i + 1]!));
  return {
    triangles: [
      ...below,
      ...face,
      ...planarFace([onFloor]),
      ...planarFace([side]),
      ...planarFace([otherSide]),
      ...walls,
    ],
    topOverWood: tessellateChain(split.before),
    topOverRecess,
    half,
    removed: recessVolume(plane, edge, [bedTop, ...recessLowCorners(plane, deep), ...topOverRecess.slice(0, -1)]),
  };
}

const recessLowCorners = ({ recess, design, frame }: Elevation, deep: number): Point[] => [
  ironToPlane(frame, recess!.low, -design.iron.thickness),
  ironToPlane(frame, recess!.low, deep),
];

/** Full-width prism over the recess's side, less what the cutter leaves standing in its lower corners. mm³ */
function recessVolume({ recess }: Elevation, edge: readonly Point[], side: readonly Point[]): number {
  const { width, depth, low } = recess!;
  const standing = width * (edge[0]!.x - low) - Math.abs(polygonArea(edge));
  return Math.abs(polygonArea(side)) * width - depth * standing;
}

/** Ribs of a chain: the same corners across on each. */
export const ribs = (points: readonly Point[], ...zs: number[]): Rib[] => points.map((p) => rib(p, ...zs));
