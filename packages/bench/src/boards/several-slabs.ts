// A body's parts out of several slabs: exact, by dynamic programming over the slabs of one board after the other.
import { type Board, type Slab, volumeOf } from "./board.ts";
import type { CutParts } from "./cutting.ts";
import type { SlabCutting } from "./plane-boards.ts";
import { isAlike, type Lay, type Saw, type SawnPart } from "./sawing.ts";

/** Parts alike: which of them is cut where makes no difference. */
interface Kind {
  readonly members: readonly number[];
  /** What one of them adds to the number that stands for a choice of parts. */
  readonly weight: number;
}

/** Parts that are cut so far, and what that takes: boards, price, slabs, volume of the slabs, less of each being better in that order. */
interface Partial {
  readonly cost: readonly number[];
  readonly cuttings: readonly { readonly choice: number; readonly cutting: SlabCutting }[];
}
/** By the choice of parts that is cut: the best of all ways. */
type Best = ReadonlyMap<number, Partial>;

const LAYS: readonly (readonly Lay[])[] = [["ripped"], ["resawn"], ["ripped", "resawn"]];

export interface SlabContext {
  readonly parts: readonly SawnPart[];
  readonly saw: Saw;
  readonly boards: readonly Board[];
  /** What a board costs that something is cut from. */
  readonly priceOf: (board: number) => number;
  readonly cut: CutParts;
}

/**
 * As few boards as there can be, then the cheapest, then the fewest slabs, then the smallest.
 * @returns undefined where the parts do not come out of the slabs by any cuts
 */
export function cutFromSlabs(context: SlabContext, slabs: readonly Slab[]): readonly SlabCutting[] | undefined {
  if (slabs.length < 2) return undefined;
  const kinds = kindsOf(context.parts);
  const all = kinds.reduce((sum, { members, weight }) => sum + members.length * weight, 0);
  let best: Best = new Map([[0, { cost: [0, 0, 0, 0], cuttings: [] }]]);
  for (const board of new Set(slabs.map((slab) => slab.board))) {
    const own = slabs.filter((slab) => slab.board === board).map((slab) => cuttingsOf(slab, kinds, context));
    best = withBoard(best, own, kinds, context.priceOf(board));
  }
  const found = best.get(all);
  return found && numbered(found, kinds);
}

function kindsOf(parts: readonly SawnPart[]): Kind[] {
  const kinds: Kind[] = [];
  let weight = 1;
  parts.forEach((part, i) => {
    if (parts.findIndex((other) => isAlike(part, other)) < i) return;
    const members = parts.flatMap((other, k) => (isAlike(part, other) ? [k] : []));
    kinds.push({ members, weight });
    weight *= members.length + 1;
  });
  return kinds;
}

const countOf = (choice: number, { members, weight }: Kind): number =>
  Math.floor(choice / weight) % (members.length + 1);

/** Whether two choices together have no more of any kind than there is. */
const goTogether = (a: number, b: number, kinds: readonly Kind[]): boolean =>
  kinds.every((kind) => countOf(a, kind) + countOf(b, kind) <= kind.members.length);

/** Every choice of parts, but for none and all, that comes out of a slab. */
function cuttingsOf(slab: Slab, kinds: readonly Kind[], { parts, boards, saw, cut }: SlabContext) {
  const cuttings = new Map<number, SlabCutting>();
  const all = kinds.reduce((sum, { members, weight }) => sum + members.length * weight, 0);
  for (let choice = 1; choice < all; choice++) {
    const fewer = kinds.filter((kind) => countOf(choice, kind) > 0).map(({ weight }) => choice - weight);
    if (fewer.some((less) => less > 0 && !cuttings.has(less))) continue;
    const chosen = kinds.flatMap((kind) => kind.members.slice(0, countOf(choice, kind)));
    const own = chosen.map((part) => parts[part]!);
    for (const lays of LAYS) {
      const found = cut(own, slab, boards[slab.board]!, saw, lays);
      if (!found) continue;
      const placed = found.placed.map((each) => ({ ...each, part: chosen[each.part]! }));
      cuttings.set(choice, { ...found, slab, placed });
      break;
    }
  }
  return cuttings;
}

/** What can be cut once a board's slabs may be cut too. */
function withBoard(
  before: Best,
  slabs: readonly ReadonlyMap<number, SlabCutting>[],
  kinds: readonly Kind[],
  price: number,
): Best {
  let own: Best = new Map();
  for (const cuttings of slabs) {
    const next = new Map(own);
    for (const [choice, cutting] of cuttings) {
      const volume = volumeOf(cutting.slab.box);
      extend(next, before, { choice, cutting, cost: [1, price, 1, volume] }, kinds);
      extend(next, own, { choice, cutting, cost: [0, 0, 1, volume] }, kinds);
    }
    own = next;
  }
  const after = new Map(before);
  for (const [choice, partial] of own) keepBetter(after, choice, partial);
  return after;
}

function extend(
  next: Map<number, Partial>,
  from: Best,
  { choice, cutting, cost }: { choice: number; cutting: SlabCutting; cost: readonly number[] },
  kinds: readonly Kind[],
): void {
  for (const [cut, partial] of from)
    if (goTogether(cut, choice, kinds))
      keepBetter(next, cut + choice, {
        cost: partial.cost.map((value, i) => value + cost[i]!),
        cuttings: [...partial.cuttings, { choice, cutting }],
      });
}

function keepBetter(best: Map<number, Partial>, choice: number, partial: Partial): void {
  const known = best.get(choice);
  if (!known || isLess(partial.cost, known.cost)) best.set(choice, partial);
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  const k = a.findIndex((value, i) => Math.abs(value - b[i]!) > 1e-9);
  return k >= 0 && a[k]! < b[k]!;
}

/** Each part once: of parts alike the cuttings take one after the other. */
function numbered({ cuttings }: Partial, kinds: readonly Kind[]): SlabCutting[] {
  const taken = kinds.map(() => 0);
  return cuttings.map(({ cutting }) => ({
    ...cutting,
    placed: cutting.placed.map((each) => {
      const kind = kinds.findIndex(({ members }) => members.includes(each.part));
      const part = kinds[kind]!.members[taken[kind]!]!;
      taken[kind]! += 1;
      return { ...each, part };
    }),
  }));
}
