// Numbers that would cover each other are led apart: those on a dimension line stay, those on a leader look for a free place.
import type { Dimension, SheetPoint } from "../protocol/view.ts";
import type { LaidDimension } from "./layout.ts";

/** px, y down. */
export interface NumberBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const SLACK = 8; // px: widths are reckoned a little too large
const STEP = 27; // px: a line of numbers and a little
/** Where a leader may end instead, tried in this order: further out, further in, on the other side. */
const LEADER_SHIFTS: readonly ((shift: SheetPoint) => SheetPoint)[] = [
  (shift) => shift,
  ...[1, 2, 3, -1].map((steps) => ({ x, y }: SheetPoint) => ({ x, y: y + Math.sign(y) * steps * STEP })),
  ...[0, 1, 2, 3].map((steps) => ({ x, y }: SheetPoint) => ({ x: -x, y: y + Math.sign(y) * steps * STEP })),
];

export interface SeparationOptions {
  lay(dimension: Dimension): LaidDimension;
  boxOf(dimension: Dimension, laid: LaidDimension): NumberBox;
  /** px of the field; undefined where leaders may run out of it. */
  readonly width: number | undefined;
}

/**
 * Lays all dimensions of a view, in their order.
 * @param ways way that each leader went last, by the dimension's id; brought up to date
 * @param holding the hand is on a number: then no leader leaves its way
 */
export function layOutApart(
  dimensions: readonly Dimension[],
  { lay, boxOf, width }: SeparationOptions,
  ways: Map<string, number>,
  holding: boolean,
): LaidDimension[] {
  const taken: NumberBox[] = [];
  const places = new Map<Dimension, LaidDimension>();
  const put = (dimension: Dimension, laid: LaidDimension) => {
    places.set(dimension, laid);
    taken.push(boxOf(dimension, laid));
  };
  for (const dimension of dimensions) if (dimension.shape.kind !== "leader") put(dimension, lay(dimension));
  for (const dimension of dimensions) {
    const { shape, id } = dimension;
    if (shape.kind !== "leader") continue;
    const tried = LEADER_SHIFTS.map((way) => lay({ ...dimension, shape: { ...shape, shift: way(shape.shift) } }));
    const isFree = (laid: LaidDimension) => {
      const box = boxOf(dimension, laid);
      const isInside = width === undefined || (box.left >= -SLACK && box.right <= width + SLACK);
      return isInside && !taken.some((other) => boxesOverlap(box, other));
    };
    const kept = holding ? ways.get(id) : undefined;
    const way = kept ?? Math.max(0, tried.findIndex(isFree));
    ways.set(id, way);
    put(dimension, tried[way]!);
  }
  return dimensions.map((dimension) => places.get(dimension)!);
}

const boxesOverlap = (a: NumberBox, b: NumberBox): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
