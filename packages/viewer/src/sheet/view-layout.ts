// How a view and its numbers lie on a field of some width: which numbers there is room for, the scale, the place of each. Pure.
import type { SheetPlane } from "../protocol/sheet-data.ts";
import type { Dimension, View } from "../protocol/view.ts";
import { layOutApart } from "./dimension-separation.ts";
import { gripBoxes } from "./grips.ts";
import { FRACTION_ROOM, type LaidDimension, layOutDimension, type Padding, type Scale } from "./layout.ts";
import { numberBox, numberRoom, numberWidth } from "./number-box.ts";
import { type NumberBox, nameBoxes, outlineStretches, type Stretch } from "./obstacles.ts";
import { fitView } from "./view-fit.ts";

type Sides = Pick<Padding, "left" | "right">;

/** What a field leaves round its view. */
export interface FieldRoom {
  /** At most so much room for numbers at the sides. */
  readonly padding: Sides;
  /** The same on a phone. */
  readonly narrow: Sides;
  /** More on either side of a phone's where numbers are fractions of an inch, px. */
  readonly narrowFractions?: number;
}

/** px of the field. */
export interface FieldSize {
  readonly width: number;
  readonly tallest: number;
}

const NARROW = 480; // px: a phone; fewer numbers stand on each view, the schedule has them all
const MIDDLING = 700; // px
const ROOMY = 900; // px: from here on there is room for every number beside a large drawing

/** The dimensions that a field of this width has room for. */
export function chooseDimensions(view: View, width: number): Dimension[] {
  const rank = greatestRank(view.name, width);
  return closeTiers(view.dimensions.filter((dimension) => dimension.rank <= rank));
}

/**
 * The largest scale at which a view and its numbers fit the field.
 * @param isAtRest whether a number stands there without being pointed at: a narrow field keeps no room for the others
 */
export function fitScaleOf(
  view: View,
  plane: SheetPlane,
  room: FieldRoom,
  { width, tallest }: FieldSize,
  isAtRest: (dimension: Dimension) => boolean,
): Scale {
  const dimensions = chooseDimensions(view, width).filter((dimension) => width >= ROOMY || isAtRest(dimension));
  return fitView({
    box: view.box,
    width,
    tallest,
    most: sidePadding(room, width, plane.design.units === "in"),
    boxesAt(scale, withinSides) {
      const laying = layingAt(scale, view, plane);
      const width = withinSides ? scale.width : undefined;
      const places = layOutApart(dimensions, { ...laying, width, height: undefined }, new Map(), false);
      const numbers = places.flatMap((place, i) => (place ? [laying.boxOf(dimensions[i]!, place)] : []));
      return [...numbers, ...laying.names, ...laying.grips];
    },
  });
}

/**
 * Where each dimension stands at a scale; undefined for one that finds no place.
 * @param ways way that each leader went last, by the dimension's id; brought up to date
 * @param holding the hand is on a number: then no leader leaves its way
 */
export function placeDimensions(
  dimensions: readonly Dimension[],
  view: View,
  plane: SheetPlane,
  scale: Scale,
  ways: Map<string, number>,
  holding: boolean,
): (LaidDimension | undefined)[] {
  return layOutApart(
    dimensions,
    { ...layingAt(scale, view, plane), width: scale.width, height: scale.height },
    ways,
    holding,
  );
}

interface Laying {
  lay(dimension: Dimension): LaidDimension;
  boxOf(dimension: Dimension, place: LaidDimension): NumberBox;
  readonly outlines: readonly Stretch[];
  readonly names: readonly NumberBox[];
  readonly grips: readonly NumberBox[];
}

function layingAt(scale: Scale, view: View, plane: SheetPlane): Laying {
  const style = plane.design;
  const inFractions = style.units === "in";
  const room = (dimension: Dimension) => numberRoom(dimension, numberWidth(dimension, style));
  const outlines = outlineStretches(view, scale);
  const names = nameBoxes(view, scale, outlines).filter((box) => box !== undefined);
  return {
    lay: (dimension) => layOutDimension(dimension, scale, view.box, room(dimension), inFractions),
    boxOf: (dimension, place) => numberBox(dimension, place, numberWidth(dimension, style)),
    outlines,
    names,
    grips: view.name === "elevation" ? gripBoxes(view, plane, scale) : [],
  };
}

function greatestRank(name: View["name"], width: number): Dimension["rank"] {
  if (width < NARROW) return name === "elevation" ? 1 : 2;
  return name === "elevation" && width < MIDDLING ? 2 : 3;
}

/** Dimension lines move up where those nearer to the view are left out. */
function closeTiers(dimensions: readonly Dimension[]): Dimension[] {
  const tiers = new Map<string, number[]>();
  for (const { shape } of dimensions)
    if (shape.kind === "along") tiers.set(shape.side, [...(tiers.get(shape.side) ?? []), shape.tier].sort());
  return dimensions.map((dimension) => {
    const { shape } = dimension;
    if (shape.kind !== "along") return dimension;
    const tier = [...new Set(tiers.get(shape.side))].indexOf(shape.tier);
    return { ...dimension, shape: { ...shape, tier } };
  });
}

/** Most room beside a view: less on a phone, more where numbers are fractions of an inch. */
function sidePadding({ padding, narrow, narrowFractions = 0 }: FieldRoom, width: number, inFractions: boolean): Sides {
  const [room, more] = width < NARROW ? [narrow, narrowFractions] : [padding, FRACTION_ROOM];
  return inFractions ? { left: room.left + more, right: room.right + more } : room;
}
