// Vectors of the judge's own.
export type Vector = readonly [number, number, number];

export const plus = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (k: number, a: Vector): Vector => [k * a[0], k * a[1], k * a[2]];
export const inner = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const outer = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const size = (a: Vector): number => Math.hypot(...a);
export const unit = (a: Vector): Vector => times(1 / size(a), a);
