// Directions on the sheet and in space from angles in degrees.
import { cosDeg, sinDeg } from "@lamplane/geometry";

/** Cosine and sine of an angle in degrees. */
export const cosSinDegrees = (angle: number): [cosine: number, sine: number] => [cosDeg(angle), sinDeg(angle)];
