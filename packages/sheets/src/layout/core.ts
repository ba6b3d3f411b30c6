// Layout of the core from the side, true size: the two cuts with their kerfs on the waste side, before anything is sawn.

import {
  cosDeg,
  cotDeg,
  line,
  type Point,
  point,
  pointAlong,
  polygon,
  sinDeg,
  transformSegment,
} from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { blocksAt, layersOf } from "@lamplane/parameters/elevation";
import { formatAngle, formatDimension, formatLength } from "@lamplane/parameters/units";
import { drawDimension, drawGrainArrow, drawLeader } from "../picture/dimensions.ts";
import { LETTERING, Marks, SHADES } from "../picture/marks.ts";
import type { Picture } from "../picture/picture.ts";
import { framePicture } from "../picture/picture-frame.ts";
import { LAYER_LAYOUT } from "../words/layers.ts";
import { CORE_LAYOUT } from "../words/layout.ts";
import { drawCaption, drawTextBlock } from "./caption.ts";
import { blockNamePlace, drawLayerMarks, layerCaption } from "./core-layers.ts";
import { fittingTextSize } from "./format.ts";
import { drawOrientationMarks } from "./orientation-marks.ts";

const ROW = 6;

/** A straight cut across the core: where it meets the blank's sole and top, and its kerf beside it. */
interface Cut {
  readonly foot: Point;
  readonly head: Point;
  /** Along x, to the kerf's other side: the kerf lies in the waste. */
  readonly kerfAlong: number;
}

/** x counts from the core's toe end, y from the trued sole. */
export function coreLayout(e: Elevation): Picture {
  const marks = new Marks();
  const { ramp, bed } = cutsOf(e);
  drawBlank(marks, e, ramp, bed);
  drawShaping(marks, e);
  drawLayerMarks(marks, e);
  drawDimensions(marks, e, ramp, bed);
  drawTexts(marks, e, ramp, bed);
  drawCaption(
    marks,
    layersOf(e) ? LAYER_LAYOUT.heading : CORE_LAYOUT.heading,
    [
      ...(layersOf(e) ? layerCaption(e) : [CORE_LAYOUT.glue]),
      CORE_LAYOUT.saw({ kerf: formatLength(e.design.shop.kerf, e.design) }),
      CORE_LAYOUT.marks,
      layersOf(e) ? LAYER_LAYOUT.marksGoOn : CORE_LAYOUT.marksGoOn,
    ],
    point(0, e.design.body.height + 3.3 * ROW),
  );
  const description = CORE_LAYOUT.description;
  return framePicture({ name: "core-cuts", title: CORE_LAYOUT.title, description }, marks.all);
}

function cutsOf(e: Elevation): { ramp: Cut; bed: Cut } {
  const { design, cuts, frame } = e;
  const [low, high] = [-design.sole.allowance, design.body.height];
  const rise = high - low;
  const kerf = design.shop.kerf;
  return {
    ramp: {
      foot: point(cuts.rampMark, low),
      head: point(cuts.rampMark - rise * cotDeg(e.ramp.angle), high),
      kerfAlong: kerf / sinDeg(e.ramp.angle),
    },
    bed: {
      foot: point(cuts.bedMark, low),
      head: point(cuts.bedMark + rise * cotDeg(frame.bedAngle), high),
      kerfAlong: -kerf / sinDeg(frame.bedAngle),
    },
  };
}

function drawBlank(marks: Marks, e: Elevation, ramp: Cut, bed: Cut): void {
  const [low, high] = [-e.design.sole.allowance, e.design.body.height];
  marks.area(SHADES.waste, polygon(ramp.foot, bed.foot, bed.head, ramp.head));
  for (const { foot, head, kerfAlong } of [ramp, bed])
    marks.area(SHADES.kerf, polygon(foot, point(foot.x + kerfAlong, foot.y), point(head.x + kerfAlong, head.y), head));
  const length = e.widths.blankLength;
  marks.outline("outline", polygon(point(0, low), point(length, low), point(length, high), point(0, high)));
  for (const { foot, head } of [ramp, bed]) marks.line("outline", line(foot, head));
  if (low < 0) marks.line("mark", line(point(0, 0), point(length, 0)));
  drawOrientationMarks(marks, e, 0, high);
}

/** What is shaped after the saw: the curve of a curved ramp and the feather chamfer of the bed's tip. */
function drawShaping(marks: Marks, e: Elevation): void {
  const over = e.design.body.trim / 2;
  const { rampChain, bedChain } = blocksAt(e, "blank");
  const onFront = { shift: point(over - e.cuts.setInToe, 0) };
  const onBed = { shift: point(over + e.cuts.setInHeel, 0) };
  if (e.ramp.curve) marks.line("cut", ...rampChain.slice(1).map((s) => transformSegment(s, onFront)));
  if (bedChain.length > 1) marks.line("cut", transformSegment(bedChain[0]!, onBed));
}

function drawDimensions(marks: Marks, e: Elevation, ramp: Cut, bed: Cut): void {
  const { design, widths } = e;
  const [low, high] = [-design.sole.allowance, design.body.height];
  const along = (what: string, x: number, y: number, at: number) =>
    drawDimension(marks, `${what} ${formatDimension(x, design)}`, { from: point(0, y), to: point(x, y), level: at });
  along(CORE_LAYOUT.ramp, ramp.foot.x, low, low - ROW);
  along(CORE_LAYOUT.bed, bed.foot.x, low, low - 2 * ROW);
  along(CORE_LAYOUT.blank, widths.blankLength, low, low - 3 * ROW);
  if (ramp.head.x > 0) along(CORE_LAYOUT.ramp, ramp.head.x, high, high + ROW);
  if (bed.head.x < widths.blankLength) along(CORE_LAYOUT.bed, bed.head.x, high, high + 2 * ROW);
  drawDimension(marks, formatDimension(high - low, design), { from: point(0, low), to: point(0, high), upright: -ROW });
}
function drawTexts(marks: Marks, e: Elevation, ramp: Cut, bed: Cut): void {
  const { design, widths, frame } = e;
  const high = design.body.height;
  const heel = widths.blankLength;
  const at = (cut: Cut, y: number) =>
    pointAlong(line(cut.foot, cut.head), (y + design.sole.allowance) / (high + design.sole.allowance)).x;
  const front = blockNamePlace(e, "front", (y) => [0, at(ramp, y)]);
  const behind = blockNamePlace(e, "bed", (y) => [at(bed, y), heel]);
  drawTextBlock(marks, [CORE_LAYOUT.frontBlock, CORE_LAYOUT.frontSide], front.x, front.room, front.y);
  drawTextBlock(marks, [CORE_LAYOUT.bedBlock, CORE_LAYOUT.bedSide], behind.x, behind.room, behind.y);
  const y = 0.35 * high;
  const [rampX, bedX] = [at(ramp, y), at(bed, y)];
  for (const [from, to] of [
    [0, rampX],
    [bedX, heel],
  ] as const)
    drawGrainArrow(marks, point((from + to) / 2, 0.1 * high), 0, Math.min(24, (to - from) / 3));
  const { allowance } = design.sole;
  if (allowance > 0)
    marks.label(CORE_LAYOUT.truedSole({ off: formatLength(allowance, design) }), point(heel - 6, 0.9), {
      size: LETTERING.small,
      anchor: "end",
    });
  const middle = point((ramp.head.x + bed.head.x) / 2, 0.72 * high);
  marks.text(CORE_LAYOUT.waste, middle, { anchor: "middle", size: LETTERING.usual });
  drawTextAlongCut(
    marks,
    CORE_LAYOUT.rampSaw({ angle: formatAngle(e.ramp.angle), saw: formatAngle(90 - e.ramp.angle) }),
    ramp,
    -e.ramp.angle,
    e.ramp.curve && design.shop.kerf,
  );
  drawTextAlongCut(
    marks,
    CORE_LAYOUT.bedSaw({ angle: formatAngle(frame.bedAngle), saw: formatAngle(90 - frame.bedAngle) }),
    bed,
    frame.bedAngle,
  );
  drawShapingTexts(marks, e, bed);
}

/** Words along a cut, on the side of the wood that stays; over the kerf, in the waste, where the wood is still to be shaped. */
function drawTextAlongCut(marks: Marks, words: string, { foot, head }: Cut, turn: number, overKerf?: number): void {
  const length = Math.hypot(head.x - foot.x, head.y - foot.y);
  const size = fittingTextSize(words, 0.8 * length, LETTERING.small);
  if (size === undefined) return;
  const middle = pointAlong(line(foot, head), 0.56);
  const up = overKerf === undefined ? -size - 0.6 : overKerf + 0.9; // from the cut to the words' baseline
  const at = point(middle.x - up * sinDeg(turn), middle.y + up * cosDeg(turn));
  marks.label(words, at, { size, turn, anchor: "middle" });
}

function drawShapingTexts(marks: Marks, e: Elevation, bed: Cut): void {
  const { design } = e;
  const { featherChamfer: c } = design.bed;
  const high = design.body.height;
  if (c > 0) {
    const place = point(bed.foot.x + c * cotDeg(e.frame.bedAngle), -design.sole.allowance + c / 2);
    drawLeader(
      marks,
      CORE_LAYOUT.feather({ height: formatLength(c, design) }),
      place,
      point(place.x + 12, Math.max(5, 0.13 * high)),
      "right",
    );
  }
  if (!e.ramp.curve) return;
  const curve = blocksAt(e, "blank").rampChain.slice(1)[0]!;
  const at = pointAlong(transformSegment(curve, { shift: point(design.body.trim / 2 - e.cuts.setInToe, 0) }), 0.6);
  drawLeader(
    marks,
    CORE_LAYOUT.shape({ radius: formatLength(e.ramp.curve.radius, design) }),
    at,
    point(at.x - 8, at.y + 5),
    "left",
  );
}
