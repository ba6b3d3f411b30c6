// A board at hand, and what of it is still whole: x along the grain from its end, y across its width, z through its thickness. mm.
import type { Span } from "../span.ts";

/** What no part may hold. Through the whole thickness. */
export interface Knot {
  /** Along the board, from its end. */
  readonly from: number;
  readonly to: number;
  /** Across the board, from its left edge; the whole width where absent. */
  readonly across?: { readonly from: number; readonly to: number };
}

export interface Board {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  /** Whether its four long faces are surfaced already: then a part that keeps one needs no milling there. */
  readonly surfaced: boolean;
  /** Angle of the rings to its wide faces, degrees: 0 flat sawn. */
  readonly rings: number;
  /** Which of its wide faces is nearer to the heart, as it lies. */
  readonly heart: "up" | "down";
  /** Absent where it is any wood that the plane asks for. */
  readonly species?: string;
  /** Of the whole board, in the maker's money; 0 where it is at hand. */
  readonly price: number;
  readonly knots: readonly Knot[];
}

export type BoardAxis = "x" | "y" | "z";
export const BOARD_AXES: readonly BoardAxis[] = ["x", "y", "z"];

export type BoardBox = Readonly<Record<BoardAxis, Span>>;

/** A stretch of a board that is still whole. */
export interface Slab {
  /** Place of the board in the list. */
  readonly board: number;
  readonly box: BoardBox;
}

export const sizeOf = ({ from, to }: Span): number => to - from;

export const volumeOf = (box: BoardBox): number => BOARD_AXES.reduce((product, axis) => product * sizeOf(box[axis]), 1);

export const wholeBoard = ({ length, width, thickness }: Board, board: number): Slab => ({
  board,
  box: { x: { from: 0, to: length }, y: { from: 0, to: width }, z: { from: 0, to: thickness } },
});

export const knotBox = ({ from, to, across }: Knot, { width, thickness }: Board): BoardBox => ({
  x: { from, to },
  y: across ?? { from: 0, to: width },
  z: { from: 0, to: thickness },
});

const BLUR = 1e-9;

/** Whether two boxes have wood in common; boxes that only touch have none. */
export const overlap = (a: BoardBox, b: BoardBox): boolean =>
  BOARD_AXES.every((axis) => a[axis].from < b[axis].to - BLUR && b[axis].from < a[axis].to - BLUR);
