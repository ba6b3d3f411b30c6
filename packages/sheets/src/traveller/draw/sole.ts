// The sole: what comes off it, where the edge stands meanwhile, and the mouth close up.

import { line, point, sinDeg } from "@lamplane/geometry";
import { bedToPlane, stageExtent } from "@lamplane/parameters/elevation";
import { SOLE_DRAWING } from "../../words/drawings.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { boxPolygon } from "../window.ts";
import { closeUpView, drawMouthArea } from "./glue.ts";
import { cheekOutline, drawBlocks, drawStackSketch, WASTE_SHADE } from "./stack.ts";

/** mm that the edge is drawn back up the bed while the sole is worked. */
const DRAWN_BACK = 6;
/** Length of the arrow from toe to heel on the paper, mm. */
const ARROW = 16;

export function solePicture(t: StepContext, stopShort: number, room: PictureRoom) {
  const { plane } = t;
  const { sole, toe, heel } = stageExtent(plane, "blank");
  return composeViews({ name: "step-sole", title: SOLE_DRAWING.truing }, room, [
    view(SOLE_DRAWING.blank, (sketch) => {
      sketch.outline("hidden", cheekOutline(plane, "blank"));
      drawBlocks(sketch, plane, "blank");
      sketch.area(WASTE_SHADE, boxPolygon(toe, sole, heel, 0));
      drawStackSketch(sketch, plane, { back: DRAWN_BACK });
      sketch.line("cut", line(point(toe, 0), point(heel, 0)));
      sketch.name("right", [
        { words: SOLE_DRAWING.edgeBack, point: bedToPlane(plane.frame, DRAWN_BACK, 0) },
        { words: SOLE_DRAWING.plannedSole, point: point(heel, 0) },
      ]);
      sketch.arrow(point(0.5 * heel, sole), 0, { length: ARROW, off: point(0, -3) });
      sketch.words(SOLE_DRAWING.toeToHeel, point(0.5 * heel, sole), { up: -6.5, right: -ARROW / 2 });
    }),
    closeUpView(t, SOLE_DRAWING.closeUp, (sketch, room) => {
      drawMouthArea(sketch, plane, room, DRAWN_BACK / 2);
      const stop = -stopShort;
      sketch.line("cut", line(point(room.left, 0), point(room.right, 0)));
      sketch.line("mark", line(point(room.left, stop), point(room.right, stop)));
      sketch.upright(t.ruled(-sole), point(room.right, sole), point(room.right, 0), "right");
      sketch.name("left", [
        { words: SOLE_DRAWING.plannedSole, point: point(room.left, 0) },
        { words: SOLE_DRAWING.stopHere, point: point(room.left + 1, stop) },
        { words: SOLE_DRAWING.blankSole, point: point(room.left + 2, sole) },
      ]);
    }),
  ]);
}

export function mouthPicture(t: StepContext, room: PictureRoom) {
  const { plane } = t;
  return composeViews({ name: "step-mouth", title: SOLE_DRAWING.mouth }, room, [
    closeUpView(t, SOLE_DRAWING.mouthView, (sketch, room) => {
      const low = { ...room, low: -0.6 };
      drawMouthArea(sketch, plane, low, 0, "trued");
      const { rampFoot, edge, bedFoot } = plane.points;
      sketch.line("axis", line(point(room.left, 0), point(room.right, 0)));
      sketch.level(SOLE_DRAWING.opening({ opening: t.mm(plane.design.mouth.opening) }), rampFoot, edge);
      const beta = plane.frame.bedAngle;
      sketch.angle(t.deg(beta), bedFoot, 0, beta, 10);
      sketch.angle(t.deg(plane.ramp.angle), rampFoot, 180 - plane.ramp.angle, 180, 10);
      sketch.name("right", [
        { words: SOLE_DRAWING.iron, point: bedToPlane(plane.frame, 4 / sinDeg(beta), -plane.frame.thickness / 2) },
      ]);
    }),
  ]);
}
