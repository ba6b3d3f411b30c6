// The cross pin: a flatted or round body between the cheeks, a round tenon at each end.

import { circleOutline, tessellate } from "@lamplane/geometry";
import type { Elevation } from "../elevation/elevation.ts";
import { pinLengths } from "../elevation/pin-section.ts";
import { atWidth, planarFace, type Triangle } from "./faces.ts";
import { polygonArea, prismWalls } from "./prism.ts";

/** Faces and volume of the pin in its place. */
export function crossPin(plane: Elevation): { triangles: Triangle[]; volume: number } {
  const { shoulder, end } = pinLengths(plane);
  const section = tessellate(plane.pinSection);
  const tenon = tessellate(circleOutline({ centre: plane.pin.centre, radius: plane.design.pin.tenon / 2 }));
  const back = <T>(ring: readonly T[]): T[] => [...ring].reverse();
  const shoulderFace = [section, back(tenon)];
  return {
    triangles: [
      ...prismWalls(section, -shoulder, shoulder),
      ...planarFace(shoulderFace.map((ring) => ring.map((p) => atWidth(p, shoulder)))),
      ...planarFace(shoulderFace.map((ring) => back(ring).map((p) => atWidth(p, -shoulder)))),
      ...prismWalls(tenon, shoulder, end),
      ...prismWalls(tenon, -end, -shoulder),
      ...planarFace([tenon.map((p) => atWidth(p, end))]),
      ...planarFace([back(tenon).map((p) => atWidth(p, -end))]),
    ],
    volume: polygonArea(section) * 2 * shoulder + polygonArea(tenon) * 2 * (end - shoulder),
  };
}
