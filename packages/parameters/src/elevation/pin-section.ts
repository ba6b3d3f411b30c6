// The cross pin across its length: flatted (half round above, square below) or round, in the plane's frame.

import { arc, circleOutline, cosDeg, line, type Outline, type Point, point, sinDeg } from "@lamplane/geometry";
import type { Design } from "../table/index.ts";
import type { Elevation } from "./elevation.ts";
import type { Frame } from "./frame.ts";
import type { PinSize, SizedDesign } from "./pin-size.ts";

/**
 * Outline of the pin's body about its axis, counter-clockwise, its flat lying on the wedge's upper side.
 * Flatted: a flat as wide as the diameter half a diameter below the axis, upright sides, half round above.
 */
export function pinSection({ pin, wedge }: SizedDesign, { faceAngle }: Frame, centre: Point): Outline {
  const half = pin.diameter / 2;
  if (pin.section === "round") return circleOutline({ centre, radius: half });
  const slope = faceAngle + wedge.angle;
  const at = (along: number, off: number): Point =>
    point(
      centre.x + along * cosDeg(slope) - off * sinDeg(slope),
      centre.y + along * sinDeg(slope) + off * cosDeg(slope),
    );
  const [lowLeft, lowRight, right, left] = [at(-half, -half), at(half, -half), at(half, 0), at(-half, 0)];
  return [line(lowLeft, lowRight), line(lowRight, right), arc(right, left, centre, 180), line(left, lowLeft)];
}

/** Radius that the pin sweeps when it turns: its corner's for a flatted one, half the diameter for a round one. mm. */
export const pinSweepRadius = ({ section }: Design["pin"], { diameter }: PinSize): number =>
  section === "flatted" ? Math.hypot(diameter / 2, diameter / 2) : diameter / 2;

/** How far a tenon of `auto` length ends inside the cheek, mm: a dry winter takes that much off half a body's width. */
const TENON_INSIDE = 0.5;

/** z of the pin's shoulders and of its tenons' ends. mm. */
export function pinLengths({ design, widths }: Elevation): { shoulder: number; end: number } {
  const { tenonLength, endClearance } = design.pin;
  const shoulder = widths.core / 2 - endClearance;
  const toOutside = widths.cheek + endClearance;
  return { shoulder, end: shoulder + (tenonLength === "auto" ? toOutside - TENON_INSIDE : tenonLength) };
}
