// Across the plane at the pin: the gaps that the seasons move.

import { line, point } from "@lamplane/geometry";
import { pinLengths } from "@lamplane/parameters/elevation";
import { SEASON_DRAWING } from "../../words/drawings.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { boxPolygon } from "../window.ts";
import { STEEL_SHADE, WOOD_SHADE } from "./stack.ts";

export function seasonPicture(t: StepContext, room: PictureRoom) {
  const { plane } = t;
  const { core, cheek, body } = plane.widths;
  const { height } = plane.design.body;
  const { shoulder, end } = pinLengths(plane);
  const { diameter, tenon } = plane.pinSize;
  const y = plane.pin.centre.y;
  return composeViews({ name: "step-season", title: SEASON_DRAWING.title }, room, [
    view(SEASON_DRAWING.across, (sketch) => {
      const half = body / 2;
      for (const side of [boxPolygon(-half, 0, -core / 2, height), boxPolygon(core / 2, 0, half, height)])
        sketch.area(WOOD_SHADE, side).outline("outline", side);
      sketch.line("outline", line(point(-core / 2, 0), point(core / 2, 0)));
      const iron = plane.design.iron.width / 2;
      const steel = boxPolygon(-iron, 1, iron, 1 + plane.frame.thickness);
      sketch.area(STEEL_SHADE, steel).outline("thin", steel);
      for (const pin of [
        boxPolygon(-shoulder, y - diameter / 2, shoulder, y + diameter / 2),
        boxPolygon(-end, y - tenon / 2, -shoulder, y + tenon / 2),
        boxPolygon(shoulder, y - tenon / 2, end, y + tenon / 2),
      ])
        sketch.area(0.1, pin).outline("outline", pin);
      sketch.level(t.ruled(core), point(-core / 2, 0), point(core / 2, 0));
      sketch.level(t.ruled(body), point(-half, 0), point(half, 0));
      sketch.name("left", [
        { words: SEASON_DRAWING.pinGap, point: point(-(shoulder + core / 2) / 2, y + diameter / 2) },
        { words: SEASON_DRAWING.sideGap, point: point(-(iron + core / 2) / 2, 2) },
      ]);
      sketch.name("right", [
        { words: SEASON_DRAWING.tenon, point: point((end + shoulder) / 2, y) },
        { words: SEASON_DRAWING.rightCheek, point: point(half - cheek / 2, 0.85 * height) },
      ]);
    }),
  ]);
}
