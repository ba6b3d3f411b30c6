// The cross pin: a flatted or round body between the cheeks, a round tenon at each end.

import { circleOutline, facetted } from "@lamplane/geometry";
import type { Elevation } from "../elevation/elevation.ts";
import { pinLengths } from "../elevation/pin-section.ts";
import { at, planarFace, type Triangle } from "./faces.ts";
import { polygonArea, wallsOf } from "./prism.ts";

/** Faces and volume of the pin in its place. */
export function crossPin(plane: Elevation): { triangles: Triangle[]; volume: number } {
  const { shoulder, end } = pinLengths(plane);
  const section = facetted(plane.pinSection);
  const tenon = facetted(circleOutline({ centre: plane.pin.centre, radius: plane.design.pin.tenon / 2 }));
  const back = <T>(ring: readonly T[]): T[] => [...ring].reverse();
  const shoulderFace = [section, back(tenon)];
  return {
    triangles: [
      ...wallsOf(section, -shoulder, shoulder),
      ...planarFace(shoulderFace.map((ring) => ring.map((p) => at(p, shoulder)))),
      ...planarFace(shoulderFace.map((ring) => back(ring).map((p) => at(p, -shoulder)))),
      ...wallsOf(tenon, shoulder, end),
      ...wallsOf(tenon, -end, -shoulder),
      ...planarFace([tenon.map((p) => at(p, end))]),
      ...planarFace([back(tenon).map((p) => at(p, -end))]),
    ],
    volume: polygonArea(section) * 2 * shoulder + polygonArea(tenon) * 2 * (end - shoulder),
  };
}
