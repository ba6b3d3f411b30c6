// Detail at the mouth, enlarged: ramp's and bed's tips, feather chamfer, cutting edge, the sole before and after.

import { point } from "@lamplane/geometry";
import { capIronOutline } from "@lamplane/parameters/elevation";
import type { Dimension, View, ViewMark } from "../../protocol.ts";
import { linePath, outlinePath } from "../path-data.ts";
import { along, angleAt, type Drawn, leader, parameter, reference } from "./dimensioning.ts";
import { planeAt } from "./stage-plane.ts";

/** What the detail shows round the cutting edge, mm. */
const AROUND = { toe: 9, heel: 15, above: 9.5 };

/** The mouth as it is glued up, with the finished sole drawn through it. */
export function mouthView(drawn: Drawn): View {
  const { plane } = drawn;
  const { edge } = plane.points;
  const sole = -plane.design.sole.allowance;
  const at = planeAt(plane, "glued");
  const cap = capIronOutline(plane.design, plane.frame);
  const min = point(edge.x - AROUND.toe, sole - 0.6);
  const max = point(edge.x + AROUND.heel, AROUND.above);
  const marks: ViewMark[] = [
    { d: outlinePath(at.front), matter: "wood", line: "outline" },
    { d: outlinePath(at.bed), matter: "wood", line: "outline" },
    { d: outlinePath(plane.iron), matter: "steel", line: "outline" },
    ...(cap ? [{ d: outlinePath(cap), matter: "cap" as const, line: "outline" as const }] : []),
    { d: outlinePath(plane.wedge), matter: "wedge", line: "outline" },
    { d: linePath(point(min.x, 0), point(max.x, 0)), line: "mark" },
  ];
  return {
    name: "mouth",
    title: "Mouth, enlarged: as glued, trued sole drawn through",
    box: { min, max },
    marks,
    dimensions: dimensionsOf(drawn, min, max),
    labels: [],
  };
}

function dimensionsOf(drawn: Drawn, min: { x: number }, max: { x: number }): Dimension[] {
  const { design, points, frame, ramp } = drawn.plane;
  const sole = -design.sole.allowance;
  const right = (y: number) => point(max.x, y);
  const wear =
    ramp.shape === "curved"
      ? parameter(drawn, "ramp.wearHeight", along(point(min.x, 0), point(min.x, design.ramp.wearHeight), "left", 0))
      : [];
  const cap =
    design.capIron.thickness > 0
      ? parameter(drawn, "capIron.setback", leader(points.edge, -64, -62), { before: "setback ", rank: 3 })
      : [];
  return [
    ...wear,
    ...cap,
    ...parameter(drawn, "sole.allowance", along(right(sole), right(0), "right", 0)),
    ...parameter(drawn, "bed.featherChamfer", along(right(sole), points.bedChamfer, "right", 1)),
    ...parameter(drawn, "mouth.opening", leader(points.rampFoot, -40, 18), { before: "mouth " }),
    ...reference(drawn, "glueGap", along(point(points.rampTip.x, sole), point(points.bedTip.x, sole), "below", 0), {
      before: "glue gap ",
    }),
    ...reference(drawn, "clearanceAngle", angleAt(points.edge, 0, frame.bedAngle - design.iron.bevel, 96), {
      unit: "°",
      rank: 3,
    }),
    ...reference(drawn, "unsupported", leader(points.bevelHeel, 30, -30), { before: "unsupported ", rank: 3 }),
  ];
}
