// How times are taken: every contender warmed up, then run in turn, in an order that rotates, so that what slows the machine slows all alike.

/** Repetitions, and what is spent on a subject at most where they are long. */
export const LEAST_REPETITIONS = 15;
const MOST_REPETITIONS = 200;
const BUDGET = 2500; // ms for each contender
const WARM_UP = 300; // ms, and three runs at least

const median = (sorted) => {
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
};

/** Median, low and high of times in ms. */
export function summary(times) {
  const sorted = [...times].sort((a, b) => a - b);
  return { median: median(sorted), low: sorted[0], high: sorted.at(-1), repetitions: sorted.length };
}

async function onceTimed(run) {
  const begin = performance.now();
  const result = run();
  if (result instanceof Promise) await result;
  return performance.now() - begin;
}

async function warmedUp(run) {
  const times = [];
  for (let spent = 0; times.length < 3 || spent < WARM_UP; spent += times.at(-1)) times.push(await onceTimed(run));
  return Math.min(...times);
}

/**
 * Times of contenders that do the same thing, beside each other. Each contender: `what`, `run`, and for a rate `each`: how many it does at a time.
 * @param options repetitions fixes their number; warm: false takes one run before instead of a warm-up, "none" takes none
 */
export async function beside(contenders, { repetitions, warm = true } = {}) {
  const guesses = [];
  if (warm !== "none")
    for (const { run } of contenders) guesses.push(warm ? await warmedUp(run) : await onceTimed(run));
  const fitting = Math.floor(BUDGET / Math.max(...guesses));
  const count = repetitions ?? Math.min(MOST_REPETITIONS, Math.max(LEAST_REPETITIONS, fitting));
  const times = contenders.map(() => []);
  for (let round = 0; round < count; round++)
    for (let k = 0; k < contenders.length; k++) {
      const turn = (k + round) % contenders.length;
      times[turn].push(await onceTimed(contenders[turn].run));
    }
  return contenders.map(({ what, each, note }, k) => ({
    what,
    ...summary(times[k]),
    ...(each ? { each } : {}),
    ...(note ? { note } : {}),
  }));
}
