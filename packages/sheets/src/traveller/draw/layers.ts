// A core in layers: a strip out of its board, the stack from its end, and the layers of both blocks with their peg holes.
import type { LayerStock } from "@lamplane/bench";
import { line, point, transformCircle, transformOutline } from "@lamplane/geometry";
import { type LayerShape, layerShapes, layersOf } from "@lamplane/parameters/elevation";
import type { Sketch } from "../sketch.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, HALF, scaledView, WHOLE } from "../views.ts";
import { boxPolygon } from "../window.ts";
import { WOOD_SHADE } from "./stack.ts";

/** Strips drawn side by side across a board. */
const ACROSS = 2;

export function stripPicture(t: StepContext, { board, width, length, boardRings }: LayerStock) {
  return composeViews({ name: "step-stock", title: "Strips across the end of a board, and one stood on edge" }, [
    scaledView("End of the board, strips ripped from it", { ...HALF, width: 100 }, (sketch) => {
      for (let i = 0; i < ACROSS; i++) {
        sketch.area(WOOD_SHADE, boxPolygon(i * width, 0, (i + 1) * width, board));
        sketch.outline("outline", boxPolygon(i * width, 0, (i + 1) * width, board));
      }
      sketch.level(t.ruled(width), point(0, 0), point(width, 0));
      sketch.upright(t.ruled(board), point(0, 0), point(0, board), "left");
      sketch.name("right", [
        { words: `rings ${t.deg(boardRings)} to this face`, point: point(1.7 * width, board) },
        { words: `${t.mm(length)} long`, point: point(1.8 * width, 0.3 * board) },
      ]);
    }),
    scaledView("On edge, sole below", { ...HALF, width: 60 }, (sketch) => {
      sketch.area(WOOD_SHADE, boxPolygon(0, 0, board, width));
      sketch.outline("outline", boxPolygon(0, 0, board, width));
      sketch.name("right", [
        { words: `rings ${t.deg(90 - boardRings)} to the sole`, point: point(board, 0.4 * width) },
      ]);
    }),
  ]);
}

export function layerStackPicture(t: StepContext) {
  return composeViews({ name: "step-core", title: "The stack of layers between its cheeks, from the heel" }, [
    scaledView("Layers and cheeks from the heel end, sole below", { ...WHOLE, height: 70 }, (sketch) =>
      drawStack(sketch, t),
    ),
  ]);
}

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
  sketch.level(`stack ${t.ruled(widths.core)}`, point(-half, 0), point(half, 0));
  sketch.upright(t.ruled(h), point(half + widths.cheek, 0), point(half + widths.cheek, h), "right");
  sketch.name("left", [{ words: "left cheek", point: point(-half - widths.cheek / 2, 0.8 * h) }]);
  sketch.name("right", [{ words: "right cheek", point: point(half + widths.cheek / 2, 0.85 * h) }]);
}

export function layerCutsPicture(t: StepContext) {
  const layers = layerShapes(t.plane, "blank");
  const front = layers.find(({ block }) => block === "front")!;
  const outer = layers.find(({ block, isSetBack }) => block === "bed" && !isSetBack)!;
  const middle = layers.find(({ isSetBack }) => isSetBack);
  const frontAndBed = [front, outer];
  return composeViews({ name: "step-cuts", title: "The layers of both blocks with their peg holes, and the recess" }, [
    scaledView("Layers of the front and the bed block, toe to the left", { ...WHOLE, height: 62 }, (sketch) =>
      drawLayers(sketch, t, frontAndBed),
    ),
    ...(middle
      ? [
          scaledView("Middle layers of the bed block", { ...WHOLE, height: 40 }, (sketch) =>
            drawMiddle(sketch, t, middle),
          ),
        ]
      : []),
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
  const { design, points, recess, frame } = t.plane;
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
  sketch.name("left", [
    { words: "dashed: finished bed", point: point(bed.to.x, bed.to.y + design.sole.allowance) },
    { words: `recess ${t.mm(recess!.depth)} deep from here up`, point: low },
  ]);
  sketch.name("right", [
    { words: `bed ${t.deg(frame.bedAngle)}, ${t.mm(design.core.allowanceBed)} left on it`, point: point(low.x, low.y) },
  ]);
}
