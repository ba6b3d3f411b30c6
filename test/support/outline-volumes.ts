// Volumes, areas and places of the parts from their outlines alone, arcs as arcs: no face and no mesh is asked.
import {
  boundsOf,
  circleOutline,
  type Outline,
  outlineArea,
  type Point,
  type Segment,
  type Shape,
  segmentLength,
  shapeArea,
} from "@lamplane/geometry";
import { blocksAt, cheekShape, type Elevation, pinLengths } from "@lamplane/parameters/elevation";

/** Wood that the recess takes under a flat top, mm³: a trapezoid as wide as the cutter's path, less two rounded corners. */
function recessVolume({ recess, frame, design }: Elevation): number {
  if (!recess) return 0;
  const [turn, t] = [(frame.bedAngle * Math.PI) / 180, frame.thickness];
  const topAt = (v: number) => (design.body.height - v * Math.cos(turn)) / Math.sin(turn);
  const length = (topAt(-t) + topAt(-t - recess.depth)) / 2 - recess.low;
  return recess.depth * (recess.width * length - (2 - Math.PI / 2) * recess.cornerRadius ** 2);
}

/** Volume of each wooden part by its name, mm³; the bed block's only as a blank, whose top is flat. */
export function outlineVolumes(plane: Elevation, stage: "blank" | "trued"): Map<string, number> {
  const c = plane.widths.core / 2;
  const cheek = shapeArea(cheekShape(plane, stage)) * (plane.widths.body / 2 - c);
  const { shoulder, end } = pinLengths(plane);
  const tenon = (Math.PI * plane.pinSize.tenon ** 2) / 4;
  return new Map([
    ["front-block", outlineArea(blocksAt(plane, stage).front) * 2 * c],
    ["cheek-left", cheek],
    ["cheek-right", cheek],
    ["wedge", outlineArea(plane.wedge) * (2 * c - plane.design.wedge.clearance)],
    ["cross-pin", outlineArea(plane.pinSection) * 2 * shoulder + tenon * 2 * (end - shoulder)],
    ...(stage === "blank"
      ? ([["bed-block", outlineArea(blocksAt(plane, stage).bed) * 2 * c - recessVolume(plane)]] as const)
      : []),
  ]);
}

/** Surface of each part that is one outline of one thickness, by its name, mm². */
export function prismAreas(plane: Elevation, stage: "blank" | "trued"): Map<string, number> {
  const core = plane.widths.core;
  const cheek = prismArea(cheekShape(plane, stage), (plane.widths.body - core) / 2);
  return new Map([
    ["front-block", prismArea(onlyBoundary(blocksAt(plane, stage).front), core)],
    ["cheek-left", cheek],
    ["cheek-right", cheek],
    ["wedge", prismArea(onlyBoundary(plane.wedge), core - plane.design.wedge.clearance)],
  ]);
}

const onlyBoundary = (boundary: Outline): Shape => ({ boundary, holes: [], circles: [] });
const prismArea = (shape: Shape, thickness: number): number => {
  const loops = [shape.boundary, ...shape.holes, ...shape.circles.map(circleOutline)];
  return 2 * shapeArea(shape) + thickness * loops.reduce((sum, loop) => sum + perimeter(loop), 0);
};
const perimeter = (outline: Outline): number => outline.reduce((sum, segment) => sum + segmentLength(segment), 0);

/** Box about each part in the plane's place, x to the heel, y to the right cheek, z up, mm. */
export function partBoxes(
  plane: Elevation,
  stage: "blank" | "trued",
): Map<string, { readonly min: readonly number[]; readonly max: readonly number[] }> {
  const [c, b] = [plane.widths.core / 2, plane.widths.body / 2];
  const wedge = c - plane.design.wedge.clearance / 2;
  const blocks = blocksAt(plane, stage);
  const box = (outline: Outline, low: number, high: number) => {
    const { min, max } = boundsOf(outline.flatMap((segment) => [segment.from, ...extremesOf(segment)]));
    return { min: [min.x, low, min.y], max: [max.x, high, max.y] };
  };
  const cheek = cheekShape(plane, stage).boundary;
  const { end } = pinLengths(plane);
  return new Map([
    ["front-block", box(blocks.front, -c, c)],
    ["bed-block", box(blocks.bed, -c, c)],
    ["cheek-left", box(cheek, -b, -c)],
    ["cheek-right", box(cheek, c, b)],
    ["wedge", box(plane.wedge, -wedge, wedge)],
    ["cross-pin", box(plane.pinSection, -end, end)],
  ]);
}

/** Points of an arc that reach furthest up, down or aside. */
function extremesOf(segment: Segment): Point[] {
  if (segment.kind === "line") return [];
  const { centre, from, sweep } = segment;
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
  const begin = Math.atan2(from.y - centre.y, from.x - centre.x);
  const turn = (sweep * Math.PI) / 180;
  return [0, 1, 2, 3]
    .map((quarter) => (quarter * Math.PI) / 2)
    .filter((angle) => {
      const beyond = Math.sign(turn) * (angle - begin);
      return beyond - 2 * Math.PI * Math.floor(beyond / (2 * Math.PI)) <= Math.abs(turn);
    })
    .map((angle) => ({ x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) }));
}
