// The plane cut along its middle with every part named: the cover's picture, and the first shaving's with where to tap.

import { line, point, pointAlong, polygon } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { blocksAt, fromIron, wedgeThickness } from "@lamplane/parameters/elevation";
import { composed, type Named, type Sketch, view, WHOLE, type Window, within } from "../sketch.ts";
import type { Telling } from "../telling.ts";
import { CAP_ENDS_BELOW, drawBlocks, drawStack, throatRoom } from "./stack.ts";

const ENDS_OFF = ", the body's ends left off";

export function sectionPicture(t: Telling) {
  const { plane } = t;
  const room = throatRoom(plane);
  return composed({ name: "plane-section", title: "The plane cut along its middle, its parts named" }, [
    view(`Cut along the middle, toe to the left${room ? ENDS_OFF : ""}`, { ...WHOLE, height: 84 }, (sketch) => {
      drawSection(sketch, plane, room);
      if (!room) {
        sketch.level(t.ruled(t.figure("mouthX")), point(0, 0), plane.points.edge);
        sketch.level(t.ruled(plane.design.body.length), point(0, 0), point(plane.design.body.length, 0));
      }
      const { toe, heel } = namedParts(plane, room);
      sketch.name("left", toe).name("right", heel);
    }),
  ]);
}

function drawSection(sketch: Sketch, plane: Elevation, room: Window | undefined): void {
  drawBlocks(sketch, plane, "trued", room);
  drawRecess(sketch, plane);
  drawStack(sketch, plane);
}

/** The recess in the bed block with the screw's head in it, cut through. */
export function drawRecess(sketch: Sketch, { recess, design, frame, bedTopS }: Elevation, top = bedTopS): void {
  if (!recess) return;
  const t = design.iron.thickness;
  const at = (s: number, v: number) => fromIron(frame, s, v);
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
function namedParts(plane: Elevation, room: Window | undefined): { toe: Named[]; heel: Named[] } {
  const { design, points, frame, pin, recess } = plane;
  const { front, bed } = blocksAt(plane, "trued");
  const middle = (outline: typeof front) => {
    const ends = (room ? within(outline, room) : outline).map((s) => s.from);
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
      { words: "cross pin, turns in the cheeks", place: pin.centre },
      { words: plane.ramp.curve ? "ramp: wear, then curve" : "ramp", place: rampAt },
      { words: "front block", place: point(middle(front).x, low) },
      { words: "mouth", place: points.rampFoot },
    ],
    heel: [
      { words: "wedge", place: fromIron(frame, butt, design.capIron.thickness + wedgeThickness(design, butt) / 2) },
      ...(capped ? [{ words: "cap iron", place: fromIron(frame, cap, design.capIron.thickness / 2) }] : []),
      { words: "iron, bevel down", place: fromIron(frame, length - 3, -design.iron.thickness / 2) },
      ...(recess
        ? [
            {
              words: "recess for the screw",
              place: fromIron(
                frame,
                Math.min(plane.bedTopS, design.capIron.screwHead.fromEdge + design.capIron.screwHead.diameter),
                -design.iron.thickness - 0.6 * recess.depth,
              ),
            },
          ]
        : []),
      { words: "bed", place: fromIron(frame, 0.45 * (recess?.low ?? plane.bedTopS), -design.iron.thickness) },
      { words: "bed block, between the cheeks", place: point(0.97 * middle(bed).x, low) },
    ],
  };
}

/** The plane set up, with where a tap sends the iron. */
export function tappingPicture(t: Telling) {
  const { plane } = t;
  const { design, frame, points } = plane;
  const room = throatRoom(plane);
  return composed({ name: "step-first-shaving", title: "Where to tap the plane, and what each tap does" }, [
    view(`Where to tap${room ? ENDS_OFF : ""}`, { ...WHOLE, height: 66 }, (sketch) => {
      drawSection(sketch, plane, room);
      const butt = fromIron(frame, design.iron.length, -design.iron.thickness / 2);
      const length = plane.wedgeLength + design.wedge.tipFromEdge;
      const wedge = fromIron(frame, length, design.capIron.thickness + wedgeThickness(design, length) / 2);
      const heel = point(room?.right ?? design.body.length, 0.45 * (plane.topChain[0]?.from.y ?? design.body.height));
      sketch.arrow(butt, 180 + frame.bedAngle);
      sketch.arrow(wedge, 180 + frame.bedAngle);
      sketch.arrow(heel, 180);
      sketch.name("right", [
        { words: "1  on the iron: a deeper cut", place: butt },
        { words: "3  on the heel: back and loose", place: heel },
      ]);
      sketch.name("left", [
        { words: "2  on the wedge: hold", place: wedge },
        { words: "shavings leave here", place: pointAlong(line(points.rampTop, points.bedTop), 0.3) },
      ]);
    }),
  ]);
}
