// Iron, cap iron, wedge and pin laid level on the bed: s up the iron to the right, v off its face upward.
import {
  boundsOf,
  type Outline,
  point,
  polygon,
  type Transform2,
  tessellate,
  transformOutline,
} from "@lamplane/geometry";
import { capIronOutline, screwHeadOutline } from "@lamplane/parameters/elevation";
import { linePath, outlinePath } from "../../path-data.ts";
import type { Dimension, View, ViewMark } from "../../protocol/view.ts";
import { alongShape, type DrawnPlane, leaderShape, parameterDimension } from "./dimensioning.ts";
import { outlineMark } from "./outline-mark.ts";

/** The stack as it lies on the bed. */
export function stackView(drawn: DrawnPlane): View {
  const { plane } = drawn;
  const level = levellingTransform(plane.frame.bedAngle, plane.points.edge);
  const put = (outline: Outline) => transformOutline(outline, level);
  const [cap, head] = [capIronOutline(plane.design, plane.frame), screwHeadOutline(plane.design, plane.frame)];
  const [iron, wedge, pin] = [put(plane.iron), put(plane.wedge), put(plane.pinSection)];
  const marks: ViewMark[] = [
    ...bedMarks(drawn),
    outlineMark(iron, { area: "steel" }),
    ...(head ? [outlineMark(put(head), { area: "steel" })] : []),
    ...(cap ? [outlineMark(put(cap), { area: "cap" })] : []),
    outlineMark(wedge, { area: "wedge" }),
    outlineMark(pin, { area: "pin" }),
  ];
  const { min, max } = boundsOf([iron, wedge, pin].flatMap((o) => tessellate(o, 0.5)));
  const deep = -plane.design.iron.thickness - (plane.recess?.depth ?? 0) - 5;
  return {
    name: "stack",
    title: "Iron, cap iron and wedge, laid level",
    box: { min: point(min.x, Math.min(min.y, deep)), max },
    marks,
    dimensions: [...ironDimensions(drawn), ...wedgeDimensions(drawn)],
    labels: [],
  };
}

/** The place that turns the iron's face level and brings its edge to the origin. */
function levellingTransform(bedAngle: number, edge: { x: number; y: number }): Transform2 {
  const turn = -bedAngle;
  const [turned] = transformOutline(polygon(edge, point(edge.x + 1, edge.y), point(edge.x, edge.y + 1)), { turn });
  return { turn, shift: point(-turned!.from.x, -turned!.from.y) };
}

/** The bed's own line with the recess in it. */
function bedMarks({ plane }: DrawnPlane): ViewMark[] {
  const { design, recess, bedTopS } = plane;
  const bed = -design.iron.thickness;
  const wood = bed - (recess?.depth ?? 0) - 5;
  const shoulder = design.iron.thickness * -1;
  const corners = recess
    ? [point(recess.low, bed), point(recess.low, bed - recess.depth), point(bedTopS, bed - recess.depth)]
    : [];
  const top = recess ? bed - recess.depth : bed;
  return [
    {
      d: outlinePath(
        polygon(
          point(shoulder, wood),
          point(bedTopS, wood),
          point(bedTopS, top),
          ...[...corners].reverse().slice(recess ? 1 : 0),
          point(0, bed),
        ),
      ),
      area: "wood",
    },
    { d: linePath(point(0, bed), ...(corners.length > 0 ? corners : [point(bedTopS, bed)])), line: "hidden" },
  ];
}

function ironDimensions(drawn: DrawnPlane): Dimension[] {
  const { iron, capIron } = drawn.plane.design;
  const { recess } = drawn.plane;
  const t = -iron.thickness;
  const end = point(iron.length, t);
  const head = capIron.screwHead;
  const ofCap =
    capIron.thickness === 0
      ? []
      : [
          ...parameterDimension(
            drawn,
            "capIron.thickness",
            alongShape(point(iron.length, 0), point(iron.length, capIron.thickness), "right", 1),
            { rank: 3 },
          ),
          ...parameterDimension(
            drawn,
            "capIron.screwHead.fromEdge",
            alongShape(point(0, t), point(head.fromEdge, t - head.height), "below", 0),
          ),
          ...parameterDimension(
            drawn,
            "capIron.screwHead.diameter",
            leaderShape(point(head.fromEdge, t - head.height), 26, 22),
            {
              before: "head Ø ",
              rank: 3,
            },
          ),
          ...parameterDimension(
            drawn,
            "capIron.hump",
            leaderShape(
              point(capIron.setback + capIron.thickness + capIron.hump, capIron.thickness + capIron.hump),
              -30,
              -8,
            ),
            { before: "hump ", rank: 3 },
          ),
        ];
  const ofRecess = recess
    ? [
        ...parameterDimension(
          drawn,
          "recess.depth",
          leaderShape(point(drawn.plane.bedTopS - 3, t - recess.depth * 0.7), 34, 10),
          {
            before: "recess ",
            rank: 3,
          },
        ),
      ]
    : [];
  return [
    ...ofCap,
    ...ofRecess,
    ...parameterDimension(drawn, "iron.length", alongShape(point(0, t), end, "below", 1)),
    ...parameterDimension(drawn, "iron.thickness", alongShape(end, point(iron.length, 0), "right", 0)),
    ...parameterDimension(drawn, "iron.bevel", leaderShape(point(iron.thickness, t / 2), -30, 30), {
      unit: "°",
      before: "bevel ",
      rank: 3,
    }),
  ];
}

function wedgeDimensions(drawn: DrawnPlane): Dimension[] {
  const { wedge, capIron } = drawn.plane.design;
  const c = capIron.thickness;
  const tip = point(wedge.tipFromEdge, c + wedge.tip);
  const butt = point(wedge.tipFromEdge + drawn.plane.wedgeLength, c);
  return [
    ...parameterDimension(drawn, "wedge.tipFromEdge", alongShape(point(0, 0), tip, "above", 1), { rank: 3 }),
    ...parameterDimension(drawn, "wedge.length", alongShape(tip, butt, "above", 0)),
    ...parameterDimension(drawn, "wedge.tip", leaderShape(tip, -10, -30), { before: "tip ", rank: 3 }),
    ...parameterDimension(
      drawn,
      "wedge.angle",
      leaderShape(point((tip.x + butt.x) / 2 + 10, c + wedge.tip + 4), 30, -20),
      {
        unit: "°",
        before: "wedge ",
      },
    ),
  ];
}
