// How much the long tests ask: a sample that CI has time for, or all of it with `pnpm test:full`.

/** Whether everything is asked. */
export const IS_FULL = process.env.LAMPLANE_TESTS === "full";

/** The sample's number, or the full one. */
export const extent = (sample: number, full: number): number => (IS_FULL ? full : sample);

/** Every so many of a list from its first on, or all of it. */
export const sampled = <T>(all: readonly T[], every: number): readonly T[] =>
  IS_FULL ? all : all.filter((_, i) => i % every === 0);
