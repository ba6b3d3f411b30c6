// The plane's frame and the iron's: x along the sole from the toe, y up from the trued sole; s up the iron's face, v off it.
import { type Arithmetic, cotOver, REAL } from "@lamplane/geometry/numerics";

/** A point over any kind of number. */
export interface PointOf<N> {
  readonly x: N;
  readonly y: N;
}

/** The cutting edge at the trued sole, and the bed's angle: all that the iron's own coordinates need. */
export interface FrameOf<N> {
  readonly mouthX: N;
  readonly bedAngle: N;
}
export type Frame = FrameOf<number>;

/** The frame's formulas over any kind of number. */
export function frameOver<N>(on: Arithmetic<N>) {
  const { add, subtract, multiply, divide, sinDeg, cosDeg } = on;
  return {
    /** Place in the plane of a point s up the iron's face and v square off it, toward the toe and up. mm. */
    ironToPlane({ mouthX, bedAngle }: FrameOf<N>, s: N, v: N): PointOf<N> {
      const [sin, cos] = [sinDeg(bedAngle), cosDeg(bedAngle)];
      return {
        x: subtract(add(mouthX, multiply(s, cos)), multiply(v, sin)),
        y: add(multiply(s, sin), multiply(v, cos)),
      };
    },
    /** The iron's own coordinates of a point in the plane. mm. */
    planeToIron({ mouthX, bedAngle }: FrameOf<N>, p: PointOf<N>): { s: N; v: N } {
      const [dx, c, k] = [subtract(p.x, mouthX), cosDeg(bedAngle), sinDeg(bedAngle)];
      return { s: add(multiply(dx, c), multiply(p.y, k)), v: subtract(multiply(p.y, c), multiply(dx, k)) };
    },
    /** x of the bed's line at a height over the trued sole: mouthX + t / sin β + y·cot β. */
    bedXAt: ({ mouthX, bedAngle }: FrameOf<N>, thickness: N, y: N): N =>
      add(add(mouthX, divide(thickness, sinDeg(bedAngle))), multiply(y, cotOver(on, bedAngle))),
  };
}

export const { ironToPlane, planeToIron, bedXAt } = frameOver(REAL);
