// What a number keeps off: outlines of the drawing, other numbers, leaders. Boxes and lines in px, y down.
import { ringPairs } from "@lamplane/geometry";
import type { View } from "../protocol/view.ts";
import { type Scale, toPixels } from "./layout.ts";

/** px, y down. */
export interface NumberBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A straight stretch of an outline: its two ends. */
export type Stretch = readonly [x1: number, y1: number, x2: number, y2: number];

/** The outlines of a view at a scale. */
export function outlineStretches(view: View, scale: Scale): Stretch[] {
  return view.marks.flatMap(({ edge = [] }) => {
    const corners = edge.map((corner) => toPixels(scale, corner));
    return ringPairs(corners).map(([a, b]): Stretch => [a.x, a.y, b.x, b.y]);
  });
}

export const numberBoxesOverlap = (a: NumberBox, b: NumberBox): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Px of a stretch within a box: 0 where it passes by. @see Liang and Barsky, line clipping */
export function lengthWithin([x1, y1, x2, y2]: Stretch, { left, right, top, bottom }: NumberBox): number {
  if ((x1 < left && x2 < left) || (x1 > right && x2 > right)) return 0;
  if ((y1 < top && y2 < top) || (y1 > bottom && y2 > bottom)) return 0;
  let [enters, leaves] = [0, 1];
  const [dx, dy] = [x2 - x1, y2 - y1];
  if (dx !== 0) {
    const [a, b] = [(left - x1) / dx, (right - x1) / dx];
    enters = Math.max(enters, Math.min(a, b));
    leaves = Math.min(leaves, Math.max(a, b));
  }
  if (dy !== 0) {
    const [a, b] = [(top - y1) / dy, (bottom - y1) / dy];
    enters = Math.max(enters, Math.min(a, b));
    leaves = Math.min(leaves, Math.max(a, b));
  }
  return enters >= leaves ? 0 : (leaves - enters) * Math.hypot(dx, dy);
}

const NAME = { character: 7.4, high: 17, halo: 3 }; // px: names are written a little larger than this reckons

/** What each name on the parts covers; none where the drawing is too small for them, or a name would lie on an outline. */
export function nameBoxes(view: View, scale: Scale, outlines: readonly Stretch[]): (NumberBox | undefined)[] {
  return view.labels.map(({ text, at }) => {
    const { x, y } = toPixels(scale, at);
    const half = (text.length * NAME.character) / 2 + NAME.halo;
    const box = { left: x - half, right: x + half, top: y - NAME.high + NAME.halo, bottom: y + 2 * NAME.halo };
    const isClear = scale.perMm >= LEAST_FOR_NAMES && outlines.every((stretch) => lengthWithin(stretch, box) === 0);
    return isClear ? box : undefined;
  });
}

const LEAST_FOR_NAMES = 1.4; // px for each mm: on a smaller drawing names would cover the numbers
