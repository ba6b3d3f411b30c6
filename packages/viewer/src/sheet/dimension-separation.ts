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
  lay(dimension: Dimension): LaidDimension;
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
    if (dimension.shape.kind === "along") known.strokes.set(dimension.id, options.lay(dimension).strokes);
  const places = new Map<Dimension, LaidDimension>();
  const put = (dimension: Dimension) => {
    const shapes = placesOf(dimension);
    const kept = holding ? ways.get(dimension.id) : undefined;
    if (kept === NOWHERE) return;
    const tried = (kept === undefined ? shapes : [shapes[kept] ?? dimension.shape]).map((shape) =>
      options.lay({ ...dimension, shape }),
    );
    const best = kept === undefined ? cheapest(dimension, tried, options, known) : 0;
    ways.set(dimension.id, kept ?? best);
    if (best === NOWHERE) {
      known.strokes.delete(dimension.id);
      return;
    }
    const laid = tried[best]!;
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

function cheapest(dimension: Dimension, tried: readonly LaidDimension[], options: SeparationOptions, known: Known) {
  let [best, least] = [0, Number.POSITIVE_INFINITY];
  for (const [i, laid] of tried.entries()) {
    const cost = placeCost(dimension, laid, options, known) + i * COST.place;
    if (cost >= least) continue;
    [best, least] = [i, cost];
    if (cost < CLEAN) break;
  }
  return least < CLEAN || dimension.isHeld ? best : NOWHERE;
}

function placeCost(
  dimension: Dimension,
  laid: LaidDimension,
  { boxOf, width, height, outlines, grips }: SeparationOptions,
  { boxes, strokes }: Known,
): number {
  const box = boxOf(dimension, laid);
  const overlaps = [...boxes, ...grips].filter((other) => numberBoxesOverlap(box, other)).length;
  const out =
    overrun(box.left, box.right, width) + overrun(box.top, box.bottom, height) + arcOverrun(dimension, laid, width);
  const clear = { left: box.left - CLEAR, right: box.right + CLEAR, top: box.top - CLEAR, bottom: box.bottom + CLEAR };
  const covered = sum(outlines, (stretch) => lengthWithin(stretch, clear));
  const struck = sum([...strokes], ([id, lines]) =>
    id === dimension.id ? 0 : sum(lines, (line) => Math.sign(lengthWithin(line, box))),
  );
  const own = sum(laid.strokes.slice(0, OWN_LINES[dimension.shape.kind]), (line) => Math.sign(lengthWithin(line, box)));
  const lines = dimension.shape.kind === "angle" ? laid.strokes : laid.strokes.slice(0, laid.isLed ? 1 : 2);
  const crossing = sum(boxes, (other) => sum(lines, (line) => Math.sign(lengthWithin(line, other))));
  return (
    overlaps * COST.overlap +
    (out > 0 ? COST.outside * (1 + out / 1000) : 0) +
    covered * COST.outline +
    (struck + own + crossing) * COST.struck
  );
}

/** px by which an angle's arc and level line run out of the field at its sides. */
const arcOverrun = ({ shape }: Dimension, { strokes }: LaidDimension, width: number | undefined): number =>
  shape.kind === "angle" ? sum(strokes, ([x1, , x2]) => overrun(Math.min(x1, x2), Math.max(x1, x2), width)) : 0;

/** px by which a box runs out of a field of some size. */
const overrun = (from: number, to: number, size: number | undefined): number =>
  size === undefined ? 0 : Math.max(0, -SLACK - from) + Math.max(0, to - size - SLACK);

const sum = <T>(all: readonly T[], of: (one: T) => number): number => all.reduce((total, one) => total + of(one), 0);

const SHARES = [0.5, 0.36, 0.64, 0.22, 0.78, 0.1, 0.9, 0, 1];
const RADII = [1, 1.25, 1.5, 0.8, 1.8, 2.2, 2.7];
const FAR_RADII = [3.4, 4.2, 5.2]; // for what can be taken hold of alone: it always stands

/** Places for a number, the one that it would like first. */
function placesOf({ shape, isHeld }: Dimension): DimensionShape[] {
  if (shape.kind === "along")
    return tiersOf(shape).flatMap((tier) => SHARES.map((share) => ({ ...shape, tier, share })));
  if (shape.kind === "angle")
    return [...RADII, ...(isHeld ? FAR_RADII : [])].flatMap((more) =>
      SHARES.map((share) => ({ ...shape, share, radius: shape.radius * more })),
    );
  return leaderShifts(shape.shift).map((shift) => ({ ...shape, shift }));
}

/** Its own line; under and over a view also one beyond the others, where a narrow field leaves no room on it. */
const tiersOf = ({ side, tier }: Extract<DimensionShape, { kind: "along" }>): number[] =>
  side === "below" || side === "above" ? [tier, tier + 2] : [tier];

/** Near before far: on either side, over and under, then longer. */
function leaderShifts({ x, y }: SheetPoint): SheetPoint[] {
  const down = Math.sign(y) || 1;
  const sides = [x, -x, 2 * x, -2 * x, 0.4 * x, -0.4 * x];
  return [0, 1, -1, 2, 3, 4].flatMap((steps) =>
    [y + down * steps * STEP, -y - down * steps * STEP].flatMap((up) => sides.map((across) => ({ x: across, y: up }))),
  );
}
