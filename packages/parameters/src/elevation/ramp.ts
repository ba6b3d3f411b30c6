// The front block's slope: one straight cut, or a wear, an arc tangent to it and a straight exit. Convex toward the throat.

import { acosDeg, arc, cosDeg, cotDeg, line, type Point, point, type Segment } from "@lamplane/geometry";
import type { Design } from "../table/index.ts";
import type { PointOf } from "./frame.ts";
import { curvedRamp } from "./ramp-formulas.ts";

export interface RampOf<N> {
  readonly shape: "straight" | "curved";
  /** Angle from the sole at the sole: ρ, or the wear's. */
  readonly angle: N;
  /** Where the line of a straight ramp, or of a curved one's wear, meets the trued sole. */
  readonly foot: PointOf<N>;
  /** Radius of the curve, and where it begins, ends and has its centre; absent for a straight ramp. */
  readonly curve?: {
    readonly radius: N;
    readonly begin: PointOf<N>;
    readonly end: PointOf<N>;
    readonly centre: PointOf<N>;
    readonly exitAngle: N;
  };
}
export type Ramp = RampOf<number>;

/** Straight ramps stop here: common practice, a steeper bed leaves their throat too narrow. */
const STRAIGHT_UP_TO = 50;
/** A straight ramp by default: 62 for a 45 bed, one degree less for each degree steeper (common practice). */
const RAMP_AND_BED = 107;

/** Straight or curved, once `auto` is settled. */
export const rampShape = ({ ramp, bed }: Design): "straight" | "curved" =>
  ramp.shape !== "auto" ? ramp.shape : bed.angle <= STRAIGHT_UP_TO ? "straight" : "curved";

/** Angle of the ramp at the sole: ρ for a straight one, the wear's for a curved one. Degrees. */
export function rampAngle(design: Design): number {
  if (rampShape(design) === "curved") return design.ramp.wearAngle;
  return design.ramp.angle === "auto" ? RAMP_AND_BED - design.bed.angle : design.ramp.angle;
}

/**
 * The ramp that meets the trued sole `opening` before the cutting edge, on its curve where a sole as built lies beyond the
 * wear. `radius` is used by a curved one only.
 */
export function rampAtOpening(design: Design, mouthX: number, radius: number): Ramp {
  const angle = rampAngle(design);
  const foot = point(mouthX - design.mouth.opening, 0);
  if (rampShape(design) === "straight" || !isCurvePossible(design)) return { shape: rampShape(design), angle, foot };
  const shape = { ...design.ramp, radius };
  const ramp = curvedRamp(angle, foot, shape);
  const beforeFoot = rampXAt(ramp, 0) - foot.x;
  return beforeFoot === 0 ? ramp : curvedRamp(angle, point(foot.x - beforeFoot, 0), shape);
}

/** Whether the curve can lean toward the toe at all: its exit must lie flatter than its wear. */
export const isCurvePossible = ({ ramp }: Design): boolean => ramp.exitAngle < ramp.wearAngle;

/** Largest radius worth having: the curve reaches its exit angle just at the top. mm. */
export const fullHeightRadius = ({ ramp, body }: Design): number =>
  (body.height - ramp.wearHeight) / (cosDeg(ramp.exitAngle) - cosDeg(ramp.wearAngle));

/** The ramp as a chain of segments from height `from` up to height `to`, which lies over its curve. */
export function rampPath(ramp: Ramp, from: number, to: number): Segment[] {
  const { curve } = ramp;
  const [low, high] = [from, to].map((y) => point(rampXAt(ramp, y), y)) as [Point, Point];
  if (!curve || from >= curve.end.y) return [line(low, high)];
  const wear = from < curve.begin.y ? [line(low, curve.begin)] : [];
  const exit = to > curve.end.y ? [line(curve.end, high)] : [];
  return [...wear, arc(wear.length > 0 ? curve.begin : low, curve.end, curve.centre), ...exit];
}

/** x of the ramp at a height over the trued sole, mm: on the wear's line (or the straight ramp's), the arc or the exit. */
export function rampXAt({ angle, foot, curve }: Ramp, y: number): number {
  if (!curve || y <= curve.begin.y) return foot.x - y * cotDeg(angle);
  if (y >= curve.end.y) return curve.end.x - (y - curve.end.y) * cotDeg(curve.exitAngle);
  return curve.centre.x + Math.sqrt(curve.radius ** 2 - (y - curve.centre.y) ** 2);
}

/** Angle of the ramp from the sole at a height over the trued sole, degrees: the arc's tangent where it is curved. */
export function rampAngleAt({ angle, curve }: Ramp, y: number): number {
  if (!curve || y <= curve.begin.y) return angle;
  return y >= curve.end.y ? curve.exitAngle : acosDeg((y - curve.centre.y) / curve.radius);
}
