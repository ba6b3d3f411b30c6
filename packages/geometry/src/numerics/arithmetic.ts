// A formula written once over any kind of number: plain ones, ones that carry their derivatives, or blocks of many runs.
import { atanDeg, cosDeg, sinDeg } from "../trig.ts";

/** What a formula may do with its numbers; angles in degrees. */
export interface Arithmetic<N> {
  constant(value: number): N;
  add(a: N, b: N): N;
  subtract(a: N, b: N): N;
  multiply(a: N, b: N): N;
  divide(a: N, b: N): N;
  sqrt(a: N): N;
  sinDeg(angle: N): N;
  cosDeg(angle: N): N;
  /** Angle whose tangent is given. */
  atanDeg(tangent: N): N;
  /** `otherwise` where `by` is below 0, else `atOrAbove`; both are worked out, and what is not taken may be no number. */
  choose(by: N, atOrAbove: N, otherwise: N): N;
}

export const REAL: Arithmetic<number> = {
  constant: (value) => value,
  add: (a, b) => a + b,
  subtract: (a, b) => a - b,
  multiply: (a, b) => a * b,
  divide: (a, b) => a / b,
  sqrt: Math.sqrt,
  sinDeg,
  cosDeg,
  atanDeg,
  choose: (by, atOrAbove, otherwise) => (by >= 0 ? atOrAbove : otherwise),
};

/** Tangent of an angle in degrees. */
export const tanOver = <N>(on: Arithmetic<N>, angle: N): N => on.divide(on.sinDeg(angle), on.cosDeg(angle));
/** Cotangent of an angle in degrees. */
export const cotOver = <N>(on: Arithmetic<N>, angle: N): N => on.divide(on.cosDeg(angle), on.sinDeg(angle));

/** The larger of two. */
export const maxOver = <N>(on: Arithmetic<N>, a: N, b: N): N => on.choose(on.subtract(a, b), a, b);
