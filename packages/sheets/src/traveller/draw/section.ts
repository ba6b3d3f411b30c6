// The plane cut along its middle with every part named: the cover's picture, and the first shaving's with where to tap.

import { line, point, pointAlong, polygon } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { bedToPlane, blocksAt, ironToPlane, wedgeThickness } from "@lamplane/parameters/elevation";
import { SECTION_DRAWING } from "../../words/drawings.ts";
import type { NamedPoint, Sketch } from "../sketch.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { clipToWindow, type Window } from "../window.ts";
import { CAP_ENDS_BELOW, drawBlocks, drawStackSketch, throatWindow } from "./stack.ts";

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
      const { toe, heel } = partNames(plane, part);
      sketch.name("left", toe).name("right", heel);
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

/** What a maker calls each part, toe's side and heel's side. */
function partNames(plane: Elevation, room: Window | undefined): { toe: NamedPoint[]; heel: NamedPoint[] } {
  const { design, points, frame, pin, recess } = plane;
  const { front, bed } = blocksAt(plane, "trued");
  const middle = (outline: typeof front) => {
    const ends = (room ? clipToWindow(outline, room) : outline).map((s) => s.from);
    return point(
      ends.reduce((sum, p) => sum + p.x, 0) / ends.length,
      ends.reduce((sum, p) => sum + p.y, 0) / ends.length,
    );
  };
  const low = 0.18 * design.body.height;
  const rampMiddle = pointAlong(line(points.rampFoot, points.rampTop), 0.5);
  const rampAt = plane.ramp.curve ? plane.ramp.curve.begin : rampMiddle;
  const { length } = design.iron;
  const butt = design.wedge.tipFromEdge + plane.wedgeLength - 4;
  const cap = Math.max(length - CAP_ENDS_BELOW - 3, 0);
  const capped = design.capIron.thickness > 0;
  return {
    toe: [
      { words: SECTION_DRAWING.crossPin, point: pin.centre },
      { words: plane.ramp.curve ? SECTION_DRAWING.curvedRamp : SECTION_DRAWING.ramp, point: rampAt },
      { words: SECTION_DRAWING.frontBlock, point: point(middle(front).x, low) },
      { words: SECTION_DRAWING.mouth, point: points.rampFoot },
    ],
    heel: [
      {
        words: SECTION_DRAWING.wedge,
        point: ironToPlane(frame, butt, design.capIron.thickness + wedgeThickness(design, butt) / 2),
      },
      ...(capped
        ? [{ words: SECTION_DRAWING.capIron, point: ironToPlane(frame, cap, design.capIron.thickness / 2) }]
        : []),
      { words: SECTION_DRAWING.iron, point: bedToPlane(frame, length - 3, -frame.thickness / 2) },
      ...(recess
        ? [
            {
              words: SECTION_DRAWING.recess,
              point: bedToPlane(
                frame,
                Math.min(plane.bedTopS, design.capIron.screwHead.fromEdge + design.capIron.screwHead.diameter),
                -frame.thickness - 0.6 * recess.depth,
              ),
            },
          ]
        : []),
      { words: SECTION_DRAWING.bed, point: bedToPlane(frame, 0.45 * (recess?.low ?? plane.bedTopS), -frame.thickness) },
      { words: SECTION_DRAWING.bedBlock, point: point(0.97 * middle(bed).x, low) },
    ],
  };
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
