// Across the plane at the pin: the gaps that the seasons move.
import { line, point } from "@lamplane/geometry";
import { pinLengths } from "@lamplane/parameters/elevation";
import { box, composed, view, WHOLE } from "../sketch.ts";
import type { Telling } from "../telling.ts";
import { STEEL, WOOD } from "./stack.ts";

export function seasonPicture(t: Telling) {
  const { plane } = t;
  const { core, cheek, body } = plane.widths;
  const { height } = plane.design.body;
  const { shoulder, end } = pinLengths(plane);
  const { diameter, tenon } = plane.design.pin;
  const y = plane.pin.centre.y;
  return composed({ name: "step-season", title: "Across the plane at the pin: where wood moves" }, [
    view("Across the plane at the pin, from behind", { ...WHOLE, height: 50 }, (sketch) => {
      const half = body / 2;
      for (const side of [box(-half, 0, -core / 2, height), box(core / 2, 0, half, height)])
        sketch.area(WOOD, side).outline("outline", side);
      sketch.line("outline", line(point(-core / 2, 0), point(core / 2, 0)));
      const iron = plane.design.iron.width / 2;
      const steel = box(-iron, 1, iron, 1 + plane.design.iron.thickness);
      sketch.area(STEEL, steel).outline("thin", steel);
      for (const pin of [
        box(-shoulder, y - diameter / 2, shoulder, y + diameter / 2),
        box(-end, y - tenon / 2, -shoulder, y + tenon / 2),
        box(shoulder, y - tenon / 2, end, y + tenon / 2),
      ])
        sketch.area(0.1, pin).outline("outline", pin);
      sketch.level(t.ruled(core), point(-core / 2, 0), point(core / 2, 0));
      sketch.level(t.ruled(body), point(-half, 0), point(half, 0));
      sketch.name("left", [
        { words: "pin's end gap", place: point(-(shoulder + core / 2) / 2, y + diameter / 2) },
        { words: "side gap", place: point(-(iron + core / 2) / 2, 2) },
      ]);
      sketch.name("right", [
        { words: "tenon, inside the cheek", place: point((end + shoulder) / 2, y) },
        { words: "right cheek", place: point(half - cheek / 2, 0.85 * height) },
      ]);
    }),
  ]);
}
