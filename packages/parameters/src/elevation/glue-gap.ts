// What stands between the blocks' tips at glue-up, and how much sole may be left for truing.
import type { Elevation } from "./elevation.ts";
import { mouthGrowthAt } from "./mouth-opening.ts";

/** glueGap = bedTipFromEnd − rampTipFromEnd; below 0 the blocks' tips collide. */
export const glueGap = ({ points }: Elevation): number => points.bedTip.x - points.rampTip.x;

/**
 * Least gap between the blocks as cut, at glue-up; below 0 they collide. The bed's chamfered face stands square, whole until
 * the sole is trued, and the slopes lean apart on their way up, so that the corners on the blank's sole are nearest. mm.
 */
export const tipGap = ({ points }: Pick<Elevation, "points">): number => points.bedChamfer.x - points.rampTip.x;

/** Greatest sole allowance with which the blocks do not collide: the corners close in by mouthGrowth for each mm. mm. */
export function greatestAllowance(e: Elevation): number {
  const { allowance } = e.design.sole;
  return allowance + tipGap(e) / mouthGrowthAt(e, -allowance);
}
