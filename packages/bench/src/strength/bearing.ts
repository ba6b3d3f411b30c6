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
