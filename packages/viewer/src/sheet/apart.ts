// Numbers that would cover each other are led apart: those on a dimension line stay, those on a leader look for a free place.
import type { Dimension, Spot } from "../protocol.ts";
import type { Laid } from "./layout.ts";

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
const WAYS: readonly ((shift: Spot) => Spot)[] = [
  (shift) => shift,
  ...[1, 2, 3, -1].map((steps) => ({ x, y }: Spot) => ({ x, y: y + Math.sign(y) * steps * STEP })),
  ...[0, 1, 2, 3].map((steps) => ({ x, y }: Spot) => ({ x: -x, y: y + Math.sign(y) * steps * STEP })),
];

export interface Laying {
  lay(dimension: Dimension): Laid;
  boxOf(dimension: Dimension, laid: Laid): NumberBox;
  /** px of the field; undefined where leaders may run out of it. */
  readonly width: number | undefined;
}

/**
 * Lays all dimensions of a view, in their order.
 * @param ways way that each leader went last, by the dimension's id; brought up to date
 * @param holding the hand is on a number: then no leader leaves its way
 */
export function laidApart(
  dimensions: readonly Dimension[],
  { lay, boxOf, width }: Laying,
  ways: Map<string, number>,
  holding: boolean,
): Laid[] {
  const taken: NumberBox[] = [];
  const places = new Map<Dimension, Laid>();
  const put = (dimension: Dimension, laid: Laid) => {
    places.set(dimension, laid);
    taken.push(boxOf(dimension, laid));
  };
  for (const dimension of dimensions) if (dimension.shape.kind !== "leader") put(dimension, lay(dimension));
  for (const dimension of dimensions) {
    const { shape, id } = dimension;
    if (shape.kind !== "leader") continue;
    const tried = WAYS.map((way) => lay({ ...dimension, shape: { ...shape, shift: way(shape.shift) } }));
    const isFree = (laid: Laid) => {
      const box = boxOf(dimension, laid);
      const isInside = width === undefined || (box.left >= -SLACK && box.right <= width + SLACK);
      return isInside && !taken.some((other) => overlap(box, other));
    };
    const kept = holding ? ways.get(id) : undefined;
    const way = kept ?? Math.max(0, tried.findIndex(isFree));
    ways.set(id, way);
    put(dimension, tried[way]!);
  }
  return dimensions.map((dimension) => places.get(dimension)!);
}

const overlap = (a: NumberBox, b: NumberBox): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
