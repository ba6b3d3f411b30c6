// How a view and its numbers lie on a field of some width: which numbers there is room for, the scale, the place of each. Pure.
import type { SheetPlane } from "../protocol/sheet-data.ts";
import type { Dimension, View } from "../protocol/view.ts";
import { layOutApart, type SeparationOptions } from "./dimension-separation.ts";
import { gripBoxes } from "./grips.ts";
import {
  FRACTION_ROOM,
  type LaidDimension,
  layOutDimension,
  type NumberRoom,
  type Padding,
  type Scale,
} from "./layout.ts";
import { numberBox, numberRoom } from "./number-box.ts";
import { type NumberBox, nameBoxes, outlineStretches } from "./obstacles.ts";
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
  const rooms = numberRooms(dimensions, plane);
  return fitView({
    box: view.box,
    width,
    tallest,
    most: sidePadding(room, width, plane.design.units === "in"),
    boxesAt(scale, withinSides) {
      const laying = layingAt(scale, view, plane, rooms);
      const width = withinSides ? scale.width : undefined;
      const options = { ...laying, names: laying.clearNames, width, height: undefined };
      const places = layOutApart(dimensions, options, new Map(), false);
      const numbers = places.flatMap((place, i) => (place ? [laying.boxOf(dimensions[i]!, place)] : []));
      return [...numbers, ...laying.clearNames, ...laying.grips];
    },
  });
}

/** Where numbers and names stand on a view; undefined for one that finds no place. */
export interface LaidView {
  readonly places: readonly (LaidDimension | undefined)[];
  readonly names: readonly (NumberBox | undefined)[];
}

/** A view as it is to be drawn, with the dimensions that it has room for. */
interface ScaledView {
  readonly dimensions: readonly Dimension[];
  readonly view: View;
  readonly plane: SheetPlane;
  readonly scale: Scale;
}

/**
 * Where each dimension and each name stands at a scale.
 * @param ways way that each leader went last, by the dimension's id; brought up to date
 * @param holding the hand is on a number: then no leader leaves its way
 */
export function layOutView(
  { dimensions, view, plane, scale }: ScaledView,
  ways: Map<string, number>,
  holding: boolean,
): LaidView {
  const laying = layingAt(scale, view, plane, numberRooms(dimensions, plane));
  const { width, height } = scale;
  const places = layOutApart(dimensions, { ...laying, names: laying.clearNames, width, height }, ways, holding);
  return { places, names: laying.names };
}

interface Laying extends Pick<SeparationOptions, "lay" | "boxOf" | "outlines" | "grips"> {
  readonly names: LaidView["names"];
  readonly clearNames: readonly NumberBox[];
}

type NumberRooms = ReadonlyMap<string, NumberRoom>;

/** By the dimensions' ids: the same at every scale. */
const numberRooms = (dimensions: readonly Dimension[], { design }: SheetPlane): NumberRooms =>
  new Map(dimensions.map((dimension) => [dimension.id, numberRoom(dimension, design)]));

function layingAt(scale: Scale, view: View, plane: SheetPlane, rooms: NumberRooms): Laying {
  const inFractions = plane.design.units === "in";
  const outlines = outlineStretches(view, scale);
  const names = nameBoxes(view, scale, outlines);
  return {
    lay: ({ id }, shape) => layOutDimension(shape, scale, view.box, rooms.get(id)!, inFractions),
    boxOf: ({ id }, place) => numberBox(place, rooms.get(id)!),
    outlines,
    names,
    clearNames: names.filter((box) => box !== undefined),
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
