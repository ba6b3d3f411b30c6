// The billet: rings and grain as they should lie, and the lines along which it is ripped.

import type { Span, StockPlan } from "@lamplane/bench";
import { clipToLeft } from "@lamplane/bench";
import { cosDeg, line, type Point, point, sinDeg } from "@lamplane/geometry";
import { BILLET_DRAWING } from "../../words/drawings.ts";
import type { Sketch } from "../sketch.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { boxPolygon } from "../window.ts";
import { KERF_SHADE, WOOD_SHADE } from "./stack.ts";

/** Ring lines drawn across an end: enough to see their slope. */
const RINGS = 9;
/** Slope of the grain's lines in the side view, degrees: drawn steeper than good stock is, to be seen. */
const GRAIN_DRAWN = 4;

export function stockPicture(t: StepContext, plan: StockPlan, room: PictureRoom) {
  const { needed, rings } = plan.billet;
  const [w, h, l] = [needed.width, needed.height, needed.length];
  return composeViews({ name: "step-stock", title: BILLET_DRAWING.stock }, room, [
    view(BILLET_DRAWING.heelEnd, (sketch) => {
      sketch.area(WOOD_SHADE, boxPolygon(0, 0, w, h));
      for (const ring of parallelLines(w, h, rings)) sketch.line("thin", ring);
      sketch.outline("outline", boxPolygon(0, 0, w, h));
      sketch.level(t.ruled(w), point(0, 0), point(w, 0));
      sketch.upright(t.ruled(h), point(0, 0), point(0, h), "left");
      sketch.name("right", [
        { words: BILLET_DRAWING.rings({ angle: t.deg(rings) }), point: point(w, 0.6 * h) },
        { words: BILLET_DRAWING.sole, point: point(0.8 * w, 0) },
      ]);
    }),
    view(BILLET_DRAWING.side, (sketch) => {
      sketch.area(WOOD_SHADE, boxPolygon(0, 0, l, h));
      for (const grain of parallelLines(l, h, -GRAIN_DRAWN, 11)) sketch.line("thin", grain);
      sketch.outline("outline", boxPolygon(0, 0, l, h));
      sketch.arrow(point(0.94 * l, 0), 0, { length: 16, off: point(0, -3) });
      sketch.words(BILLET_DRAWING.planeThisWay, point(0.3 * l, 0), { up: -3 });
      sketch.level(t.ruled(l), point(0, 0), point(l, 0));
      sketch.name("right", [{ words: BILLET_DRAWING.heel, point: point(l, 0.5 * h) }]);
    }),
  ]);
}

/** Lines at an angle across a rectangle, evenly apart. */
function parallelLines(w: number, h: number, angle: number, count = RINGS) {
  const [c, s] = [cosDeg(angle), sinDeg(angle)];
  const offs = [point(0, 0), point(w, 0), point(w, h), point(0, h)].map((p) => p.y * c - p.x * s);
  const [low, high] = [Math.min(...offs), Math.max(...offs)];
  return Array.from({ length: count }, (_, i) => low + ((high - low) * (i + 1)) / (count + 1)).flatMap((off) => {
    const middle = point(-off * s, off * c);
    const far = 4 * (w + h);
    const along = (by: number): Point => point(middle.x + by * c, middle.y + by * s);
    // The thin side of a line is a sliver; what the rectangle leaves of it is the line within.
    const sliver = [point(0, 0), point(w, 0), point(w, h), point(0, h)];
    const upper = clipToLeft(sliver, along(-far), along(far));
    const ends = upper.filter((p) => Math.abs(p.y * c - p.x * s - off) < 1e-6 * far);
    return ends.length === 2 ? [line(ends[0]!, ends[1]!)] : [];
  });
}

export function ripPicture(t: StepContext, plan: StockPlan, room: PictureRoom) {
  return composeViews({ name: "step-core", title: BILLET_DRAWING.core }, room, [
    view(BILLET_DRAWING.asItComes, (sketch) => drawRips(sketch, t, plan)),
  ]);
}

const middleOf = ({ from, to }: Span): number => (from + to) / 2;

function drawRips(sketch: Sketch, t: StepContext, { rip, billet }: StockPlan): void {
  const h = billet.needed.height;
  const [left, core, right] = rip.strips;
  const needed = right.at.to;
  const end = needed + rip.spare;
  const cuts = rip.sawLines;
  sketch.area(WOOD_SHADE, boxPolygon(0, 0, end, h));
  for (const { kerf } of cuts) sketch.area(KERF_SHADE, boxPolygon(kerf.from, 0, kerf.to, h));
  for (const { keeps } of rip.strips) sketch.outline("hidden", boxPolygon(keeps.from, 0, keeps.to, h));
  sketch.outline("outline", boxPolygon(0, 0, end, h));
  for (const { kerf } of cuts)
    for (const x of [kerf.from, kerf.to]) sketch.line("outline", line(point(x, 0), point(x, h)));
  sketch.wordsWithin(BILLET_DRAWING.coreName, point(middleOf(core.at), 0.5 * h), core.keeps.to - core.keeps.from);
  // As the fence is set: from the face that was jointed last.
  cuts.forEach(({ kerf, fence }, i) => {
    sketch.level(
      BILLET_DRAWING.fence({ cut: i + 1, length: t.ruled(fence) }),
      point(kerf.from - fence, 0),
      point(kerf.from, 0),
    );
  });
  sketch.level(BILLET_DRAWING.needed({ length: t.ruled(needed) }), point(0, 0), point(needed, 0));
  if (rip.spare > 0) sketch.level(BILLET_DRAWING.asMeasured({ length: t.ruled(end) }), point(0, 0), point(end, 0));
  sketch.upright(t.ruled(h), point(end, 0), point(end, h), "right");
  sketch.name("left", [
    { words: BILLET_DRAWING.leftCheek, point: point(middleOf(left.at), 0.8 * h) },
    { words: BILLET_DRAWING.referenceFace, point: point(0, 0.3 * h) },
  ]);
  sketch.name("right", [
    ...(cuts.length === 3
      ? [{ words: BILLET_DRAWING.spareBoard({ board: t.ruled(rip.board) }), point: point(end, 0.95 * h) }]
      : []),
    { words: BILLET_DRAWING.rightCheek, point: point(middleOf(right.at), 0.85 * h) },
    {
      words: BILLET_DRAWING.kerf({ kerf: t.mm(t.design.shop.kerf) }),
      point: point((cuts[1]!.kerf.from + cuts[1]!.kerf.to) / 2, 0.6 * h),
    },
    { words: BILLET_DRAWING.milled, point: point(right.keeps.to, 0.3 * h) },
  ]);
}
