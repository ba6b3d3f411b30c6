// Volumes of the parts from their outlines alone, arcs as arcs: no face and no mesh is asked.
import { outlineArea, shapeArea } from "@lamplane/geometry";
import { blocksAt, cheekShape, type Elevation, pinLengths } from "@lamplane/parameters/elevation";

/** Wood that the recess takes under a flat top, mm³: a trapezoid as wide as the cutter's path, less two rounded corners. */
function recessVolume({ recess, frame, design }: Elevation): number {
  if (!recess) return 0;
  const [turn, t] = [(frame.bedAngle * Math.PI) / 180, frame.thickness];
  const topAt = (v: number) => (design.body.height - v * Math.cos(turn)) / Math.sin(turn);
  const length = (topAt(-t) + topAt(-t - recess.depth)) / 2 - recess.low;
  return recess.depth * (recess.width * length - (2 - Math.PI / 2) * recess.cornerRadius ** 2);
}

/** Volume of each wooden part by its name, mm³; the bed block's only as a blank, whose top is flat. */
export function outlineVolumes(plane: Elevation, stage: "blank" | "trued"): Map<string, number> {
  const c = plane.widths.core / 2;
  const cheek = shapeArea(cheekShape(plane, stage)) * (plane.widths.body / 2 - c);
  const { shoulder, end } = pinLengths(plane);
  const tenon = (Math.PI * plane.pinSize.tenon ** 2) / 4;
  return new Map([
    ["front-block", outlineArea(blocksAt(plane, stage).front) * 2 * c],
    ["cheek-left", cheek],
    ["cheek-right", cheek],
    ["wedge", outlineArea(plane.wedge) * (2 * c - plane.design.wedge.clearance)],
    ["cross-pin", outlineArea(plane.pinSection) * 2 * shoulder + tenon * 2 * (end - shoulder)],
    ...(stage === "blank"
      ? ([["bed-block", outlineArea(blocksAt(plane, stage).bed) * 2 * c - recessVolume(plane)]] as const)
      : []),
  ]);
}
