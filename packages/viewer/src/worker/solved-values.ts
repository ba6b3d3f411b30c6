// What each `auto` has come out as, by the parameter's path; the controls show it and a click fixes it.

import { valueAt } from "@lamplane/parameters/design";
import { type Elevation, pinLengths } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";

const SOLVED: Readonly<Record<string, (e: Elevation) => number | undefined>> = {
  "mouth.fromToe": (e) => e.frame.mouthX,
  "ramp.angle": (e) => (e.ramp.shape === "straight" ? e.ramp.angle : undefined),
  "ramp.radius": (e) => e.ramp.curve?.radius,
  "pin.height": (e) => e.pin.centre.y,
  "pin.tenonLength": (e) => pinLengths(e).end - pinLengths(e).shoulder,
  "wedge.length": (e) => e.wedgeLength,
  "recess.width": (e) => e.recess?.width,
  "recess.depth": (e) => e.recess?.depth,
  "body.crown": (e) => e.top.crownX,
  "body.toeHeight": (e) => e.top.toeHeight,
  "body.heelHeight": (e) => e.top.heelHeight,
};

/** Every `auto` that this design leaves open, with its value, mm or degrees. */
export function solvedValues(design: Design, e: Elevation): Record<string, number> {
  const open = Object.entries(SOLVED).filter(([path]) => valueAt(design, path) === "auto");
  return Object.fromEntries(
    open.flatMap(([path, read]) => {
      const value = read(e);
      return value === undefined ? [] : [[path, value]];
    }),
  );
}
