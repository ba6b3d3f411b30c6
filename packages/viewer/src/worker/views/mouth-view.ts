// Detail at the mouth, enlarged: ramp's and bed's tips, feather chamfer, cutting edge, the sole before and after.

import { point } from "@lamplane/geometry";
import { capIronOutline, FIGURES } from "@lamplane/parameters/elevation";
import { linePath } from "../../path-data.ts";
import type { Dimension, View, ViewMark } from "../../protocol/view.ts";
import { VIEW_TITLES } from "../../words/views.ts";
import {
  alongShape,
  angleShape,
  leaderShape,
  parameterDimension,
  referenceDimension,
  type SolvedPlane,
} from "./dimensioning.ts";
import { outlineMark } from "./outline-mark.ts";
import { stagePlane } from "./stage-plane.ts";

/** What the detail shows round the cutting edge, mm. */
const AROUND = { toe: 9, heel: 15, above: 9.5 };

/** The mouth as it is glued up, with the finished sole drawn through it. */
export function mouthView(drawn: SolvedPlane): View {
  const { plane } = drawn;
  const { edge } = plane.points;
  const sole = -plane.design.sole.allowance;
  const at = stagePlane(plane, "dry-fit");
  const cap = capIronOutline(plane.design, plane.frame);
  const min = point(edge.x - AROUND.toe, sole - 0.6);
  const max = point(edge.x + AROUND.heel, AROUND.above);
  const marks: ViewMark[] = [
    outlineMark(at.front, { area: "wood" }),
    outlineMark(at.bed, { area: "wood" }),
    outlineMark(plane.iron, { area: "steel" }),
    ...(cap ? [outlineMark(cap, { area: "cap" })] : []),
    outlineMark(plane.wedge, { area: "wedge" }),
    { d: linePath(point(min.x, 0), point(max.x, 0)), line: "mark" },
  ];
  return {
    name: "mouth",
    title: VIEW_TITLES.mouth,
    box: { min, max },
    marks,
    dimensions: dimensionsOf(drawn, min, max),
    labels: [],
  };
}

function dimensionsOf(drawn: SolvedPlane, min: { x: number }, max: { x: number }): Dimension[] {
  const { design, points, frame, ramp } = drawn.plane;
  const sole = -design.sole.allowance;
  const right = (y: number) => point(max.x, y);
  const wear =
    ramp.shape === "curved"
      ? parameterDimension(
          drawn,
          "ramp.wearHeight",
          alongShape(point(min.x, 0), point(min.x, design.ramp.wearHeight), "left", 0),
        )
      : [];
  const cap =
    design.capIron.thickness > 0
      ? parameterDimension(drawn, "capIron.setback", leaderShape(points.edge, -64, -62), {
          before: "setback ",
          rank: 3,
        })
      : [];
  return [
    ...wear,
    ...cap,
    ...parameterDimension(drawn, "sole.allowance", alongShape(right(sole), right(0), "right", 0)),
    ...parameterDimension(drawn, "bed.featherChamfer", alongShape(right(sole), points.bedChamfer, "right", 1)),
    ...parameterDimension(drawn, "mouth.opening", leaderShape(points.rampFoot, -40, 18), { before: "mouth " }),
    ...referenceDimension(
      drawn,
      "tipGap",
      alongShape(point(points.rampTip.x, sole), point(points.bedChamfer.x, sole), "below", 0),
      {
        before: `${FIGURES.tipGap.name} `,
      },
    ),
    ...referenceDimension(
      drawn,
      "clearanceAngle",
      angleShape(points.edge, 0, frame.faceAngle - design.iron.bevel, 96),
      {
        unit: "°",
        rank: 3,
      },
    ),
    ...referenceDimension(drawn, "unsupported", leaderShape(points.bevelHeel, 30, -30), {
      before: "unsupported ",
      rank: 3,
    }),
  ];
}
