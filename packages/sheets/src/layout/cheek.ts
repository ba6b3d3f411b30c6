// Layout of a cheek, true size, its inside up: what is drilled and cut, what lies against it, and what a rule should read.

import { atan2Deg, FAR, line, point, pointAlong, pointsEqual, splitAtIntersection } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { bedToPlane, bedXAt, blocksAt, cheekShape, pegHoles, stageExtent } from "@lamplane/parameters/elevation";
import { formatAngle, formatDimension, formatDrill, formatLength } from "@lamplane/parameters/units";
import { drawDimension, drawGrainArrow } from "../picture/dimensions.ts";
import { LETTERING, Marks } from "../picture/marks.ts";
import type { Picture } from "../picture/picture.ts";
import { framePicture } from "../picture/picture-frame.ts";
import { CHEEK_LAYOUT } from "../words/layout.ts";
import { drawCaption, drawTextBlock } from "./caption.ts";
import { drawOrientationMarks } from "./orientation-marks.ts";
import { drawStackLayout, drawStackNames } from "./stack-marks.ts";

/** mm between an outline and its first dimension, and between two dimensions. */
const ROW = 6;
const COLUMN = 5.2;

/** Each hand is drawn as it is seen with its inside up, so the left one is the right one's mirror image. */
export function cheekLayout(e: Elevation, hand: "left" | "right"): Picture {
  const marks = new Marks({ mirrored: hand === "left" });
  drawEdges(marks, e);
  drawStackLayout(marks, e, e.design.body.height);
  drawHoles(marks, e);
  drawAcross(marks, e);
  drawUp(marks, e);
  drawStackNames(marks, e);
  drawTexts(marks, e, hand);
  const { pegs } = e.design;
  const { toe, heel, top } = cheekExtent(e);
  const hole = formatDrill(2 * e.pinHole.radius, e.design);
  const peg = pegHoles(e)[0];
  const pegWords = peg
    ? CHEEK_LAYOUT.pegs({
        diameter: formatLength(pegs.diameter, e.design),
        from: formatLength(peg.centre.x - toe, e.design),
      })
    : "";
  drawCaption(
    marks,
    CHEEK_LAYOUT.heading({ hand }),
    [
      CHEEK_LAYOUT.glue({ hand }),
      CHEEK_LAYOUT.drill({ hole, hand }),
      ...(pegWords === "" ? [] : [pegWords]),
      CHEEK_LAYOUT.prick,
    ],
    point(hand === "left" ? heel : toe, top + 3.3 * ROW),
  );
  const irons = e.design.capIron.thickness > 0 ? CHEEK_LAYOUT.withCap : CHEEK_LAYOUT.iron;
  const description = CHEEK_LAYOUT.description({ irons });
  return framePicture({ name: `cheek-${hand}`, title: CHEEK_LAYOUT.title({ hand }), description }, marks.all);
}

function cheekExtent(e: Elevation) {
  const { toe, heel, sole } = stageExtent(e, "blank");
  return { toe, heel, sole, top: e.design.body.height };
}

function drawEdges(marks: Marks, e: Elevation): void {
  const { length, trim } = e.design.body;
  const { sole, top } = cheekExtent(e);
  const { rampChain, bedChain } = blocksAt(e, "blank");
  marks.outline("outline", cheekShape(e, "blank").boundary);
  marks.line("outline", ...rampChain).line("outline", ...bedChain);
  const { bedTip, bedChamfer } = e.points;
  if (!pointsEqual(bedTip, bedChamfer) && !pointsEqual(bedTip, bedChain[0]!.from))
    marks.line("thin", line(bedTip, bedChamfer));
  if (sole < 0) marks.line("cut", line(point(0, 0), point(length, 0)));
  if (trim > 0) for (const x of [0, length]) marks.line("cut", line(point(x, sole), point(x, top)));
  if (e.top.outline === "arched") marks.line("cut", ...e.topChain);
}

function drawHoles(marks: Marks, e: Elevation): void {
  const { toe, heel, sole, top } = cheekExtent(e);
  const { centre } = e.pinHole;
  marks.line("axis", line(point(toe, centre.y), point(heel, centre.y)));
  marks.line("axis", line(point(centre.x, sole), point(centre.x, top)));
  marks.circle("outline", centre, e.pinHole.radius);
  for (const peg of pegHoles(e)) marks.circle("hidden", peg.centre, peg.radius).cross(peg.centre, peg.radius);
}

/** Dimensions along the cheek: from the toe end below, finished length and pin above. */
function drawAcross(marks: Marks, e: Elevation): void {
  const { design, points } = e;
  const { toe, heel, sole, top } = cheekExtent(e);
  const { length } = design.body;
  const toeFoot = point(toe, sole);
  const below = (what: string, to: number, row: number) =>
    drawDimension(marks, `${what} ${formatDimension(to - toe, design)}`, {
      from: toeFoot,
      to: point(to, sole),
      level: sole - row * ROW,
    });
  below(CHEEK_LAYOUT.ramp, points.rampTip.x, 1);
  below(CHEEK_LAYOUT.bed, points.bedTip.x, 2);
  below(CHEEK_LAYOUT.blank, heel, 3);
  const above = (from: number, to: number, row: number, what = "") =>
    drawDimension(marks, what + formatDimension(Math.abs(to - from), design), {
      from: point(from, top),
      to: point(to, top),
      level: top + row * ROW,
    });
  above(0, length, 1, CHEEK_LAYOUT.finished);
  above(toe, e.pin.centre.x, 2, CHEEK_LAYOUT.pin);
  if (toe < 0) {
    above(0, toe, 1);
    above(length, heel, 1);
  }
}

/** Dimensions up the cheek: pin and blank at the toe, pegs at the heel. */
function drawUp(marks: Marks, e: Elevation): void {
  const { design } = e;
  const { toe, heel, sole, top } = cheekExtent(e);
  const up = (from: number, to: number, x: number, at: number) =>
    drawDimension(marks, formatDimension(to - from, design), { from: point(x, from), to: point(x, to), upright: at });
  up(sole, e.pin.centre.y, toe, toe - COLUMN);
  up(sole, top, toe, toe - 2 * COLUMN);
  const pegs = pegHoles(e).filter(({ centre }) => centre.x > design.body.length);
  pegs.forEach(({ centre }, i) => {
    up(i === 0 ? sole : pegs[i - 1]!.centre.y, centre.y, heel, heel + COLUMN + 0.8);
  });
}

function drawTexts(marks: Marks, e: Elevation, hand: "left" | "right"): void {
  const { design, frame } = e;
  const { sole, top } = cheekExtent(e);
  const { length } = design.body;
  const t = frame.thickness;
  const belowRecess = e.recess ? 0.55 * e.recess.low : 0.4 * e.bedTopS;
  const bedLabel = bedToPlane(frame, belowRecess, -t - LETTERING.usual - 0.9);
  marks.label(CHEEK_LAYOUT.bedAngle({ angle: formatAngle(frame.bedAngle) }), bedLabel, {
    turn: frame.bedAngle,
    anchor: "middle",
  });
  drawRampWords(marks, e);
  const low = 0.3 * top;
  const bedAt = bedXAt(frame, low) + 4;
  drawTextBlock(
    marks,
    [CHEEK_LAYOUT.insideOf({ hand }), CHEEK_LAYOUT.bedBlock],
    (bedAt + length) / 2,
    length - bedAt - 8,
    low,
  );
  drawGrainArrow(marks, point((bedAt + length) / 2, Math.max(low - 10, 4)), 0, Math.min(24, (length - bedAt) / 3));
  const level = [line(point(-FAR, low), point(FAR, low))];
  const rampAt = (splitAtIntersection(level, blocksAt(e, "trued").rampChain)?.at.x ?? 0) - 6;
  drawTextBlock(marks, [CHEEK_LAYOUT.cheek({ hand }), CHEEK_LAYOUT.frontBlock], rampAt / 2, rampAt - 8, low);
  drawUprightText(marks, CHEEK_LAYOUT.toe, 0, 0.55 * top, 1);
  drawUprightText(marks, CHEEK_LAYOUT.heel, length, 0.35 * top, -1);
  if (sole < 0)
    marks.label(CHEEK_LAYOUT.truedSole({ off: formatLength(-sole, design) }), point(length - 6, 0.9), {
      size: LETTERING.small,
      anchor: "end",
    });
  if (e.top.outline === "arched") {
    const along = pointAlong(e.topChain[0]!, 0.4);
    marks.label(CHEEK_LAYOUT.top, point(along.x - 6, along.y - 6), { size: LETTERING.small, anchor: "middle" });
  }
  drawOrientationMarks(marks, e, stageExtent(e, "blank").toe, top);
}

/** Words along the ramp, on the front block's side; of a curve, along its chord. */
function drawRampWords(marks: Marks, e: Elevation): void {
  const { rampFoot, rampTop } = e.points;
  const along = atan2Deg(rampFoot.y - rampTop.y, rampFoot.x - rampTop.x);
  const words = e.ramp.curve
    ? CHEEK_LAYOUT.curved({ angle: formatAngle(e.ramp.angle), radius: formatLength(e.ramp.curve.radius, e.design) })
    : CHEEK_LAYOUT.rampAngle({ angle: formatAngle(e.ramp.angle) });
  const middle = pointAlong(line(rampFoot, rampTop), 0.55);
  const off = line(middle, point(middle.x + (rampFoot.y - rampTop.y), middle.y + rampTop.x - rampFoot.x));
  const back = (LETTERING.usual + 0.9) / Math.hypot(rampFoot.x - rampTop.x, rampFoot.y - rampTop.y);
  marks.label(words, pointAlong(off, back), { turn: along, anchor: "middle" });
}

/** Words that run up beside an upright line, to its side of growing x (1) or falling x (−1). */
function drawUprightText(marks: Marks, words: string, x: number, y: number, side: 1 | -1): void {
  const mirrored = marks.transform.mirrored === true;
  const lettersGoDown = !mirrored; // the letters' own height lies toward falling x, unless mirrored
  const off = side === 1 ? (lettersGoDown ? 3.1 : 0.9) : lettersGoDown ? -0.9 : -3.1;
  marks.label(words, point(x + off, y), { size: LETTERING.small, anchor: "middle", turn: mirrored ? -90 : 90 });
}
