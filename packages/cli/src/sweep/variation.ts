// A parameter that a sweep varies, and the designs that several of them make together.

/** One parameter and its values, mm, degrees or words, in the order given. */
export interface Variation {
  readonly path: string;
  readonly values: readonly (number | string)[];
}

/** How many designs the variations make together. */
export const countDesigns = (variations: readonly Variation[]): number =>
  variations.reduce((product, { values }) => product * values.length, 1);

/** The values of one design of a sweep; the last parameter named changes fastest. */
export function variationValues(variations: readonly Variation[], index: number): (number | string)[] {
  let rest = index;
  return variations
    .toReversed()
    .map(({ values }) => {
      const value = values[rest % values.length]!;
      rest = Math.floor(rest / values.length);
      return value;
    })
    .reverse();
}
