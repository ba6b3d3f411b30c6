// Small pieces out of boards that are left over: sticks along the grain, each freed by straight cuts right through.
// What it promises can be sawn; a better cutter may get more out.
import type { Leftover } from "./billet.ts";

/** A stick wanted: as sawn, grain along its length. mm. */
export interface Stick {
  readonly piece: string;
  readonly count: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

export interface StickSupply {
  readonly piece: string;
  readonly wanted: number;
  /** How many come out, after the pieces before it have been taken. */
  readonly count: number;
  readonly boards: readonly Leftover["from"][];
}

/** Takes the sticks one after the other, each from the smallest board, or rest of one, that holds it. @param kerf mm */
export function sticksFromBoards(sticks: readonly Stick[], boards: readonly Leftover[], kerf: number): StickSupply[] {
  let left = [...boards];
  return sticks.map((stick) => {
    const from: Leftover["from"][] = [];
    while (from.length < stick.count) {
      const board = smallestHolding(left, stick);
      if (!board) break;
      from.push(board.from);
      left = [...left.filter((other) => other !== board), ...boardRemainders(board, stick, kerf)];
    }
    return { piece: stick.piece, wanted: stick.count, count: from.length, boards: [...new Set(from)] };
  });
}

const volume = ({ length, width, thickness }: Leftover): number => length * width * thickness;

/** Width is no less than thickness, of boards and sticks: what fits at all fits this way round. */
const boardHolds = (board: Leftover, stick: Stick): boolean =>
  board.length >= stick.length && board.width >= stick.width && board.thickness >= stick.thickness;

const smallestHolding = (boards: readonly Leftover[], stick: Stick): Leftover | undefined =>
  boards.filter((board) => boardHolds(board, stick)).sort((a, b) => volume(a) - volume(b))[0];

/** What is left of a board once a slice is crosscut off it, the slice ripped, and the strip resawn. */
function boardRemainders({ from, length, width, thickness }: Leftover, stick: Stick, kerf: number): Leftover[] {
  const rest = (along: number, a: number, b: number): Leftover => ({
    from,
    length: along,
    width: Math.max(a, b),
    thickness: Math.min(a, b),
  });
  return [
    rest(length - stick.length - kerf, width, thickness),
    rest(stick.length, width - stick.width - kerf, thickness),
    rest(stick.length, stick.width, thickness - stick.thickness - kerf),
  ].filter((board) => board.length > 0 && board.thickness > 0);
}
