// How wide the mouth is at any height of the sole, and the other way round; exact for straight and curved ramps.
import { cotDeg } from "@lamplane/geometry";
import type { Elevation } from "./elevation.ts";
import { type Ramp, rampAngleAt, rampXAt } from "./ramp.ts";

/** What the mouth lies between. */
export type MouthSides = Pick<Elevation, "design" | "frame" | "ramp">;

/** Height over the trued sole up to which a ramp is straight. */
const straightTo = ({ curve }: Ramp): number => curve?.begin.y ?? Number.POSITIVE_INFINITY;

/**
 * Mouth opening once `off` mm more than planned are taken off the sole and the edge is set to the new sole, mm.
 * Negative `off` stands before the truing is done; a negative opening means that the iron does not come through yet.
 * @see plane geometry: mouth after δ more off the sole, with the ramp as it stands at that height
 */
export function mouthOpeningAt(sides: MouthSides, off: number): number {
  const { design, frame, ramp } = sides;
  if (Math.max(0, off) <= straightTo(ramp)) return design.mouth.opening + off * mouthGrowthAt(sides, off);
  return frame.mouthX + off * cotDeg(frame.bedAngle) - rampXAt(ramp, off);
}

/** How far the mouth opens for each mm taken off there: cot β + cot of the ramp's own angle at that height. */
export const mouthGrowthAt = ({ frame, ramp }: Pick<MouthSides, "frame" | "ramp">, off: number): number =>
  cotDeg(frame.bedAngle) + cotDeg(rampAngleAt(ramp, off));

/** The same at the trued sole. */
export const mouthGrowth = (sides: Pick<MouthSides, "frame" | "ramp">): number => mouthGrowthAt(sides, 0);

/** How much more than planned is off the sole where the mouth has this opening, mm: `mouthOpeningAt` turned round, exactly. */
export function removalForOpening(sides: MouthSides, opening: number): number {
  const { frame, ramp } = sides;
  const { curve } = ramp;
  const low = Math.min(0, straightTo(ramp));
  const straight = low + (opening - mouthOpeningAt(sides, low)) / mouthGrowthAt(sides, low);
  if (!curve || straight <= curve.begin.y) return straight;
  const beyond = opening - mouthOpeningAt(sides, curve.end.y);
  if (beyond >= 0) return curve.end.y + beyond / mouthGrowthAt(sides, curve.end.y);
  // On the arc, u above its centre: u·cot β + k = √(R² − u²), of which the upper root is the ramp.
  const lean = cotDeg(frame.bedAngle);
  const k = frame.mouthX + curve.centre.y * lean - curve.centre.x - opening;
  const u = (-lean * k + Math.sqrt((1 + lean * lean) * curve.radius ** 2 - k * k)) / (1 + lean * lean);
  return curve.centre.y + u;
}
