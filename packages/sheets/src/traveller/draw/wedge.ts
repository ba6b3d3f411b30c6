// Wedge and cross pin with their sizes, each beside the other.
import { line, point, polygon, transformOutline } from "@lamplane/geometry";
import { pinLengths } from "@lamplane/parameters/elevation";
import type { StepContext } from "../step-context.ts";
import { composeViews, HALF, scaledView } from "../views.ts";
import { boxPolygon } from "../window.ts";
import { WOOD_SHADE } from "./stack.ts";

export function wedgePicture(t: StepContext) {
  const { plane } = t;
  const { wedge, pin } = plane.design;
  const [length, butt, width] = [plane.wedgeLength, t.figure("wedgeButt"), t.figure("wedgeWidth")];
  const { shoulder, end } = pinLengths(plane);
  const [r, tenon] = [plane.pinSize.diameter / 2, plane.pinSize.tenon / 2];
  const bears = plane.pin.contactS - wedge.tipFromEdge;
  return composeViews({ name: "step-wedge", title: "The wedge and the cross pin" }, [
    scaledView("Wedge, side", { ...HALF, height: 40 }, (sketch) => {
      const side = polygon(point(0, 0), point(length, 0), point(length, butt), point(0, wedge.tip));
      sketch.area(WOOD_SHADE, side).outline("outline", side);
      sketch.level(t.ruled(length), point(0, 0), point(length, 0));
      sketch.upright(t.ruled(butt), point(length, 0), point(length, butt), "right");
      sketch.upright(t.ruled(wedge.tip), point(0, 0), point(0, wedge.tip), "left");
      sketch.wordsWithin(`${t.deg(wedge.angle)}, grain along it`, point(0.6 * length, 0.3 * butt), 0.6 * length);
    }),
    scaledView("Wedge, face to the pin", { ...HALF, width: 88, height: 38 }, (sketch) => {
      sketch.area(WOOD_SHADE, boxPolygon(0, 0, length, width)).outline("outline", boxPolygon(0, 0, length, width));
      sketch.line("mark", line(point(bears, 0), point(bears, width)));
      sketch.level(`pin bears ${t.ruled(bears)}`, point(0, 0), point(bears, 0));
      sketch.upright(t.ruled(width), point(length, 0), point(length, width), "right");
    }),
    scaledView("Pin, from above", { ...HALF, height: 40, width: 104 }, (sketch) => {
      const body = boxPolygon(-shoulder, -r, shoulder, r);
      const tenons = [boxPolygon(-end, -tenon, -shoulder, tenon), boxPolygon(shoulder, -tenon, end, tenon)];
      for (const outline of [body, ...tenons]) sketch.area(WOOD_SHADE, outline).outline("outline", outline);
      sketch.line("axis", line(point(-end - 2, 0), point(end + 2, 0)));
      sketch.level(t.ruled(2 * shoulder), point(-shoulder, -r), point(shoulder, -r));
      sketch.level(t.ruled(2 * end), point(-end, -tenon), point(end, -tenon));
      sketch.name("right", [{ words: `tenons ⌀ ${t.mm(plane.pinSize.tenon)}, turn freely`, point: point(end, 0) }]);
    }),
    scaledView(
      pin.section === "flatted" ? "Pin, end, flat below" : "Pin, end",
      { ...HALF, width: 70, height: 40 },
      (sketch) => {
        const about = transformOutline(plane.pinSection, { shift: point(-plane.pin.centre.x, -plane.pin.centre.y) });
        const section = transformOutline(about, { turn: -(plane.frame.faceAngle + wedge.angle) });
        sketch.area(WOOD_SHADE, section).outline("outline", section);
        sketch.circle("hidden", { centre: point(0, 0), radius: tenon }).cross({ centre: point(0, 0), radius: r });
        sketch.level(t.ruled(2 * r), point(-r, -r), point(r, -r));
        sketch.upright(t.ruled(2 * r), point(r, -r), point(r, r), "right");
      },
    ),
  ]);
}
