// How wide the mouth is at any height of the sole, and the other way round; exact for straight and curved ramps.

import { cotDeg } from "@lamplane/geometry";
import { type Elevation, rampAngleAt, rampXAt } from "@lamplane/parameters/elevation";

/**
 * Mouth opening once `off` mm more than planned are taken off the sole and the edge is set to the new sole, mm.
 * Negative `off` stands before the truing is done; a negative opening means that the iron does not come through yet.
 * @see plane geometry: mouth after δ more off the sole, with the ramp as it stands at that height
 */
export const mouthOpeningAt = ({ frame, ramp }: Elevation, off: number): number =>
  frame.mouthX + off * cotDeg(frame.bedAngle) - rampXAt(ramp, off);

/** How far the mouth opens for each mm taken off there: cot β + cot of the ramp's own angle at that height. */
export const mouthGrowthAt = ({ frame, ramp }: Elevation, off: number): number =>
  cotDeg(frame.bedAngle) + cotDeg(rampAngleAt(ramp, off));

/** How much more than planned is off the sole where the mouth has this opening, mm: `mouthOpeningAt` turned round, exactly. */
export function removalForOpening(plane: Elevation, opening: number): number {
  const { frame, ramp } = plane;
  const { curve } = ramp;
  const straight = (opening - mouthOpeningAt(plane, 0)) / mouthGrowthAt(plane, 0);
  if (!curve || straight <= curve.begin.y) return straight;
  const beyond = opening - mouthOpeningAt(plane, curve.end.y);
  if (beyond >= 0) return curve.end.y + beyond / mouthGrowthAt(plane, curve.end.y);
  // On the arc, u above its centre: u·cot β + k = √(R² − u²), of which the upper root is the ramp.
  const lean = cotDeg(frame.bedAngle);
  const k = frame.mouthX + curve.centre.y * lean - curve.centre.x - opening;
  const u = (-lean * k + Math.sqrt((1 + lean * lean) * curve.radius ** 2 - k * k)) / (1 + lean * lean);
  return curve.centre.y + u;
}
