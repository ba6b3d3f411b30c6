// What follows from a design or an elevation is worked out once for it; checks, jigs, figures and sheets read the same result.
import type { Design } from "../table/index.ts";
import type { Elevation } from "./elevation.ts";

/**
 * Results by the function they came from. They lie on what they follow from, under a key that no copy takes over: collecting
 * thousands of planes of a sweep, each with an entry in a weak table, takes longer than making them.
 */
const RESULTS = Symbol("results");

function resultsOf(source: object & { readonly [RESULTS]?: Map<unknown, unknown> }): Map<unknown, unknown> {
  const known = source[RESULTS];
  if (known) return known;
  const results = new Map<unknown, unknown>();
  Object.defineProperty(source, RESULTS, { value: results }); // not enumerable: `{ ...plane }` is another plane
  return results;
}

function memoize<Source extends object, Result>(compute: (source: Source) => Result): (source: Source) => Result {
  return (source) => {
    const results = resultsOf(source);
    const known = results.get(compute) as Result | undefined;
    if (known !== undefined || results.has(compute)) return known as Result;
    const result = compute(source);
    results.set(compute, result);
    return result;
  };
}

/** The same function, which remembers its result for as long as the elevation is in use. */
export const memoizeByPlane: <T>(compute: (plane: Elevation) => T) => (plane: Elevation) => T = memoize;

/** The same of a design; one is never changed in place. */
export const memoizeByDesign: <T>(compute: (design: Design) => T) => (design: Design) => T = memoize;
