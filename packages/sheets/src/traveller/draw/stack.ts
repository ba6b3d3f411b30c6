// Iron, cap iron, wedge, pin and blocks in a sketch, from the elevation's own outlines.

import { line, type Outline, point, polygon, type Segment, transformOutline } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import {
  bedToPlane,
  blocksAt,
  capIronSurface,
  ironToPlane,
  type Stage,
  stageExtent,
} from "@lamplane/parameters/elevation";
import type { Sketch } from "../sketch.ts";
import { clipToWindow, type Window } from "../window.ts";

/** How far a cap iron is drawn short of the iron's end, mm: it has no length of its own in the design. */
export const CAP_ENDS_BELOW = 12;
export const WOOD_SHADE = 0.06;
export const STEEL_SHADE = 0.32;
export const WASTE_SHADE = 0.14;
export const KERF_SHADE = 0.5;

/**
 * Front block and bed block at a stage, their wood shaded lightly. What a window leaves of them ends in thin lines where it
 * was cut off: no edge of the wood.
 */
export function drawBlocks(sketch: Sketch, plane: Elevation, stage: Stage, room?: Window): void {
  const { front, bed } = blocksAt(plane, stage);
  for (const block of [front, bed]) {
    const seen = room ? clipToWindow(block, room) : block;
    const isBreak = ({ from, to }: Segment) =>
      room !== undefined && from.x === to.x && (from.x === room.left || from.x === room.right);
    sketch.area(WOOD_SHADE, seen);
    sketch.line("outline", ...seen.filter((s) => !isBreak(s)));
    sketch.line("thin", ...seen.filter(isBreak));
  }
}

/** Length of body shown each way from the throat's top in a picture of what is in the throat, mm. */
const ASIDE = { toe: 55, heel: 80 };

/** The throat of a long plane with as much of its body as a picture needs; undefined for a plane that is not much longer. */
export function throatWindow({ points, design, topChain }: Elevation): Window | undefined {
  const { length, height } = design.body;
  const [left, right] = [points.rampTop.x - ASIDE.toe, points.bedTop.x + ASIDE.heel];
  const isLong = topChain.every(({ kind }) => kind === "line") && length > 1.3 * (right - left);
  if (!isLong) return undefined;
  return { left: Math.max(0, left), right: Math.min(length, right), low: -height, high: 2 * height };
}

/** Outline of a cheek behind them: ends, sole and top at a stage. */
export function cheekOutline(plane: Elevation, stage: Stage): Outline {
  const { toe, heel, sole, top } = stageExtent(plane, stage);
  const [first, last] = [top[0]!.from, top.at(-1)!.to];
  return [
    line(point(toe, sole), point(heel, sole)),
    line(point(heel, sole), first),
    ...top,
    line(last, point(toe, sole)),
  ];
}

/** The cap iron with its hump, `up` mm up the bed from where it is set. */
function raisedCapIronOutline({ design, frame }: Elevation, up: number): Outline {
  const upper = capIronSurface(design);
  const end = Math.max(design.iron.length - CAP_ENDS_BELOW, (upper.at(-1)?.x ?? 0) + 10);
  const raised = bedToPlane(frame, up, 0);
  const at = (s: number, v: number) => {
    const { x, y } = ironToPlane(frame, s, v);
    return point(x + (raised.x - frame.mouthX), y + raised.y);
  };
  return polygon(
    at(upper[0]?.x ?? 0, 0),
    at(end, 0),
    at(end, design.capIron.thickness),
    ...[...upper].reverse().map(({ x, y }) => at(x, y)),
  );
}

interface StackOptions {
  /** mm that iron and cap iron are drawn back up the bed. */
  readonly back?: number;
  readonly wedge?: boolean;
  readonly pin?: boolean;
}

/** Iron with cap iron, wedge and pin; steel dark, wood light. */
export function drawStackSketch(
  sketch: Sketch,
  plane: Elevation,
  { back = 0, wedge = true, pin = true }: StackOptions = {},
): void {
  const { frame, design } = plane;
  const [edge, up] = [bedToPlane(frame, 0, 0), bedToPlane(frame, back, 0)];
  const iron = transformOutline(plane.iron, { shift: point(up.x - edge.x, up.y - edge.y) });
  const steel = [iron, ...(design.capIron.thickness > 0 ? [raisedCapIronOutline(plane, back)] : [])];
  for (const outline of steel) sketch.area(STEEL_SHADE, outline).outline("thin", outline);
  const wood = [...(wedge ? [plane.wedge] : []), ...(pin ? [plane.pinSection] : [])];
  for (const outline of wood) sketch.area(WOOD_SHADE, outline).outline("outline", outline);
}
