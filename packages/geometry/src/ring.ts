// Lists that close upon themselves: after the last comes the first.

/** Each member with the one after it. */
export const ringPairs = <T>(ring: readonly T[]): (readonly [at: T, after: T])[] =>
  ring.map((each, i) => [each, ring[(i + 1) % ring.length]!]);

/** Each member between the one before it and the one after it. */
export const ringTriples = <T>(ring: readonly T[]): (readonly [before: T, at: T, after: T])[] =>
  ring.map((each, i) => [ring.at(i - 1)!, each, ring[(i + 1) % ring.length]!]);
