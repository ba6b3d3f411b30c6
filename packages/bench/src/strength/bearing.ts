// What wood bears at an angle to its grain. Averages of clear wood, not design values: indicative only.
import { cosDeg, sinDeg } from "@lamplane/geometry";

/**
 * Strength at an angle to the grain, between that along it and that across it. @param angle degrees from the grain, 0 … 90
 * @param power 2 for compression. @see Wood Handbook, eq. 5-2 (number from memory), Hankinson's formula
 */
export const strengthAtAngle = (along: number, across: number, angle: number, power = 2): number =>
  (along * across) / (along * sinDeg(angle) ** power + across * cosDeg(angle) ** power);

/**
 * Angle between the cheek's grain (along the sole) and a thrust square off a face that stands at `slope` to the sole,
 * degrees, 0 … 90. @param slope degrees, 0 … 90: the wedge's upper side for the pin
 */
export const thrustToGrain = (slope: number): number => Math.abs(90 - slope);

/** Where the dowel formula changes, and ends, mm: 1/4 in and 1 in. */
const SMALL_DOWEL = 6.35;
const LARGEST_DOWEL = 25.4;

/**
 * Bearing strength of wood under a steel dowel, MPa, as a second opinion on the bearing of a tenon.
 * @param specificGravity ovendry weight on ovendry volume, a few percent above the handbook's
 * @param diameter mm, up to 25.4. @param angle degrees from the grain
 * @returns undefined for a dowel larger than the formula was published for
 * @see NDS table 12.3.3 (quoted; below 1/4 in from memory): 11 200·G and 6 100·G^1.45/√D psi, 16 600·G^1.84 below 1/4 in
 */
export function dowelBearingStrength(specificGravity: number, diameter: number, angle: number): number | undefined {
  if (diameter > LARGEST_DOWEL) return undefined;
  if (diameter < SMALL_DOWEL) return 114.45297 * specificGravity ** 1.84;
  const along = 77.22128 * specificGravity;
  const across = (211.9657 * specificGravity ** 1.45) / Math.sqrt(diameter);
  return strengthAtAngle(along, across, angle);
}
