// From mm to pixels: the largest scale that fits, and where each dimension's lines and number stand. Pixels, y down.
import { cosDeg, sinDeg } from "@lamplane/geometry";
import type { Dimension, DimensionShape, SheetPoint, View } from "../protocol/view.ts";

/** Room round a view for its dimensions, px. */
export interface Padding {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** How a view lies on its field: pixels for each mm, and where the plane's origin falls. */
export interface Scale {
  readonly perMm: number;
  readonly origin: SheetPoint;
  readonly width: number;
  readonly height: number;
}

/** The largest scale with which a box fits the width, and a height if one is set. */
export function fitScale(box: View["box"], padding: Padding, width: number, tallest: number): Scale {
  const [wide, high] = [box.max.x - box.min.x, box.max.y - box.min.y];
  const room = Math.max(60, width - padding.left - padding.right);
  const perMm = Math.min(room / wide, (tallest - padding.top - padding.bottom) / high);
  const spare = (room - wide * perMm) / 2;
  return {
    perMm,
    origin: { x: padding.left + spare - box.min.x * perMm, y: padding.top + box.max.y * perMm },
    width,
    height: padding.top + padding.bottom + high * perMm,
  };
}

export const toPixels = ({ perMm, origin }: Scale, { x, y }: SheetPoint): SheetPoint => ({
  x: origin.x + x * perMm,
  y: origin.y - y * perMm,
});

export const toSheet = ({ perMm, origin }: Scale, { x, y }: SheetPoint): SheetPoint => ({
  x: (x - origin.x) / perMm,
  y: (origin.y - y) / perMm,
});

/** Lines of one dimension and where its number goes: its middle, or the end that is fixed. */
export interface LaidDimension {
  readonly lines: string;
  readonly arrows: string;
  readonly number: SheetPoint;
  readonly hold: "middle" | "left" | "right";
}

const FIRST_TIER = 24; // px from the view to its first dimension line
const TIER = { below: 27, above: 27, beside: 62 }; // px from one dimension line to the next
export const FRACTION_ROOM = 26; // px more beside a view where numbers are fractions of an inch
const OVER = 6; // px that an extension line runs on past the dimension line
const GAP = 4; // px between the outline and an extension line

/**
 * Lays a dimension out.
 * @param width of its number, px: the line is broken for it (ISO 129-1, numbers readable from below)
 */
export function layOutDimension(
  { shape }: Pick<Dimension, "shape">,
  scale: Scale,
  box: View["box"],
  width: number,
  inFractions: boolean,
): LaidDimension {
  if (shape.kind === "leader") return layOutLeader(shape, scale);
  if (shape.kind === "angle") return layOutAngle(shape, scale);
  return shape.side === "below" || shape.side === "above"
    ? layOutLevel(shape, scale, box, width)
    : layOutUpright(shape, scale, box, TIER.beside + (inFractions ? FRACTION_ROOM : 0));
}

type Along = Extract<DimensionShape, { kind: "along" }>;

function layOutLevel(shape: Along, scale: Scale, box: View["box"], width: number): LaidDimension {
  const sign = shape.side === "below" ? 1 : -1;
  const edge = toPixels(scale, { x: 0, y: shape.side === "below" ? box.min.y : box.max.y }).y;
  const y = edge + sign * (FIRST_TIER + shape.tier * TIER.below);
  const [a, b] = [toPixels(scale, shape.from), toPixels(scale, shape.to)];
  const [left, right] = a.x < b.x ? [a, b] : [b, a];
  const extensions = [left, right].map((p) => `M${p.x} ${p.y + sign * GAP}L${p.x} ${y + sign * OVER}`).join("");
  const span = right.x - left.x;
  const middle = (left.x + right.x) / 2;
  if (span >= width + 22) {
    const half = width / 2 + 2;
    const lines = `${extensions}M${left.x} ${y}L${middle - half} ${y}M${middle + half} ${y}L${right.x} ${y}`;
    return {
      lines,
      arrows: arrowPath(left.x, y, 180) + arrowPath(right.x, y, 0),
      number: { x: middle, y },
      hold: "middle",
    };
  }
  const arrows = arrowPath(left.x, y, 0) + arrowPath(right.x, y, 180);
  if (span >= width + 4) {
    const lines = `${extensions}M${left.x - 14} ${y}L${left.x} ${y}M${right.x} ${y}L${right.x + 14} ${y}`;
    return { lines, arrows, number: { x: middle, y }, hold: "middle" };
  }
  const lines = `${extensions}M${left.x - 14} ${y}L${right.x + 14} ${y}`;
  return { lines, arrows, number: { x: right.x + 17, y }, hold: "left" };
}

function layOutUpright(shape: Along, scale: Scale, box: View["box"], pitch: number): LaidDimension {
  const sign = shape.side === "right" ? 1 : -1;
  const edge = toPixels(scale, { x: shape.side === "right" ? box.max.x : box.min.x, y: 0 }).x;
  const x = edge + sign * (FIRST_TIER + shape.tier * pitch);
  const [a, b] = [toPixels(scale, shape.from), toPixels(scale, shape.to)];
  const [top, bottom] = a.y < b.y ? [a, b] : [b, a];
  const extensions = [top, bottom].map((p) => `M${p.x + sign * GAP} ${p.y}L${x + sign * OVER} ${p.y}`).join("");
  const span = bottom.y - top.y;
  const middle = (top.y + bottom.y) / 2;
  if (span >= 44) {
    const lines = `${extensions}M${x} ${top.y}L${x} ${middle - 11}M${x} ${middle + 11}L${x} ${bottom.y}`;
    return {
      lines,
      arrows: arrowPath(x, top.y, -90) + arrowPath(x, bottom.y, 90),
      number: { x, y: middle },
      hold: "middle",
    };
  }
  const lines = `${extensions}M${x} ${top.y - 14}L${x} ${bottom.y + 14}`;
  return {
    lines,
    arrows: arrowPath(x, top.y, 90) + arrowPath(x, bottom.y, -90),
    number: { x, y: top.y - 24 },
    hold: "middle",
  };
}

function layOutAngle(shape: Extract<DimensionShape, { kind: "angle" }>, scale: Scale): LaidDimension {
  const at = toPixels(scale, shape.at);
  const { radius, fromAngle, toAngle } = shape;
  const on = (angle: number, r = radius): SheetPoint => {
    const [c, s] = [cosDeg(angle), sinDeg(angle)];
    return { x: at.x + r * c, y: at.y - r * s };
  };
  const [begin, end] = [on(fromAngle), on(toAngle)];
  const base = fromAngle === 0 ? 0 : 180;
  const level = on(base, radius + OVER);
  const lines = `M${at.x} ${at.y}L${level.x} ${level.y}M${begin.x} ${begin.y}A${radius} ${radius} 0 0 0 ${end.x} ${end.y}`;
  const arrows = arrowPath(begin.x, begin.y, 90 - fromAngle) + arrowPath(end.x, end.y, -90 - toAngle);
  const number = on((fromAngle + toAngle) / 2, radius);
  return { lines, arrows, number, hold: "middle" };
}

function layOutLeader(shape: Extract<DimensionShape, { kind: "leader" }>, scale: Scale): LaidDimension {
  const at = toPixels(scale, shape.at);
  const end = { x: at.x + shape.shift.x, y: at.y + shape.shift.y };
  const toRight = shape.shift.x >= 0;
  const shelf = toRight ? 8 : -8;
  const lines = `M${at.x} ${at.y}L${end.x} ${end.y}L${end.x + shelf} ${end.y}`;
  const dot = `M${at.x - 2.2} ${at.y}a2.2 2.2 0 1 0 4.4 0a2.2 2.2 0 1 0 -4.4 0`;
  return { lines, arrows: dot, number: { x: end.x + shelf, y: end.y }, hold: toRight ? "left" : "right" };
}

/** A filled arrow whose tip stands at (x, y) and that points the way of `turn`, degrees clockwise from the right. */
function arrowPath(x: number, y: number, turn: number): string {
  const [length, half] = [8, 2.2];
  const [c, s] = [cosDeg(turn), sinDeg(turn)];
  const corner = (along: number, off: number) => `${x + along * c - off * s} ${y + along * s + off * c}`;
  return `M${x} ${y}L${corner(-length, half)}L${corner(-length, -half)}Z`;
}
