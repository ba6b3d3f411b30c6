// Small pieces out of boards that are left over: sticks along the grain, slice by slice. What it promises can be sawn.
import type { Board } from "./billet.ts";

/** A stick wanted: as sawn, grain along its length. mm. */
export interface Stick {
  readonly piece: string;
  readonly count: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

export interface Taken {
  readonly piece: string;
  readonly wanted: number;
  /** How many come out, after the pieces before it have been taken. */
  readonly count: number;
  readonly boards: readonly Board["from"][];
}

/** Rows of sticks that lie side by side in a board's section, whichever way they are turned. */
function perSlice(stick: Stick, board: Board, kerf: number): number {
  const rows = (room: number, size: number) => Math.floor((room + kerf) / (size + kerf) + 1e-9);
  return Math.max(
    rows(board.width, stick.width) * rows(board.thickness, stick.thickness),
    rows(board.width, stick.thickness) * rows(board.thickness, stick.width),
  );
}

/**
 * Takes the sticks one kind after the other, each from the smallest board that still holds one; a slice is crosscut off
 * the board's end and ripped into sticks. A better cutter may get more out; never less.
 */
export function sticksFromBoards(sticks: readonly Stick[], boards: readonly Board[], kerf: number): Taken[] {
  const left: { -readonly [K in keyof Board]: Board[K] }[] = boards.map((board) => ({ ...board }));
  return sticks.map((stick) => {
    const from = new Set<Board["from"]>();
    let count = 0;
    const volume = (b: Board) => b.length * b.width * b.thickness;
    for (const board of [...left].sort((a, b) => volume(a) - volume(b))) {
      const each = perSlice(stick, board, kerf);
      while (each > 0 && count < stick.count && board.length >= stick.length) {
        count = Math.min(stick.count, count + each);
        board.length -= stick.length + kerf;
        from.add(board.from);
      }
    }
    return { piece: stick.piece, wanted: stick.count, count, boards: [...from] };
  });
}
