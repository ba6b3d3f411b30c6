// The elevation of a design, worked out once for as long as the design is in use.
import {
  type Elevation,
  elevation,
  frameOf,
  type MouthSides,
  rampAtOpening,
  rampShape,
} from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";

const known = new WeakMap<Design, Elevation>();

/** Elevation of a design; a design is never changed in place, so the same object has the same plane. */
export function planeOf(design: Design): Elevation {
  const plane = known.get(design) ?? elevation(design);
  known.set(design, plane);
  return plane;
}

/** What the mouth lies between, without the whole elevation where the ramp is cut already. */
export function mouthSides(design: Design): MouthSides {
  const { radius } = design.ramp;
  if (radius === "auto" && rampShape(design) === "curved") return planeOf(design);
  const frame = frameOf(design);
  return { design, frame, ramp: rampAtOpening(design, frame.mouthX, Number(radius)) };
}
