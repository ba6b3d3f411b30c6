// Intervals: two values that the truth lies between.

export interface Interval {
  readonly low: number;
  readonly high: number;
}

export const around = (middle: number, half: number): Interval => ({ low: middle - half, high: middle + half });

/** The smallest interval that holds both. */
export const hull = (a: Interval, b: Interval): Interval => ({
  low: Math.min(a.low, b.low),
  high: Math.max(a.high, b.high),
});
