// The two cuts on the core: kerfs on the waste side, and the wedge-shaped offcut between them. Measured on the milled core:
// x from its toe end, y up from its sole before truing.

import { cotDeg, line, type Outline, type Point, point, polygon, ringPairs, sinDeg } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Span } from "../span.ts";
import { clipToLeft } from "./inner-fit.ts";

/** One cut on the core. Angles from the sole and, for the saw, from square; degrees. */
export interface CoreCut {
  readonly name: "ramp" | "bed";
  readonly angle: number;
  readonly saw: number;
  /** Where the mark stands on the core's sole and on its top. */
  readonly markAtSole: number;
  readonly markAtTop: number;
  /** What the kerf takes there, from the toe end. */
  readonly kerfAtSole: Span;
  readonly kerfAtTop: Span;
  /** Which side of the mark the kerf lies on. */
  readonly wasteTo: "heel" | "toe";
  readonly kerf: Outline;
}

export interface CoreSawing {
  /** In order of cutting. */
  readonly cuts: readonly [ramp: CoreCut, bed: CoreCut];
  /** Of the milled core, and of the cheeks: the sole's allowance included. */
  readonly height: number;
  /** Between the marks on the sole. */
  readonly roomBetweenMarks: number;
  /** Between the kerfs on the sole; below 0 they run into each other there, in the waste. */
  readonly roomBetweenKerfs: number;
  /** How far each block's end stands inside the cheeks' ends at glue-up. */
  readonly setInToe: number;
  readonly setInHeel: number;
  /** The waste between the kerfs, counter-clockwise; always convex. */
  readonly offcut: readonly Point[];
}

/** @see plane geometry: a kerf takes kerf / sin(angle) along the sole. All mm. */
export function coreSawing({ design, cuts, ramp, frame, widths }: Elevation): CoreSawing {
  const height = widths.blankHeight;
  const rampCut = coreCut("ramp", ramp.angle, cuts.rampMark, design.shop.kerf, height);
  const bedCut = coreCut("bed", frame.bedAngle, cuts.bedMark, design.shop.kerf, height);
  return {
    cuts: [rampCut, bedCut],
    height,
    roomBetweenMarks: cuts.bedMark - cuts.rampMark,
    roomBetweenKerfs: bedCut.kerfAtSole.from - rampCut.kerfAtSole.to,
    setInToe: cuts.setInToe,
    setInHeel: cuts.setInHeel,
    offcut: offcutCorners(rampCut, bedCut, height),
  };
}

/** A ramp leans to the toe as it rises and its waste lies to the heel; a bed the other way about. */
function coreCut(name: CoreCut["name"], angle: number, mark: number, kerf: number, height: number): CoreCut {
  const waste = name === "ramp" ? 1 : -1;
  const taken = kerf / sinDeg(angle);
  const markAtTop = mark - waste * height * cotDeg(angle);
  const spanFrom = (x: number): Span => (waste > 0 ? { from: x, to: x + taken } : { from: x - taken, to: x });
  const [low, high] = [spanFrom(mark), spanFrom(markAtTop)];
  return {
    name,
    angle,
    saw: 90 - angle,
    markAtSole: mark,
    markAtTop,
    kerfAtSole: low,
    kerfAtTop: high,
    wasteTo: waste > 0 ? "heel" : "toe",
    kerf: polygon(point(low.from, 0), point(low.to, 0), point(high.to, height), point(high.from, height)),
  };
}

/** What is left between the kerfs: below where they meet there is none, so it may be a triangle. */
function offcutCorners(ramp: CoreCut, bed: CoreCut, height: number): Point[] {
  const [toe, heel] = [ramp.kerfAtTop.to, bed.kerfAtTop.from];
  if (heel <= toe) return [];
  const [low, high] = [Math.min(toe, bed.kerfAtSole.from), Math.max(heel, ramp.kerfAtSole.to)];
  const box = [point(low, 0), point(high, 0), point(high, height), point(low, height)];
  const heelward = clipToLeft(box, point(ramp.kerfAtTop.to, height), point(ramp.kerfAtSole.to, 0));
  return clipToLeft(heelward, point(bed.kerfAtSole.from, 0), point(bed.kerfAtTop.from, height));
}

/** Corners as an outline. */
export const outlineOfCorners = (corners: readonly Point[]): Outline =>
  ringPairs(corners).map(([from, to]) => line(from, to));
