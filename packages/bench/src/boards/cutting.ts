// Whether some parts come out of one slab by cuts that each go right through, and how: exact, for the few parts of one plane.

import type { Span } from "../span.ts";
import { BOARD_AXES, type Board, type BoardAxis, type BoardBox, type Slab, sizeOf } from "./board.ts";
import type { Cutting, Lay, Saw, SawnPart } from "./sawing.ts";
import { BLUR, reachingOut, SlabSearch } from "./slab-search.ts";

const clip = ({ from, to }: Span, size: number): Span => ({ from: Math.max(0, from), to: Math.min(size, to) });

const clipBox = (box: BoardBox, { length, width, thickness }: Board): BoardBox => ({
  x: clip(box.x, length),
  y: clip(box.y, width),
  z: clip(box.z, thickness),
});

/**
 * How the parts come out of a slab, the lays that are allowed tried in their order.
 * @returns undefined where they do not, whatever cuts are made
 */
export function cutParts(
  parts: readonly SawnPart[],
  slab: Slab,
  board: Board,
  saw: Saw,
  lays: readonly Lay[],
): Cutting | undefined {
  const cutter = new SlabSearch(parts, board, saw, lays);
  const found = cutter.cut(
    parts.map((_, i) => i),
    reachingOut(slab.box, board, saw),
  );
  if (!found) return undefined;
  const inBoard = (box: BoardBox) => clipBox(box, board);
  return {
    placed: found.placed.map((placed) => ({ ...placed, box: inBoard(placed.box) })),
    cuts: found.cuts
      .map((cut) => ({ ...cut, kerf: clip(cut.kerf, sizeAlong(board, cut.axis)), piece: inBoard(cut.piece) }))
      .filter(({ kerf }) => sizeOf(kerf) > BLUR),
    rest: found.rest.map(inBoard).filter((box) => BOARD_AXES.every((axis) => sizeOf(box[axis]) > BLUR)),
  };
}

const sizeAlong = ({ length, width, thickness }: Board, axis: BoardAxis): number =>
  axis === "x" ? length : axis === "y" ? width : thickness;

/** How parts come out of a slab, or that they do not. */
export type CutParts = typeof cutParts;

/** The same, remembering what was tried: a class asks the same of the same slabs again and again. */
export function rememberedCuts(): CutParts {
  const known = new Map<string, Cutting | undefined>();
  return (parts, slab, board, saw, lays) => {
    const sizes = parts.map(({ length, height, thickness }) => [length, height, thickness]);
    const question = JSON.stringify([sizes, slab, saw, lays]);
    if (!known.has(question)) known.set(question, cutParts(parts, slab, board, saw, lays));
    return known.get(question);
  };
}
