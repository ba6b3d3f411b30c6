// What follows from an elevation is worked out once for it; checks, jigs, figures and sheets read the same result.
import type { Elevation } from "./elevation.ts";

/** Results by the function they came from, one list for each plane: many weak tables would cost more to clear than to fill. */
const known = new WeakMap<Elevation, Map<unknown, unknown>>();

function resultsOf(plane: Elevation): Map<unknown, unknown> {
  const results = known.get(plane) ?? new Map<unknown, unknown>();
  if (results.size === 0) known.set(plane, results);
  return results;
}

/** The same function, which remembers its result for as long as the elevation is in use. */
export function memoizeByPlane<T>(computed: (plane: Elevation) => T): (plane: Elevation) => T {
  return (plane) => {
    const results = resultsOf(plane);
    if (!results.has(computed)) results.set(computed, computed(plane));
    return results.get(computed) as T;
  };
}
