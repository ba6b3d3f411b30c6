// The assembled body as one closed shell: throat open at mouth and top, recess, pin holes.

import { line, type Outline, type Point, point, reverseOutline, type Segment } from "@lamplane/geometry";
import { atLevel, type Face, levelFace, polygonLoop, wallFace, wallFaces } from "@lamplane/geometry/mesh";
import { blocksAt, stageExtent } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import type { Stage } from "../table/index.ts";
import { bedFaces, topOverBedFaces } from "./bed-faces.ts";
import { chordArea, holeOutline, type PartFaces } from "./part-faces.ts";

/** Faces and volume of the body, trimmed to length. */
export function bodyShell(plane: Elevation, stage: Exclude<Stage, "blank">): PartFaces {
  const [c, w] = [plane.widths.core / 2, plane.widths.body / 2];
  const blocks = blocksAt(plane, stage);
  const { rampChain, bedChain, topOverThroat, topOverFront } = blocks;
  const stock = stageExtent(plane, stage);
  const bed = bedFaces(plane, bedChain, blocks.topOverBed, c);
  const h = bed.half;
  const [toeFoot, heelFoot] = [point(stock.toe, stock.sole), point(stock.heel, stock.sole)];
  const heelLine = line(heelFoot, bed.topOverWood[0]!.from);
  const toeLine = line(topOverFront.at(-1)!.to, toeFoot);
  const top = [...bed.topOverWood, ...bed.topOverRecess, ...topOverThroat, ...topOverFront];
  const profile: Outline = [line(toeFoot, heelFoot), heelLine, ...top, toeLine];
  const [rampFoot, bedFoot] = [rampChain[0]!.from, bedChain[0]!.from];
  const throat: Outline = [line(rampFoot, bedFoot), ...bedChain, ...topOverThroat, ...reverseOutline(rampChain)];
  const hole = holeOutline(plane.pinHole);
  return {
    faces: [
      ...bed.faces,
      ...wallFaces(rampChain, -c, c),
      wallFace(heelLine, [-w, w]),
      ...topOverBedFaces(bed, w, h > 0 ? [-w, -c, -h, h, c, w] : [-w, -c, c, w]),
      ...wallFaces(topOverThroat, -w, -c),
      ...wallFaces(topOverThroat, c, w),
      ...topOverFrontFaces(topOverFront, c, w),
      wallFace(toeLine, [-w, w]),
      solePlate([toeFoot, heelFoot], w, [rampFoot, bedFoot], c),
      ...cheekFaces(profile, throat, hole, c, w),
      ...wallFaces(hole, c, w),
      ...wallFaces(hole, -w, -c),
    ],
    volume: chordArea(profile) * 2 * w - chordArea(throat) * 2 * c + chordArea(hole) * 2 * (w - c) - bed.removed,
  };
}

const topOverFrontFaces = (top: readonly Segment[], c: number, w: number): Face[] =>
  top.map((s, i) => wallFace(s, i === 0 ? [-w, -c, c, w] : [-w, w], [-w, w]));

type Ends = readonly [Point, Point];

/** The sole with the mouth in it, each from toe's side to heel's and over its half width. */
const solePlate = ([toe, heel]: Ends, w: number, [rampFoot, bedFoot]: Ends, c: number): Face => ({
  surface: { kind: "plane", normal: [0, -1, 0] },
  loops: [
    polygonLoop([atLevel(toe, -w), atLevel(heel, -w), atLevel(heel, w), atLevel(toe, w)]),
    polygonLoop([atLevel(rampFoot, -c), atLevel(rampFoot, c), atLevel(bedFoot, c), atLevel(bedFoot, -c)]),
  ],
});

/** Outsides of the cheeks, and their insides where the throat lays them open, each with the pin's hole. */
const cheekFaces = (profile: Outline, throat: Outline, hole: Outline, c: number, w: number): Face[] => [
  levelFace([profile, hole], w, "above"),
  levelFace([profile, hole], -w, "below"),
  levelFace([throat, hole], c, "below"),
  levelFace([throat, hole], -c, "above"),
];
