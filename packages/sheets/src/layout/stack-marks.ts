// What lies in the throat, drawn in outline as far as it lies within the body: iron, cap iron, screw, wedge, cross pin; recess behind.

import { line, type Outline, type Point, point, polygon, ringPairs } from "@lamplane/geometry";
import type { Elevation, Recess } from "@lamplane/parameters/elevation";
import { bedToPlane, capIronSurface, ironToPlane, thicknessAt, wedgeThickness } from "@lamplane/parameters/elevation";
import { drawLeader } from "../picture/dimensions.ts";
import { LETTERING, type Marks } from "../picture/marks.ts";
import { STACK_LAYOUT } from "../words/layout.ts";
import { SMALLEST_LETTERS } from "./format.ts";

/** Draws iron, cap iron with its hump, screw head, wedge and pin below a height; later ones lie over earlier ones. */
export function drawStackLayout(marks: Marks, e: Elevation, top: number): void {
  const { capIron } = e.design;
  drawBelow(marks, "thin", e.iron, top);
  if (capIron.thickness > 0) drawBelow(marks, "thin", visibleCapIronOutline(e), top);
  drawBelow(marks, "thin", e.wedge, top);
  marks.outline("thin", e.pinSection);
  if (e.recess) drawBehindBed(marks, e, e.recess, top);
}

/** Within the bed block: the recess and the screw's head in it. */
function drawBehindBed(marks: Marks, e: Elevation, recess: Recess, top: number): void {
  const { low, depth } = recess;
  const { thickness: t } = e.frame;
  const box = ironBox(e, low, e.bedTopS + 2 * e.design.body.height, -t, -t - depth);
  drawBelow(marks, "hidden", box, top);
  const { diameter, height, fromEdge } = e.design.capIron.screwHead;
  drawBelow(marks, "hidden", ironBox(e, fromEdge - diameter / 2, fromEdge + diameter / 2, -t, -t - height), top);
}

/** Names of the things in the throat: along iron, cap iron and wedge where they are thick enough, and at the pin. */
export function drawStackNames(marks: Marks, e: Elevation): void {
  const { capIron } = e.design;
  const s = 0.68 * e.bedTopS;
  const thick = thicknessAt(e.design, s);
  drawNameAlong(marks, e, STACK_LAYOUT.iron, { s, v: -thick, thickness: thick });
  drawNameAlong(marks, e, STACK_LAYOUT.capIron, { s, v: 0, thickness: capIron.thickness });
  const onWedge = 0.8 * e.bedTopS;
  const wedge = { s: onWedge, v: capIron.thickness, thickness: wedgeThickness(e.design, onWedge) };
  drawNameAlong(marks, e, STACK_LAYOUT.wedge, wedge);
  const r = e.pinSize.diameter / 2;
  const at = e.pin.centre;
  const left = point(at.x - Math.SQRT1_2 * r, at.y + Math.SQRT1_2 * r);
  drawLeader(
    marks,
    STACK_LAYOUT.crossPin,
    left,
    point(at.x - r - 4, at.y + r + 3),
    marks.transform.mirrored ? "right" : "left",
  );
}

/** Where a layer of the stack gets its name, in the iron's frame: `v` is its lower side. */
interface LayerNamePlace {
  readonly s: number;
  readonly v: number;
  readonly thickness: number;
}

function drawNameAlong(marks: Marks, e: Elevation, words: string, { s, v, thickness }: LayerNamePlace): void {
  const size = Math.min(LETTERING.small, 0.75 * thickness);
  if (size < SMALLEST_LETTERS) return;
  const at = ironToPlane(e.frame, s, v + thickness / 2 - 0.36 * size);
  marks.text(words, at, { size, anchor: "middle", turn: e.frame.faceAngle });
}

/** The cap iron as far up as the iron reaches. */
function visibleCapIronOutline({ design, frame }: Elevation): Outline {
  const upper = capIronSurface(design);
  const end = Math.max(design.iron.length, upper.at(-1)!.x);
  const corners = [upper[0]!, point(end, 0), point(end, design.capIron.thickness), ...upper.slice(1).reverse()];
  return polygon(...corners.map(({ x, y }) => ironToPlane(frame, x, y)));
}

function ironBox({ frame }: Elevation, low: number, high: number, v: number, w: number): Outline {
  return polygon(
    ...(
      [
        [low, v],
        [high, v],
        [high, w],
        [low, w],
      ] as const
    ).map(([s, off]) => bedToPlane(frame, s, off)),
  );
}

/** A straight-sided outline cut off at a height; nothing where all of it lies above. */
function drawBelow(marks: Marks, kind: "thin" | "hidden", outline: Outline, top: number): void {
  const corners = outline.map((s) => s.from);
  const kept = ringPairs(corners).flatMap(([corner, next]) => {
    const own = corner.y <= top ? [corner] : [];
    return corner.y <= top === next.y <= top ? own : [...own, pointAtHeight(corner, next, top)];
  });
  const sides = ringPairs(kept).map(([from, to]) => line(from, to));
  // The side along the cut is no edge of the thing and is not drawn.
  const edges = sides.filter(({ from, to }) => !(from.y === top && to.y === top));
  if (edges.length > 0) marks.line(kind, ...edges);
}

const pointAtHeight = (a: Point, b: Point, y: number): Point => point(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y), y);
