// What stands between the blocks' tips at glue-up, and how much sole may be left for truing.
import { cotDeg } from "@lamplane/geometry";
import { type Elevation, ironOnSole, mouthGrowth } from "./elevation.ts";

/** glueGap = bedTipX − rampTipX; below 0 the blocks' tips collide. */
export const glueGap = ({ points }: Elevation): number => points.bedTip.x - points.rampTip.x;

/** How much of the feather chamfer stands in the wood that truing takes off, mm. */
export const chamferBeforeTruing = ({ bed, sole }: Elevation["design"]): number =>
  Math.min(bed.featherChamfer, sole.allowance);

/** How much of the feather chamfer's help there is before the sole is trued: c·cot β with c at most the allowance. mm. */
export const chamferGain = ({ design, frame }: Pick<Elevation, "design" | "frame">): number =>
  chamferBeforeTruing(design) * cotDeg(frame.bedAngle);

/** Greatest sole allowance with which the blocks do not collide, mm. */
export const greatestAllowance = (e: Elevation): number => {
  const { opening } = e.design.mouth;
  const byChamfer = (ironOnSole(e) + opening + e.design.bed.featherChamfer * cotDeg(e.frame.bedAngle)) / mouthGrowth(e);
  const byRamp = (ironOnSole(e) + opening) / cotDeg(e.ramp.angle);
  return e.design.bed.featherChamfer <= byChamfer ? byChamfer : byRamp;
};
