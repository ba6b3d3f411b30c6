// Trigonometry in degrees, exact at right angles; the only file that knows radians.

const RADIANS_PER_DEGREE = Math.PI / 180;

/** Sine of an angle in degrees; exact at every multiple of 90. */
export function sinDeg(angle: number): number {
  const quarter = angle / 90;
  if (Number.isInteger(quarter)) return [0, 1, 0, -1][((quarter % 4) + 4) % 4]!;
  return Math.sin(angle * RADIANS_PER_DEGREE);
}

/** Cosine of an angle in degrees; exact at every multiple of 90. */
export const cosDeg = (angle: number): number => sinDeg(angle + 90);

/** Tangent of an angle in degrees; infinite at 90. */
export const tanDeg = (angle: number): number => sinDeg(angle) / cosDeg(angle);

/** Cotangent of an angle in degrees; 0 at 90, infinite at 0. */
export const cotDeg = (angle: number): number => cosDeg(angle) / sinDeg(angle);

/** Angle in degrees (0 … 180 or −180 … 0) of the direction (x, y) from the x axis. */
export const atan2Deg = (y: number, x: number): number => Math.atan2(y, x) / RADIANS_PER_DEGREE;

/** Angle in degrees whose tangent is given. */
export const atanDeg = (tangent: number): number => Math.atan(tangent) / RADIANS_PER_DEGREE;

/** Angle in degrees, 0 … 180, whose cosine is given. */
export const acosDeg = (cosine: number): number => Math.acos(cosine) / RADIANS_PER_DEGREE;

/** Length of an arc: radius (mm) times the swept angle (degrees). */
export const arcLength = (radius: number, sweep: number): number => radius * Math.abs(sweep) * RADIANS_PER_DEGREE;
