// Layout of the cross pin, true size: from above, lying on its flat, and its end.

import { line, point, ringPairs, transformOutline } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { pinLengths } from "@lamplane/parameters/elevation";
import { formatDimension, formatLength } from "@lamplane/parameters/units";
import { drawDimension, drawLeader } from "../picture/dimensions.ts";
import { LETTERING, Marks } from "../picture/marks.ts";
import type { Picture } from "../picture/picture.ts";
import { framePicture } from "../picture/picture-frame.ts";
import { PIN_LAYOUT } from "../words/layout.ts";
import { drawCaption } from "./caption.ts";

const ROW = 6;
const BETWEEN_VIEWS = 18;

/** x counts along the pin from its middle. */
export function pinLayout(e: Elevation): Picture {
  const { design } = e;
  const { shoulder, end } = pinLengths(e);
  const { diameter, tenon } = e.pinSize;
  const { section } = design.pin;
  const [r, t] = [diameter / 2, tenon / 2];
  const marks = new Marks();
  marks.outline("outline", steppedOutline(shoulder, end, r, t));
  for (const x of [-shoulder, shoulder]) marks.line("outline", line(point(x, -t), point(x, t)));
  marks.line("axis", line(point(-end - 3, 0), point(end + 3, 0)));
  drawDimension(marks, formatDimension(2 * shoulder, design), {
    from: point(-shoulder, -r),
    to: point(shoulder, -r),
    level: -r - ROW,
  });
  drawDimension(marks, formatDimension(2 * end, design), {
    from: point(-end, -t),
    to: point(end, -t),
    level: -r - 2 * ROW,
  });
  drawEnd(marks, e, end + BETWEEN_VIEWS + diameter / 2);
  const shape = section === "flatted" ? PIN_LAYOUT.flatted : PIN_LAYOUT.round;
  marks.text(PIN_LAYOUT.above, point(0, r + 2), { size: LETTERING.small, anchor: "middle" });
  drawCaption(
    marks,
    PIN_LAYOUT.heading,
    [
      PIN_LAYOUT.body({ size: formatLength(diameter, design), shape, tenon: formatLength(tenon, design) }),
      PIN_LAYOUT.grain,
    ],
    point(-end, r + 7),
  );
  const description = PIN_LAYOUT.description;
  return framePicture({ name: "cross-pin", title: PIN_LAYOUT.title, description }, marks.all);
}

/** The pin from above: body between the shoulders, thinner tenons beyond. */
function steppedOutline(shoulder: number, end: number, r: number, t: number) {
  const right = [point(end, -t), point(end, t), point(shoulder, t), point(shoulder, r)];
  const corners = [
    point(-shoulder, -r),
    point(shoulder, -r),
    point(shoulder, -t),
    ...right,
    point(-shoulder, r),
    point(-shoulder, t),
    point(-end, t),
    point(-end, -t),
    point(-shoulder, -t),
  ];
  return ringPairs(corners).map(([from, to]) => line(from, to));
}

/** The end of the pin about a middle at (x, 0), its flat level and below. */
function drawEnd(marks: Marks, e: Elevation, x: number): void {
  const { design, pinSection, pin } = e;
  const { diameter, tenon } = e.pinSize;
  const turn = -(e.frame.faceAngle + design.wedge.angle);
  const about = transformOutline(pinSection, { shift: point(-pin.centre.x, -pin.centre.y) });
  marks.outline("outline", transformOutline(about, { turn, shift: point(x, 0) }));
  marks.circle("outline", point(x, 0), tenon / 2).cross(point(x, 0), diameter / 2);
  const r = diameter / 2;
  drawDimension(marks, formatDimension(diameter, design), {
    from: point(x - r, -r),
    to: point(x + r, -r),
    level: -r - 2 * ROW,
  });
  drawDimension(marks, formatDimension(diameter, design), {
    from: point(x + r, -r),
    to: point(x + r, r),
    upright: x + r + ROW,
  });
  const onTenon = point(x + Math.SQRT1_2 * (tenon / 2), Math.SQRT1_2 * (tenon / 2));
  drawLeader(
    marks,
    PIN_LAYOUT.tenon({ diameter: formatLength(tenon, design) }),
    onTenon,
    point(x + r + ROW, r + 6),
    "right",
  );
  marks.text(PIN_LAYOUT.end, point(x - r - 6, 0), { size: LETTERING.small, anchor: "middle" });
}
