// Dimension lines with what they measure, leaders and the grain's arrow; all of it in thin lines, which are no edge of the wood.

import { atan2Deg, cosDeg, distance, EPSILON, line, type Point, point, polygon, sinDeg } from "@lamplane/geometry";
import { PICTURE } from "../words/layout.ts";
import { LETTERING, type Marks } from "./marks.ts";
import { textWidth } from "./text-metrics.ts";

/** Arrow heads are long and narrow, extension lines begin off the edge and run past the dimension. @see ISO 129-1:2018 (from memory) */
const ARROW = { length: 2.4, half: 0.4 };
const EXTENSION = { gap: 0.8, past: 1.5 };
const OVERHANG = 5; // mm by which words over a level line may stand beyond it at either end
const OVER_LINE = 0.9; // mm from a dimension line to its words

/** A solid arrow head with its point at a place. `direction` in degrees: where it points. */
export function drawArrowHead(marks: Marks, tip: Point, direction: number): void {
  const [c, s] = [cosDeg(direction), sinDeg(direction)];
  const at = (back: number, off: number) => point(tip.x - back * c - off * s, tip.y - back * s + off * c);
  marks.area(1, polygon(tip, at(ARROW.length, ARROW.half), at(ARROW.length, -ARROW.half)));
}

/** From one place to another, and where the dimension line lies: a height for a level one, an x for an upright one. */
type DimensionPlace = { readonly from: Point; readonly to: Point } & (
  | { readonly level: number }
  | { readonly upright: number }
);

/** Whether words stand between the arrows of a dimension so long, mm. */
export const fitsDimension = (words: string, length: number): boolean =>
  length > textWidth(words, LETTERING.usual) + 2 * ARROW.length;

/**
 * A dimension between two places, measured level or upright. Where the words are wider than the room, the arrows turn outward
 * and the words stand after the second place, or level beside an upright line.
 */
export function drawDimension(marks: Marks, words: string, place: DimensionPlace): void {
  const { from, to } = place;
  const level = "level" in place;
  const at = level ? place.level : place.upright;
  const [a, b] = level ? [point(from.x, at), point(to.x, at)] : [point(at, from.y), point(at, to.y)];
  drawExtensionLine(marks, from, a);
  drawExtensionLine(marks, to, b);
  const length = distance(a, b);
  if (length < EPSILON) return;
  const ahead = atan2Deg(b.y - a.y, b.x - a.x);
  const width = textWidth(words, LETTERING.usual);
  const fits = fitsDimension(words, length);
  const out = fits ? 0 : 2.5 * ARROW.length;
  // Words a little wider than the length stand over the middle of their line, where they name no other length.
  const stands = fits || width < length + 2 * OVERHANG;
  const shelf = !stands && level ? width + 1 : 0;
  marks.line("thin", line(offsetPoint(a, ahead, -out), offsetPoint(b, ahead, out + shelf)));
  drawArrowHead(marks, a, fits ? ahead + 180 : ahead);
  drawArrowHead(marks, b, fits ? ahead : ahead + 180);
  const middle = point((a.x + b.x) / 2, (a.y + b.y) / 2);
  if (level) {
    const x = stands ? middle.x : offsetPoint(b, ahead, out + 0.5 + width / 2).x;
    marks.label(words, point(x, at + OVER_LINE), { anchor: "middle" });
  } else if (fits) drawUprightText(marks, words, middle);
  else drawTextBeside(marks, words, middle, Math.sign(at - from.x) || 1);
}

/** Words that run up over an upright dimension line. In a mirrored drawing "over the line" is the other side of it. */
function drawUprightText(marks: Marks, words: string, middle: Point): void {
  const mirrored = marks.transform.mirrored === true;
  const at = point(middle.x + (mirrored ? OVER_LINE : -OVER_LINE), middle.y);
  marks.label(words, at, { anchor: "middle", turn: mirrored ? -90 : 90 });
}

/** Level words beside an upright dimension line too short for them, on the side away from the thing measured. */
function drawTextBeside(marks: Marks, words: string, middle: Point, side: number): void {
  const at = point(middle.x + side * 1.2, middle.y - LETTERING.usual * 0.36);
  marks.label(words, at, { anchor: side > 0 ? "start" : "end" });
}

function drawExtensionLine(marks: Marks, place: Point, end: Point): void {
  const length = distance(place, end);
  if (length <= EXTENSION.gap) return;
  const direction = atan2Deg(end.y - place.y, end.x - place.x);
  marks.line("thin", line(offsetPoint(place, direction, EXTENSION.gap), offsetPoint(end, direction, EXTENSION.past)));
}

const offsetPoint = (p: Point, direction: number, by: number): Point =>
  point(p.x + by * cosDeg(direction), p.y + by * sinDeg(direction));

/** Words with a line from them to a place, which ends in an arrow there. `toward` is the side on which the words stand. */
export function drawLeader(marks: Marks, words: string, place: Point, elbow: Point, toward: "left" | "right"): void {
  const onRight = (toward === "right") !== (marks.transform.mirrored === true);
  const shelf = point(elbow.x + (onRight ? 3 : -3), elbow.y);
  marks.line("thin", line(place, elbow), line(elbow, shelf));
  drawArrowHead(marks, place, atan2Deg(place.y - elbow.y, place.x - elbow.x));
  const at = point(shelf.x + (onRight ? 0.8 : -0.8), shelf.y - LETTERING.small * 0.36);
  marks.label(words, at, { size: LETTERING.small, anchor: onRight ? "start" : "end" });
}

/** A double arrow along the grain with the word beside it. */
export function drawGrainArrow(marks: Marks, middle: Point, direction: number, length = 24): void {
  const [a, b] = [offsetPoint(middle, direction, -length / 2), offsetPoint(middle, direction, length / 2)];
  marks.line("thin", line(a, b));
  drawArrowHead(marks, a, direction + 180);
  drawArrowHead(marks, b, direction);
  const over = offsetPoint(middle, direction + 90, direction === 90 && marks.transform.mirrored ? -0.9 : 0.9);
  marks.label(PICTURE.grain, over, { size: LETTERING.small, anchor: "middle", turn: direction });
}
