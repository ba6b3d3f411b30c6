// How many runs came out: mean, standard deviation and percentiles.

export interface Distribution {
  readonly mean: number;
  readonly deviation: number;
  /** 2.5 in 100 runs lie below `low`, half below `middle`, 97.5 below `high`. */
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** @param values two or more; reordered in place */
export function summarizeValues(values: Float64Array): Distribution {
  let total = 0;
  for (const value of values) total += value;
  const mean = total / values.length;
  let squares = 0;
  for (const value of values) squares += (value - mean) ** 2;
  return {
    mean,
    deviation: Math.sqrt(squares / (values.length - 1)),
    low: percentile(values, 2.5),
    middle: percentile(values, 50),
    high: percentile(values, 97.5),
  };
}

/**
 * Value under which a share of the values lies, straight between neighbours; reorders them.
 * @see R. J. Hyndman, Y. Fan, "Sample quantiles in statistical packages", The American Statistician 50 (1996) 361–365, no. 7
 */
function percentile(values: Float64Array, percent: number): number {
  const at = ((values.length - 1) * percent) / 100;
  const rank = Math.floor(at);
  const low = selectRank(values, rank);
  if (at === rank) return low;
  let next = Infinity;
  for (let i = rank + 1; i < values.length; i++) next = Math.min(next, values[i]!);
  return low + (at - rank) * (next - low);
}

/**
 * The value that sorting would put at a rank. Reorders the values: none before the rank is larger, none after it smaller.
 * @see C. A. R. Hoare, "Algorithm 65: Find", Communications of the ACM 4 (1961) 321–322
 */
function selectRank(values: Float64Array, rank: number): number {
  let [low, high] = [0, values.length - 1];
  while (low < high) {
    const pivot = values[(low + high) >> 1]!;
    let [i, j] = [low, high];
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i > j) break;
      const kept = values[i]!;
      values[i++] = values[j]!;
      values[j--] = kept;
    }
    if (rank <= j) high = j;
    else if (rank >= i) low = i;
    else break;
  }
  return values[rank]!;
}
