// What follows from an elevation is worked out once for it; checks, figures and sheets read the same result.
import type { Elevation } from "./elevation.ts";

/** The same function, which remembers its result for as long as the elevation is in use. */
export function memoizeByPlane<T>(computed: (plane: Elevation) => T): (plane: Elevation) => T {
  const known = new WeakMap<Elevation, { readonly result: T }>();
  return (plane) => {
    const kept = known.get(plane) ?? { result: computed(plane) };
    known.set(plane, kept);
    return kept.result;
  };
}
