// The bed: where the straightedge is laid, and the recess in plan and in section.

import { straightedgePlacements } from "@lamplane/bench";
import { cotDeg, line, point, pointAlong, transformSegment } from "@lamplane/geometry";
import type { Elevation, Recess } from "@lamplane/parameters/elevation";
import {
  bedLowerEdge,
  bedToPlane,
  bevelToBack,
  blocksAt,
  planeToBed,
  recessEdge,
} from "@lamplane/parameters/elevation";
import { BED_DRAWING } from "../../words/drawings.ts";
import type { Sketch } from "../sketch.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { boxPolygon, clipToWindow } from "../window.ts";
import { drawRecessSection } from "./section.ts";
import { WOOD_SHADE } from "./stack.ts";

/** s of the bed's ends on the blank. */
function bedEnds(plane: Elevation): { low: number; high: number } {
  const { x, y } = plane.points.bedTip;
  const bed = blocksAt(plane, "blank").bedChain.at(-1)!;
  return { low: planeToBed(plane.frame, point(x, y)).s, high: planeToBed(plane.frame, bed.to).s };
}

export function bedPicture(t: StepContext, room: PictureRoom) {
  const { plane } = t;
  const { low, high } = bedEnds(plane);
  const half = plane.widths.core / 2;
  return composeViews({ name: "step-bed", title: BED_DRAWING.survey }, room, [
    view(BED_DRAWING.face, (sketch) => {
      sketch
        .area(WOOD_SHADE, boxPolygon(-half, low, half, high))
        .outline("outline", boxPolygon(-half, low, half, high));
      // The survey counts across from the left as the maker stands behind the heel: here, facing the bed, from the right.
      const at = (along: number, across: number) => point(half - across, low + along);
      const lays = straightedgePlacements(plane).map(({ from, to }) =>
        line(at(from.along, from.across), at(to.along, to.across)),
      );
      for (const lay of lays) sketch.line("cut", lay);
      lays.forEach((lay, i) => {
        const beside = i < 1 ? { up: 4.6 } : i < 3 ? { right: 4.6 } : {};
        const place = i < 1 ? lay.to : i < 3 ? lay.from : pointAlong(lay, 0.25);
        sketch.words(`${i + 1}`, place, { ...beside, bold: true });
      });
      sketch.words(BED_DRAWING.right, point(-half, high), { up: 4.6 });
      sketch.words(BED_DRAWING.left, point(half, high), { up: 4.6 });
      const heel = plane.frame.thickness * cotDeg(bevelToBack(plane.design));
      sketch.level(t.ruled(2 * half), point(-half, low), point(half, low));
      sketch.line("mark", line(point(-half, heel), point(half, heel)));
      sketch.name("left", [{ words: BED_DRAWING.bears, point: point(-half, heel) }]);
    }),
    view(BED_DRAWING.block, (sketch) => {
      const turned = blocksAt(plane, "blank").bed.map((s) => transformSegment(s, { turn: -plane.frame.bedAngle }));
      sketch.area(WOOD_SHADE, turned).outline("outline", turned);
      const tip = transformSegment(line(plane.points.bedTip, plane.points.bedTip), {
        turn: -plane.frame.bedAngle,
      }).from;
      sketch.angle(t.deg(plane.frame.bedAngle), tip, -plane.frame.bedAngle, 0, 16);
      sketch.name("right", [{ words: BED_DRAWING.straightedge, point: point(tip.x + 0.6 * (high - low), tip.y) }]);
    }),
  ]);
}

/** The largest scale of a bed with nothing on it. */
const PLAIN_BED = 0.75;

export function recessPicture(t: StepContext, room: PictureRoom) {
  const { plane } = t;
  const { recess } = plane;
  const { high } = bedEnds(plane);
  const edge = bedLowerEdge(plane);
  const half = plane.widths.core / 2;
  return composeViews({ name: "step-recess", title: BED_DRAWING.recess }, room, [
    view(
      BED_DRAWING.face,
      (sketch) => {
        sketch
          .area(WOOD_SHADE, boxPolygon(-half, edge, half, high))
          .outline("outline", boxPolygon(-half, edge, half, high));
        sketch.line("axis", line(point(0, edge), point(0, high)));
        const soleS = plane.frame.thickness * cotDeg(plane.frame.bedAngle);
        if (soleS > edge) sketch.line("mark", line(point(-half, soleS), point(half, soleS)));
        if (!recess) return;
        const wide = recess.width / 2;
        sketch.line("cut", ...recessEdge(recess, high).map((s) => transformSegment(s, { turn: 90, mirrored: true })));
        sketch.level(t.ruled(recess.width), point(-wide, high), point(wide, high), "above");
        sketch.level(BED_DRAWING.land({ width: t.ruled(half - wide) }), point(wide, edge), point(half, edge));
        sketch.upright(t.ruled(recess.low - edge), point(half, edge), point(half, recess.low), "right");
        sketch.name("left", [
          { words: BED_DRAWING.truedSole, point: point(-half, soleS) },
          { words: BED_DRAWING.lowerEdge, point: point(-half, edge) },
        ]);
      },
      recess ? {} : { most: PLAIN_BED },
    ),
    ...(recess ? [view(BED_DRAWING.cut, (sketch) => drawRecessCut(sketch, t, recess))] : []),
  ]);
}

function drawRecessCut(sketch: Sketch, t: StepContext, recess: Recess): void {
  const { plane } = t;
  const { design, frame } = plane;
  const { high } = bedEnds(plane);
  const { bed, bedChain } = blocksAt(plane, "blank");
  const [tip, top] = [bedChain[0]!.from, bedChain.at(-1)!.to];
  const room = { left: tip.x - 1, right: top.x + 4 * recess.depth, low: tip.y, high: top.y };
  const seen = clipToWindow(bed, room);
  sketch.area(WOOD_SHADE, seen).outline("outline", seen);
  drawRecessSection(sketch, plane, high - recess.depth * cotDeg(frame.bedAngle));
  const thick = -frame.thickness;
  const floor = bedToPlane(frame, recess.low + 0.5 * (high - recess.low), thick - recess.depth);
  sketch.name("left", [
    { words: BED_DRAWING.deep({ depth: t.mm(recess.depth) }), point: floor },
    {
      words: BED_DRAWING.head,
      point: bedToPlane(frame, design.capIron.screwHead.fromEdge, thick - 0.5 * design.capIron.screwHead.height),
    },
    { words: BED_DRAWING.pad, point: bedToPlane(frame, 0.6 * recess.low, thick) },
  ]);
}
