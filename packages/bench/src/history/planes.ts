// The elevation of a design, worked out once for as long as the design is in use.
import {
  type Elevation,
  elevation,
  frameOf,
  type MouthSides,
  memoizeByDesign,
  rampAtOpening,
  rampShape,
} from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";

/** Elevation of a design. */
export const planeOf: (design: Design) => Elevation = memoizeByDesign(elevation);

/** What the mouth lies between, without the whole elevation where the ramp is cut already. */
export function mouthSides(design: Design): MouthSides {
  const { radius } = design.ramp;
  if (radius === "auto" && rampShape(design) === "curved") return planeOf(design);
  const frame = frameOf(design);
  return { design, frame, ramp: rampAtOpening(design, frame.mouthX, Number(radius)) };
}
