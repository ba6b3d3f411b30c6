// The cross pin: a flatted or round body between the cheeks, a round tenon at each end.

import { circleOutline, reverseOutline } from "@lamplane/geometry";
import { levelFace, wallFaces } from "@lamplane/geometry/mesh";
import type { Elevation } from "../elevation/elevation.ts";
import { pinLengths } from "../elevation/pin-section.ts";
import { chordArea, type PartFaces } from "./part-faces.ts";

/** Faces and volume of the pin in its place. */
export function crossPin(plane: Elevation): PartFaces {
  const { shoulder, end } = pinLengths(plane);
  const section = plane.pinSection;
  const tenon = circleOutline({ centre: plane.pin.centre, radius: plane.pinSize.tenon / 2 });
  const shoulderRings = [section, reverseOutline(tenon)];
  return {
    faces: [
      ...wallFaces(section, -shoulder, shoulder),
      levelFace(shoulderRings, shoulder, "above"),
      levelFace(shoulderRings, -shoulder, "below"),
      ...wallFaces(tenon, shoulder, end),
      ...wallFaces(tenon, -end, -shoulder),
      levelFace([tenon], end, "above"),
      levelFace([tenon], -end, "below"),
    ],
    volume: chordArea(section) * 2 * shoulder + chordArea(tenon) * 2 * (end - shoulder),
  };
}
