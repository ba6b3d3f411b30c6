// How many standard deviations an interval reaches. Two-sided 95 % wherever a maker is given a range.

/** Normal, two-sided 95 %: for errors that the maker has stated. */
export const NORMAL_95 = 1.959964;
/** Square root of chi-square's 95 % point at 3: the same for every direction of a quadratic surface at once. */
export const NORMAL_95_ALL_DIRECTIONS = Math.sqrt(7.814728);

/** Student's t, two-sided 95 %: for an error that is itself read off `freedom` spare readings. */
export const student95 = (freedom: number): number => Math.sqrt(fQuantile(0.95, 1, freedom));

/**
 * Scheffé's limit for every direction of a quadratic surface (three unknowns) at once, 95 %.
 * @see H. Scheffé, "A method for judging all contrasts in the analysis of variance", Biometrika 40 (1953) 87–104
 */
export const student95AllDirections = (freedom: number): number => Math.sqrt(3 * fQuantile(0.95, 3, freedom));

/**
 * Chi-square that only one honest set of readings in a hundred exceeds.
 * @see E. B. Wilson, M. M. Hilferty, "The distribution of chi-square", PNAS 17 (1931) 684–688; within 2 % down to 2, 5 % at 1
 */
export function chiSquare99(freedom: number): number {
  const NORMAL_99 = 2.326348; // one-sided
  const spread = 2 / (9 * freedom);
  return freedom * (1 - spread + NORMAL_99 * Math.sqrt(spread)) ** 3;
}

/** Value that F with (`above`, `below`) degrees of freedom stays under with the given chance. */
function fQuantile(chance: number, above: number, below: number): number {
  const chanceUnder = (f: number) => incompleteBeta((above * f) / (above * f + below), above / 2, below / 2);
  let high = 1;
  while (chanceUnder(high) < chance) high *= 2;
  let low = 0;
  while (high - low > 1e-12 * high) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (chanceUnder(middle) < chance) low = middle;
    else high = middle;
  }
  return high;
}

/**
 * Regularised incomplete beta function for a and b that are multiples of one half.
 * @see NIST Digital Library of Mathematical Functions, 8.17.22 (continued fraction) and 8.17.4 (symmetry)
 */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front = a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b);
  return Math.exp(front) / (a * betaContinuedFraction(x, a, b));
}

/** Denominator of the continued fraction 1 + d₁/(1 + d₂/(1 + …)), summed from its tail; 200 terms settle every use here. */
function betaContinuedFraction(x: number, a: number, b: number): number {
  let tail = 1;
  for (let n = 200; n >= 1; n--) {
    const m = Math.floor(n / 2);
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    tail = 1 + (n % 2 === 0 ? even : odd) / tail;
  }
  return tail;
}

/** ln Γ of a multiple of one half, by Γ(a) = (a − 1)·Γ(a − 1) down to Γ(1) or Γ(½) = √π. */
function logGamma(a: number): number {
  let sum = Number.isInteger(a) ? 0 : Math.log(Math.PI) / 2;
  for (let factor = a - 1; factor > 0; factor--) sum += Math.log(factor);
  return sum;
}
