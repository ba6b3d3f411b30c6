// Wedge and cross pin with their sizes, each beside the other.

import { line, point, polygon, transformOutline } from "@lamplane/geometry";
import { pinLengths } from "@lamplane/parameters/elevation";
import { WEDGE_DRAWING } from "../../words/drawings.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, type StepView, view } from "../views.ts";
import { boxPolygon } from "../window.ts";
import { WOOD_SHADE } from "./stack.ts";

export const wedgePicture = (t: StepContext, room: PictureRoom) =>
  composeViews({ name: "step-wedge", title: WEDGE_DRAWING.title }, room, [
    wedgeSide(t),
    wedgeFace(t),
    pinSide(t),
    pinEnd(t),
  ]);

function wedgeSide(t: StepContext): StepView {
  const { wedge } = t.plane.design;
  const [length, butt] = [t.plane.wedgeLength, t.figure("wedgeButt")];
  return view(WEDGE_DRAWING.side, (sketch) => {
    const side = polygon(point(0, 0), point(length, 0), point(length, butt), point(0, wedge.tip));
    sketch.area(WOOD_SHADE, side).outline("outline", side);
    sketch.level(t.ruled(length), point(0, 0), point(length, 0));
    sketch.upright(t.ruled(butt), point(length, 0), point(length, butt), "right");
    sketch.upright(t.ruled(wedge.tip), point(0, 0), point(0, wedge.tip), "left");
    const taper = WEDGE_DRAWING.taper({ angle: t.deg(wedge.angle) });
    sketch.wordsWithin(taper, point(0.6 * length, 0.3 * butt), 0.6 * length);
  });
}

function wedgeFace(t: StepContext): StepView {
  const [length, width] = [t.plane.wedgeLength, t.figure("wedgeWidth")];
  const bears = t.plane.pin.contactS - t.plane.design.wedge.tipFromEdge;
  return view(WEDGE_DRAWING.face, (sketch) => {
    sketch.area(WOOD_SHADE, boxPolygon(0, 0, length, width)).outline("outline", boxPolygon(0, 0, length, width));
    sketch.line("mark", line(point(bears, 0), point(bears, width)));
    sketch.level(WEDGE_DRAWING.bears({ length: t.ruled(bears) }), point(0, 0), point(bears, 0));
    sketch.upright(t.ruled(width), point(length, 0), point(length, width), "right");
  });
}

function pinSide(t: StepContext): StepView {
  const { shoulder, end } = pinLengths(t.plane);
  const [r, tenon] = [t.plane.pinSize.diameter / 2, t.plane.pinSize.tenon / 2];
  return view(WEDGE_DRAWING.pin, (sketch) => {
    const body = boxPolygon(-shoulder, -r, shoulder, r);
    const tenons = [boxPolygon(-end, -tenon, -shoulder, tenon), boxPolygon(shoulder, -tenon, end, tenon)];
    for (const outline of [body, ...tenons]) sketch.area(WOOD_SHADE, outline).outline("outline", outline);
    sketch.line("axis", line(point(-end - 2, 0), point(end + 2, 0)));
    sketch.level(t.ruled(2 * shoulder), point(-shoulder, -r), point(shoulder, -r));
    sketch.level(t.ruled(2 * end), point(-end, -tenon), point(end, -tenon));
    const tenonWords = WEDGE_DRAWING.tenons({ diameter: t.mm(t.plane.pinSize.tenon) });
    sketch.name("right", [{ words: tenonWords, point: point(end, 0) }]);
  });
}

function pinEnd(t: StepContext): StepView {
  const { plane } = t;
  const { wedge, pin } = plane.design;
  const [r, tenon] = [plane.pinSize.diameter / 2, plane.pinSize.tenon / 2];
  return view(pin.section === "flatted" ? WEDGE_DRAWING.endFlat : WEDGE_DRAWING.end, (sketch) => {
    const about = transformOutline(plane.pinSection, { shift: point(-plane.pin.centre.x, -plane.pin.centre.y) });
    const section = transformOutline(about, { turn: -(plane.frame.faceAngle + wedge.angle) });
    sketch.area(WOOD_SHADE, section).outline("outline", section);
    sketch.circle("hidden", { centre: point(0, 0), radius: tenon }).cross({ centre: point(0, 0), radius: r });
    sketch.level(t.ruled(2 * r), point(-r, -r), point(r, -r));
    sketch.upright(t.ruled(2 * r), point(r, -r), point(r, r), "right");
  });
}
