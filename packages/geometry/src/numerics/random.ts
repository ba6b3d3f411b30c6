// Random numbers that follow from a seed and nothing else: same seed, same numbers, on every machine.

/** Largest seed: 32 bits. */
export const LARGEST_SEED = 2 ** 32 - 1;

const WARM_UP = 12; // rounds until the seed has reached all of the state, as its author gives it (from memory)

/**
 * Numbers from 0 up to, not including, 1, in steps of 2^-32: sfc32, a small fast counting generator.
 * @param seed whole number, 0 to LARGEST_SEED
 * @see C. Doty-Humphrey, PractRand: sfc, 32 bits (from memory)
 */
export function uniformGenerator(seed: number): () => number {
  let [a, b, c, counter] = [0, seed | 0, 0, 1];
  const next = () => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 2 ** 32;
  };
  for (let i = 0; i < WARM_UP; i++) next();
  return next;
}

/**
 * Normal numbers, mean 0 and standard deviation 1, by the polar method, two at a time.
 * @see G. Marsaglia, T. A. Bray, "A convenient method for generating normal variables", SIAM Review 6 (1964) 260–264
 */
export function normalGenerator(uniform: () => number): () => number {
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    let [x, y, square] = [0, 0, 0];
    do {
      x = 2 * uniform() - 1;
      y = 2 * uniform() - 1;
      square = x * x + y * y;
    } while (square >= 1 || square === 0);
    const stretch = Math.sqrt((-2 * Math.log(square)) / square);
    spare = y * stretch;
    return x * stretch;
  };
}
