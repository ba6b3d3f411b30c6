// Wedge and cross pin with their sizes, each beside the other.
import { SAFE_WAYS } from "@lamplane/bench";
import { line, placedOutline, point, polygon } from "@lamplane/geometry";
import { pinLengths } from "@lamplane/parameters/elevation";
import { box, composed, HALF, view } from "../sketch.ts";
import type { Telling } from "../telling.ts";
import { WOOD } from "./stack.ts";

export function wedgePicture(t: Telling) {
  const { plane } = t;
  const { wedge, pin } = plane.design;
  const [length, butt, width] = [plane.wedgeLength, t.figure("wedgeButt"), t.figure("wedgeWidth")];
  const { shoulder, end } = pinLengths(plane);
  const [r, tenon] = [pin.diameter / 2, pin.tenon / 2];
  const bears = plane.pin.contactS - wedge.tipFromEdge;
  return composed({ name: "step-wedge", title: "The wedge and the cross pin" }, [
    view("Wedge, side", { ...HALF, height: 40 }, (sketch) => {
      const side = polygon(point(0, 0), point(length, 0), point(length, butt), point(0, wedge.tip));
      sketch.area(WOOD, side).outline("outline", side);
      sketch.level(t.ruled(length, SAFE_WAYS.wedgeLength), point(0, 0), point(length, 0));
      sketch.upright(t.ruled(butt, SAFE_WAYS.wedgeButt), point(length, 0), point(length, butt), "right");
      sketch.upright(t.ruled(wedge.tip, SAFE_WAYS.wedgeTip), point(0, 0), point(0, wedge.tip), "left");
      sketch.wordsIn(`${t.deg(wedge.angle)}, grain along it`, point(0.6 * length, 0.3 * butt), 0.6 * length);
    }),
    view("Wedge, face to the pin", { ...HALF, width: 88, height: 38 }, (sketch) => {
      sketch.area(WOOD, box(0, 0, length, width)).outline("outline", box(0, 0, length, width));
      sketch.line("mark", line(point(bears, 0), point(bears, width)));
      sketch.level(`pin bears ${t.ruled(bears)}`, point(0, 0), point(bears, 0));
      sketch.upright(t.ruled(width, SAFE_WAYS.wedgeWidth), point(length, 0), point(length, width), "right");
    }),
    view("Pin, from above", { ...HALF, height: 40, width: 104 }, (sketch) => {
      const body = box(-shoulder, -r, shoulder, r);
      const tenons = [box(-end, -tenon, -shoulder, tenon), box(shoulder, -tenon, end, tenon)];
      for (const outline of [body, ...tenons]) sketch.area(WOOD, outline).outline("outline", outline);
      sketch.line("axis", line(point(-end - 2, 0), point(end + 2, 0)));
      sketch.level(t.ruled(2 * shoulder, "down"), point(-shoulder, -r), point(shoulder, -r));
      sketch.level(t.ruled(2 * end, "down"), point(-end, -tenon), point(end, -tenon));
      sketch.name("right", [{ words: `tenons ⌀ ${t.mm(pin.tenon)}, turn freely`, place: point(end, 0) }]);
    }),
    view(
      pin.section === "flatted" ? "Pin, end, flat below" : "Pin, end",
      { ...HALF, width: 70, height: 40 },
      (sketch) => {
        const about = placedOutline(plane.pinSection, { shift: point(-plane.pin.centre.x, -plane.pin.centre.y) });
        const section = placedOutline(about, { turn: -(plane.frame.bedAngle + wedge.angle) });
        sketch.area(WOOD, section).outline("outline", section);
        sketch.circle("hidden", { centre: point(0, 0), radius: tenon }).cross({ centre: point(0, 0), radius: r });
        sketch.level(t.ruled(2 * r), point(-r, -r), point(r, -r));
        sketch.upright(t.ruled(2 * r), point(r, -r), point(r, r), "right");
      },
    ),
  ]);
}
