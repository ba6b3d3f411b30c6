// Iron, cap iron, wedge and pin laid level on the bed: s up the bed to the right, v off it upward, from the cutting edge.
import {
  boundsOf,
  type Outline,
  type Point,
  point,
  polygon,
  type Transform2,
  tessellate,
  transformOutline,
} from "@lamplane/geometry";
import {
  capIronOutline,
  ironCorners,
  ironToBed,
  planeToBed,
  screwHeadOutline,
  thicknessAt,
  topFromEdge,
} from "@lamplane/parameters/elevation";
import { linePath, outlinePath } from "../../path-data.ts";
import type { Dimension, View, ViewMark } from "../../protocol/view.ts";
import { VIEW_TITLES } from "../../words/views.ts";
import { alongShape, leaderShape, parameterDimension, type SolvedPlane } from "./dimensioning.ts";
import { outlineMark } from "./outline-mark.ts";

/** The stack as it lies on the bed. */
export function stackView(drawn: SolvedPlane): View {
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
  const deep = -plane.frame.thickness - (plane.recess?.depth ?? 0) - 5;
  return {
    name: "stack",
    title: cap ? VIEW_TITLES.stack : VIEW_TITLES.singleStack,
    box: { min: point(min.x, Math.min(min.y, deep)), max },
    marks,
    dimensions: [...ironDimensions(drawn), ...wedgeDimensions(drawn)],
    labels: [],
  };
}

/** The transform that turns the bed level and brings the edge to the origin. */
function levellingTransform(bedAngle: number, edge: { x: number; y: number }): Transform2 {
  const turn = -bedAngle;
  const [turned] = transformOutline(polygon(edge, point(edge.x + 1, edge.y), point(edge.x, edge.y + 1)), { turn });
  return { turn, shift: point(-turned!.from.x, -turned!.from.y) };
}

/** The bed's own line with the recess in it. */
function bedMarks({ plane }: SolvedPlane): ViewMark[] {
  const { frame, recess, bedTopS } = plane;
  const bed = -frame.thickness;
  const wood = bed - (recess?.depth ?? 0) - 5;
  const shoulder = bed;
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

function ironDimensions(drawn: SolvedPlane): Dimension[] {
  const { design, frame } = drawn.plane;
  const t = -frame.thickness;
  const heel = planeToBed(frame, drawn.plane.points.bevelHeel);
  const end = point(design.iron.length, t);
  const [, , , top] = ironCorners(design, frame);
  return [
    ...capIronDimensions(drawn),
    ...recessDimensions(drawn),
    ...parameterDimension(drawn, "iron.length", alongShape(point(0, t), end, "below", 1)),
    ...thicknessDimensions(drawn, end, top!),
    ...parameterDimension(drawn, "iron.bevel", leaderShape(point(heel.s / 2, heel.v / 2), -30, 30), {
      unit: "°",
      before: "bevel ",
      rank: 3,
    }),
  ];
}

function capIronDimensions(drawn: SolvedPlane): Dimension[] {
  const { iron, capIron } = drawn.plane.design;
  if (capIron.thickness === 0) return [];
  const onFace = faceTransform(drawn);
  const t = -drawn.plane.frame.thickness;
  const { screwHead: head } = capIron;
  const headTop = point(head.fromEdge, t - head.height);
  const hump = onFace(capIron.setback + capIron.thickness + capIron.hump, capIron.thickness + capIron.hump);
  const across = alongShape(onFace(iron.length, 0), onFace(iron.length, capIron.thickness), "right", 1);
  return [
    ...parameterDimension(drawn, "capIron.thickness", across, { rank: 3 }),
    ...parameterDimension(drawn, "capIron.screwHead.fromEdge", alongShape(point(0, t), headTop, "below", 0)),
    ...parameterDimension(drawn, "capIron.screwHead.diameter", leaderShape(headTop, 26, 22), {
      before: "head Ø ",
      rank: 3,
    }),
    ...parameterDimension(drawn, "capIron.hump", leaderShape(hump, -30, -8), { before: "hump ", rank: 3 }),
  ];
}

function recessDimensions(drawn: SolvedPlane): Dimension[] {
  const { recess, frame, bedTopS } = drawn.plane;
  if (!recess) return [];
  const place = point(bedTopS - 3, -frame.thickness - recess.depth * 0.7);
  return parameterDimension(drawn, "recess.depth", leaderShape(place, 34, 10), { before: "recess ", rank: 3 });
}

/** A parallel iron's thickness at its end; of a tapered one the thickness at each of the two places where it is measured. */
function thicknessDimensions(drawn: SolvedPlane, back: Point, face: Point): Dimension[] {
  const { design, frame } = drawn.plane;
  if (frame.faceAngle === frame.bedAngle)
    return parameterDimension(drawn, "iron.thickness", alongShape(back, face, "right", 0));
  const across = (s: number, side: "left" | "right") => {
    const low = -frame.thickness;
    return alongShape(point(s, low), point(s, low + thicknessAt(design, s)), side, 0);
  };
  return [
    ...parameterDimension(drawn, "iron.thickness", across(design.iron.thicknessFromEdge, "left")),
    ...parameterDimension(drawn, "iron.thicknessAtTop", across(topFromEdge(design), "right")),
    ...parameterDimension(drawn, "iron.taper", leaderShape(face, 34, -18), { unit: "°", before: "taper " }),
  ];
}

/** Places on the iron's face where they lie on the sheet: level for a parallel iron, leaning by its taper for another. */
const faceTransform =
  ({ plane: { frame } }: SolvedPlane) =>
  (s: number, v: number): Point => {
    const place = ironToBed(frame, { s, v });
    return point(place.s, place.v);
  };

function wedgeDimensions(drawn: SolvedPlane): Dimension[] {
  const { wedge, capIron } = drawn.plane.design;
  const c = capIron.thickness;
  const onFace = faceTransform(drawn);
  const tip = onFace(wedge.tipFromEdge, c + wedge.tip);
  const butt = onFace(wedge.tipFromEdge + drawn.plane.wedgeLength, c);
  return [
    ...parameterDimension(drawn, "wedge.tipFromEdge", alongShape(point(0, 0), tip, "above", 1), { rank: 3 }),
    ...parameterDimension(drawn, "wedge.length", alongShape(tip, butt, "above", 0)),
    ...parameterDimension(drawn, "wedge.tip", leaderShape(tip, -10, -30), { before: "tip ", rank: 3 }),
    ...parameterDimension(
      drawn,
      "wedge.angle",
      leaderShape(point((tip.x + butt.x) / 2 + 10, c + wedge.tip + 4), 34, -13),
      {
        unit: "°",
        before: "wedge ",
      },
    ),
  ];
}
