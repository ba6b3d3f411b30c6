// The billet at hand: whether the plane comes out of it, which way round, how many times, and what is left over.
import type { Elevation } from "@lamplane/parameters/elevation";

/** Length along the grain, width across what will be the sole, height. mm. */
export interface Box {
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

/** A piece left over, its grain along its length; width no less than thickness. mm. */
export interface Board {
  readonly from: "end" | "side" | "top";
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

export interface BilletFit {
  readonly needed: Box;
  /** As measured; 0 where a size is not given. */
  readonly measured: Box;
  /** `undefined` where no size is given at all. */
  readonly fits: boolean | undefined;
  /** On its side the billet's width and height are exchanged. As measured, where both ways go or neither. */
  readonly lay: "as measured" | "on its side";
  /** Angle of the rings to the sole as it lies, degrees: on its side they stand at 90 less what they were. */
  readonly rings: number;
  /** The billet's sizes as it lies; what is not given is taken as needed. */
  readonly lies: Box;
  /** What is missing of each size as it lies, and what is left over; 0 where none. */
  readonly short: Box;
  readonly spare: Box;
  /** How many planes come out, one beside, behind and above the other. 0 where none does. */
  readonly planes: { readonly along: number; readonly across: number; readonly up: number; readonly total: number };
  readonly boards: readonly Board[];
}

/** Thinner than this a leftover is a splinter, mm. */
const THINNEST_BOARD = 3;

/** The billet judged against the plane. @see plane geometry: Widths and stock */
export function billetFit({ design, widths }: Elevation): BilletFit {
  const { kerf, jointingPass, millingAllowance } = design.shop;
  const measured = design.billet;
  const needed = {
    length: widths.blankLength,
    width: widths.billet,
    height: widths.blankHeight + 2 * millingAllowance,
  };
  const onSide = { ...measured, width: measured.height, height: measured.width };
  const given = measured.length + measured.width + measured.height > 0;
  const mayTurn = measured.width > 0 && measured.height > 0;
  const turns = mayTurn && !goesInto(needed, measured) && goesInto(needed, onSide);
  const lies = filled(turns ? onSide : measured, needed);
  const fits = goesInto(needed, lies);
  return {
    needed,
    measured,
    fits: given ? fits : undefined,
    lay: turns ? "on its side" : "as measured",
    rings: turns ? 90 - design.wood.rings : design.wood.rings,
    lies,
    short: boxOf((side) => Math.max(0, needed[side] - lies[side])),
    spare: boxOf((side) => Math.max(0, lies[side] - needed[side])),
    planes: planesIn(needed, lies, kerf, jointingPass),
    boards: fits ? boardsLeft(needed, lies, kerf) : [],
  };
}

const boxOf = (size: (side: keyof Box) => number): Box => ({
  length: size("length"),
  width: size("width"),
  height: size("height"),
});

/** Sizes that are not given are not judged. */
const goesInto = (needed: Box, billet: Box): boolean =>
  (["length", "width", "height"] as const).every((side) => billet[side] === 0 || needed[side] <= billet[side]);

const filled = (billet: Box, needed: Box): Box => boxOf((side) => (billet[side] === 0 ? needed[side] : billet[side]));

/** Along the grain one more cut parts two planes; across it and up each cut leaves two more faces to joint. */
function planesIn(needed: Box, { length, width, height }: Box, kerf: number, pass: number): BilletFit["planes"] {
  const times = (size: number, one: number, lost: number) => Math.floor((size + lost) / (one + lost));
  const along = times(length, needed.length, kerf);
  const across = times(width, needed.width, kerf + 2 * pass);
  const up = times(height, needed.height, kerf + 2 * pass);
  const total = along * across * up;
  return { along, across, up, total };
}

/** Left over from one plane: the end is crosscut first, then the top is sawn off, then the side. */
function boardsLeft(needed: Box, lies: Box, kerf: number): Board[] {
  const board = (from: Board["from"], length: number, a: number, b: number): Board => ({
    from,
    length,
    width: Math.max(a, b),
    thickness: Math.min(a, b),
  });
  return [
    board("end", lies.length - needed.length - kerf, lies.width, lies.height),
    board("top", needed.length, lies.width, lies.height - needed.height - kerf),
    board("side", needed.length, lies.width - needed.width - kerf, needed.height),
  ].filter(({ length, thickness }) => Math.min(length, thickness) >= THINNEST_BOARD);
}
