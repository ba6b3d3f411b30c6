// The curved ramp and how far a point lies from a ramp, over any kind of number.
import { type Arithmetic, cotOver, maxOver, REAL } from "@lamplane/geometry/numerics";
import type { PointOf } from "./frame.ts";
import type { RampOf } from "./ramp.ts";

/** mm, degrees. */
interface CurveOf<N> {
  readonly wearHeight: N;
  readonly exitAngle: N;
  readonly radius: N;
}

/** Where a ramp lies at a height beside the line of its wear. */
interface BesideWearOf<N> {
  /** mm toward the heel; 0 on the wear and on a straight ramp. */
  readonly x: N;
  /** Cotangent of the ramp's own angle there. */
  readonly cot: N;
}

export function rampOver<N>(on: Arithmetic<N>) {
  const { constant, add, subtract, multiply, divide, sqrt, sinDeg, cosDeg, choose } = on;
  const square = (a: N): N => multiply(a, a);
  const normalOf = (angle: N): PointOf<N> => ({ x: sinDeg(angle), y: cosDeg(angle) });
  const orientation = (a: PointOf<N>, b: PointOf<N>, centre: PointOf<N>): N =>
    subtract(
      multiply(subtract(a.x, centre.x), subtract(b.y, centre.y)),
      multiply(subtract(a.y, centre.y), subtract(b.x, centre.x)),
    );
  return {
    /** A wear at `angle` from its foot up to `wearHeight`, an arc tangent to it, a straight exit. mm, degrees. */
    curvedRamp(angle: N, foot: PointOf<N>, { wearHeight, exitAngle, radius }: CurveOf<N>): RampOf<N> {
      const begin = { x: subtract(foot.x, multiply(wearHeight, cotOver(on, angle))), y: wearHeight };
      const [wear, exit] = [normalOf(angle), normalOf(exitAngle)];
      const centre = { x: subtract(begin.x, multiply(radius, wear.x)), y: subtract(begin.y, multiply(radius, wear.y)) };
      const end = { x: add(centre.x, multiply(radius, exit.x)), y: add(centre.y, multiply(radius, exit.y)) };
      return { shape: "curved", angle, foot, curve: { radius, begin, end, centre, exitAngle } };
    },

    besideWear({ angle, foot, curve }: RampOf<N>, y: N): BesideWearOf<N> {
      const onWear = { x: constant(0), cot: cotOver(on, angle) };
      if (!curve) return onWear;
      const { begin, centre, end, exitAngle, radius } = curve;
      const line = subtract(foot.x, multiply(y, onWear.cot));
      const up = subtract(y, centre.y);
      const across = sqrt(subtract(square(radius), square(up)));
      const onArc = { x: subtract(add(centre.x, across), line), cot: divide(up, across) };
      const exitCot = cotOver(on, exitAngle);
      const [overEnd, underBegin] = [subtract(y, end.y), subtract(begin.y, y)];
      const onExit = { x: subtract(subtract(end.x, multiply(overEnd, exitCot)), line), cot: exitCot };
      const at = (part: keyof BesideWearOf<N>) =>
        choose(underBegin, onWear[part], choose(overEnd, onExit[part], onArc[part]));
      return { x: at("x"), cot: at("cot") };
    },

    /**
     * Distance from the ramp to a point, square to it; negative inside the front block. The block is convex, so it is the
     * largest distance from any line that touches it. mm
     */
    distanceToRamp({ angle, foot, curve }: RampOf<N>, p: PointOf<N>): N {
      const wear = normalOf(angle);
      const toWear = add(multiply(subtract(p.x, foot.x), wear.x), multiply(p.y, wear.y));
      if (!curve) return toWear;
      const { end, exitAngle, centre, radius, begin } = curve;
      const exit = normalOf(exitAngle);
      const toExit = add(multiply(subtract(p.x, end.x), exit.x), multiply(subtract(p.y, end.y), exit.y));
      const toLines = maxOver(on, toWear, toExit);
      const away = sqrt(add(square(subtract(p.x, centre.x)), square(subtract(p.y, centre.y))));
      const overArc = maxOver(on, subtract(away, radius), toLines);
      const [afterBegin, beforeEnd] = [orientation(begin, p, centre), orientation(p, end, centre)];
      return choose(afterBegin, choose(beforeEnd, overArc, toLines), toLines);
    },
  };
}

export const { curvedRamp, distanceToRamp } = rampOver(REAL);
