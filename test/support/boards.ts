// Judges of what is cut out of boards: every cut at whole places tried, and an outside polygon library for what lies where.
import { FillRule, intersectD, type PathsD } from "clipper2-ts";
import { type Board, type BoardBox, knotBox, overlap, wholeBoard } from "../../packages/bench/src/boards/board.ts";
import type { BodyLayout } from "../../packages/bench/src/boards/plane-boards.ts";
import type { Lay, SawnPart } from "../../packages/bench/src/boards/sawing.ts";

export const board = (length: number, width: number, thickness: number, more: Partial<Board> = {}): Board => ({
  name: "board",
  length,
  width,
  thickness,
  surfaced: false,
  rings: 0,
  heart: "down",
  price: 0,
  knots: [],
  ...more,
});
type SixSides = readonly [number, number, number, number, number, number];

/** Whether parts of whole sizes come out of a board by any cuts at whole places, each right through: tried one and all. */
export class EveryCut {
  readonly #known = new Map<string, boolean>();
  readonly #parts: readonly SawnPart[];
  readonly #knots: readonly BoardBox[];
  readonly #lays: readonly Lay[];
  constructor(parts: readonly SawnPart[], from: Board, lays: readonly Lay[]) {
    this.#parts = parts;
    this.#knots = from.knots.map((knot) => knotBox(knot, from));
    this.#lays = lays;
  }
  comesOut(mask: number, box: SixSides): boolean {
    const key = `${mask} ${box}`;
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const found = this.#isSingle(mask) ? this.#one(Math.log2(mask), box) : this.#parted(mask, box);
    this.#known.set(key, found);
    return found;
  }
  #isSingle = (mask: number) => (mask & (mask - 1)) === 0;
  #parted(mask: number, box: readonly [number, number, number, number, number, number]): boolean {
    for (let axis = 0; axis < 3; axis++)
      for (let at = box[2 * axis]! + 1; at + 1 < box[2 * axis + 1]!; at++) {
        const low = box.with(2 * axis + 1, at) as typeof box extends readonly [...infer T] ? T : never;
        const high = box.with(2 * axis, at + 1) as typeof low;
        for (let first = (mask - 1) & mask; first > 0; first = (first - 1) & mask)
          if (this.comesOut(first, low as never) && this.comesOut(mask & ~first, high as never)) return true;
      }
    return false;
  }
  #one(part: number, [x0, x1, y0, y1, z0, z1]: readonly [number, number, number, number, number, number]): boolean {
    const { length, height, thickness } = this.#parts[part]!;
    for (const lay of this.#lays) {
      const [dy, dz] = lay === "ripped" ? [thickness, height] : [height, thickness];
      for (let x = x0; x + length <= x1; x++)
        for (let y = y0; y + dy <= y1; y++)
          for (let z = z0; z + dz <= z1; z++) {
            const place = { x: { from: x, to: x + length }, y: { from: y, to: y + dy }, z: { from: z, to: z + dz } };
            if (!this.#knots.some((knot) => overlap(knot, place))) return true;
          }
    }
    return false;
  }
}

const rectangle = ({ x, y }: BoardBox): PathsD => [
  [
    { x: x.from, y: y.from },
    { x: x.to, y: y.from },
    { x: x.to, y: y.to },
    { x: x.from, y: y.to },
  ],
];
const area = (paths: PathsD): number =>
  Math.abs(
    paths.reduce(
      (sum, path) =>
        sum +
        path.reduce(
          (own, p, i) => own + (p.x * path[(i + 1) % path.length]!.y - path[(i + 1) % path.length]!.x * p.y) / 2,
          0,
        ),
      0,
    ),
  );
/** Area that two boxes share as their outlines lie on the board's face, by the polygon library; 0 where they lie one above the other. */
export const shared = (a: BoardBox, b: BoardBox): number =>
  Math.min(a.z.to, b.z.to) - Math.max(a.z.from, b.z.from) < 1e-6
    ? 0
    : area(intersectD(rectangle(a), rectangle(b), FillRule.NonZero, 6));

/** What is wrong with a layout: parts that overlap, leave their board, cross a knot, are cut too small or are cut through. */
export function troubles(
  cuttings: BodyLayout["cuttings"],
  boards: readonly Board[],
  parts: readonly SawnPart[],
  kerf: number,
  milling = 1.5,
): string[] {
  const found: string[] = [];
  const all = cuttings.flatMap(({ placed, slab }) => placed.map((each) => ({ ...each, board: slab.board })));
  all.forEach((each, i) => {
    const from = boards[each.board]!;
    const whole = wholeBoard(from, each.board).box;
    const own = area(rectangle(each.box));
    if (Math.abs(shared(each.box, whole) - own) > 1e-3) found.push(`${i} leaves the board`);
    if (each.box.z.from < -1e-9 || each.box.z.to > from.thickness + 1e-9)
      found.push(`${i} leaves the board's thickness`);
    if (from.knots.some((knot) => shared(each.box, knotBox(knot, from)) > 1e-3)) found.push(`${i} crosses a knot`);
    for (const other of all.slice(i + 1))
      if (other.board === each.board && shared(each.box, other.box) > 1e-3) found.push(`${i} overlaps another`);
    const { length, height, thickness } = parts[each.part]!;
    const sizes = {
      x: length,
      y: each.lay === "ripped" ? thickness : height,
      z: each.lay === "ripped" ? height : thickness,
    };
    for (const axis of ["x", "y", "z"] as const) {
      const surfacedSides = from.surfaced ? 2 * milling : 0;
      if (each.box[axis].to - each.box[axis].from < sizes[axis] - surfacedSides - 1e-6)
        found.push(`${i} is short along ${axis}`);
    }
  });
  for (const { cuts, slab } of cuttings)
    for (const { axis, kerf: dust, piece } of cuts) {
      const swept: BoardBox = { ...piece, [axis]: dust };
      if (dust.to - dust.from > kerf + 1e-9) found.push("a kerf is too wide");
      for (const each of all)
        if (each.board === slab.board && overlap(each.box, swept)) found.push("a cut goes through a part");
    }
  return found;
}
