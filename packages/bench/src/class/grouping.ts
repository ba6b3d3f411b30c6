// Planes that each prefer a number, and can take another within limits, put into as few groups as there can be, a number each.

/** The number that suits a plane best, and the least and most that it can take. */
export interface Preference {
  readonly preferred: number;
  readonly least: number;
  readonly most: number;
}

export interface Group {
  /** What all of the group are set to. */
  readonly value: number;
  /** Places in the list of preferences, in its order. */
  readonly members: readonly number[];
}

export interface GroupingOptions {
  /** A value is a multiple of this, but for planes that can take only one. */
  readonly step: number;
  /** How many groups there may be; the fewest that do where absent. */
  readonly groups?: number;
}

/**
 * The groups with the least total deviation: the sum of what each plane's number is off from the one it prefers. Exact: the values that
 * can be best are where some plane's cost bends, and of the values chosen only the nearest below and above what a plane
 * prefers can be its own, so that the cost falls apart into pairs of neighbours.
 * @returns undefined where so few groups cannot be had
 * @see Bellman, dynamic programming: the best choice up to a value extends the best up to one before it
 */
export function groupPreferences(
  preferences: readonly Preference[],
  { step, groups }: GroupingOptions,
): Group[] | undefined {
  if (preferences.length === 0) return [];
  const values = candidates(preferences, step);
  const costs = neighbourCosts(preferences, values);
  const most = Math.min(groups ?? preferences.length, values.length);
  for (let count = groups === undefined ? 1 : most; count <= most; count++) {
    const chosen = cheapestValues(costs, values.length, count);
    if (chosen)
      return assign(
        preferences,
        chosen.map((index) => values[index]!),
      );
  }
  return undefined;
}

const BLUR = 1e-9;

/** Every value that can be best, ascending: the steps beside what is preferred and the ends of each plane's limits. */
function candidates(preferences: readonly Preference[], step: number): number[] {
  const around = (value: number) =>
    [Math.floor(value / step + BLUR), Math.ceil(value / step - BLUR)].map((n) => n * step);
  const all = preferences.flatMap(({ preferred, least, most }) =>
    around(least)[1]! > most + BLUR ? [preferred] : [preferred, least, most].flatMap(around),
  );
  const sorted = all.toSorted((a, b) => a - b);
  return sorted.filter((value, i) => i === 0 || value - sorted[i - 1]! > BLUR);
}

const costOf = ({ preferred, least, most }: Preference, value: number | undefined): number =>
  value === undefined || value < least - BLUR || value > most + BLUR
    ? Number.POSITIVE_INFINITY
    : Math.abs(value - preferred);

/** `costs[a + 1][b - a - 1]`: of all planes that prefer more than value a and no more than value b, each with the nearer of the two. */
function neighbourCosts(preferences: readonly Preference[], values: readonly number[]): number[][] {
  const sorted = preferences.toSorted((a, b) => a.preferred - b.preferred);
  const from = (value: number) => {
    const first = sorted.findIndex(({ preferred }) => preferred > value + BLUR);
    return first < 0 ? sorted.length : first;
  };
  const starts = [0, ...values.map(from), sorted.length];
  return [undefined, ...values].map((low, a) => {
    const row: number[] = [];
    for (let b = a + 1; b <= values.length + 1; b++) {
      const between = sorted.slice(starts[a]!, starts[b]!);
      const high = values[b - 1];
      const cost = between.reduce(
        (sum, preference) => sum + Math.min(costOf(preference, low), costOf(preference, high)),
        0,
      );
      row.push(cost);
      if (cost === Number.POSITIVE_INFINITY && between.some((preference) => isBeyond(preference, low, high))) break;
    }
    return row;
  });
}

/** Whether a plane between two values can take neither, nor any value above the higher. */
const isBeyond = (preference: Preference, low: number | undefined, high: number | undefined): boolean =>
  costOf(preference, low) === Number.POSITIVE_INFINITY && (high === undefined || high > preference.most + BLUR);

/** Indexes of so many values, ascending, that cost least together. */
function cheapestValues(costs: readonly number[][], count: number, groups: number): number[] | undefined {
  const cost = (a: number, b: number) => costs[a]?.[b - a - 1] ?? Number.POSITIVE_INFINITY; // a and b are indexes + 1
  let best = Array.from({ length: count + 1 }, (_, b) => (b === 0 ? Number.POSITIVE_INFINITY : cost(0, b)));
  const cameFrom: number[][] = [];
  for (let k = 1; k < groups; k++) {
    const before = best;
    const from = new Array<number>(count + 1).fill(0);
    best = before.map((_, b) => {
      let least = Number.POSITIVE_INFINITY;
      for (let a = Math.max(1, k); a < b; a++) {
        const sum = before[a]! + cost(a, b);
        if (sum < least - BLUR) [least, from[b]] = [sum, a];
      }
      return least;
    });
    cameFrom.push(from);
  }
  let [last, total] = [0, Number.POSITIVE_INFINITY];
  best.forEach((sum, b) => {
    const whole = sum + cost(b, count + 1);
    if (b > 0 && whole < total - BLUR) [last, total] = [b, whole];
  });
  if (total === Number.POSITIVE_INFINITY) return undefined;
  const chosen = [last];
  for (const from of cameFrom.toReversed()) chosen.unshift(from[chosen[0]!]!);
  return chosen.map((b) => b - 1);
}

/** Each plane with the value that costs it least; values that nobody takes are left out. */
function assign(preferences: readonly Preference[], values: readonly number[]): Group[] {
  const nearest = preferences.map((preference) =>
    values.reduce(
      (best, value) => (costOf(preference, value) < costOf(preference, best) - BLUR ? value : best),
      values[0]!,
    ),
  );
  return values
    .map((value) => ({ value, members: nearest.flatMap((own, i) => (own === value ? [i] : [])) }))
    .filter(({ members }) => members.length > 0);
}

/** Sum of what all planes are off from what they prefer, in the number's unit. */
export const totalDeviation = (preferences: readonly Preference[], groups: readonly Group[]): number =>
  groups.reduce(
    (sum, { value, members }) => sum + members.reduce((own, i) => own + Math.abs(value - preferences[i]!.preferred), 0),
    0,
  );
