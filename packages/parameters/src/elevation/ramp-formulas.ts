// The curved ramp and what of a ramp lies nearest to a point, over any kind of number.
import { orientation, type Point } from "@lamplane/geometry";
import { type Arithmetic, cotOver, REAL } from "@lamplane/geometry/numerics";
import type { PointOf } from "./frame.ts";
import type { RampOf } from "./ramp.ts";

/** mm, degrees. */
export interface CurveOf<N> {
  readonly wearHeight: N;
  readonly exitAngle: N;
  readonly radius: N;
}

/** What of a ramp lies nearest to a point: how far, negative inside the front block, and square to what. mm. */
export interface ClosestOf<N> {
  readonly part: "wear" | "curve" | "exit";
  readonly distance: N;
  /** Direction off the ramp, of length 1; off the curve it has none at the curve's own centre. */
  readonly normal: PointOf<N>;
}

export function rampOver<N>(on: Arithmetic<N>) {
  const { add, subtract, multiply, divide, sqrt, sinDeg, cosDeg, value } = on;
  const square = (a: N): N => multiply(a, a);
  const plain = ({ x, y }: PointOf<N>): Point => ({ x: value(x), y: value(y) });
  const normalOf = (angle: N): PointOf<N> => ({ x: sinDeg(angle), y: cosDeg(angle) });
  return {
    /** A wear at `angle` from its foot up to `wearHeight`, an arc tangent to it, a straight exit. mm, degrees. */
    curvedRamp(angle: N, foot: PointOf<N>, { wearHeight, exitAngle, radius }: CurveOf<N>): RampOf<N> {
      const begin = { x: subtract(foot.x, multiply(wearHeight, cotOver(on, angle))), y: wearHeight };
      const [wear, exit] = [normalOf(angle), normalOf(exitAngle)];
      const centre = { x: subtract(begin.x, multiply(radius, wear.x)), y: subtract(begin.y, multiply(radius, wear.y)) };
      const end = { x: add(centre.x, multiply(radius, exit.x)), y: add(centre.y, multiply(radius, exit.y)) };
      return { shape: "curved", angle, foot, curve: { radius, begin, end, centre, exitAngle } };
    },

    /** x of a curved ramp at a height less that of its wear's line there, and the cotangent of its own angle. mm */
    overWear({ angle, foot, curve }: RampOf<N>, y: N): { readonly x: N; readonly cot: N } | undefined {
      if (!curve || value(y) <= value(curve.begin.y)) return undefined;
      const { centre, end, exitAngle, radius } = curve;
      const onLine = subtract(foot.x, multiply(y, cotOver(on, angle)));
      if (value(y) >= value(end.y)) {
        const cot = cotOver(on, exitAngle);
        return { x: subtract(subtract(end.x, multiply(subtract(y, end.y), cot)), onLine), cot };
      }
      const up = subtract(y, centre.y);
      const across = sqrt(subtract(square(radius), square(up)));
      return { x: subtract(add(centre.x, across), onLine), cot: divide(up, across) };
    },

    /** The front block is convex, so the largest distance from any line that touches it is the distance from it. */
    closestOnRamp({ angle, foot, curve }: RampOf<N>, p: PointOf<N>): ClosestOf<N> {
      const wear = normalOf(angle);
      const toWear = add(multiply(subtract(p.x, foot.x), wear.x), multiply(p.y, wear.y));
      if (!curve) return { part: "wear", distance: toWear, normal: wear };
      const { end, exitAngle, centre, radius, begin } = curve;
      const exit = normalOf(exitAngle);
      const toExit = add(multiply(subtract(p.x, end.x), exit.x), multiply(subtract(p.y, end.y), exit.y));
      const [at, middle] = [plain(p), plain(centre)];
      const isOnCurve = orientation(plain(begin), at, middle) >= 0 && orientation(at, plain(end), middle) >= 0;
      const [dx, dy] = [subtract(p.x, centre.x), subtract(p.y, centre.y)];
      const away = sqrt(add(square(dx), square(dy)));
      const toCurve = subtract(away, radius);
      if (isOnCurve && value(toCurve) >= Math.max(value(toWear), value(toExit)))
        return { part: "curve", distance: toCurve, normal: { x: divide(dx, away), y: divide(dy, away) } };
      return value(toWear) >= value(toExit)
        ? { part: "wear", distance: toWear, normal: wear }
        : { part: "exit", distance: toExit, normal: exit };
    },
  };
}

export const { curvedRamp, closestOnRamp } = rampOver(REAL);
