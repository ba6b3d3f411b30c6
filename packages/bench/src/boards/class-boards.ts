// The bodies of many planes out of the boards at hand: a bounded search, and a bound that says how far from best it can be.
import { uniformGenerator } from "@lamplane/geometry/numerics";
import { type Board, type Slab, volumeOf, wholeBoard } from "./board.ts";
import { classBound } from "./class-bound.ts";
import { type CutParts, rememberedCuts } from "./cutting.ts";
import { type BodyLayout, type BodyWood, layOutBody, WAYS } from "./plane-boards.ts";

export interface ClassLayout {
  /** By the planes' order; undefined for one that no wood is left for. */
  readonly bodies: readonly (BodyLayout | undefined)[];
  /** In which the planes are sawn: each from what those before it leave. */
  readonly order: readonly number[];
  /** Places of the boards that are cut, ascending. */
  readonly used: readonly number[];
  readonly price: number;
  /** No layout of as many planes costs less. */
  readonly leastPrice: number;
  /** mm³: finished parts that were placed, and the boards that they come from. */
  readonly partsVolume: number;
  readonly usedVolume: number;
  /** No more planes than this come out of these boards by any layout. */
  readonly mostPlanes: number;
}

/** Planes that are laid out in all: as many orders are tried as come to that, two at least. */
const MOST_LAID_OUT = 480;

/**
 * The best of a bounded number of orders, each plane laid out exactly from what the planes before it leave.
 * @param tries orders: as they stand, the largest first, then by chance
 */
export function layOutClass(
  woods: readonly BodyWood[],
  boards: readonly Board[],
  tries = Math.max(2, Math.floor(MOST_LAID_OUT / Math.max(1, woods.length))),
): ClassLayout {
  const bound = classBound(woods, boards);
  const leastForMost = bound.leastPrice(bound.mostPlanes);
  const cut = rememberedCuts();
  let best: Attempt | undefined;
  for (const order of orders(woods, tries)) {
    const attempt = layOutInOrder(woods, boards, order, cut);
    if (!best || isBetter(attempt, best)) best = attempt;
    if (best.placed >= bound.mostPlanes && best.price <= leastForMost + 1e-9) break;
  }
  const { bodies, order, price, used } = best!;
  const placed = woods.filter((_, i) => bodies[i] !== undefined);
  return {
    bodies,
    order,
    used,
    price,
    leastPrice: bound.leastPrice(placed.length),
    mostPlanes: bound.mostPlanes,
    partsVolume: placed.reduce((sum, wood) => sum + finishedVolume(wood), 0),
    usedVolume: used.reduce((sum, board) => sum + volumeOf(wholeBoard(boards[board]!, board).box), 0),
  };
}

interface Attempt {
  readonly bodies: readonly (BodyLayout | undefined)[];
  readonly order: readonly number[];
  readonly placed: number;
  readonly price: number;
  readonly used: readonly number[];
  /** Sum of the ways' places: less where the grain runs on better. */
  readonly ways: number;
}

const isBetter = (a: Attempt, b: Attempt): boolean =>
  a.placed !== b.placed ? a.placed > b.placed : a.price !== b.price ? a.price < b.price : a.ways < b.ways;

function layOutInOrder(
  woods: readonly BodyWood[],
  boards: readonly Board[],
  order: readonly number[],
  cut: CutParts,
): Attempt {
  const bodies: (BodyLayout | undefined)[] = woods.map(() => undefined);
  const opened = new Set<number>();
  let slabs: readonly Slab[] = boards.map(wholeBoard);
  for (const plane of order) {
    const body = layOutBody(woods[plane]!, boards, slabs, opened, cut);
    if (!body) continue;
    bodies[plane] = body;
    slabs = slabsLeft(slabs, body);
    for (const { slab } of body.cuttings) opened.add(slab.board);
  }
  const made = bodies.filter((body) => body !== undefined);
  return {
    bodies,
    order,
    placed: made.length,
    price: [...opened].reduce((sum, board) => sum + boards[board]!.price, 0),
    used: [...opened].toSorted((a, b) => a - b),
    ways: made.reduce((sum, { way }) => sum + WAYS.indexOf(way), 0),
  };
}

/** What is whole once a body is cut. */
export const slabsLeft = (slabs: readonly Slab[], { cuttings }: BodyLayout): Slab[] => [
  ...slabs.filter((slab) => !cuttings.some((cutting) => cutting.slab === slab)),
  ...cuttings.flatMap(({ slab, rest }) => rest.map((box) => ({ board: slab.board, box }))),
];

function* orders(woods: readonly BodyWood[], tries: number): Generator<number[]> {
  const own = woods.map((_, i) => i);
  yield own;
  yield own.toSorted((a, b) => finishedVolume(woods[b]!) - finishedVolume(woods[a]!));
  const uniform = uniformGenerator(1);
  for (let k = 2; k < tries; k++) {
    const drawn = own.map((i) => ({ i, key: uniform() }));
    yield drawn.toSorted((a, b) => a.key - b.key).map(({ i }) => i);
  }
}

/** Least wood that a body can be sawn from: no allowance on any face. */
const finishedVolume = ({ parts, saw }: BodyWood): number =>
  parts.reduce(
    (sum, { length, height, thickness }) => sum + length * (height - 2 * saw.milling) * (thickness - 2 * saw.milling),
    0,
  );
