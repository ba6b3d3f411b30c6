// The plane cut along its middle with every part named: the cover's picture, and the first shaving's with where to tap.

import { line, type Outline, point, pointAlong, polygon } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { bedToPlane, blocksAt, ironToPlane, wedgeThickness } from "@lamplane/parameters/elevation";
import { SECTION_DRAWING } from "../../words/drawings.ts";
import type { NamedPoint, Sketch } from "../sketch.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { clipToWindow, type Window } from "../window.ts";
import { CAP_ENDS_BELOW, drawBlocks, drawStackSketch, throatWindow } from "./stack.ts";

/** Height of the blocks' names, as a share of the body's. */
const BLOCK_NAMES = 0.18;

export function sectionPicture(t: StepContext, room: PictureRoom) {
  const { plane } = t;
  const part = throatWindow(plane);
  return composeViews({ name: "plane-section", title: SECTION_DRAWING.title }, room, [
    view(SECTION_DRAWING.cut({ endsOff: part !== undefined }), (sketch) => {
      drawSection(sketch, plane, part);
      if (!part) {
        sketch.level(t.ruled(t.figure("mouthX")), point(0, 0), plane.points.edge);
        sketch.level(t.ruled(plane.design.body.length), point(0, 0), point(plane.design.body.length, 0));
      }
      sketch.name("left", toePartNames(plane, part)).name("right", heelPartNames(plane, part));
    }),
  ]);
}

function drawSection(sketch: Sketch, plane: Elevation, room: Window | undefined): void {
  drawBlocks(sketch, plane, "trued", room);
  drawRecessSection(sketch, plane);
  drawStackSketch(sketch, plane);
}

/** The recess in the bed block with the screw's head in it, cut through. */
export function drawRecessSection(sketch: Sketch, { recess, design, frame, bedTopS }: Elevation, top = bedTopS): void {
  if (!recess) return;
  const t = frame.thickness;
  const at = (s: number, v: number) => bedToPlane(frame, s, v);
  sketch.line(
    "outline",
    line(at(recess.low, -t), at(recess.low, -t - recess.depth)),
    line(at(recess.low, -t - recess.depth), at(top, -t - recess.depth)),
  );
  const { diameter, height, fromEdge } = design.capIron.screwHead;
  const [low, high] = [fromEdge - diameter / 2, fromEdge + diameter / 2];
  const head = polygon(at(low, -t), at(low, -t - height), at(high, -t - height), at(high, -t));
  sketch.area(0.32, head).outline("thin", head);
}

/** What a maker calls each part on the toe's side. */
function toePartNames(plane: Elevation, room: Window | undefined): NamedPoint[] {
  const { points, pin } = plane;
  const { curve } = plane.ramp;
  const ramp = curve ? curve.begin : pointAlong(line(points.rampFoot, points.rampTop), 0.5);
  const block = point(middleX(blocksAt(plane, "trued").front, room), BLOCK_NAMES * plane.design.body.height);
  return [
    { words: SECTION_DRAWING.crossPin, point: pin.centre },
    { words: curve ? SECTION_DRAWING.curvedRamp : SECTION_DRAWING.ramp, point: ramp },
    { words: SECTION_DRAWING.frontBlock, point: block },
    { words: SECTION_DRAWING.mouth, point: points.rampFoot },
  ];
}

/** What a maker calls each part on the heel's side: wedge and irons from above down, then bed and block. */
function heelPartNames(plane: Elevation, room: Window | undefined): NamedPoint[] {
  const { design, frame, recess, bedTopS } = plane;
  const onBed = (s: number, over: number) => bedToPlane(frame, s, over - frame.thickness);
  const { thickness, screwHead } = design.capIron;
  const butt = design.wedge.tipFromEdge + plane.wedgeLength - 4;
  const cap = Math.max(design.iron.length - CAP_ENDS_BELOW - 3, 0);
  const block = middleX(blocksAt(plane, "trued").bed, room);
  const names: NamedPoint[] = [
    { words: SECTION_DRAWING.wedge, point: ironToPlane(frame, butt, thickness + wedgeThickness(design, butt) / 2) },
  ];
  if (thickness > 0) names.push({ words: SECTION_DRAWING.capIron, point: ironToPlane(frame, cap, thickness / 2) });
  names.push({ words: SECTION_DRAWING.iron, point: bedToPlane(frame, design.iron.length - 3, -frame.thickness / 2) });
  if (recess) {
    const s = Math.min(bedTopS, screwHead.fromEdge + screwHead.diameter);
    names.push({ words: SECTION_DRAWING.recess, point: onBed(s, -0.6 * recess.depth) });
  }
  names.push(
    { words: SECTION_DRAWING.bed, point: onBed(0.45 * (recess?.low ?? bedTopS), 0) },
    { words: SECTION_DRAWING.bedBlock, point: point(0.97 * block, BLOCK_NAMES * design.body.height) },
  );
  return names;
}

/** Middle of what is seen of an outline, along the plane. */
function middleX(outline: Outline, room: Window | undefined): number {
  const ends = (room ? clipToWindow(outline, room) : outline).map(({ from }) => from.x);
  return ends.reduce((sum, x) => sum + x, 0) / ends.length;
}

/** The plane set up, with where a tap sends the iron. */
export function tappingPicture(t: StepContext, room: PictureRoom) {
  const { plane } = t;
  const { design, frame, points } = plane;
  const part = throatWindow(plane);
  return composeViews({ name: "step-first-shaving", title: SECTION_DRAWING.tapping }, room, [
    view(SECTION_DRAWING.tap({ endsOff: part !== undefined }), (sketch) => {
      drawSection(sketch, plane, part);
      const butt = bedToPlane(frame, design.iron.length, -frame.thickness / 2);
      const length = plane.wedgeLength + design.wedge.tipFromEdge;
      const wedge = ironToPlane(frame, length, design.capIron.thickness + wedgeThickness(design, length) / 2);
      const heel = point(part?.right ?? design.body.length, 0.45 * (plane.topChain[0]?.from.y ?? design.body.height));
      sketch.arrow(butt, 180 + frame.bedAngle);
      sketch.arrow(wedge, 180 + frame.bedAngle);
      sketch.arrow(heel, 180);
      sketch.name("right", [
        { words: SECTION_DRAWING.tapIron, point: butt },
        { words: SECTION_DRAWING.tapHeel, point: heel },
      ]);
      sketch.name("left", [
        { words: SECTION_DRAWING.tapWedge, point: wedge },
        { words: SECTION_DRAWING.shavings, point: pointAlong(line(points.rampTop, points.bedTop), 0.3) },
      ]);
    }),
  ]);
}
