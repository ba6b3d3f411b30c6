// The plane's frame and the iron's two: x along the sole from the toe, y up from the trued sole; s from the cutting edge up
// the iron's face or up the bed, v square off it.
import { type Arithmetic, cotOver, REAL } from "@lamplane/geometry/numerics";

/** A point over any kind of number. */
export interface PointOf<N> {
  readonly x: N;
  readonly y: N;
}

/** The cutting edge at the trued sole and how the iron lies: on its back on the bed, its face leaning by its taper from it. */
export interface FrameOf<N> {
  readonly mouthX: N;
  readonly bedAngle: N;
  /** Angle of the iron's face from the sole; the bed's for a parallel iron. */
  readonly faceAngle: N;
  /** Thickness of the iron at its cutting edge, square to its back: how far the edge stands off the bed. */
  readonly thickness: N;
}
export type Frame = FrameOf<number>;

/** A place up a slope and square off it, toward the toe and up, counted from the cutting edge. */
interface SlopePointOf<N> {
  readonly s: N;
  readonly v: N;
}

/** The frame's formulas over any kind of number. */
export function frameOver<N>(on: Arithmetic<N>) {
  const { constant, add, subtract, multiply, divide, sinDeg, cosDeg } = on;
  const fromSlope = (mouthX: N, angle: N, s: N, v: N): PointOf<N> => {
    const [sin, cos] = [sinDeg(angle), cosDeg(angle)];
    return {
      x: subtract(add(mouthX, multiply(s, cos)), multiply(v, sin)),
      y: add(multiply(s, sin), multiply(v, cos)),
    };
  };
  const ontoSlope = (mouthX: N, angle: N, p: PointOf<N>): SlopePointOf<N> => {
    const [dx, c, k] = [subtract(p.x, mouthX), cosDeg(angle), sinDeg(angle)];
    return { s: add(multiply(dx, c), multiply(p.y, k)), v: subtract(multiply(p.y, c), multiply(dx, k)) };
  };
  const turn = ({ s, v }: SlopePointOf<N>, angle: N): SlopePointOf<N> => {
    const { x, y } = fromSlope(constant(0), angle, s, v);
    return { s: x, v: y };
  };
  return {
    /** Place in the plane of a point s up the iron's face and v square off it, toward the toe and up. mm. */
    ironToPlane: ({ mouthX, faceAngle }: FrameOf<N>, s: N, v: N): PointOf<N> => fromSlope(mouthX, faceAngle, s, v),
    /** The coordinates on the iron's face of a point in the plane. mm. */
    planeToIron: ({ mouthX, faceAngle }: FrameOf<N>, p: PointOf<N>): SlopePointOf<N> => ontoSlope(mouthX, faceAngle, p),
    /** Place in the plane of a point s up the bed and v square off it, both from the cutting edge: the bed is v = −thickness. mm. */
    bedToPlane: ({ mouthX, bedAngle }: FrameOf<N>, s: N, v: N): PointOf<N> => fromSlope(mouthX, bedAngle, s, v),
    /** The coordinates along the bed, from the cutting edge, of a point in the plane. mm. */
    planeToBed: ({ mouthX, bedAngle }: FrameOf<N>, p: PointOf<N>): SlopePointOf<N> => ontoSlope(mouthX, bedAngle, p),
    /** Coordinates along the bed of a place on the iron's face. mm. */
    ironToBed: ({ bedAngle, faceAngle }: FrameOf<N>, place: SlopePointOf<N>): SlopePointOf<N> =>
      turn(place, subtract(faceAngle, bedAngle)),
    /** Coordinates on the iron's face of a place along the bed. mm. */
    bedToIron: ({ bedAngle, faceAngle }: FrameOf<N>, place: SlopePointOf<N>): SlopePointOf<N> =>
      turn(place, subtract(bedAngle, faceAngle)),
    /** x of the bed's line at a height over the trued sole: mouthX + t / sin β + y·cot β. */
    bedXAt: ({ mouthX, bedAngle, thickness }: Omit<FrameOf<N>, "faceAngle">, y: N): N =>
      add(add(mouthX, divide(thickness, sinDeg(bedAngle))), multiply(y, cotOver(on, bedAngle))),
  };
}

export const { ironToPlane, planeToIron, bedToPlane, planeToBed, ironToBed, bedToIron, bedXAt } = frameOver(REAL);
