// Numbers that carry their partial derivatives by several variables at once: forward automatic differentiation.
import { arcLength, atanDeg, cosDeg, sinDeg } from "../trig.ts";
import type { Arithmetic } from "./arithmetic.ts";

export interface Dual {
  readonly value: number;
  /** One for each variable, in their order. */
  readonly partials: readonly number[];
}

const PER_DEGREE = arcLength(1, 1);

/** A variable: its own derivative is 1, all others are 0. */
export const dualVariable = (value: number, index: number, count: number): Dual => ({
  value,
  partials: Array.from({ length: count }, (_, i) => (i === index ? 1 : 0)),
});

/**
 * Arithmetic on duals of `count` variables; a root of 0 and a quotient by 0 have no finite derivatives.
 * @see A. Griewank, A. Walther, "Evaluating Derivatives", 2nd ed. (2008), chapter 3: forward propagation of tangents
 */
export function dualArithmetic(count: number): Arithmetic<Dual> {
  const combine = (value: number, a: Dual, byA: number, b: Dual, byB: number): Dual => ({
    value,
    partials: a.partials.map((partial, i) => byA * partial + byB * b.partials[i]!),
  });
  const scale = (value: number, a: Dual, by: number): Dual => ({ value, partials: a.partials.map((p) => by * p) });
  return {
    constant: (value) => ({ value, partials: Array<number>(count).fill(0) }),
    add: (a, b) => combine(a.value + b.value, a, 1, b, 1),
    subtract: (a, b) => combine(a.value - b.value, a, 1, b, -1),
    multiply: (a, b) => combine(a.value * b.value, a, b.value, b, a.value),
    divide: (a, b) => combine(a.value / b.value, a, 1 / b.value, b, -a.value / b.value ** 2),
    sqrt: (a) => scale(Math.sqrt(a.value), a, 0.5 / Math.sqrt(a.value)),
    sinDeg: (a) => scale(sinDeg(a.value), a, cosDeg(a.value) * PER_DEGREE),
    cosDeg: (a) => scale(cosDeg(a.value), a, -sinDeg(a.value) * PER_DEGREE),
    atanDeg: (a) => scale(atanDeg(a.value), a, 1 / (PER_DEGREE * (1 + a.value ** 2))),
    choose: (by, atOrAbove, otherwise) => (by.value >= 0 ? atOrAbove : otherwise),
  };
}
