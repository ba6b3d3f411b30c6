// Where each number stands: of the places it may take, the one that covers nothing, as near as can be to where it would like to be.
import type { Dimension, DimensionShape, SheetPoint } from "../protocol/view.ts";
import type { LaidDimension } from "./layout.ts";
import { lengthWithin, type NumberBox, numberBoxesOverlap, type Stretch } from "./obstacles.ts";

const SLACK = 2; // px beyond the field's edge: widths are reckoned a little too large
const CLEAR = 3; // px between a number and an outline: its halo, and that widths are reckoned
const STEP = 27; // px: a line of numbers and a little
/** Costs of a place, each so much that none of the lighter ones outweighs it. */
const COST = { overlap: 1e6, outside: 2e5, outline: 3e3, struck: 6e4, place: 1 };
const CLEAN = 1e3; // a place that costs less than this covers nothing
const NOWHERE = -1;
/** Its own lines that a number keeps off: an angle's level line, a length's two extension lines; the rest is broken for it. */
const OWN_LINES = { along: 2, angle: 1, leader: 0 };

export interface SeparationOptions {
  lay(dimension: Dimension, shape: DimensionShape): LaidDimension;
  boxOf(dimension: Dimension, laid: LaidDimension): NumberBox;
  /** px of the field; undefined where numbers may run out of it. */
  readonly width: number | undefined;
  readonly height: number | undefined;
  readonly outlines: readonly Stretch[];
  /** Names on the parts: neither a number nor a line runs over them. */
  readonly names: readonly NumberBox[];
  /** What can be taken hold of: numbers keep off it, lines that end at the same place run through it. */
  readonly grips: readonly NumberBox[];
}

/**
 * Lays all dimensions of a view, in their order. One that finds no clean place is left out, and stands in the schedule; what can be
 * taken hold of always stands.
 * @param ways place that each number took last, by the dimension's id; brought up to date
 * @param holding the hand is on a number: then none leaves its place
 */
export function layOutApart(
  dimensions: readonly Dimension[],
  options: SeparationOptions,
  ways: Map<string, number>,
  holding: boolean,
): (LaidDimension | undefined)[] {
  const known: Known = { boxes: [...options.names], strokes: new Map() };
  for (const dimension of dimensions)
    if (dimension.shape.kind === "along")
      known.strokes.set(dimension.id, options.lay(dimension, dimension.shape).strokes);
  const places = new Map<Dimension, LaidDimension>();
  const put = (dimension: Dimension) => {
    const kept = holding ? ways.get(dimension.id) : undefined;
    if (kept === NOWHERE) return;
    const { way, laid } =
      kept === undefined
        ? cheapest(dimension, options, known)
        : { way: kept, laid: options.lay(dimension, placeAt(dimension, kept) ?? dimension.shape) };
    ways.set(dimension.id, way);
    if (!laid) {
      known.strokes.delete(dimension.id);
      return;
    }
    places.set(dimension, laid);
    known.boxes.push(options.boxOf(dimension, laid));
    known.strokes.set(dimension.id, laid.strokes);
  };
  for (const dimension of [...dimensions].sort((a, b) => turn(a) - turn(b))) put(dimension);
  return dimensions.map((dimension) => places.get(dimension));
}

/** What always stands takes its place first, then what stands on its line, then what is led to from anywhere. */
const turn = ({ isHeld, shape }: Dimension): number => (isHeld ? 0 : 2) + (shape.kind === "leader" ? 1 : 0);

interface Known {
  readonly boxes: NumberBox[];
  /** Lines of the dimensions that are laid, and of those that will be laid where they must. */
  readonly strokes: Map<string, readonly Stretch[]>;
}

/** The first place that covers nothing; where there is none, for what always stands, the one that covers least. */
function cheapest(dimension: Dimension, options: SeparationOptions, known: Known) {
  let best: { readonly way: number; readonly laid: LaidDimension } | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (let way = 0; least >= CLEAN; way++) {
    const shape = placeAt(dimension, way);
    if (!shape) break;
    const laid = options.lay(dimension, shape);
    const cost = placeCost(dimension, laid, options, known, least) + way * COST.place;
    if (cost < least) [best, least] = [{ way, laid }, cost];
  }
  return best && (least < CLEAN || dimension.isHeld) ? best : { way: NOWHERE, laid: undefined };
}

/** @param enough a cost at which the place is out of the question: what more it costs is not reckoned */
function placeCost(
  dimension: Dimension,
  laid: LaidDimension,
  { boxOf, width, height, outlines, grips }: SeparationOptions,
  { boxes, strokes }: Known,
  enough: number,
): number {
  const box = boxOf(dimension, laid);
  const overlaps = sum(boxes, (other) => Number(numberBoxesOverlap(box, other)));
  let cost = COST.overlap * (overlaps + sum(grips, (other) => Number(numberBoxesOverlap(box, other))));
  const out =
    overrun(box.left, box.right, width) + overrun(box.top, box.bottom, height) + arcOverrun(dimension, laid, width);
  cost += out > 0 ? COST.outside * (1 + out / 1000) : 0;
  if (cost >= enough) return cost;
  const own = sum(laid.strokes.slice(0, OWN_LINES[dimension.shape.kind]), (line) => Math.sign(lengthWithin(line, box)));
  const lines = dimension.shape.kind === "angle" ? laid.strokes : laid.strokes.slice(0, laid.isLed ? 1 : 2);
  const crossing = sum(boxes, (other) => sum(lines, (line) => Math.sign(lengthWithin(line, other))));
  let struck = 0;
  for (const [id, others] of strokes)
    if (id !== dimension.id) struck += sum(others, (line) => Math.sign(lengthWithin(line, box)));
  cost += (struck + own + crossing) * COST.struck;
  if (cost >= enough) return cost;
  const clear = { left: box.left - CLEAR, right: box.right + CLEAR, top: box.top - CLEAR, bottom: box.bottom + CLEAR };
  return cost + COST.outline * sum(outlines, (stretch) => lengthWithin(stretch, clear));
}

/** px by which an angle's arc and level line run out of the field at its sides. */
const arcOverrun = ({ shape }: Dimension, { strokes }: LaidDimension, width: number | undefined): number =>
  shape.kind === "angle" ? sum(strokes, ([x1, , x2]) => overrun(Math.min(x1, x2), Math.max(x1, x2), width)) : 0;

/** px by which a box runs out of a field of some size. */
const overrun = (from: number, to: number, size: number | undefined): number =>
  size === undefined ? 0 : Math.max(0, -SLACK - from) + Math.max(0, to - size - SLACK);

function sum<T>(all: readonly T[], of: (one: T) => number): number {
  let total = 0;
  for (const one of all) total += of(one);
  return total;
}

const SHARES = [0.5, 0.36, 0.64, 0.22, 0.78, 0.1, 0.9, 0, 1];
const RADII = [1, 1.25, 1.5, 0.8, 1.8, 2.2, 2.7];
const HELD_RADII = [...RADII, 3.4, 4.2, 5.2]; // for what can be taken hold of: it always stands

/** A place for a number by how well it is liked, from 0, the best; undefined where there are no more. */
function placeAt({ shape, isHeld }: Dimension, way: number): DimensionShape | undefined {
  if (shape.kind === "leader") {
    const shift = leaderShift(shape.shift, way);
    return shift && { ...shape, shift };
  }
  const [row, share] = [Math.floor(way / SHARES.length), SHARES[way % SHARES.length]!];
  if (shape.kind === "along") {
    const tier = tiersOf(shape)[row];
    return tier === undefined ? undefined : { ...shape, tier, share };
  }
  const more = (isHeld ? HELD_RADII : RADII)[row];
  return more === undefined ? undefined : { ...shape, share, radius: shape.radius * more };
}

/** Its own line; under and over a view also one beyond the others, where a narrow field leaves no room on it. */
const tiersOf = ({ side, tier }: Extract<DimensionShape, { kind: "along" }>): number[] =>
  side === "below" || side === "above" ? [tier, tier + 2] : [tier];

/** Lines further up or down, and shares of its way across, that a leader tries: on either side, over and under, then longer. */
const LEADER_STEPS = [0, 1, -1, 2, 3, 4];
const LEADER_SIDES = [1, -1, 2, -2, 0.4, -0.4];

/** Near before far. */
function leaderShift({ x, y }: SheetPoint, way: number): SheetPoint | undefined {
  const sides = LEADER_SIDES.length;
  const steps = LEADER_STEPS[Math.floor(way / (2 * sides))];
  if (steps === undefined) return undefined;
  const away = y + (Math.sign(y) || 1) * steps * STEP;
  const isOver = way % (2 * sides) < sides;
  return { x: LEADER_SIDES[way % sides]! * x, y: isOver ? away : -away };
}
