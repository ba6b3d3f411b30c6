// How many slips of the pen lie between two words.

/**
 * Letters added, lost or changed, and neighbours exchanged, each counted once: optimal string alignment.
 * @see F. J. Damerau, Communications of the ACM 7 (1964) 171–176; V. I. Levenshtein, Soviet Physics Doklady 10 (1966) 707–710
 */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const changed = last[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const areSwapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const exchanged = areSwapped ? before[j - 2]! + 1 : changed;
      row.push(Math.min(changed, exchanged, last[j]! + 1, row[j - 1]! + 1));
    }
    [before, last] = [last, row];
  }
  return last[b.length]!;
}
