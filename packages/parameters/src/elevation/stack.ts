// What lies on the iron's face: cap iron with its hump, wedge, cross pin. Coordinates s up the face, v off it.

import {
  type Circle,
  cosDeg,
  distanceAlongRay,
  type Line,
  line,
  type Outline,
  type Point,
  point,
  polygon,
  type Segment,
  sinDeg,
  tanDeg,
} from "@lamplane/geometry";
import type { Design } from "../table/index.ts";
import { bedToPlane, type Frame, ironToPlane } from "./frame.ts";
import { bevelToBack, ironTaper } from "./iron-taper.ts";
import type { PinSize, SizedDesign } from "./pin-size.ts";

/** How far a wedge of `auto` length stands out of the top, mm: enough to tap and to draw (common practice). */
const WEDGE_STANDS_OUT = 25;

/** Thickness of the wedge, mm, s up the iron: w₀ + (s − s₀)·tan ω. */
export const wedgeThickness = ({ wedge }: Design, s: number): number =>
  wedge.tip + (s - wedge.tipFromEdge) * tanDeg(wedge.angle);

/** Offset of the pin's axis from the wedge's upper side: half the diameter, flatted or round. mm. */
export const pinAxisOffset = ({ diameter }: PinSize): number => diameter / 2;

/** Where the cross pin's axis stands when it is `height` over the trued sole. mm. */
export interface PinPosition {
  readonly centre: Point;
  readonly s: number;
  readonly v: number;
  /** Thickness of the wedge at the pin's s. */
  readonly wedgeThere: number;
  /** Where the flat (or the round) touches the wedge: s of its middle. */
  readonly contactS: number;
}

/**
 * Where the pin's axis stands at any height over the trued sole.
 * @see plane geometry: s·sin φ + v(s)·cos φ = pinY, linear in s; φ the face's angle.
 */
export function pinPositions(design: SizedDesign, frame: Frame): (height: number) => PinPosition {
  const { wedge, capIron } = design;
  const [sinF, cosF, tanW] = [sinDeg(frame.faceAngle), cosDeg(frame.faceAngle), tanDeg(wedge.angle)];
  const offset = pinAxisOffset(design.pin);
  const atEdge = capIron.thickness + wedge.tip - wedge.tipFromEdge * tanW + offset / cosDeg(wedge.angle);
  const toContact = offset * sinDeg(wedge.angle);
  return (height) => {
    const s = (height - atEdge * cosF) / (sinF + tanW * cosF);
    const v = atEdge + s * tanW;
    return {
      centre: point(frame.mouthX + s * cosF - v * sinF, height),
      s,
      v,
      wedgeThere: wedgeThickness(design, s),
      contactS: s + toContact,
    };
  };
}

/** Half the length of wedge that the pin covers, along s: a flat's half width, nothing for a round pin. mm. */
export const pinHalfCover = ({ pin, wedge }: SizedDesign): number =>
  pin.section === "flatted" ? (pin.diameter / 2) * cosDeg(wedge.angle) : 0;

/** Length of the wedge along the iron, mm; `auto` takes it out of the finished top. */
export function wedgeLength(design: Design, frame: Frame, top: readonly Segment[]): number {
  if (design.wedge.length !== "auto") return design.wedge.length;
  return faceLineTopS(design, frame, top, design.capIron.thickness) - design.wedge.tipFromEdge + WEDGE_STANDS_OUT;
}

/** s at which the line v off the face and parallel to it comes out of the top; by the full height where it misses. mm. */
export function faceLineTopS({ body: { height } }: Design, frame: Frame, top: readonly Segment[], v: number): number {
  const [cosF, sinF] = [cosDeg(frame.faceAngle), sinDeg(frame.faceAngle)];
  const from = ironToPlane(frame, 0, v);
  const s = Math.min(...top.map((edge) => distanceAlongRay(from, point(cosF, sinF), edge)));
  return s < Infinity ? s : (height - v * cosF) / sinF;
}

/** The same of a line parallel to the bed, v counted square to the bed from the cutting edge. mm. */
export const bedLineTopS = (design: Design, frame: Frame, top: readonly Segment[], v: number): number =>
  faceLineTopS(design, { ...frame, faceAngle: frame.bedAngle }, top, v);

/** The wedge from the side, counter-clockwise from its tip's lower corner, in the plane's frame. */
export function wedgeOutline(design: Design, frame: Frame, length: number): Outline {
  const { wedge, capIron } = design;
  const [tip, butt] = [wedge.tipFromEdge, wedge.tipFromEdge + length];
  return polygon(
    ironToPlane(frame, tip, capIron.thickness),
    ironToPlane(frame, butt, capIron.thickness),
    ironToPlane(frame, butt, capIron.thickness + wedgeThickness(design, butt)),
    ironToPlane(frame, tip, capIron.thickness + wedge.tip),
  );
}

/** What lies on the bed, as a shaving meets it. */
export type StackPart = "iron" | "cap iron" | "wedge";

/** Corners of the cap iron's upper side in iron coordinates: working edge, top of the hump, end of the hump; none without one. */
export function capIronSurface({ capIron }: Design): Point[] {
  const { thickness: c, setback, hump, humpEnd } = capIron;
  if (c === 0) return [];
  const peak = c + hump;
  return [point(setback, 0), point(setback + peak, peak), point(Math.max(setback + humpEnd, setback + peak), c)];
}

/** Iron's face, cap iron, hump and wedge as one chain from the cutting edge up, in iron coordinates (x is s, y is v). */
export function stackSurface(design: Design, length: number): { readonly part: StackPart; readonly line: Line }[] {
  const { capIron, wedge } = design;
  const tip = wedge.tipFromEdge;
  const c = capIron.thickness;
  const [capEdge, ...capTop] = capIronSurface(design);
  const corners: StackCorner[] = [
    ["iron", point(0, 0)],
    ...(capEdge ? [["iron", capEdge] as const] : []),
    ...capTop.map((corner) => ["cap iron", corner] as const),
    [c === 0 ? "iron" : "cap iron", point(tip, c)],
    ["wedge", point(tip, c + wedge.tip)],
    ["wedge", point(tip + length, c + wedgeThickness(design, tip + length))],
  ];
  return corners
    .slice(1)
    .map(([part, to], i) => ({ part, line: line(corners[i]![1], to) }))
    .filter(({ line: { from, to } }) => from.x !== to.x || from.y !== to.y);
}

/** A corner of the stack, and the part whose surface leads up to it. */
type StackCorner = readonly [StackPart, Point];

/** The iron from the side, bevel down, counter-clockwise from its cutting edge; its top end is square to its back. */
export const ironOutline = (design: Design, frame: Frame): Outline =>
  polygon(...ironCorners(design, frame).map(({ x, y }) => bedToPlane(frame, x, y)));

/** Its corners along the bed (x up the bed, y off it, from the cutting edge), counter-clockwise from the edge. mm. */
export function ironCorners(design: Design, { thickness }: Pick<Frame, "thickness">): Point[] {
  const { length } = design.iron;
  return [
    point(0, 0),
    point(thickness / tanDeg(bevelToBack(design)), -thickness),
    point(length, -thickness),
    point(length, -length * tanDeg(ironTaper(design))),
  ];
}

/** Round hole in each cheek for a tenon: the tenon and its clearance. */
export const pinHole = (design: SizedDesign, centre: Point): Circle => ({ centre, radius: pinHoleRadius(design) });

export const pinHoleRadius = ({ pin }: SizedDesign): number => (pin.tenon + pin.tenonClearance) / 2;
