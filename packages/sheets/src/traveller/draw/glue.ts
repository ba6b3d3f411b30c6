// The blank put together: from the side with the iron clamped at its height, and from above with clamps, marks and wax.

import type { StockPlan } from "@lamplane/bench";
import { line, type Outline, point, sinDeg, transformOutline } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import {
  bedToPlane,
  blocksAt,
  GLUE_FREE,
  glueFreeArea,
  pegHoles,
  pinLengths,
  stageExtent,
} from "@lamplane/parameters/elevation";
import { toMillimetres } from "@lamplane/parameters/units";
import { GLUE_DRAWING } from "../../words/drawings.ts";
import type { Sketch } from "../sketch.ts";
import type { StepContext } from "../step-context.ts";
import { composeViews, type PictureRoom, view } from "../views.ts";
import { boxPolygon, clipToWindow, type Window } from "../window.ts";
import { cheekOutline, drawBlocks, STEEL_SHADE, WASTE_SHADE, WOOD_SHADE } from "./stack.ts";

const SIXTEENTH = toMillimetres(1 / 16, "in");

/** mm of the sole shown each way from the edge in a close-up. */
const NEAR = 9;

export function dryFitPicture(t: StepContext, room: PictureRoom) {
  const { plane } = t;
  return composeViews({ name: "step-dry-fit", title: GLUE_DRAWING.dryFit }, room, [
    view(GLUE_DRAWING.fromSide, (sketch) => {
      drawAssembled(sketch, plane, edgeOverhang(t));
      const { toe, heel, sole, blockToe, blockHeel } = stageExtent(plane, "blank");
      if (plane.cuts.setInToe > 0) sketch.level(t.ruled(plane.cuts.setInToe), point(toe, sole), point(blockToe, sole));
      sketch.level(
        GLUE_DRAWING.bedFoot({ length: t.ruled(plane.points.bedChamfer.x - toe) }),
        point(toe, sole),
        plane.points.bedChamfer,
      );
      sketch.name("right", [
        {
          words: GLUE_DRAWING.setIn({ length: t.mm(plane.cuts.setInHeel) }),
          point: point((blockHeel + heel) / 2, 0.6 * plane.design.body.height),
        },
        {
          words: t.plane.design.capIron.thickness > 0 ? GLUE_DRAWING.ironAlone : GLUE_DRAWING.iron,
          point: bedToPlane(plane.frame, 0.9 * plane.bedTopS, -plane.frame.thickness / 2),
        },
      ]);
      sketch.arrow(point(0.55 * plane.points.rampFoot.x, 0.35 * plane.design.body.height), 0, { length: 7 });
    }),
    closeUpView(t, GLUE_DRAWING.edge({ height: t.mm(t.figure("edgeHeightAtContact")) }), (sketch, room) => {
      const { sole } = stageExtent(plane, "blank");
      drawMouthArea(sketch, plane, room, edgeOverhang(t));
      const edge = bedToPlane(plane.frame, edgeOverhang(t), 0);
      sketch.upright(t.ruled(edge.y - sole), point(room.right, sole), point(room.right, edge.y), "right");
      sketch.line("thin", line(edge, point(room.right, edge.y)));
    }),
  ]);
}

/** s up the iron by which the edge stands over where it is at work, at contact. */
function edgeOverhang({ plane, figure }: StepContext): number {
  const over = figure("edgeHeightAtContact") - plane.design.sole.allowance;
  return over / sinDeg(plane.frame.bedAngle);
}

function drawAssembled(sketch: Sketch, plane: Elevation, up: number): void {
  const cheek = cheekOutline(plane, "blank");
  sketch.outline("hidden", cheek);
  drawBlocks(sketch, plane, "blank");
  for (const peg of pegHoles(plane)) sketch.circle("outline", peg);
  const iron = shiftOutline(plane.iron, plane, up);
  sketch.area(STEEL_SHADE, iron).outline("thin", iron);
  sketch.circle("outline", plane.pinHole);
}

const shiftOutline = (outline: Outline, plane: Elevation, up: number): Outline => {
  const [from, to] = [bedToPlane(plane.frame, 0, 0), bedToPlane(plane.frame, up, 0)];
  return transformOutline(outline, { shift: point(to.x - from.x, to.y - from.y) });
};

/** A view of what lies near the mouth, cut off by a window round it. */
export function closeUpView(t: StepContext, name: string, draw: (sketch: Sketch, room: Window) => void) {
  const { plane } = t;
  const middle = plane.points.edge.x;
  const low = stageExtent(plane, "blank").sole;
  const reach = Math.max(NEAR, 1.4 * (plane.points.bedFoot.x - middle), 2 * plane.design.sole.allowance);
  const window = { left: middle - reach, right: middle + reach, low: low - 0.15 * reach, high: low + 1.15 * reach };
  return view(name, (sketch) => draw(sketch, window), { most: 5 });
}

/** Blocks and iron within a window, on the blank's sole; the iron `up` mm up the bed from its place at work. */
export function drawMouthArea(
  sketch: Sketch,
  plane: Elevation,
  room: Window,
  up: number,
  stage: "blank" | "trued" = "blank",
) {
  const { front, bed } = blocksAt(plane, stage);
  const iron = shiftOutline(plane.iron, plane, up);
  const seen = [front, bed].map((outline) => clipToWindow(outline, room));
  for (const outline of seen) sketch.area(WOOD_SHADE, outline).outline("outline", outline);
  const steel = clipToWindow(iron, room);
  sketch.area(STEEL_SHADE, steel).outline("thin", steel);
}

export function gluePicture(t: StepContext, { marks }: StockPlan, room: PictureRoom) {
  return composeViews({ name: "step-glue-up", title: GLUE_DRAWING.glueUp }, room, [
    view(GLUE_DRAWING.fromAbove, (sketch) => drawFromAbove(sketch, t.plane, marks)),
    view(GLUE_DRAWING.inside, (sketch) => drawGluedFace(sketch, t), { most: 0.5 }),
  ]);
}

type LayoutMarks = StockPlan["marks"];

/** Cheeks, blocks, pin, marks and clamps on the blank's top. */
function drawFromAbove(sketch: Sketch, plane: Elevation, marks: LayoutMarks): void {
  drawWoodFromAbove(sketch, plane);
  drawPinFromAbove(sketch, plane);
  drawMarksFromAbove(sketch, plane, marks);
  for (const at of clampPlaces(plane)) {
    sketch.arrow(point(at, plane.widths.body / 2), -90, { length: 8 });
    sketch.arrow(point(at, -plane.widths.body / 2), 90, { length: 8 });
  }
  namePartsFromAbove(sketch, plane, marks);
}

function drawWoodFromAbove(sketch: Sketch, plane: Elevation): void {
  const { toe, heel, blockToe, blockHeel } = stageExtent(plane, "blank");
  const { rampTop, bedTop } = throatAtTop(plane);
  const { core, cheek, body } = plane.widths;
  const half = body / 2;
  const wood = [
    boxPolygon(toe, half - cheek, heel, half),
    boxPolygon(toe, -half, heel, cheek - half),
    boxPolygon(blockToe, -core / 2, rampTop, core / 2),
    boxPolygon(bedTop, -core / 2, blockHeel, core / 2),
  ];
  for (const outline of wood) sketch.area(WOOD_SHADE, outline);
  const [bareFrom, bareTo] = bareAtTop(plane);
  for (const z of [half - cheek, -half]) sketch.area(WASTE_SHADE, boxPolygon(bareFrom, z, bareTo, z + cheek));
  for (const outline of wood) sketch.outline("outline", outline);
}

function drawPinFromAbove(sketch: Sketch, plane: Elevation): void {
  const { shoulder, end } = pinLengths(plane);
  const r = plane.pinSize.diameter / 2;
  const { x } = plane.pin.centre;
  sketch.outline("outline", boxPolygon(x - r, -shoulder, x + r, shoulder));
  sketch.outline("outline", boxPolygon(x - r / 2, -end, x + r / 2, end));
}

function drawMarksFromAbove(sketch: Sketch, plane: Elevation, { marks, shift }: LayoutMarks): void {
  const { toe } = stageExtent(plane, "blank");
  const { core, cheek, body } = plane.widths;
  const half = body / 2;
  for (const { over, at } of marks)
    for (const from of at)
      for (const [low, high, origin] of [
        [half - cheek, half, toe],
        [-half, cheek - half, toe],
        [-core / 2, core / 2, toe + shift[over]],
      ] as const)
        sketch.line("mark", line(point(origin + from, low), point(origin + from, high)));
}

function namePartsFromAbove(sketch: Sketch, plane: Elevation, { marks }: LayoutMarks): void {
  const { toe, heel, blockToe, blockHeel } = stageExtent(plane, "blank");
  const { rampTop, bedTop } = throatAtTop(plane);
  const { core, cheek, body } = plane.widths;
  const half = body / 2;
  sketch.name("right", [
    { words: GLUE_DRAWING.noGlue, point: point(0.5 * (rampTop + bedTop), half - cheek / 2) },
    { words: GLUE_DRAWING.leftCheek, point: point(0.96 * heel, cheek / 2 - half) },
    { words: GLUE_DRAWING.clamp, point: point(Math.max(...clampPlaces(plane)), half) },
    { words: GLUE_DRAWING.bedBlock, point: point(0.5 * (bedTop + blockHeel), 0) },
  ]);
  sketch.name("left", [
    { words: GLUE_DRAWING.frontBlock, point: point(0.5 * (blockToe + rampTop), 0) },
    { words: GLUE_DRAWING.marks, point: point(toe + (marks[0]?.at[0] ?? 0), half - cheek / 2) },
    { words: GLUE_DRAWING.pin, point: point(plane.pin.centre.x, -0.3 * core) },
  ]);
}

/** A cheek's inner face with what stays free of glue. */
function drawGluedFace(sketch: Sketch, t: StepContext): void {
  const { plane } = t;
  const cheek = cheekOutline(plane, "blank");
  const { rampChain, bedChain } = blocksAt(plane, "blank");
  sketch.area(WOOD_SHADE, cheek).area(WASTE_SHADE, glueFreeArea(plane)).outline("outline", cheek);
  sketch.line("outline", ...rampChain, ...bedChain);
  const [bare] = bareAtTop(plane);
  const words = GLUE_DRAWING.bare({ width: glueFreeText(t) });
  sketch.name("left", [{ words, point: point(bare + 1, plane.design.body.height - 2) }]);
}

/** Where ramp and bed reach the blank's top. */
function throatAtTop(plane: Elevation): { readonly rampTop: number; readonly bedTop: number } {
  const { rampChain, bedChain } = blocksAt(plane, "blank");
  return { rampTop: rampChain.at(-1)!.to.x, bedTop: bedChain.at(-1)!.to.x };
}

/** From where to where no glue goes along the blank's top. */
function bareAtTop(plane: Elevation): [number, number] {
  const high = glueFreeArea(plane).flatMap(({ from }) => (from.y > plane.design.body.height - 1e-6 ? [from.x] : []));
  return [Math.min(...high), Math.max(...high)];
}

/** How near to bed and ramp glue goes, on the maker's rule: "3 to 5 mm". */
export function glueFreeText({ design, range }: Pick<StepContext, "design" | "range">): string {
  const onRule = (mm: number) => (design.units === "mm" ? mm : Math.round(mm / SIXTEENTH) * SIXTEENTH);
  return range(onRule(GLUE_FREE.least), onRule(GLUE_FREE.most));
}

/** Clamps over both blocks, near their ends and near the throat. */
function clampPlaces(plane: Elevation): number[] {
  const { toe, heel } = stageExtent(plane, "blank");
  const { rampTop, bedTop } = throatAtTop(plane);
  return [0.25, 0.8]
    .flatMap((share) => [toe + (rampTop - toe) * share, heel - (heel - bedTop) * share])
    .sort((a, b) => a - b);
}
