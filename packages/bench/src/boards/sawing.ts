// What is sawn out of boards, with what, and how it comes out.

import type { Span } from "../span.ts";
import type { BoardAxis, BoardBox } from "./board.ts";

/** A part as sawn. `height` stands across the plane's sole, `thickness` across the plane; its length lies along the grain. */
export interface SawnPart {
  readonly name: string;
  readonly length: number;
  readonly height: number;
  readonly thickness: number;
}

/** `ripped`: its thickness along the board's width; `resawn`: its thickness through the board's thickness. */
export type Lay = "ripped" | "resawn";

export interface PlacedPart {
  readonly part: number;
  readonly lay: Lay;
  /** Within the board, its jointing passes and milling allowances in it. */
  readonly box: BoardBox;
}

/** A cut right through a piece; its kerf in the waste. */
export interface Cut {
  readonly axis: BoardAxis;
  readonly kerf: Span;
  /** The piece that it parts. */
  readonly piece: BoardBox;
}

export interface Cutting {
  readonly placed: readonly PlacedPart[];
  /** In the order of sawing. */
  readonly cuts: readonly Cut[];
  /** What is left whole. */
  readonly rest: readonly BoardBox[];
}

export interface Saw {
  readonly kerf: number;
  /** What jointing takes off each sawn face that a part keeps. */
  readonly pass: number;
  /** What a part has for milling on each face. */
  readonly milling: number;
}

/** Whether two parts are of the same size as sawn. */
export const isAlike = (a: SawnPart, b: SawnPart): boolean =>
  a.length === b.length && a.height === b.height && a.thickness === b.thickness;
