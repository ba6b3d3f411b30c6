// Across the plane, seen from the toe: cheeks, core, iron, wedge, pin; at the billet, the saw cuts through it.

import { point, polygon } from "@lamplane/geometry";
import { fromIron, pinLengths } from "@lamplane/parameters/elevation";
import type { Dimension, StageName, View, ViewMark } from "../../protocol.ts";
import { linePath, outlinePath } from "../path-data.ts";
import { along, type Drawn, leader, parameter, reference } from "./dimensioning.ts";

/** The view across, at a stage of the bench. */
export function endView(drawn: Drawn, stage: StageName): View {
  return stage === "billet" ? billetView(drawn) : acrossView(drawn, stage);
}

const box = (left: number, low: number, right: number, high: number) =>
  outlinePath(polygon(point(left, low), point(right, low), point(right, high), point(left, high)));

function acrossView(drawn: Drawn, stage: StageName): View {
  const { plane } = drawn;
  const low = stage === "shaped" || stage === "trued" ? 0 : -plane.design.sole.allowance;
  const [c, w, h] = [plane.widths.core / 2, plane.widths.body / 2, plane.design.body.height];
  const hasStack = stage !== "core" && stage !== "bed";
  const high = hasStack ? Math.max(h, ironTopOf(drawn), ...plane.wedge.map((s) => s.from.y)) : h;
  const wood: ViewMark[] = [
    { d: box(-c, low, c, h), matter: hasStack ? "wood-far" : "wood", line: "outline" },
    { d: box(-w, low, -c, h), matter: "wood", line: "outline" },
    { d: box(c, low, w, h), matter: "wood", line: "outline" },
  ];
  return {
    name: "end",
    title: hasStack ? "Across, seen from the toe, front block taken away" : "Across, seen from the toe",
    box: { min: point(-w, low), max: point(w, high) },
    marks: [
      ...wood,
      ...(hasStack ? stackAcross(drawn) : []),
      { d: linePath(point(0, low - 4), point(0, high + 4)), line: "axis" },
    ],
    dimensions: [...woodDimensions(drawn, low), ...(hasStack ? stackDimensions(drawn) : [])],
    labels: [],
  };
}

const ironTopOf = ({ plane }: Drawn): number => fromIron(plane.frame, plane.design.iron.length, 0).y;

function stackAcross(drawn: Drawn): ViewMark[] {
  const { plane } = drawn;
  const { design, widths, pin } = plane;
  const { shoulder, end } = pinLengths(plane);
  const [half, r, t] = [design.iron.width / 2, design.pin.diameter / 2, design.pin.tenon / 2];
  const wedgeHalf = (widths.core - design.wedge.clearance) / 2;
  const wedgeTop = Math.max(...plane.wedge.map((s) => s.from.y));
  const { y } = pin.centre;
  return [
    { d: box(-half, 0, half, ironTopOf(drawn)), matter: "steel", line: "outline" },
    { d: box(-wedgeHalf, plane.points.wedgeTip.y, wedgeHalf, wedgeTop), matter: "wedge", line: "outline" },
    { d: box(-shoulder, y - r, shoulder, y + r), matter: "pin", line: "outline" },
    { d: `${box(shoulder, y - t, end, y + t)}${box(-end, y - t, -shoulder, y + t)}`, line: "hidden" },
  ];
}

function woodDimensions(drawn: Drawn, low: number): Dimension[] {
  const [c, w] = [drawn.plane.widths.core / 2, drawn.plane.widths.body / 2];
  return [
    ...reference(drawn, "coreWidth", along(point(-c, low), point(c, low), "below", 0)),
    ...parameter(drawn, "body.cheek", along(point(c, low), point(w, low), "below", 1)),
    ...reference(drawn, "bodyWidth", along(point(-w, low), point(w, low), "below", 2)),
  ];
}

function stackDimensions(drawn: Drawn): Dimension[] {
  const { design, pin } = drawn.plane;
  const half = design.iron.width / 2;
  const top = ironTopOf(drawn);
  const { shoulder, end } = pinLengths(drawn.plane);
  const { y } = pin.centre;
  return [
    ...parameter(drawn, "iron.width", along(point(-half, top), point(half, top), "above", 0)),
    ...parameter(drawn, "body.sideClearance", leader(point(half, design.body.height * 0.22), 48, 6), {
      before: "side clearance ",
    }),
    ...parameter(drawn, "pin.tenon", leader(point((shoulder + end) / 2, y), 62, -16), { before: "tenon Ø " }),
    ...parameter(drawn, "pin.endClearance", leader(point(shoulder, y + 3), 74, -44), { before: "end gap ", rank: 3 }),
  ];
}

/** The billet from its end, with every piece as it is sawn out of it. */
function billetView(drawn: Drawn): View {
  const { widths, design } = drawn.plane;
  const { kerf, jointingPass } = design.shop;
  const [low, high] = [-design.sole.allowance, design.body.height];
  const pieces = [widths.roughCheek, widths.roughCore, widths.roughCheek];
  const marks: ViewMark[] = [];
  let x = -widths.billet / 2 + jointingPass;
  const starts: number[] = [];
  for (const piece of pieces) {
    starts.push(x);
    marks.push({ d: box(x, low, x + piece, high), matter: "wood", line: "cut" });
    x += piece + kerf + jointingPass;
  }
  const edge = widths.billet / 2;
  const cut = starts[0]! + widths.roughCheek;
  return {
    name: "end",
    title: "Billet from its end, with its two saw cuts",
    box: { min: point(-edge, low), max: point(edge, high) },
    marks: [{ d: box(-edge, low, edge, high), matter: "waste", line: "outline" }, ...marks],
    dimensions: [
      ...reference(drawn, "roughCheek", along(point(starts[0]!, low), point(cut, low), "below", 0)),
      ...reference(
        drawn,
        "roughCore",
        along(point(starts[1]!, low), point(starts[1]! + widths.roughCore, low), "below", 1),
      ),
      ...reference(drawn, "billetWidth", along(point(-edge, low), point(edge, low), "below", 2)),
      ...reference(drawn, "blankHeight", along(point(edge, low), point(edge, high), "right", 0)),
      ...parameter(drawn, "shop.kerf", leader(point(cut + kerf / 2, high), 20, -24), { before: "kerf " }),
    ],
    labels: [],
  };
}
