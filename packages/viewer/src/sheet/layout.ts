// From mm to pixels: the largest scale that fits, and where each dimension's lines and number stand. Pixels, y down.
import { cosDeg, sinDeg } from "@lamplane/geometry";
import type { DimensionShape, SheetPoint, View } from "../protocol/view.ts";
import type { Stretch } from "./obstacles.ts";

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

/** Lines of one dimension, as paths, and where its number goes: its middle, or the end that is fixed. Most places are only tried, never drawn. */
export interface LaidDimension {
  readonly lines: () => string;
  readonly arrows: () => string;
  readonly number: SheetPoint;
  readonly hold: "middle" | "left" | "right";
  /** The same lines as straight stretches: other numbers keep off them. */
  readonly strokes: readonly Stretch[];
  /** Whether it is led to from its place on the drawing. */
  readonly isLed?: boolean;
}

/** What a number takes, px: its width, and what stands right of it or under it with it. */
export interface NumberRoom {
  readonly width: number;
  readonly right: number;
  readonly below: number;
}

const FIRST_TIER = 24; // px from the view to its first dimension line
const TIER = { below: 27, above: 27, beside: 62 }; // px from one dimension line to the next
export const FRACTION_ROOM = 26; // px more beside a view where numbers are fractions of an inch
const BEYOND = 0.9; // share from which a number with no room on its line or beside it stands beyond it
const BEYOND_LINE = 20; // px
const OVER = 6; // px that an extension line runs on past the dimension line
const GAP = 4; // px between the outline and an extension line

/**
 * Lays a dimension out.
 * @param room of its number: the line is broken for it (ISO 129-1, numbers readable from below)
 */
export function layOutDimension(
  shape: DimensionShape,
  scale: Scale,
  box: View["box"],
  room: NumberRoom,
  inFractions: boolean,
): LaidDimension {
  if (shape.kind === "leader") return layOutLeader(shape, scale);
  if (shape.kind === "angle") return layOutAngle(shape, scale, room);
  return shape.side === "below" || shape.side === "above"
    ? layOutLevel(shape, scale, box, room)
    : layOutUpright(shape, scale, box, TIER.beside + (inFractions ? FRACTION_ROOM : 0), room);
}

type Along = Extract<DimensionShape, { kind: "along" }>;

function layOutLevel(shape: Along, scale: Scale, box: View["box"], room: NumberRoom): LaidDimension {
  const { right: after } = room;
  const width = room.width + after;
  const sign = shape.side === "below" ? 1 : -1;
  const edge = toPixels(scale, { x: 0, y: shape.side === "below" ? box.min.y : box.max.y }).y;
  const y = edge + sign * (FIRST_TIER + shape.tier * TIER.below);
  const [a, b] = [toPixels(scale, shape.from), toPixels(scale, shape.to)];
  const [left, right] = a.x < b.x ? [a, b] : [b, a];
  const ends = [left, right].map((p): Stretch => [p.x, p.y + sign * GAP, p.x, y + sign * OVER]);
  const extensions = () => strokePath(ends);
  const span = right.x - left.x;
  const strokes: Stretch[] = [...ends, [left.x, y, right.x, y]];
  const free = Math.max(0, span - width - 22);
  const middle = (left.x + right.x) / 2 + ((shape.share ?? 0.5) - 0.5) * free;
  const number = { x: middle - after / 2, y };
  if (span >= width + 22) {
    const half = width / 2 + 2;
    return {
      lines: () => `${extensions()}M${left.x} ${y}L${middle - half} ${y}M${middle + half} ${y}L${right.x} ${y}`,
      arrows: () => arrowPath(left.x, y, 180) + arrowPath(right.x, y, 0),
      number,
      hold: "middle",
      strokes,
    };
  }
  const arrows = () => arrowPath(left.x, y, 0) + arrowPath(right.x, y, 180);
  if (span >= width + 4) {
    const lines = () => `${extensions()}M${left.x - 14} ${y}L${left.x} ${y}M${right.x} ${y}L${right.x + 14} ${y}`;
    return { lines, arrows, number, hold: "middle", strokes };
  }
  const lines = () => `${extensions()}M${left.x - 14} ${y}L${right.x + 14} ${y}`;
  const share = shape.share ?? 0.5;
  if (share >= BEYOND)
    return { lines, arrows, number: { ...number, y: y + sign * BEYOND_LINE }, hold: "middle", strokes };
  if (share < 0.5) return { lines, arrows, number: { x: left.x - 17, y }, hold: "right", strokes };
  return { lines, arrows, number: { x: right.x + 17, y }, hold: "left", strokes };
}

function layOutUpright(shape: Along, scale: Scale, box: View["box"], pitch: number, room: NumberRoom): LaidDimension {
  const sign = shape.side === "right" ? 1 : -1;
  const edge = toPixels(scale, { x: shape.side === "right" ? box.max.x : box.min.x, y: 0 }).x;
  const x = edge + sign * (Math.max(FIRST_TIER, room.width / 2 + 2 * GAP) + shape.tier * pitch);
  const [a, b] = [toPixels(scale, shape.from), toPixels(scale, shape.to)];
  const [top, bottom] = a.y < b.y ? [a, b] : [b, a];
  const ends = [top, bottom].map((p): Stretch => [p.x + sign * GAP, p.y, x + sign * OVER, p.y]);
  const extensions = () => strokePath(ends);
  const strokes: Stretch[] = [...ends, [x, top.y, x, bottom.y]];
  const span = bottom.y - top.y;
  const high = 22 + room.below;
  const middle = top.y + (span - high) * (shape.share ?? 0.5) + 11;
  if (span >= high + 22) {
    return {
      lines: () =>
        `${extensions()}M${x} ${top.y}L${x} ${middle - 11}M${x} ${middle + 11 + room.below}L${x} ${bottom.y}`,
      arrows: () => arrowPath(x, top.y, -90) + arrowPath(x, bottom.y, 90),
      number: { x, y: middle },
      hold: "middle",
      strokes,
    };
  }
  const isUnder = (shape.share ?? 0.5) > 0.5;
  return {
    lines: () => `${extensions()}M${x} ${top.y - 14}L${x} ${bottom.y + 14}`,
    arrows: () => arrowPath(x, top.y, 90) + arrowPath(x, bottom.y, -90),
    number: { x, y: isUnder ? bottom.y + 26 : top.y - 26 - room.below },
    hold: "middle",
    strokes,
  };
}

type Angle = Extract<DimensionShape, { kind: "angle" }>;

/** The arc is broken where its number stands. */
function layOutAngle(shape: Angle, scale: Scale, room: NumberRoom): LaidDimension {
  const at = toPixels(scale, shape.at);
  const { radius, fromAngle, toAngle } = shape;
  const on = (angle: number, r = radius): SheetPoint => {
    const [c, s] = [cosDeg(angle), sinDeg(angle)];
    return { x: at.x + r * c, y: at.y - r * s };
  };
  const [begin, end] = [on(fromAngle), on(toAngle)];
  const level = on(fromAngle === 0 ? 0 : 180, radius + OVER);
  const number = on(fromAngle + (toAngle - fromAngle) * (shape.share ?? 0.5));
  const half = room.width / 2 + 2;
  const isFree = ({ x, y }: SheetPoint) =>
    Math.abs(x - number.x) > half || y < number.y - 11 || y > number.y + 11 + room.below;
  const count = Math.max(6, Math.ceil((toAngle - fromAngle) / 2));
  const spots = Array.from({ length: count + 1 }, (_, i) => on(fromAngle + ((toAngle - fromAngle) * i) / count));
  const arc = spots.slice(1).flatMap((to, i): Stretch[] => {
    const from = spots[i]!;
    return isFree(from) && isFree(to) ? [[from.x, from.y, to.x, to.y]] : [];
  });
  const strokes: Stretch[] = [[at.x, at.y, level.x, level.y], ...arc];
  const arrows = () => arrowPath(begin.x, begin.y, 90 - fromAngle) + arrowPath(end.x, end.y, -90 - toAngle);
  return { lines: () => strokePath(strokes), arrows, number, hold: "middle", strokes };
}

const strokePath = (strokes: readonly Stretch[]): string =>
  strokes.map(([x1, y1, x2, y2]) => `M${x1} ${y1}L${x2} ${y2}`).join("");

function layOutLeader(shape: Extract<DimensionShape, { kind: "leader" }>, scale: Scale): LaidDimension {
  const at = toPixels(scale, shape.at);
  const end = { x: at.x + shape.shift.x, y: at.y + shape.shift.y };
  const toRight = shape.shift.x >= 0;
  const shelf = toRight ? 8 : -8;
  const strokes: Stretch[] = [
    [at.x, at.y, end.x, end.y],
    [end.x, end.y, end.x + shelf, end.y],
  ];
  const dot = () => `M${at.x - 2.2} ${at.y}a2.2 2.2 0 1 0 4.4 0a2.2 2.2 0 1 0 -4.4 0`;
  const number = { x: end.x + shelf, y: end.y };
  const hold = toRight ? "left" : "right";
  return { lines: () => strokePath(strokes), arrows: dot, number, hold, strokes, isLed: true };
}

/** A filled arrow whose tip stands at (x, y) and that points the way of `turn`, degrees clockwise from the right. */
function arrowPath(x: number, y: number, turn: number): string {
  const [length, half] = [8, 2.2];
  const [c, s] = [cosDeg(turn), sinDeg(turn)];
  const corner = (along: number, off: number) => `${x + along * c - off * s} ${y + along * s + off * c}`;
  return `M${x} ${y}L${corner(-length, half)}L${corner(-length, -half)}Z`;
}
