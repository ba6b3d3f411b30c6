// The plane cut along its middle with every part named: the cover's picture, and the first shaving's with where to tap.

import { line, point, pointAlong, polygon } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { bedToPlane, blocksAt, ironToPlane, wedgeThickness } from "@lamplane/parameters/elevation";
import type { NamedPoint, Sketch } from "../sketch.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { clipToWindow, type Window } from "../window.ts";
import { CAP_ENDS_BELOW, drawBlocks, drawStackSketch, throatWindow } from "./stack.ts";

const ENDS_OFF = ", the body's ends left off";

export function sectionPicture(t: StepContext, room: PictureRoom) {
  const { plane } = t;
  const part = throatWindow(plane);
  return composeViews({ name: "plane-section", title: "The plane cut along its middle, its parts named" }, room, [
    view(`Cut along the middle, toe to the left${part ? ENDS_OFF : ""}`, (sketch) => {
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
      { words: "cross pin, turns in the cheeks", point: pin.centre },
      { words: plane.ramp.curve ? "ramp: wear, then curve" : "ramp", point: rampAt },
      { words: "front block", point: point(middle(front).x, low) },
      { words: "mouth", point: points.rampFoot },
    ],
    heel: [
      { words: "wedge", point: ironToPlane(frame, butt, design.capIron.thickness + wedgeThickness(design, butt) / 2) },
      ...(capped ? [{ words: "cap iron", point: ironToPlane(frame, cap, design.capIron.thickness / 2) }] : []),
      { words: "iron, bevel down", point: bedToPlane(frame, length - 3, -frame.thickness / 2) },
      ...(recess
        ? [
            {
              words: "recess for the screw",
              point: bedToPlane(
                frame,
                Math.min(plane.bedTopS, design.capIron.screwHead.fromEdge + design.capIron.screwHead.diameter),
                -frame.thickness - 0.6 * recess.depth,
              ),
            },
          ]
        : []),
      { words: "bed", point: bedToPlane(frame, 0.45 * (recess?.low ?? plane.bedTopS), -frame.thickness) },
      { words: "bed block, between the cheeks", point: point(0.97 * middle(bed).x, low) },
    ],
  };
}

/** The plane set up, with where a tap sends the iron. */
export function tappingPicture(t: StepContext, room: PictureRoom) {
  const { plane } = t;
  const { design, frame, points } = plane;
  const part = throatWindow(plane);
  return composeViews({ name: "step-first-shaving", title: "Where to tap the plane, and what each tap does" }, room, [
    view(`Where to tap${part ? ENDS_OFF : ""}`, (sketch) => {
      drawSection(sketch, plane, part);
      const butt = bedToPlane(frame, design.iron.length, -frame.thickness / 2);
      const length = plane.wedgeLength + design.wedge.tipFromEdge;
      const wedge = ironToPlane(frame, length, design.capIron.thickness + wedgeThickness(design, length) / 2);
      const heel = point(part?.right ?? design.body.length, 0.45 * (plane.topChain[0]?.from.y ?? design.body.height));
      sketch.arrow(butt, 180 + frame.bedAngle);
      sketch.arrow(wedge, 180 + frame.bedAngle);
      sketch.arrow(heel, 180);
      sketch.name("right", [
        { words: "1  on the iron: a deeper cut", point: butt },
        { words: "3  on the heel: back and loose", point: heel },
      ]);
      sketch.name("left", [
        { words: "2  on the wedge: hold", point: wedge },
        { words: "shavings leave here", point: pointAlong(line(points.rampTop, points.bedTop), 0.3) },
      ]);
    }),
  ]);
}
