// The core with its two cuts, and how the saw is set for each.

import type { CoreCut, StockPlan } from "@lamplane/bench";
import { cosDeg, line, point, polygon, sinDeg, transformSegment } from "@lamplane/geometry";
import { blocksAt } from "@lamplane/parameters/elevation";
import { CUTS_DRAWING } from "../../words/drawings.ts";
import type { Sketch } from "../sketch.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { boxPolygon } from "../window.ts";
import { KERF_SHADE, WASTE_SHADE, WOOD_SHADE } from "./stack.ts";

export function cutsPicture(t: StepContext, { core, marks }: StockPlan, room: PictureRoom) {
  return composeViews({ name: "step-cuts", title: CUTS_DRAWING.title }, room, [
    view(CUTS_DRAWING.core, (sketch) => drawCore(sketch, t, core, marks)),
    view(CUTS_DRAWING.saws, (sketch) => drawSaws(sketch, t, core.cuts), SAW),
  ]);
}
/** Share of the core's height at which its blocks are named. */
const NAMED_AT = 0.4;
/** A saw's setting has no size of its own. */
const SAW = { most: 0.8, least: 0.45, isDiagram: true };

function drawCore(sketch: Sketch, t: StepContext, core: StockPlan["core"], marks: StockPlan["marks"]): void {
  const { blankLength: length } = t.plane.widths;
  const [ramp, bed] = core.cuts;
  const h = core.height;
  const foot = (cut: CoreCut) => point(cut.markAtSole, 0);
  const head = (cut: CoreCut) => point(cut.markAtTop, h);
  sketch.area(WOOD_SHADE, boxPolygon(0, 0, length, h));
  sketch.area(WASTE_SHADE, polygon(foot(ramp), foot(bed), head(bed), head(ramp)));
  for (const cut of core.cuts) sketch.area(KERF_SHADE, cut.kerf);
  sketch.outline("outline", boxPolygon(0, 0, length, h));
  for (const cut of core.cuts) sketch.line("outline", line(foot(cut), head(cut)));
  drawCurve(sketch, t);
  for (const { at } of marks.marks) for (const x of at) sketch.line("mark", line(point(x, h), point(x, h - 0.14 * h)));
  const [front, back] = [ramp, bed].map((cut) => cut.markAtSole + NAMED_AT * (cut.markAtTop - cut.markAtSole));
  sketch.wordsWithin(CUTS_DRAWING.frontBlock, point(front! / 2, NAMED_AT * h), front!);
  sketch.wordsWithin(CUTS_DRAWING.bedBlock, point((back! + length) / 2, NAMED_AT * h), length - back!);
  sketch.wordsWithin(CUTS_DRAWING.waste, point((ramp.kerfAtTop.to + bed.kerfAtTop.from) / 2, 0.82 * h), 0.5 * h);
  sketch.level(CUTS_DRAWING.ramp({ length: t.ruled(ramp.markAtSole) }), point(0, 0), foot(ramp));
  sketch.level(CUTS_DRAWING.bed({ length: t.ruled(bed.markAtSole) }), point(0, 0), foot(bed));
  sketch.level(CUTS_DRAWING.blank({ length: t.ruled(length) }), point(0, 0), point(length, 0));
  if (ramp.markAtTop > 0)
    sketch.level(CUTS_DRAWING.ramp({ length: t.ruled(ramp.markAtTop) }), point(0, h), head(ramp), "above");
  if (bed.markAtTop < length)
    sketch.level(CUTS_DRAWING.bed({ length: t.ruled(bed.markAtTop) }), point(0, h), head(bed), "above");
  sketch.upright(t.ruled(h), point(0, 0), point(0, h), "left");
  sketch.name("right", [
    {
      words: CUTS_DRAWING.kerfs,
      point: point(bed.markAtTop - 0.2 * (bed.markAtTop - bed.markAtSole) - t.design.shop.kerf / 2, 0.8 * h),
    },
    {
      words: CUTS_DRAWING.marks,
      point: point(Math.max(...marks.marks.flatMap(({ at }) => at), 0), h - 0.07 * h),
    },
  ]);
}

/** What is shaped off a curved ramp after the straight cut. */
function drawCurve(sketch: Sketch, { plane }: StepContext): void {
  if (!plane.ramp.curve) return;
  const shift = point(plane.design.body.trim / 2 - plane.cuts.setInToe, plane.design.sole.allowance);
  sketch.line(
    "cut",
    ...blocksAt(plane, "blank")
      .rampChain.slice(1)
      .map((s) => transformSegment(s, { shift })),
  );
}

/** Both settings, the ramp's over the bed's, as who stands at the saw looks down on them: 0 is square to the fence. */
function drawSaws(sketch: Sketch, t: StepContext, cuts: StockPlan["core"]["cuts"]): void {
  cuts.forEach((cut, i) => {
    drawSaw(sketch, t, cut, -i * SAW_APART);
  });
  sketch.words(CUTS_DRAWING.youStandHere, point(0, -SAW_APART * (cuts.length - 1) - BELOW_FENCE), { up: -4 });
}
/** In the diagram's own mm: from one fence to the next, from a fence to the words under its saw, and the core against it. */
const SAW_APART = 50;
const BELOW_FENCE = 30;
const CORE = { half: 34, height: 18 };

/** The core lies with its sole against the fence, its toe to the right. */
function drawSaw(sketch: Sketch, t: StepContext, { saw, name, angle }: CoreCut, fence: number): void {
  const { half, height } = CORE;
  const turn = name === "ramp" ? 270 + saw : 270 - saw;
  const foot = point(0, fence);
  const on = (by: number) => point(by * cosDeg(turn), fence + by * sinDeg(turn));
  const core = boxPolygon(-half, fence - height, half, fence);
  sketch.area(WOOD_SHADE, core).outline("thin", core);
  sketch
    .area(WASTE_SHADE, boxPolygon(-36, fence, 36, fence + 3))
    .line("outline", line(point(-36, fence), point(36, fence)));
  sketch.line("axis", line(point(0, fence + 6), point(0, fence - 22)));
  sketch.line("strong", line(on(-6), on(25)));
  sketch.angle("", foot, Math.min(270, turn), Math.max(270, turn), 14 * sketch.scale);
  sketch.angle(t.deg(angle), foot, name === "ramp" ? turn : 180, name === "ramp" ? 360 : turn, 9 * sketch.scale);
  sketch.words(CUTS_DRAWING.fence, point(name === "ramp" ? -24 : 24, fence), { up: 4 });
  sketch.words(CUTS_DRAWING.toe, point(half - 6, fence - height), { up: 2 });
  sketch.words(CUTS_DRAWING.fromSquare({ name, angle: t.deg(saw) }), point(0, fence - BELOW_FENCE), {});
}
