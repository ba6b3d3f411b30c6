// The parts in 2D, from the same outlines as their solids; each laid with its lower left corner at the origin.

import {
  boundsOf,
  cotDeg,
  line,
  type Outline,
  outlineArea,
  point,
  polygon,
  reverseOutline,
  type Segment,
  type Transform2,
  tessellate,
  transformCircle,
  transformOutline,
  transformSegment,
} from "@lamplane/geometry";
import { blocksAt, cheekShape, pegHoles } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { planeToBed } from "../elevation/frame.ts";
import { pinLengths } from "../elevation/pin-section.ts";
import { recessEdge } from "../elevation/recess.ts";
import type { Stage } from "../table/index.ts";
import { formatLength } from "../units.ts";
import { DRAWING_NOTE } from "../words/drawings.ts";
import type { Drawing, DrawingEntry } from "./drawing.ts";

/** Height of lettering and room between two views, mm. */
const LETTERING = 3;
const BETWEEN_VIEWS = 15;
/** How far past an open edge a pocket runs, beyond the cutter's radius, mm: its corners stand clear of the wood. */
const OVERRUN = 1;

export const cut = (outline: Outline): DrawingEntry => ({ kind: "outline", work: "CUT", outline });
export const mark = (...segments: Segment[]): DrawingEntry => ({ kind: "path", work: "MARK", segments });
export const note = (text: string, x: number, y: number): DrawingEntry => ({
  kind: "note",
  work: "NOTE",
  at: point(x, y),
  text,
  height: LETTERING,
});

/** Shift that brings an outline's lower left corner to the origin. */
function transformToOrigin(outline: Outline, transform: Transform2 = {}): Transform2 {
  const { min } = boundsOf(tessellate(transformOutline(outline, transform)));
  return { ...transform, shift: point(-min.x, -min.y) };
}

/** How each part is turned and shifted to lie on the table; drawing and solid use the same. */
export interface FlatPart {
  readonly outline: Outline;
  readonly transform: Transform2;
}

export const layFrontBlock = (e: Elevation, stage: Stage): FlatPart => layFlat(blocksAt(e, stage).front);
export const layBedBlock = (e: Elevation, stage: Stage): FlatPart => layFlat(blocksAt(e, stage).bed);
/** A cheek lies with its inside up, where the marks are; the left one is seen from the other side, so mirrored. */
export const layCheek = (e: Elevation, stage: Stage, hand: "left" | "right"): FlatPart =>
  layFlat(cheekShape(e, stage).boundary, { mirrored: hand === "left" });
export const layWedge = (e: Elevation): FlatPart => layFlat(e.wedge, { turn: -e.frame.faceAngle });

export const layFlat = (outline: Outline, transform: Transform2 = {}): FlatPart => ({
  outline,
  transform: transformToOrigin(outline, transform),
});

/** Where the pegs go at one end of a part, marked and not drilled: they are bored once all lies together. */
function pegEntries(e: Elevation, stage: Stage, transform: Transform2, ends: "toe" | "heel" | "both"): DrawingEntry[] {
  const holes = stage === "blank" ? pegHoles(e) : [];
  const here = holes.filter(({ centre }) => ends === "both" || centre.x < e.frame.mouthX === (ends === "toe"));
  const circles = here.map((circle) => transformCircle(circle, transform));
  const first = circles[0];
  if (!first) return [];
  const words = DRAWING_NOTE.pegs({ diameter: formatLength(e.design.pegs.diameter, e.design) });
  const left = Math.min(...circles.map(({ centre }) => centre.x)) + e.design.pegs.diameter;
  const high = Math.max(...circles.map(({ centre }) => centre.y));
  return [
    ...circles.map((circle): DrawingEntry => ({ kind: "circle", work: "MARK", circle })),
    note(words, ends === "heel" ? left - words.length * NOTE_ADVANCE : left, high),
  ];
}
/** About what a letter of a note takes, mm. */
const NOTE_ADVANCE = 0.8 * LETTERING;

/** Front block from the side. */
export function frontBlockDrawing(e: Elevation, stage: Stage): Drawing {
  const { outline, transform } = layFrontBlock(e, stage);
  const entries = [
    cut(transformOutline(outline, transform)),
    note(DRAWING_NOTE.wide({ part: "front block", width: formatLength(e.widths.core, e.design) }), 5, 5),
    ...pegEntries(e, stage, transform, "toe"),
  ];
  if (e.ramp.curve) {
    const { begin, end, radius } = e.ramp.curve;
    const straight = line(begin, point(begin.x - (end.y - begin.y) * cotDeg(e.ramp.angle), end.y));
    entries.push(
      mark(transformSegment(straight, transform)),
      note(DRAWING_NOTE.curvedRamp({ radius: formatLength(radius, e.design) }), 5, 10),
    );
  }
  return { title: "front-block", thickness: e.widths.core, entries };
}

/** Bed block from the side with its recess dashed, and its bed seen square with the recess to be routed. */
export function bedBlockDrawing(e: Elevation, stage: Stage): Drawing {
  const { outline, transform } = layBedBlock(e, stage);
  const side = transformOutline(outline, transform);
  const entries = [
    cut(side),
    note(
      DRAWING_NOTE.wide({ part: "bed block", width: formatLength(e.widths.core, e.design) }),
      boundsOf(tessellate(side)).max.x - 60,
      5,
    ),
    ...pegEntries(e, stage, transform, "heel"),
  ];
  const thickness = e.widths.core;
  if (!e.recess) return { title: "bed-block", thickness, entries };
  const bedChain = blocksAt(e, stage).bedChain;
  const [low, high] = [bedChain.at(-1)!.from, bedChain.at(-1)!.to].map((p) => planeToBed(e.frame, p).s) as [
    number,
    number,
  ];
  const c = e.widths.core / 2;
  const view: Transform2 = { turn: 90, shift: point(boundsOf(tessellate(side)).max.x + BETWEEN_VIEWS + c, -low) };
  const edge = recessEdge(e.recess, high + e.recess.cornerRadius + OVERRUN);
  const opening = [...edge, line(edge.at(-1)!.to, edge[0]!.from)];
  const turned = outlineArea(opening) > 0 ? opening : reverseOutline(opening);
  const face = polygon(point(low, -c), point(high, -c), point(high, c), point(low, c));
  entries.push(
    { kind: "outline", work: "MARK", outline: transformOutline(face, view) },
    { kind: "outline", work: "ROUT", outline: transformOutline(turned, view), depth: e.recess.depth },
    note(DRAWING_NOTE.rout({ depth: formatLength(e.recess.depth, e.design) }), view.shift!.x - c + 2, high - low + 4),
  );
  return { title: "bed-block", thickness, entries };
}

/** A cheek with its inside up: the pin's hole; pegs, bed, ramp, trued sole and finished ends as marks. */
export function cheekDrawing(e: Elevation, stage: Stage, hand: "left" | "right"): Drawing {
  const { outline, transform } = layCheek(e, stage, hand);
  const shape = cheekShape(e, stage);
  const blocks = blocksAt(e, stage);
  const { length, height, trim } = e.design.body;
  const put = (s: Segment) => transformSegment(s, transform);
  const entries: DrawingEntry[] = [
    cut(transformOutline(outline, transform)),
    ...shape.circles.map(
      (circle): DrawingEntry => ({ kind: "circle", work: "DRILL", circle: transformCircle(circle, transform) }),
    ),
    ...pegEntries(e, stage, transform, "both"),
    mark(...blocks.rampChain.map(put)),
    mark(...blocks.bedChain.map(put)),
    note(
      DRAWING_NOTE.cheek({
        hand,
        toe: hand === "left" ? "right" : "left",
        thickness: formatLength(e.widths.cheek, e.design),
      }),
      20,
      6,
    ),
  ];
  if (stage !== "trued") entries.push(mark(put(line(point(0, 0), point(length, 0)))));
  if (stage === "blank" && trim > 0) {
    const low = -e.design.sole.allowance;
    for (const x of [0, length]) entries.push(mark(put(line(point(x, low), point(x, height)))));
  }
  return { title: `cheek-${hand}`, thickness: e.widths.cheek, entries };
}

/** Wedge from the side. */
export function wedgeDrawing(e: Elevation): Drawing {
  const { outline, transform } = layWedge(e);
  const side = transformOutline(outline, transform);
  const width = e.widths.core - e.design.wedge.clearance;
  const above = boundsOf(tessellate(side)).max.y + LETTERING;
  return {
    title: "wedge",
    thickness: width,
    entries: [cut(side), note(DRAWING_NOTE.wedge({ width: formatLength(width, e.design) }), 0, above)],
  };
}

/** Cross pin from above, lying on its flat, and its section with the tenon beside it. */
export function crossPinDrawing(e: Elevation): Drawing {
  const { shoulder, end } = pinLengths(e);
  const { diameter, tenon } = e.pinSize;
  const [r, t] = [diameter / 2, tenon / 2];
  const plan = polygon(
    ...[
      [-end, -t],
      [-shoulder, -t],
      [-shoulder, -r],
      [shoulder, -r],
      [shoulder, -t],
      [end, -t],
      [end, t],
      [shoulder, t],
      [shoulder, r],
      [-shoulder, r],
      [-shoulder, t],
      [-end, t],
    ].map(([x, y]) => point(x! + end, y! + r)),
  );
  const sectionAt: Transform2 = { turn: -(e.frame.faceAngle + e.design.wedge.angle) };
  const section = transformToOrigin(e.pinSection, sectionAt);
  const beside: Transform2 = { ...section, shift: point(section.shift!.x + 2 * end + BETWEEN_VIEWS, section.shift!.y) };
  return {
    title: "cross-pin",
    entries: [
      cut(plan),
      { kind: "outline", work: "MARK", outline: transformOutline(e.pinSection, beside) },
      { kind: "circle", work: "MARK", circle: transformCircle({ centre: e.pin.centre, radius: t }, beside) },
      note(
        DRAWING_NOTE.crossPin({ diameter: formatLength(diameter, e.design), tenon: formatLength(tenon, e.design) }),
        0,
        diameter + 4,
      ),
    ],
  };
}
