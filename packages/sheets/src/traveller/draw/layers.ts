// A core in layers: a strip out of its board, the stack from its end, and the layers of both blocks with their peg holes.
import type { LayerStock } from "@lamplane/bench";
import { line, point, transformCircle, transformOutline } from "@lamplane/geometry";
import { type LayerShape, layerShapes, layersOf } from "@lamplane/parameters/elevation";
import { LAYER_DRAWING } from "../../words/layers.ts";
import type { Sketch } from "../sketch.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { boxPolygon } from "../window.ts";
import { WOOD_SHADE } from "./stack.ts";

/** Strips drawn side by side across a board. */
const ACROSS = 2;

export function stripPicture(t: StepContext, { board, width, length, boardRings }: LayerStock, room: PictureRoom) {
  return composeViews({ name: "step-stock", title: LAYER_DRAWING.stock }, room, [
    view(LAYER_DRAWING.board, (sketch) => {
      for (let i = 0; i < ACROSS; i++) {
        sketch.area(WOOD_SHADE, boxPolygon(i * width, 0, (i + 1) * width, board));
        sketch.outline("outline", boxPolygon(i * width, 0, (i + 1) * width, board));
      }
      sketch.level(t.ruled(width), point(0, 0), point(width, 0));
      sketch.upright(t.ruled(board), point(0, 0), point(0, board), "left");
      sketch.name("right", [
        { words: LAYER_DRAWING.face({ angle: t.deg(boardRings) }), point: point(1.7 * width, board) },
        { words: LAYER_DRAWING.long({ length: t.mm(length) }), point: point(1.8 * width, 0.3 * board) },
      ]);
    }),
    view(LAYER_DRAWING.onEdge, (sketch) => {
      sketch.area(WOOD_SHADE, boxPolygon(0, 0, board, width));
      sketch.outline("outline", boxPolygon(0, 0, board, width));
      const words = LAYER_DRAWING.sole({ angle: t.deg(90 - boardRings) });
      sketch.name("right", [{ words, point: point(board, 0.4 * width) }]);
    }),
  ]);
}

export const layerStackPicture = (t: StepContext, room: PictureRoom) =>
  composeViews({ name: "step-core", title: LAYER_DRAWING.core }, room, [
    view(LAYER_DRAWING.stackView, (sketch) => drawStack(sketch, t)),
  ]);

/** Seen from the heel the right cheek is on the right. */
function drawStack(sketch: Sketch, t: StepContext): void {
  const { widths } = t.plane;
  const [h, half] = [widths.blankHeight, widths.core / 2];
  const cheeks = [
    { from: -half - widths.cheek, to: -half },
    { from: half, to: half + widths.cheek },
  ];
  for (const { from, to } of [...cheeks, ...layersOf(t.plane)!]) {
    sketch.area(WOOD_SHADE, boxPolygon(-to, 0, -from, h));
    sketch.outline("outline", boxPolygon(-to, 0, -from, h));
  }
  for (const [i, { from, to }] of layersOf(t.plane)!.entries()) {
    const middle = -(from + to) / 2;
    sketch.words(`${i + 1}`, point(middle, 0.5 * h));
    sketch.level(t.ruled(to - from), point(-to, h), point(-from, h), "above");
  }
  sketch.level(LAYER_DRAWING.stack({ length: t.ruled(widths.core) }), point(-half, 0), point(half, 0));
  sketch.upright(t.ruled(h), point(half + widths.cheek, 0), point(half + widths.cheek, h), "right");
  sketch.name("left", [{ words: LAYER_DRAWING.leftCheek, point: point(-half - widths.cheek / 2, 0.8 * h) }]);
  sketch.name("right", [{ words: LAYER_DRAWING.rightCheek, point: point(half + widths.cheek / 2, 0.85 * h) }]);
}

export function layerCutsPicture(t: StepContext, room: PictureRoom) {
  const layers = layerShapes(t.plane, "blank");
  const front = layers.find(({ block }) => block === "front")!;
  const outer = layers.find(({ block, isSetBack }) => block === "bed" && !isSetBack)!;
  const middle = layers.find(({ isSetBack }) => isSetBack);
  return composeViews({ name: "step-cuts", title: LAYER_DRAWING.cuts({ hasRecess: middle !== undefined }) }, room, [
    view(LAYER_DRAWING.blocks, (sketch) => drawLayers(sketch, t, [front, outer])),
    ...(middle ? [view(LAYER_DRAWING.middle, (sketch) => drawMiddle(sketch, t, middle))] : []),
  ]);
}

function drawLayers(sketch: Sketch, t: StepContext, layers: readonly LayerShape[]): void {
  const { design, cuts, widths } = t.plane;
  const over = design.body.trim / 2;
  for (const { block, shape } of layers) {
    const shift = point(over + (block === "front" ? -cuts.setInToe : cuts.setInHeel), design.sole.allowance);
    const outline = transformOutline(shape.boundary, { shift });
    sketch.area(WOOD_SHADE, outline);
    sketch.outline("outline", outline);
    for (const circle of shape.circles.map((hole) => transformCircle(hole, { shift }))) {
      sketch.circle("cut", circle);
      sketch.cross(circle);
      sketch.level(t.ruled(circle.centre.x), point(0, 0), point(circle.centre.x, 0));
    }
  }
  const [h, length] = [widths.blankHeight, widths.blankLength];
  sketch.line("thin", line(point(0, 0), point(length, 0)), line(point(0, h), point(length, h)));
  sketch.upright(t.ruled(h), point(0, 0), point(0, h), "left");
}

function drawMiddle(sketch: Sketch, t: StepContext, { shape }: LayerShape): void {
  const { design, points, recess } = t.plane;
  const shift = point(0, design.sole.allowance);
  const outline = transformOutline(shape.boundary, { shift });
  sketch.area(WOOD_SHADE, outline);
  sketch.outline("outline", outline);
  for (const hole of shape.circles) {
    sketch.circle("cut", transformCircle(hole, { shift }));
    sketch.cross(transformCircle(hole, { shift }));
  }
  const bed = line(points.bedChamfer, points.bedTop);
  sketch.line("hidden", ...transformOutline([bed], { shift }));
  const low = point(points.recessLow.x, points.recessLow.y + design.sole.allowance);
  const finished = point(bed.to.x, bed.to.y + design.sole.allowance);
  sketch.name("left", [
    { words: LAYER_DRAWING.finished, point: finished },
    { words: LAYER_DRAWING.recess({ length: t.mm(recess!.depth) }), point: low },
    {
      words: LAYER_DRAWING.left({ length: t.mm(design.core.allowanceBed) }),
      point: point(points.bedChamfer.x, points.bedChamfer.y + design.sole.allowance),
    },
  ]);
}
