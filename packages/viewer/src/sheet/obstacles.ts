// What a number keeps off: outlines of the drawing, other numbers, leaders. Boxes and lines in px, y down.
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
    return corners.map((a, i): Stretch => {
      const b = corners[(i + 1) % corners.length]!;
      return [a.x, a.y, b.x, b.y];
    });
  });
}

export const numberBoxesOverlap = (a: NumberBox, b: NumberBox): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Px of a stretch within a box: 0 where it passes by. @see Liang and Barsky, line clipping */
export function lengthWithin([x1, y1, x2, y2]: Stretch, { left, right, top, bottom }: NumberBox): number {
  let [enters, leaves] = [0, 1];
  const [dx, dy] = [x2 - x1, y2 - y1];
  for (const [p, q] of [
    [-dx, x1 - left],
    [dx, right - x1],
    [-dy, y1 - top],
    [dy, bottom - y1],
  ] as const) {
    if (p === 0) {
      if (q < 0) return 0;
      continue;
    }
    const share = q / p;
    if (p < 0) enters = Math.max(enters, share);
    else leaves = Math.min(leaves, share);
    if (enters >= leaves) return 0;
  }
  return (leaves - enters) * Math.hypot(dx, dy);
}

const NAME = { character: 7.4, high: 17, halo: 3 }; // px: names are written a little larger than this reckons

/** What the names on the parts cover; none where the drawing is too small for them, or a name would lie on an outline. */
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
