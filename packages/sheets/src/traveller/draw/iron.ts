// The iron with its cap iron lying on the table, and what is measured on it.

import { line, point, polygon } from "@lamplane/geometry";
import { capIronSurface, ironCorners, ironToBed, thicknessAt, topFromEdge } from "@lamplane/parameters/elevation";
import { IRON_DRAWING } from "../../words/drawings.ts";
import type { Sketch } from "../sketch.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { boxPolygon } from "../window.ts";
import { STEEL_SHADE } from "./stack.ts";

export function ironPicture(t: StepContext, room: PictureRoom) {
  const irons = t.plane.design.capIron.thickness > 0 ? IRON_DRAWING.withCap : IRON_DRAWING.alone;
  return composeViews({ name: "step-iron", title: irons }, room, [
    view(IRON_DRAWING.side, (sketch) => drawSide(sketch, t)),
    view(IRON_DRAWING.face, (sketch) => {
      const { width, length } = t.design.iron;
      sketch.area(STEEL_SHADE, boxPolygon(0, 0, length, width)).outline("outline", boxPolygon(0, 0, length, width));
      sketch.upright(t.ruled(width), point(length, 0), point(length, width), "right");
      sketch.name("left", [{ words: IRON_DRAWING.edge, point: point(0, 0.5 * width) }]);
    }),
  ]);
}

function drawSide(sketch: Sketch, t: StepContext): void {
  const { design, frame } = t.plane;
  const { iron, capIron } = design;
  const leans = frame.bedAngle - frame.faceAngle;
  const drawnTo = leans !== 0 ? iron.length : Math.min(iron.length, Math.max(70, capIron.screwHead.fromEdge + 20));
  const onFace = (s: number, v: number) => {
    const place = ironToBed(frame, { s, v });
    return point(place.s, place.v);
  };
  const thick = frame.thickness;
  const body = polygon(...ironCorners({ ...design, iron: { ...iron, length: drawnTo } }, frame));
  sketch.area(STEEL_SHADE, body).outline("outline", body);
  if (capIron.thickness > 0) {
    const upper = capIronSurface(t.plane.design);
    const cap = polygon(
      onFace(upper[0]!.x, 0),
      onFace(drawnTo, 0),
      onFace(drawnTo, capIron.thickness),
      ...[...upper].reverse().map(({ x, y }) => onFace(x, y)),
    );
    sketch.area(0.18, cap).outline("outline", cap);
  }
  const { fromEdge, diameter, height } = capIron.screwHead;
  if (t.plane.recess) {
    const [low, high] = [fromEdge - diameter / 2, fromEdge + diameter / 2];
    sketch.outline("outline", boxPolygon(low, -thick - height, high, -thick));
    sketch.line("axis", line(point(fromEdge, -thick - height - 1), point(fromEdge, capIron.thickness + 1)));
    sketch.level(t.ruled(fromEdge), point(0, 0), point(fromEdge, capIron.thickness), "above");
  }
  if (leans === 0) sketch.upright(t.ruled(thick), point(drawnTo, -thick), point(drawnTo, 0), "right");
  else drawThicknesses(sketch, t);
  if (capIron.thickness > 0)
    sketch.name("right", [
      {
        words: IRON_DRAWING.capIron({ thickness: t.mm(capIron.thickness) }),
        point: onFace(drawnTo, capIron.thickness / 2),
      },
    ]);
  sketch.angle(t.deg(iron.bevel), point(0, 0), -leans - iron.bevel, -leans, 12);
}

/** Where a tapered iron's thickness is measured, and what the caliper reads there. */
function drawThicknesses(sketch: Sketch, { plane, ruled }: StepContext): void {
  const { design, frame } = plane;
  const back = -frame.thickness;
  for (const [s, side] of [
    [design.iron.thicknessFromEdge, "left"],
    [topFromEdge(design), "right"],
  ] as const) {
    const off = back + thicknessAt(design, s);
    sketch.line("mark", line(point(s, back), point(s, off)));
    sketch.upright(ruled(thicknessAt(design, s)), point(s, back), point(s, off), side);
    if (s > 0) sketch.level(ruled(s), point(0, back), point(s, back));
  }
}
