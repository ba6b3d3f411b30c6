// The assembled body as one closed shell: throat open at mouth and top, recess, pin holes.

import { type Point, point } from "@lamplane/geometry";
import { blocksAt, type Stage, stageExtent } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { bedFaces, ribs, tessellateChain } from "./bed-faces.ts";
import { atWidth, type Loop, planarFace, type Rib, rib, strips, type Triangle } from "./faces.ts";
import { circleRing, polygonArea, prismWalls } from "./prism.ts";

/** Faces and volume of the body, trimmed to length. */
export function bodyShell(plane: Elevation, stage: Exclude<Stage, "blank">): { triangles: Triangle[]; volume: number } {
  const [c, w] = [plane.widths.core / 2, plane.widths.body / 2];
  const blocks = blocksAt(plane, stage);
  const stock = stageExtent(plane, stage);
  const bed = bedFaces(plane, blocks.bedChain, blocks.topOverBed, c);
  const ramp = tessellateChain(blocks.rampChain);
  const overThroat = tessellateChain(blocks.topOverThroat);
  const overFront = tessellateChain(blocks.topOverFront);
  const [toeFoot, heelFoot] = [point(stock.toe, stock.sole), point(stock.heel, stock.sole)];
  const profile = [
    toeFoot,
    heelFoot,
    ...bed.topOverWood,
    ...[bed.topOverRecess, overThroat, overFront].flatMap((p) => p.slice(1)),
  ];
  const bedPoints = tessellateChain(blocks.bedChain);
  const throat = [...bedPoints, ...overThroat.slice(1, -1), ...[...ramp].reverse()];
  const hole = circleRing(plane.pinHole);
  return {
    triangles: [
      ...bed.triangles,
      ...strips(ribs(ramp, -c, c), -c, c),
      ...topFaces(bed, overThroat, overFront, toeFoot, heelFoot, c, w),
      ...solePlate(toeFoot, heelFoot, ramp[0]!, bedPoints[0]!, c, w),
      ...cheekFaces(profile, throat, hole, c, w),
      ...prismWalls(hole, c, w),
      ...prismWalls(hole, -w, -c),
    ],
    volume: polygonArea(profile) * 2 * w - polygonArea(throat) * 2 * c + polygonArea(hole) * 2 * (w - c) - bed.removed,
  };
}

/** Heel, top and toe: whole over the blocks, split over throat and recess. */
function topFaces(
  bed: ReturnType<typeof bedFaces>,
  overThroat: readonly Point[],
  overFront: readonly Point[],
  toeFoot: Point,
  heelFoot: Point,
  c: number,
  w: number,
): Triangle[] {
  const h = bed.half;
  const split = h > 0 ? [-h, h] : [];
  const bedTop = rib(overThroat[0]!, -w, -c, ...split, c, w);
  const rampTop = rib(overThroat.at(-1)!, -w, -c, c, w);
  const woodEnd: Rib = h > 0 ? rib(bed.topOverWood.at(-1)!, -w, -h, h, w) : bedTop;
  const heel = [rib(heelFoot, -w, w), ...ribs(bed.topOverWood.slice(0, -1), -w, w), woodEnd];
  const overRecess = [woodEnd, ...ribs(bed.topOverRecess.slice(1, -1), -w, -h, h, w), bedTop];
  const open = [bedTop, ...ribs(overThroat.slice(1, -1), -w, -c, c, w), rampTop];
  const front = [rampTop, ...ribs(overFront.slice(1), -w, w), rib(toeFoot, -w, w)];
  return [
    ...strips(heel, -w, w),
    ...(h > 0 ? [...strips(overRecess, -w, -h), ...strips(overRecess, h, w)] : []),
    ...strips(open, -w, -c),
    ...strips(open, c, w),
    ...strips(front, -w, w),
  ];
}

/** The sole with the mouth in it. */
function solePlate(toe: Point, heel: Point, rampFoot: Point, bedFoot: Point, c: number, w: number): Triangle[] {
  return planarFace([
    [atWidth(toe, -w), atWidth(heel, -w), atWidth(heel, w), atWidth(toe, w)],
    [atWidth(rampFoot, -c), atWidth(rampFoot, c), atWidth(bedFoot, c), atWidth(bedFoot, -c)],
  ]);
}

/** Outsides of the cheeks, and their insides where the throat lays them open, each with the pin's hole. */
function cheekFaces(
  profile: readonly Point[],
  throat: readonly Point[],
  hole: readonly Point[],
  c: number,
  w: number,
): Triangle[] {
  const facing = (outer: readonly Point[], z: number): Loop[] =>
    [outer, hole].map((ring) => ring.map((p) => atWidth(p, z)));
  const away = (loops: Loop[]): Loop[] => loops.map((loop) => [...loop].reverse());
  return [facing(profile, w), away(facing(profile, -w)), away(facing(throat, c)), facing(throat, -c)].flatMap(
    planarFace,
  );
}
