// Layout of the bed, seen square to it from the iron's side: the recess to be routed, true size, its lower end toward the mouth.

import { cotDeg, line, point, polygon, transformSegment } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { bevelToBack, blocksAt, planeToBed, recessEdge } from "@lamplane/parameters/elevation";
import { formatDimension, formatLength } from "@lamplane/parameters/units";
import { drawDimension, drawLeader } from "../picture/dimensions.ts";
import { LETTERING, Marks } from "../picture/marks.ts";
import type { Picture } from "../picture/picture.ts";
import { framePicture } from "../picture/picture-frame.ts";
import { LAYER_LAYOUT } from "../words/layers.ts";
import { BED_LAYOUT } from "../words/layout.ts";
import { drawCaption } from "./caption.ts";
import { fittingTextSize } from "./format.ts";

const ROW = 6;

/** x counts across the core from its centre line, y up the bed from the cutting edge's place. */
export function bedFaceLayout(e: Elevation): Picture {
  const marks = new Marks();
  const bed = blocksAt(e, "blank").bedChain.at(-1)!;
  const [low, high] = [planeToBed(e.frame, bed.from).s, planeToBed(e.frame, bed.to).s];
  const half = e.widths.core / 2;
  marks.outline("outline", polygon(point(-half, low), point(half, low), point(half, high), point(-half, high)));
  marks.line("axis", line(point(0, low - 3), point(0, high + 3)));
  drawSoleAndHeel(marks, e, low, half);
  if (e.recess) drawRecessOutline(marks, e, low, high);
  drawDimension(marks, formatDimension(2 * half, e.design), {
    from: point(-half, low),
    to: point(half, low),
    level: low - ROW,
  });
  drawDimension(marks, formatDimension(high - low, e.design), {
    from: point(-half, low),
    to: point(-half, high),
    upright: -half - ROW,
  });
  const { recess, design } = e;
  const how = recess
    ? recess.madeBy === "layers"
      ? [LAYER_LAYOUT.bedRecess, LAYER_LAYOUT.bedCheck]
      : [BED_LAYOUT.rout({ depth: formatLength(recess.depth, design) }), BED_LAYOUT.open]
    : [BED_LAYOUT.none];
  marks.label(BED_LAYOUT.top, point(0, high - 4), { size: LETTERING.small, anchor: "middle" });
  drawCaption(
    marks,
    BED_LAYOUT.heading,
    [BED_LAYOUT.glue, BED_LAYOUT.glueGoesOn, ...how],
    point(-half - ROW - 2, high + 4),
  );
  const description = recess ? BED_LAYOUT.description : BED_LAYOUT.descriptionWhole;
  return framePicture({ name: "bed-face", title: BED_LAYOUT.title, description }, marks.all);
}

/** Lines across the bed: the trued sole, and where the bevel ends and the iron begins to bear. */
function drawSoleAndHeel(marks: Marks, e: Elevation, low: number, half: number): void {
  const { thickness } = e.frame;
  const across = (s: number) => line(point(-half, s), point(half, s));
  const sole = thickness * cotDeg(e.frame.bedAngle);
  if (sole - low > 0.3) {
    marks.line("mark", across(sole));
    marks.label(BED_LAYOUT.truedSole, point(half - 1.5, sole + 0.8), { size: LETTERING.small, anchor: "end" });
  }
  const bevelHeel = thickness * cotDeg(bevelToBack(e.design));
  marks.line("thin", across(bevelHeel));
  const words = BED_LAYOUT.bears;
  const size = fittingTextSize(words, 2 * half - 3, LETTERING.small);
  if (size !== undefined) marks.label(words, point(-half + 1.5, bevelHeel + 0.8), { size });
}

function drawRecessOutline(marks: Marks, e: Elevation, low: number, high: number): void {
  const recess = e.recess!;
  const { design } = e;
  const [half, wide] = [e.widths.core / 2, recess.width / 2];
  // recessEdge counts x up the bed and y toward the left cheek, which here is to the right.
  marks.line("cut", ...recessEdge(recess, high).map((s) => transformSegment(s, { turn: 90, mirrored: true })));
  const { fromEdge, diameter } = design.capIron.screwHead;
  marks.circle("hidden", point(0, fromEdge), diameter / 2);
  drawDimension(marks, formatDimension(recess.width, design), {
    from: point(-wide, high),
    to: point(wide, high),
    level: high - ROW * 2,
  });
  drawDimension(marks, formatDimension(half - wide, design), {
    from: point(wide, low),
    to: point(half, low),
    level: low - 2 * ROW,
  });
  drawDimension(marks, formatDimension(recess.low - low, design), {
    from: point(half, low),
    to: point(wide, recess.low),
    upright: half + ROW,
  });
  if (high > fromEdge + diameter / 2 + 8)
    drawLeader(marks, BED_LAYOUT.head, point(diameter / 2, fromEdge), point(half + ROW + 4, fromEdge + 8), "right");
  if (recess.madeBy === "layers") return;
  drawLeader(
    marks,
    BED_LAYOUT.cutter({ diameter: formatLength(design.recess.cutter, design) }),
    point(wide - 0.3 * recess.cornerRadius, recess.low + 0.3 * recess.cornerRadius),
    point(half + ROW + 4, recess.low + 10),
    "right",
  );
}
