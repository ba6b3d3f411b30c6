// Across the plane, seen from the toe: cheeks, core, iron, wedge, pin; at the billet, the saw cuts through it.

import { ripLayout, type Span } from "@lamplane/bench";
import { point, polygon } from "@lamplane/geometry";
import { type Layer, layersOf, layerThickness, pinLengths } from "@lamplane/parameters/elevation";
import { linePath, outlinePath } from "../../path-data.ts";
import { hasStack, type StageName, WORK_OF } from "../../protocol/build-steps.ts";
import type { Dimension, View, ViewMark } from "../../protocol/view.ts";
import { VIEW_TITLES } from "../../words/views.ts";
import { alongShape, leaderShape, parameterDimension, referenceDimension, type SolvedPlane } from "./dimensioning.ts";
import { outlineMark } from "./outline-mark.ts";

/** The view across, at a stage of the bench. */
export function endView(drawn: SolvedPlane, stage: StageName): View {
  if (WORK_OF[stage] !== "billet") return acrossView(drawn, stage);
  const layers = layersOf(drawn.plane);
  return layers ? stripView(drawn, layers) : billetView(drawn);
}

const rectangle = (left: number, low: number, right: number, high: number) =>
  polygon(point(left, low), point(right, low), point(right, high), point(left, high));
const rectanglePath = (...sides: Parameters<typeof rectangle>) => outlinePath(rectangle(...sides));

function acrossView(drawn: SolvedPlane, stage: StageName): View {
  const { plane } = drawn;
  const low = WORK_OF[stage] === "shaped" || WORK_OF[stage] === "trued" ? 0 : -plane.design.sole.allowance;
  const [c, w, h] = [plane.widths.core / 2, plane.widths.body / 2, plane.design.body.height];
  const isStacked = hasStack(stage);
  const high = isStacked ? Math.max(h, ironTopOf(drawn), ...plane.wedge.map((s) => s.from.y)) : h;
  const wood: ViewMark[] = [
    outlineMark(rectangle(-c, low, c, h), { area: isStacked ? "wood-far" : "wood" }),
    outlineMark(rectangle(-w, low, -c, h), { area: "wood" }),
    outlineMark(rectangle(c, low, w, h), { area: "wood" }),
    ...(layersOf(plane)?.slice(1) ?? []).map(
      ({ from: z }): ViewMark => ({
        d: linePath(point(z, low), point(z, h)),
        line: "thin",
      }),
    ),
  ];
  return {
    name: "end",
    title: isStacked ? VIEW_TITLES.endStacked : VIEW_TITLES.end,
    box: { min: point(-w, low), max: point(w, high) },
    marks: [
      ...wood,
      ...(isStacked ? stackAcross(drawn) : []),
      { d: linePath(point(0, low - 4), point(0, high + 4)), line: "axis" },
    ],
    dimensions: [...woodDimensions(drawn, low), ...(isStacked ? stackDimensions(drawn) : [])],
    labels: [],
  };
}

const ironTopOf = ({ plane }: SolvedPlane): number => plane.iron.at(-1)!.from.y;

function stackAcross(drawn: SolvedPlane): ViewMark[] {
  const { plane } = drawn;
  const { design, widths, pin } = plane;
  const { shoulder, end } = pinLengths(plane);
  const [half, r, t] = [design.iron.width / 2, plane.pinSize.diameter / 2, plane.pinSize.tenon / 2];
  const wedgeHalf = (widths.core - design.wedge.clearance) / 2;
  const wedgeTop = Math.max(...plane.wedge.map((s) => s.from.y));
  const { y } = pin.centre;
  return [
    outlineMark(rectangle(-half, 0, half, ironTopOf(drawn)), { area: "steel" }),
    outlineMark(rectangle(-wedgeHalf, plane.points.wedgeTip.y, wedgeHalf, wedgeTop), { area: "wedge" }),
    outlineMark(rectangle(-shoulder, y - r, shoulder, y + r), { area: "pin" }),
    {
      d: `${rectanglePath(shoulder, y - t, end, y + t)}${rectanglePath(-end, y - t, -shoulder, y + t)}`,
      line: "hidden",
    },
  ];
}

function woodDimensions(drawn: SolvedPlane, low: number): Dimension[] {
  const [c, w] = [drawn.plane.widths.core / 2, drawn.plane.widths.body / 2];
  return [
    ...referenceDimension(drawn, "coreWidth", alongShape(point(-c, low), point(c, low), "below", 0)),
    ...parameterDimension(drawn, "body.cheek", alongShape(point(c, low), point(w, low), "below", 1)),
    ...referenceDimension(drawn, "bodyWidth", alongShape(point(-w, low), point(w, low), "below", 2)),
  ];
}

function stackDimensions(drawn: SolvedPlane): Dimension[] {
  const { design, pin } = drawn.plane;
  const half = design.iron.width / 2;
  const top = ironTopOf(drawn);
  const { shoulder, end } = pinLengths(drawn.plane);
  const { y } = pin.centre;
  return [
    ...parameterDimension(drawn, "iron.width", alongShape(point(-half, top), point(half, top), "above", 0)),
    ...parameterDimension(drawn, "body.sideClearance", leaderShape(point(half, design.body.height * 0.22), 48, 6), {
      before: "side clearance ",
    }),
    ...parameterDimension(drawn, "pin.tenon", leaderShape(point((shoulder + end) / 2, y), 62, -16), {
      before: "tenon Ø ",
    }),
    ...parameterDimension(drawn, "pin.endClearance", leaderShape(point(shoulder, y + 3), 74, -44), {
      before: "end gap ",
      rank: 3,
    }),
  ];
}

/** Layers and cheeks as they are ripped, each as thick as the board, what is planed off them as waste. */
function stripView(drawn: SolvedPlane, layers: readonly Layer[]): View {
  const { plane } = drawn;
  const { core, sole, body } = plane.design;
  const [low, high] = [-sole.allowance, body.height];
  const pitch = core.board + plane.design.shop.kerf;
  const outermost = ((layers.length + 1) / 2) * pitch;
  const strips = [body.cheek, ...layers.map(layerThickness), body.cheek].map((finished, i) => ({
    finished,
    middle: (i - (layers.length + 1) / 2) * pitch,
  }));
  const edge = outermost + core.board / 2;
  const ends = (middle: number, thickness: number) =>
    [point(middle - thickness / 2, low), point(middle + thickness / 2, low)] as const;
  const strip = (middle: number, thickness: number) =>
    rectangle(middle - thickness / 2, low, middle + thickness / 2, high);
  const [cheek, outerLayer] = strips;
  return {
    name: "end",
    title: VIEW_TITLES.strips,
    box: { min: point(-edge, low), max: point(edge, high) },
    marks: strips.flatMap(({ middle, finished }) => [
      outlineMark(strip(middle, core.board), { area: "waste" }),
      outlineMark(strip(middle, finished), { area: "wood", line: "cut" }),
    ]),
    dimensions: [
      ...(cheek
        ? parameterDimension(drawn, "core.board", alongShape(...ends(cheek.middle, core.board), "below", 0))
        : []),
      ...(outerLayer
        ? referenceDimension(
            drawn,
            "outerLayer",
            alongShape(...ends(outerLayer.middle, outerLayer.finished), "below", 1),
          )
        : []),
      ...referenceDimension(drawn, "blankHeight", alongShape(point(edge, low), point(edge, high), "right", 0)),
    ],
    labels: [],
  };
}

/** The billet from its end, with every piece as it leaves the saw, between the face jointed last and the next kerf. */
function billetView(drawn: SolvedPlane): View {
  const { widths, design } = drawn.plane;
  const { fence, billet } = widths;
  const [low, high] = [-design.sole.allowance, design.body.height];
  const edge = billet / 2;
  const strips = ripLayout(drawn.plane, billet).strips;
  const sawn = (end: number, width: number): Span => ({ from: end - edge - width, to: end - edge });
  const left = sawn(strips[0].at.to, fence.leftCheek);
  const core = sawn(strips[1].at.to, fence.core);
  const right = sawn(strips[2].at.to, fence.rightCheek);
  const below = ({ from, to }: Span, row: number) => alongShape(point(from, low), point(to, low), "below", row);
  return {
    name: "end",
    title: VIEW_TITLES.billet,
    box: { min: point(-edge, low), max: point(edge, high) },
    marks: [
      outlineMark(rectangle(-edge, low, edge, high), { area: "waste" }),
      ...[left, core, right].map(({ from, to }) =>
        outlineMark(rectangle(from, low, to, high), { area: "wood", line: "cut" }),
      ),
    ],
    dimensions: [
      ...referenceDimension(drawn, "fenceLeftCheek", below(left, 0)),
      ...referenceDimension(drawn, "fenceCore", below(core, 1)),
      ...referenceDimension(drawn, "billetWidth", below({ from: -edge, to: edge }, 2)),
      ...referenceDimension(drawn, "blankHeight", alongShape(point(edge, low), point(edge, high), "right", 0)),
      ...parameterDimension(drawn, "shop.kerf", leaderShape(point(left.to + design.shop.kerf / 2, high), 20, -24), {
        before: "kerf ",
      }),
    ],
    labels: [],
  };
}
