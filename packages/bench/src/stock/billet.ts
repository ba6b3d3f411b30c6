// The billet at hand: whether the plane comes out of it, which way round, how many times, and what is left over.
import { type BlankSize, billetAsItLies, type Elevation, fitsInto } from "@lamplane/parameters/elevation";

export type { BlankSize } from "@lamplane/parameters/elevation";

/** A piece left over, its grain along its length; width no less than thickness. mm. */
export interface Leftover {
  readonly from: "end" | "side" | "top";
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

export interface BilletFit {
  readonly needed: BlankSize;
  /** As measured; 0 where a size is not given. */
  readonly measured: BlankSize;
  /** `undefined` where no size is given at all. */
  readonly fits: boolean | undefined;
  /** On its side the billet's width and height are exchanged. As measured, where both ways go or neither. */
  readonly lay: "as measured" | "on its side";
  /** Angle of the rings to the sole as it lies, degrees: on its side they stand at 90 less what they were. */
  readonly rings: number;
  /** The billet's sizes as it lies; what is not given is taken as needed. */
  readonly lies: BlankSize;
  /** What is missing of each size as it lies, and what is left over; 0 where none. */
  readonly short: BlankSize;
  readonly spare: BlankSize;
  /** How many planes come out, one beside, behind and above the other. 0 where none does. */
  readonly planes: { readonly along: number; readonly across: number; readonly up: number; readonly total: number };
  readonly boards: readonly Leftover[];
}

/** Thinner than this a leftover is a splinter, mm. */
const THINNEST_BOARD = 3;

/** The billet judged against the plane. @see plane geometry: Widths and stock */
export function billetFit({ design, widths }: Elevation): BilletFit {
  const { kerf, jointingPass } = design.shop;
  const measured = design.billet;
  const { needed, lies, isOnSide } = billetAsItLies(design, widths);
  const given = measured.length + measured.width + measured.height > 0;
  const fits = fitsInto(needed, lies);
  return {
    needed,
    measured,
    fits: given ? fits : undefined,
    lay: isOnSide ? "on its side" : "as measured",
    rings: isOnSide ? 90 - design.wood.rings : design.wood.rings,
    lies,
    short: makeBlankSize((side) => Math.max(0, needed[side] - lies[side])),
    spare: makeBlankSize((side) => Math.max(0, lies[side] - needed[side])),
    planes: countPlanes(needed, lies, kerf, jointingPass),
    boards: fits ? leftoverBoards(needed, lies, kerf) : [],
  };
}

const makeBlankSize = (size: (side: keyof BlankSize) => number): BlankSize => ({
  length: size("length"),
  width: size("width"),
  height: size("height"),
});

/** Along the grain one more cut parts two planes; across it and up each cut leaves two more faces to joint. */
function countPlanes(
  needed: BlankSize,
  { length, width, height }: BlankSize,
  kerf: number,
  pass: number,
): BilletFit["planes"] {
  const times = (size: number, one: number, lost: number) => Math.floor((size + lost) / (one + lost));
  const along = times(length, needed.length, kerf);
  const across = times(width, needed.width, kerf + 2 * pass);
  const up = times(height, needed.height, kerf + 2 * pass);
  const total = along * across * up;
  return { along, across, up, total };
}

/** Left over from one plane: the end is crosscut first, then the top is sawn off, then the side. */
function leftoverBoards(needed: BlankSize, lies: BlankSize, kerf: number): Leftover[] {
  const board = (from: Leftover["from"], length: number, a: number, b: number): Leftover => ({
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
