// Layout of the wedge: its side with the taper and its face, true size, both lying along the grain.

import { line, point, polygon, tanDeg } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { formatAngle, formatDimension } from "@lamplane/parameters/units";
import { drawDimension, drawGrainArrow } from "../picture/dimensions.ts";
import { LETTERING, Marks } from "../picture/marks.ts";
import type { Picture } from "../picture/picture.ts";
import { framePicture } from "../picture/picture-frame.ts";
import { WEDGE_LAYOUT } from "../words/layout.ts";
import { drawCaption } from "./caption.ts";

const ROW = 6;
const BETWEEN_VIEWS = 9;

/** x counts along the wedge from its tip. */
export function wedgeLayout(e: Elevation): Picture {
  const { design, wedgeLength: length } = e;
  const marks = new Marks();
  const butt = design.wedge.tip + length * tanDeg(design.wedge.angle);
  const side = polygon(point(0, 0), point(length, 0), point(length, butt), point(0, design.wedge.tip));
  marks.outline("outline", side);
  drawDimension(marks, formatDimension(design.wedge.tip, design), {
    from: point(0, 0),
    to: point(0, design.wedge.tip),
    upright: -ROW,
  });
  drawDimension(marks, formatDimension(butt, design), {
    from: point(length, 0),
    to: point(length, butt),
    upright: length + ROW,
  });
  const words = WEDGE_LAYOUT.side({
    angle: formatAngle(design.wedge.angle),
    on: design.capIron.thickness > 0 ? "cap iron" : "iron",
  });
  marks.text(words, point(length / 2, -4), { size: LETTERING.small, anchor: "middle" });
  drawFace(marks, e, -ROW - BETWEEN_VIEWS);
  drawCaption(marks, WEDGE_LAYOUT.heading, [WEDGE_LAYOUT.cut, WEDGE_LAYOUT.cutGoesOn], point(-ROW, butt + 5));
  const description = WEDGE_LAYOUT.description;
  return framePicture({ name: "wedge", title: WEDGE_LAYOUT.title, description }, marks.all);
}

/** The wedge's upper face, its upper edge at `top`, with where the pin bears. */
function drawFace(marks: Marks, e: Elevation, top: number): void {
  const { design, wedgeLength: length, widths, pin } = e;
  const width = widths.core - design.wedge.clearance;
  const low = top - width;
  marks.outline("outline", polygon(point(0, low), point(length, low), point(length, top), point(0, top)));
  marks.line("axis", line(point(-3, top - width / 2), point(length + 3, top - width / 2)));
  const bears = pin.contactS - design.wedge.tipFromEdge;
  marks.line("mark", line(point(bears, low), point(bears, top)));
  marks.label(WEDGE_LAYOUT.bears, point(bears + 3.2, top - width / 4), { size: LETTERING.small, anchor: "start" });
  marks.label(WEDGE_LAYOUT.tip, point(2, low + width / 4), { size: LETTERING.small });
  marks.label(WEDGE_LAYOUT.butt, point(length - 2, low + width / 4), { size: LETTERING.small, anchor: "end" });
  drawGrainArrow(marks, point(0.7 * length, low + width / 4), 0, 0.25 * length);
  drawDimension(marks, formatDimension(bears, design), {
    from: point(0, low),
    to: point(bears, low),
    level: low - ROW,
  });
  drawDimension(marks, formatDimension(length, design), {
    from: point(0, low),
    to: point(length, low),
    level: low - 2 * ROW,
  });
  drawDimension(marks, formatDimension(width, design), {
    from: point(length, low),
    to: point(length, top),
    upright: length + ROW,
  });
}
