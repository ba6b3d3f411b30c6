// The billet as it lies under the saw: on its side where the plane comes out of it only that way.
import type { Design } from "../table/index.ts";
import type { Widths } from "./widths.ts";

/** Length along the grain, width across what will be the sole, height. mm. */
export interface BlankSize {
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

export interface BilletAsItLies {
  readonly needed: BlankSize;
  /** As measured, lying as it must; what is not measured is taken as needed. */
  readonly lies: BlankSize;
  readonly isOnSide: boolean;
}

const BILLET_SIDES = ["length", "width", "height"] as const satisfies readonly (keyof BlankSize)[];

/** On its side the billet's width and height are exchanged. As measured, where both ways go or neither. */
export function billetAsItLies(design: Design, widths: Widths): BilletAsItLies {
  const measured = design.billet;
  const needed = {
    length: widths.blankLength,
    width: widths.billet,
    height: widths.blankHeight + 2 * design.shop.millingAllowance,
  };
  const onSide = { ...measured, width: measured.height, height: measured.width };
  const mayTurn = measured.width > 0 && measured.height > 0;
  const isOnSide = mayTurn && !fitsInto(needed, measured) && fitsInto(needed, onSide);
  return { needed, lies: fillMissing(isOnSide ? onSide : measured, needed), isOnSide };
}

/** Sizes that are not given are not judged. */
export const fitsInto = (needed: BlankSize, billet: BlankSize): boolean =>
  BILLET_SIDES.every((side) => billet[side] === 0 || needed[side] <= billet[side]);

const fillMissing = (billet: BlankSize, needed: BlankSize): BlankSize => ({
  length: billet.length || needed.length,
  width: billet.width || needed.width,
  height: billet.height || needed.height,
});

/** Whether more is left beside the second cheek than a kerf takes, so that a third cut frees it. */
export const hasThirdCut = ({ billet }: Widths, width: number, kerf: number): boolean => width - billet > kerf;
