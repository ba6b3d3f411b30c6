// The elevation of a design, worked out once for as long as the design is in use.
import { type Elevation, elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";

const known = new WeakMap<Design, Elevation>();

/** Elevation of a design; a design is never changed in place, so the same object has the same plane. */
export function planeOf(design: Design): Elevation {
  const plane = known.get(design) ?? elevation(design);
  known.set(design, plane);
  return plane;
}
