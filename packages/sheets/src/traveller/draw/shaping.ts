// The finished outline over the glued blank: what is trimmed and what is shaped away.

import { line, point } from "@lamplane/geometry";
import { stageExtent } from "@lamplane/parameters/elevation";
import { SHAPING_DRAWING } from "../../words/drawings.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { cheekOutline, WASTE_SHADE, WOOD_SHADE } from "./stack.ts";

export function shapingPicture(t: StepContext, room: PictureRoom) {
  const { plane } = t;
  const { length, height } = plane.design.body;
  const { toe, heel } = stageExtent(plane, "blank");
  return composeViews({ name: "step-shaping", title: SHAPING_DRAWING.title }, room, [
    view(SHAPING_DRAWING.fromSide, (sketch) => {
      const blank = cheekOutline(plane, "blank");
      const finished = cheekOutline(plane, "trued");
      sketch.area(WASTE_SHADE, blank).outline("hidden", blank);
      sketch.area(0, finished).area(WOOD_SHADE, finished).outline("outline", finished);
      sketch.circle("outline", plane.pinHole).cross(plane.pinHole);
      sketch.line("mark", line(point(plane.points.edge.x, 0), point(plane.points.edge.x, 0.1 * height)));
      sketch.level(SHAPING_DRAWING.mouth({ length: t.ruled(plane.points.edge.x) }), point(0, 0), plane.points.edge);
      sketch.level(t.ruled(length), point(0, 0), point(length, 0));
      if (toe < 0) sketch.level(t.ruled(heel - length), point(heel, 0), point(length, 0)); // its words stand under the plane
      const { crownX, toeHeight, heelHeight } = plane.top;
      sketch.upright(t.ruled(toeHeight), point(0, 0), point(0, toeHeight), "left");
      sketch.upright(t.ruled(heelHeight), point(length, 0), point(length, heelHeight), "right");
      if (plane.top.outline === "arched") {
        sketch.line("axis", line(point(crownX, 0), point(crownX, height)));
        sketch.level(
          SHAPING_DRAWING.crown({ length: t.ruled(crownX), height: t.ruled(height) }),
          point(0, height),
          point(crownX, height),
          "above",
        );
      }
    }),
  ]);
}
