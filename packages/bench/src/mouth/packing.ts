// A slip of veneer or card between bed and iron brings the edge nearer to the ramp. Plane geometry; nothing is judged by habit.

import { sinDeg, tanDeg } from "@lamplane/geometry";
import { type Elevation, roomOverHump } from "@lamplane/parameters/elevation";

/** Lengths mm. */
export interface Packing {
  /** Even, under the whole iron. */
  readonly thickness: number;
  /** How far the wedge then stands further out. */
  readonly wedgeOut: number;
  /** Room left between the cap iron's hump and the cross pin; below 0 the iron no longer goes in. */
  readonly roomUnderPin: number;
  /** Wedge left below its contact with the pin; below 0 the wedge is too thick to reach under it. */
  readonly wedgeBelowPin: number;
}

/** Packing that brings the edge `by` mm nearer to the ramp along the sole: by·sin β; the wedge gives way by that over tan ω. */
export function packing(plane: Elevation, by: number): Packing {
  const { wedge } = plane.design;
  const { bedAngle, faceAngle } = plane.frame;
  const thickness = by * sinDeg(bedAngle);
  const faceNearerPin = by * sinDeg(faceAngle);
  const wedgeOut = faceNearerPin / tanDeg(wedge.angle);
  return {
    thickness,
    wedgeOut,
    roomUnderPin: roomOverHump(plane.design, plane.pinSize, plane.pin) - faceNearerPin,
    wedgeBelowPin: plane.pinMargins.wedgeBelow - wedgeOut,
  };
}
