// How many runs came out: mean, standard deviation and percentiles.

export interface Distribution {
  readonly mean: number;
  readonly deviation: number;
  /** 2.5 in 100 runs lie below `low`, half below `middle`, 97.5 below `high`. */
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** @param values two or more; sorted in place */
export function summarizeValues(values: Float64Array): Distribution {
  const mean = values.reduce((total, value) => total + value, 0) / values.length;
  const squares = values.reduce((total, value) => total + (value - mean) ** 2, 0);
  values.sort();
  return {
    mean,
    deviation: Math.sqrt(squares / (values.length - 1)),
    low: percentile(values, 2.5),
    middle: percentile(values, 50),
    high: percentile(values, 97.5),
  };
}

/**
 * Value under which a share of the sorted values lies, straight between neighbours.
 * @see R. J. Hyndman, Y. Fan, "Sample quantiles in statistical packages", The American Statistician 50 (1996) 361–365, no. 7
 */
export function percentile(sorted: Float64Array, percent: number): number {
  const at = ((sorted.length - 1) * percent) / 100;
  const below = Math.floor(at);
  const low = sorted[below]!;
  return low + (at - below) * ((sorted[below + 1] ?? low) - low);
}
