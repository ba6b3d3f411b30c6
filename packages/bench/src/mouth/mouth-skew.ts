// A mouth that is wider at one cheek than at the other: front block or bed out of square, and the iron tilted to cut even.
import { atan2Deg, atanDeg, cosDeg, sinDeg } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";

/** Opening at each cheek with the edge even with the sole, mm. */
export interface MouthSkew {
  readonly left: number;
  readonly right: number;
  /** Whether both were read; else they are as planned, alike. */
  readonly isRead: boolean;
  /**
   * How much wider one is than the other: as read, or what front block and bed make of it within two standard deviations,
   * errors that do not know of each other.
   */
  readonly uneven: number;
}

/** No truing changes it: sections of bed and ramp at any height of the sole are parallel to those at another. */
export function mouthSkew({ design }: Elevation): MouthSkew {
  const { hand, mouth, measured } = design;
  const by = readUnevenness(measured);
  const left = mouth.opening + (by ?? 0) / 2;
  const right = mouth.opening - (by ?? 0) / 2;
  const uneven = by === undefined ? Math.hypot(hand.frontSkew, hand.bedSkew) : Math.abs(by);
  return { left, right, isRead: by !== undefined, uneven };
}

/** Left less right, mm; undefined where either was not read. */
export const readUnevenness = ({
  mouthSeenLeft: left,
  mouthSeenRight: right,
}: Elevation["design"]["measured"]): number | undefined =>
  left === undefined || right === undefined ? undefined : left - right;

/** Mouth seen at the middle of the edge, or midway between what was seen beside the cheeks, mm; undefined where neither was read. */
export const mouthSeenInMiddle = ({
  mouthSeen,
  mouthSeenLeft: left,
  mouthSeenRight: right,
}: Partial<Pick<Elevation["design"]["measured"], "mouthSeen" | "mouthSeenLeft" | "mouthSeenRight">>):
  | number
  | undefined => mouthSeen ?? (left === undefined || right === undefined ? undefined : (left + right) / 2);

/** An iron turned on its bed so that its edge lies even with the sole. */
export interface IronTilt {
  /** Angle between the iron and the cheeks, in the bed's face, degrees. */
  readonly angle: number;
  /** How far the iron then leans to one side between the edge and the bed's top, mm. */
  readonly lean: number;
  /** What is left of the side clearance then, both sides together, mm; below 0 the cheeks stop it. */
  readonly room: number;
}

/**
 * What a bed out of square by `skew` mm along the sole over the core's width W asks of the iron. The bed is turned by ψ about
 * an upright line, tan ψ = skew / W. Its level lines, to which an even edge is parallel, then make ψ with those square to the
 * cheeks; up the bed its face meets the cheeks at τ from the iron's side, tan τ = cos β·tan ψ. The iron of width w, ℓ long
 * between the cheeks, lies along the sole from its edge, t off the bed, to where its back leaves the cheeks: it reaches
 * w·cos ψ + (ℓ·cos β + t·sin β)·sin ψ across, tapered or not.
 */
export function ironTilt({ frame, design, widths, bedTopS }: Elevation, skew: number): IronTilt {
  const { width, length } = design.iron;
  const between = Math.min(length, bedTopS);
  const turned = atan2Deg(Math.abs(skew), widths.core);
  const [sin, cos] = [sinDeg(frame.bedAngle), cosDeg(frame.bedAngle)];
  const across = width * cosDeg(turned) + (between * cos + frame.thickness * sin) * sinDeg(turned);
  const slope = (cos * Math.abs(skew)) / widths.core;
  return { angle: atanDeg(slope), lean: between * sinDeg(atanDeg(slope)), room: widths.core - across };
}

/** The tilt that this plane may want: for all of the unevenness read, were it the bed's; until then for what the bed is held to. */
export const worstTilt = (plane: Elevation): IronTilt =>
  ironTilt(plane, readUnevenness(plane.design.measured) ?? plane.design.hand.bedSkew);
