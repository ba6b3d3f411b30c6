// How many planes come out of some boards at most, and what boards for so many cost at least, whatever the layout.
import { sameSpecies } from "../plane-woods.ts";
import type { Span } from "../span.ts";
import { type Board, type BoardBox, knotBox, overlap, sizeOf } from "./board.ts";
import type { BodyWood } from "./plane-boards.ts";

export interface ClassBound {
  readonly mostPlanes: number;
  /** Of the boards that so many planes need, in the maker's money. */
  leastPrice(planes: number): number;
}

/**
 * What a layout uses of a board, and no layout uses more of it than there is. Every part is parted from the next by a kerf, so
 * that parts and board, each wider by one, still lie in each other without overlapping.
 */
interface Measure {
  readonly ofPlane: (wood: BodyWood) => number;
  readonly ofBoard: (board: Board) => number;
}

/** Priced boards of which every choice is tried; of more the price is bounded measure by measure. */
const MOST_CHOSEN = 14;
const BLUR = 1e-9;

export function classBound(woods: readonly BodyWood[], boards: readonly Board[]): ClassBound {
  const usable = boards.filter(({ species }) =>
    woods.some((wood) => species === undefined || sameSpecies(species, wood.species)),
  );
  const measures = measuresOf(woods);
  const room = usable.map((board) => ({ price: board.price, of: measures.map(({ ofBoard }) => ofBoard(board)) }));
  /** By the measure, then by the number of planes: what the least of them need. */
  const needs = measures.map(({ ofPlane }) => sums(woods.map(ofPlane).toSorted((a, b) => a - b)));
  const total = measures.map((_, m) => room.reduce((sum, { of }) => sum + of[m]!, 0));
  const most = Math.min(woods.length, ...needs.map((need, m) => need.findLastIndex((sum) => isWithin(sum, total[m]!))));
  return {
    mostPlanes: most,
    leastPrice: (planes) =>
      leastPrice(
        needs.map((need) => need[Math.min(planes, most)]!),
        room,
      ),
  };
}

const isWithin = (need: number, there: number): boolean => need <= there * (1 + BLUR) + BLUR;

const sums = (values: readonly number[]): number[] => {
  const all = [0];
  for (const value of values) all.push(all.at(-1)! + value);
  return all;
};

interface Room {
  readonly price: number;
  /** By the measure. */
  readonly of: readonly number[];
}

function leastPrice(needs: readonly number[], room: readonly Room[]): number {
  const priced = room.filter(({ price }) => price > 0);
  const free = needs.map((_, m) => room.reduce((sum, { price, of }) => sum + (price > 0 ? 0 : of[m]!), 0));
  const wanted = needs.map((need, m) => need - free[m]!);
  if (priced.length > MOST_CHOSEN) return Math.max(0, ...wanted.map((need, m) => fractionalPrice(need, priced, m)));
  let least = Number.POSITIVE_INFINITY;
  for (let mask = 0; mask < 2 ** priced.length; mask++) {
    const chosen = priced.filter((_, i) => (mask >> i) & 1);
    const price = chosen.reduce((sum, each) => sum + each.price, 0);
    const suffices = () =>
      wanted.every((need, m) =>
        isWithin(
          need,
          chosen.reduce((sum, { of }) => sum + of[m]!, 0),
        ),
      );
    if (price < least && suffices()) least = price;
  }
  return least;
}

/** As if parts of boards could be bought, those first that give most for their price. */
function fractionalPrice(wanted: number, priced: readonly Room[], m: number): number {
  let [left, price] = [wanted, 0];
  for (const each of priced.toSorted((a, b) => a.price / a.of[m]! - b.price / b.of[m]!)) {
    if (left <= 0 || each.of[m]! <= 0) continue;
    price += each.price * Math.min(1, left / each.of[m]!);
    left -= each.of[m]!;
  }
  return price;
}

/** A part as a plane's own saw leaves it: its length, and its sides across the grain. */
interface SawnPart {
  readonly length: number;
  readonly height: number;
  readonly thickness: number;
}

/** With the least kerf of all planes beside each part, and the most of all that a part may not lose at a board's own face. */
interface Margins {
  readonly kerf: number;
  readonly reach: number;
  readonly surfacedReach: number;
}

const sawnParts = ({ parts, saw }: BodyWood, kerf: number): SawnPart[] =>
  parts.map(({ length, height, thickness }) => ({
    length: length + kerf,
    height: height + 2 * saw.pass + kerf,
    thickness: thickness + 2 * saw.pass + kerf,
  }));

function measuresOf(woods: readonly BodyWood[]): Measure[] {
  if (woods.length === 0) return [];
  const saws = woods.map(({ saw }) => saw);
  const margins: Margins = {
    kerf: Math.min(...saws.map(({ kerf }) => kerf)),
    reach: Math.max(...saws.map(({ pass }) => pass)),
    surfacedReach: Math.max(...saws.map(({ pass, milling }) => pass + milling)),
  };
  const parts = woods.flatMap((wood) => sawnParts(wood, margins.kerf));
  const shortest = Math.min(...parts.map(({ length }) => length));
  const narrow = ({ height, thickness }: SawnPart) => Math.min(height, thickness);
  const perPlane = (of: (part: SawnPart) => number) => (wood: BodyWood) =>
    sawnParts(wood, margins.kerf).reduce((sum, part) => sum + of(part), 0);
  const lines = (board: Board) => linesAcross(board, shortest, margins.kerf);
  const volume: Measure = {
    ofPlane: perPlane(({ length, height, thickness }) => length * height * thickness),
    ofBoard: (board) => roomVolume(board, margins),
  };
  // Lines across the board, so far apart as the shortest part is long: each part lies under one of them.
  const sections: Measure = {
    ofPlane: perPlane(({ height, thickness }) => height * thickness),
    ofBoard: (board) => lines(board) * acrossOf(board, margins).reduce((a, b) => a * b),
  };
  // Points on such a line, so far apart as a part is narrow: each part of that width lies on one of its own.
  const widths = [...new Set(parts.map((part) => Number(narrow(part).toFixed(6))))];
  const cliques = widths.map(
    (width): Measure => ({
      ofPlane: perPlane((part) => (narrow(part) >= width - 1e-6 ? 1 : 0)),
      ofBoard: (board) =>
        lines(board) * acrossOf(board, margins).reduce((count, side) => count * Math.floor(side / width + BLUR), 1),
    }),
  );
  return [volume, sections, ...cliques];
}

/** Width and thickness that sawn parts and kerfs may take of a board. */
const acrossOf = ({ width, thickness, surfaced }: Board, { kerf, reach, surfacedReach }: Margins): number[] =>
  [width, thickness].map((side) => side + 2 * (surfaced ? surfacedReach : reach) + kerf);

/** How many parts, one behind the other, a board's clear stretches hold. @param shortest with its kerf */
function linesAcross(board: Board, shortest: number, kerf: number): number {
  const through = board.knots.filter(({ across }) => !across || (across.from <= 0 && across.to >= board.width));
  let [from, count] = [0, 0];
  const add = (to: number) => {
    count += Math.max(0, Math.floor((to - from + kerf) / shortest + BLUR));
  };
  for (const knot of through.toSorted((a, b) => a.from - b.from)) {
    add(knot.from);
    from = Math.max(from, knot.to);
  }
  add(board.length);
  return count;
}

/** Knots that do not overlap take their wood, but for the kerf that may lie in them. */
function roomVolume(board: Board, margins: Margins): number {
  const [across, through] = acrossOf(board, margins) as [number, number];
  const knots: BoardBox[] = [];
  for (const knot of board.knots.map((each) => knotBox(each, board)))
    if (!knots.some((other) => overlap(other, knot))) knots.push(knot);
  const clear = (side: Span) => Math.max(0, sizeOf(side) - margins.kerf);
  const lost = knots.reduce((sum, { x, y }) => sum + clear(x) * clear(y) * through, 0);
  return (board.length + margins.kerf) * across * through - lost;
}
