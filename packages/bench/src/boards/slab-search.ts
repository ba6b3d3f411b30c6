// The search for cuts in one slab: which part of some parts comes out on which side of a cut that goes right through.

import type { Span } from "../span.ts";
import { BOARD_AXES, type Board, type BoardAxis, type BoardBox, knotBox, overlap, sizeOf, volumeOf } from "./board.ts";
import { type Cut, type Cutting, isAlike, type Lay, type Saw, type SawnPart } from "./sawing.ts";

/** Sizes closer than this are the same, mm. */
export const BLUR = 1e-9;
/** Least slice that is resawn off a part's face rather than planed off, mm. Common practice, no published source. */
const LEAST_RESAWN = 3;
const OPPOSITE: Readonly<Record<"ripped" | "resawn", { y: "thickness" | "height"; z: "thickness" | "height" }>> = {
  ripped: { y: "thickness", z: "height" },
  resawn: { y: "height", z: "thickness" },
};

/** The search for one slab: parts with a pass on every long face, in a box that reaches out beyond the board's own faces by as much. */
export class SlabSearch {
  readonly #parts: readonly SawnPart[];
  /** By the parts: the first that is of the same size, so that parts alike are not tried in each other's place. */
  readonly #kinds: readonly number[];
  readonly #knots: readonly BoardBox[];
  readonly #saw: Saw;
  readonly #lays: readonly Lay[];
  /** What did not come out of which box. */
  readonly #failed = new Set<string>();

  constructor(parts: readonly SawnPart[], board: Board, saw: Saw, lays: readonly Lay[]) {
    this.#parts = parts;
    this.#kinds = parts.map((part) => parts.findIndex((other) => isAlike(part, other)));
    this.#knots = board.knots.map((knot) => reachingOut(knotBox(knot, board), board, saw));
    this.#saw = saw;
    this.#lays = lays;
  }

  #size(part: number, lay: Lay, axis: BoardAxis): number {
    const own = this.#parts[part]!;
    return axis === "x" ? own.length : own[OPPOSITE[lay][axis]] + 2 * this.#saw.pass;
  }

  /** How the parts come out of a box; undefined where they do not. */
  cut(parts: readonly number[], box: BoardBox): Cutting | undefined {
    if (parts.length === 1) return this.#one(parts[0]!, box);
    if (this.#sawnVolume(parts) > volumeOf(box) * (1 + BLUR)) return undefined;
    if (parts.some((part) => this.#laysIn(part, box).length === 0)) return undefined;
    const question = `${this.#kindsOf(parts)} ${BOARD_AXES.map((axis) => `${box[axis].from} ${box[axis].to}`)}`;
    if (this.#failed.has(question)) return undefined;
    for (const axis of BOARD_AXES)
      for (const [first, second] of this.#halves(parts)) {
        const at = this.#leastRoom(first, box, axis);
        if (at === undefined) continue;
        const [low, high] = splitBox(box, axis, at, this.#saw.kerf);
        const right = sizeOf(high[axis]) > 0 ? this.cut(second, high) : undefined;
        if (!right) continue;
        const left = this.cut(first, low)!;
        const own: Cut = { axis, kerf: { from: at, to: at + this.#saw.kerf }, piece: box };
        return {
          placed: [...left.placed, ...right.placed],
          cuts: [own, ...left.cuts, ...right.cuts],
          rest: [...left.rest, ...right.rest],
        };
      }
    this.#failed.add(question);
    return undefined;
  }

  /** In which a part by itself is no larger than a box. */
  #laysIn(part: number, box: BoardBox): Lay[] {
    return this.#lays.filter((lay) =>
      BOARD_AXES.every((axis) => this.#size(part, lay, axis) <= sizeOf(box[axis]) + BLUR),
    );
  }

  #kindsOf(parts: readonly number[]): string {
    return parts
      .map((part) => this.#kinds[part]!)
      .toSorted((a, b) => a - b)
      .join();
  }

  #sawnVolume(parts: readonly number[]): number {
    const around = 2 * this.#saw.pass;
    return parts.reduce((sum, part) => {
      const { length, height, thickness } = this.#parts[part]!;
      return sum + length * (height + around) * (thickness + around);
    }, 0);
  }

  /** Every way to part a list in two, both not empty; of ways alike the first. */
  #halves(parts: readonly number[]): [number[], number[]][] {
    const seen = new Set<string>();
    return halves(parts).filter(([first]) => {
      const kinds = this.#kindsOf(first);
      return seen.has(kinds) ? false : seen.add(kinds);
    });
  }

  /** The nearest place of a cut below which some parts come out of a box. */
  #leastRoom(parts: readonly number[], box: BoardBox, axis: BoardAxis): number | undefined {
    return this.#ends(parts, box, axis).find((at) =>
      this.cut(parts, { ...box, [axis]: { from: box[axis].from, to: at } }),
    );
  }

  /** Where the parts can end once they are pushed together against the box's side or a knot. Ascending. */
  #ends(parts: readonly number[], box: BoardBox, axis: BoardAxis): number[] {
    const { from, to } = box[axis];
    const starts = [from, ...this.#knots.map((knot) => knot[axis].to).filter((at) => at > from && at < to)];
    let reached = starts.map((at) => ({ at, used: [] as number[] }));
    const ends = new Set<number>();
    for (let more = true; more; ) {
      const next = reached.flatMap(({ at, used }) =>
        this.#unused(parts, used).flatMap((part) =>
          this.#laysIn(part, box).map((lay) => ({ end: at + this.#size(part, lay, axis), used: [...used, part] })),
        ),
      );
      const inside = next.filter(({ end }) => end <= to + BLUR);
      for (const { end } of inside) ends.add(end);
      const different = new Map(inside.map((each) => [`${each.end} ${this.#kindsOf(each.used)}`, each]));
      reached = [...different.values()].map(({ end, used }) => ({ at: end + this.#saw.kerf, used }));
      more = reached.length > 0;
    }
    return [...ends].toSorted((a, b) => a - b);
  }

  /** Of parts alike the first alone. */
  #unused(parts: readonly number[], used: readonly number[]): number[] {
    const left = parts.filter((part) => !used.includes(part));
    return left.filter((part, i) => left.findIndex((other) => this.#kinds[other] === this.#kinds[part]) === i);
  }

  #one(part: number, box: BoardBox): Cutting | undefined {
    for (const lay of this.#lays) {
      const place = this.#clearPlace(part, lay, box);
      if (!place) continue;
      const trims = trim(box, place, this.#saw.kerf);
      return { placed: [{ part, lay, box: place }], ...trims };
    }
    return undefined;
  }

  /** The lowest place in a box that holds no knot. */
  #clearPlace(part: number, lay: Lay, box: BoardBox): BoardBox | undefined {
    const places = (axis: BoardAxis) => {
      const size = this.#size(part, lay, axis);
      const starts = [box[axis].from, ...this.#knots.map((knot) => knot[axis].to).filter((at) => at > box[axis].from)];
      return starts
        .toSorted((a, b) => a - b)
        .map((from) => ({ from, to: from + size }))
        .filter(({ to }) => to <= box[axis].to + BLUR);
    };
    for (const x of places("x"))
      for (const y of places("y"))
        for (const z of places("z")) {
          const place = { x, y, z };
          if (!this.#knots.some((knot) => overlap(knot, place))) return place;
        }
    return undefined;
  }
}

/** A box that ends at the board's own long faces reaches out by what a part that keeps them does not lose there. */
export function reachingOut(box: BoardBox, board: Board, { pass, milling }: Saw): BoardBox {
  const out = pass + (board.surfaced ? milling : 0);
  const side = ({ from, to }: Span, size: number) => ({
    from: from <= BLUR ? from - out : from,
    to: to >= size - BLUR ? to + out : to,
  });
  return { x: box.x, y: side(box.y, board.width), z: side(box.z, board.thickness) };
}

/** Every way to part a list in two, both not empty. */
function halves(parts: readonly number[]): [number[], number[]][] {
  const ways = 2 ** parts.length;
  return Array.from({ length: ways - 2 }, (_, i) => {
    const mask = i + 1;
    const inFirst = (k: number) => ((mask >> k) & 1) === 1;
    return [parts.filter((_, k) => inFirst(k)), parts.filter((_, k) => !inFirst(k))];
  });
}

const splitBox = (box: BoardBox, axis: BoardAxis, at: number, kerf: number): [BoardBox, BoardBox] => [
  { ...box, [axis]: { from: box[axis].from, to: at } },
  { ...box, [axis]: { from: at + kerf, to: box[axis].to } },
];

/** Cuts that free one part from its piece: across first, then along, then through. Waste that a kerf would turn to dust is planed off. */
function trim(box: BoardBox, part: BoardBox, kerf: number): { cuts: Cut[]; rest: BoardBox[] } {
  const cuts: Cut[] = [];
  const rest: BoardBox[] = [];
  let piece = box;
  for (const axis of BOARD_AXES) {
    const { from, to } = piece[axis];
    const planed = axis === "z" ? Math.max(kerf, LEAST_RESAWN) : kerf;
    if (to - part[axis].to > planed + BLUR) {
      cuts.push({ axis, kerf: { from: part[axis].to, to: part[axis].to + kerf }, piece });
      rest.push({ ...piece, [axis]: { from: part[axis].to + kerf, to } });
    }
    piece = { ...piece, [axis]: { from, to: part[axis].to } };
    if (part[axis].from - from > planed + BLUR) {
      cuts.push({ axis, kerf: { from: part[axis].from - kerf, to: part[axis].from }, piece });
      rest.push({ ...piece, [axis]: { from, to: part[axis].from - kerf } });
    }
    piece = { ...piece, [axis]: part[axis] };
  }
  return { cuts, rest };
}
