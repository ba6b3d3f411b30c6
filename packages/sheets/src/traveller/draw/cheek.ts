// A cheek from its inside with its holes, and where they are measured from.

import { line, point } from "@lamplane/geometry";
import { blocksAt, cheekShape, pegHoles, stageExtent } from "@lamplane/parameters/elevation";
import { formatDrill } from "@lamplane/parameters/units";
import { CHEEK_DRAWING } from "../../words/drawings.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { WOOD_SHADE } from "./stack.ts";

export function pinHolePicture(t: StepContext, room: PictureRoom) {
  const { plane } = t;
  const { centre } = plane.pinHole;
  return composeViews({ name: "step-pin-hole", title: CHEEK_DRAWING.title }, room, [
    view(CHEEK_DRAWING.inside, (sketch) => {
      const { toe, heel, sole } = stageExtent(plane, "blank");
      const { boundary } = cheekShape(plane, "blank");
      const { rampChain, bedChain } = blocksAt(plane, "blank");
      sketch.area(WOOD_SHADE, boundary).outline("outline", boundary);
      sketch.line("hidden", ...rampChain).line("hidden", ...bedChain);
      if (plane.design.body.trim > 0)
        for (const x of [0, plane.design.body.length])
          sketch.line("cut", line(point(x, sole), point(x, plane.design.body.height)));
      sketch.circle("outline", plane.pinHole);
      for (const peg of pegHoles(plane)) sketch.circle("hidden", peg);
      sketch.cross(plane.pinHole);
      sketch.level(t.ruled(centre.x - toe), point(toe, sole), point(centre.x, sole));
      sketch.upright(t.ruled(centre.y - sole), point(toe, sole), point(toe, centre.y), "left");
      const peg = pegHoles(plane).filter(({ centre: c }) => c.x > plane.design.body.length);
      sketch.name("right", [
        {
          words: CHEEK_DRAWING.drill({ drill: formatDrill(2 * plane.pinHole.radius, t.design) }),
          point: point(centre.x, centre.y + plane.pinHole.radius),
        },
        ...peg.slice(0, 1).map(({ centre: c }) => ({
          words: CHEEK_DRAWING.peg({ diameter: t.mm(plane.design.pegs.diameter) }),
          point: c,
        })),
        ...(plane.design.body.trim > 0
          ? [{ words: CHEEK_DRAWING.heel, point: point(plane.design.body.length, 0.9 * plane.design.body.height) }]
          : []),
        { words: CHEEK_DRAWING.sole, point: point(0.85 * heel, sole) },
      ]);
    }),
  ]);
}
