// A cheek from its inside with its holes, and where they are measured from.
import { SAFE_WAYS } from "@lamplane/bench";
import { line, point } from "@lamplane/geometry";
import { blocksAt, cheekShape, pegHoles, stockAt } from "@lamplane/parameters/elevation";
import { composed, view, WHOLE } from "../sketch.ts";
import type { Telling } from "../telling.ts";
import { WOOD } from "./stack.ts";

export function pinHolePicture(t: Telling) {
  const { plane } = t;
  const { centre } = plane.pinHole;
  return composed({ name: "step-pin-hole", title: "A cheek with the pin's hole and the peg holes" }, [
    view("Right cheek from its inside, toe to the left; the left one mirrors it", WHOLE, (sketch) => {
      const { toe, heel, sole } = stockAt(plane, "blank");
      const { boundary, circles } = cheekShape(plane, "blank");
      const { rampChain, bedChain } = blocksAt(plane, "blank");
      sketch.area(WOOD, boundary).outline("outline", boundary);
      sketch.line("hidden", ...rampChain).line("hidden", ...bedChain);
      if (plane.design.body.trim > 0)
        for (const x of [0, plane.design.body.length])
          sketch.line("cut", line(point(x, sole), point(x, plane.design.body.height)));
      for (const circle of circles) sketch.circle("outline", circle);
      sketch.cross(plane.pinHole);
      sketch.level(t.ruled(centre.x), point(0, sole), point(centre.x, sole));
      if (toe < 0) sketch.level(t.ruled(centre.x - toe), point(toe, sole), point(centre.x, sole));
      sketch.upright(t.ruled(centre.y - sole), point(toe, sole), point(toe, centre.y), "left");
      const peg = pegHoles(plane).filter(({ centre: c }) => c.x > plane.design.body.length);
      sketch.name("right", [
        {
          words: `⌀ ${t.mm(2 * plane.pinHole.radius, SAFE_WAYS.pinHoleDiameter)}, both cheeks at once`,
          place: point(centre.x, centre.y + plane.pinHole.radius),
        },
        ...peg.slice(0, 1).map(({ centre: c }) => ({ words: `peg ⌀ ${t.mm(plane.design.pegs.diameter)}`, place: c })),
        ...(plane.design.body.trim > 0
          ? [{ words: "finished heel", place: point(plane.design.body.length, 0.9 * plane.design.body.height) }]
          : []),
        { words: "blank's sole", place: point(0.85 * heel, sole) },
      ]);
    }),
  ]);
}
