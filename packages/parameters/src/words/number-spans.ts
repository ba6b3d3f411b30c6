// Whole numbers in a row, short.

/** Numbers that follow each other as a span: "1, 3–5". */
export function numberSpans(numbers: readonly number[]): string {
  const spans: [number, number][] = [];
  for (const number of numbers) {
    const last = spans.at(-1);
    if (last && number === last[1] + 1) last[1] = number;
    else spans.push([number, number]);
  }
  return spans
    .map(([from, to]) => (from === to ? `${from}` : to === from + 1 ? `${from}, ${to}` : `${from}–${to}`))
    .join(", ");
}
