// The two tolerances: what arithmetic may blur, and what a maker can hold.

/** Two points nearer than this are one: arithmetic, not a maker's hand. mm. */
export const EPSILON = 1e-6;
/** What a maker can hold at the bench, mm. */
export const BENCH_TOLERANCE = 0.1;
