// Directions over the bed. A direction runs through the bed's centre, from edge to edge.

/**
 * `along` and `across` as shares of the bed's length and width, the larger of them 1: [1, 0] is along, [0, 1] across, [1, 1]
 * and [1, −1] the diagonals.
 */
export type Direction = readonly [along: number, across: number];

/** How much of each of the curve's coefficients a, b, c is in the sagitta of the chord that runs in the direction. */
export const sagittaWeights = ([along, across]: Direction): readonly number[] => [
  along ** 2 / 4,
  (along * across) / 4,
  across ** 2 / 4,
];
