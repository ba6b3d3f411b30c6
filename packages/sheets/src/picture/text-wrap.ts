// Words broken into lines, whatever the typeface they are measured in.
import type { TextMeasure } from "./text-metrics.ts";

export interface WrapOptions {
  readonly measure: TextMeasure;
  readonly size: number;
  readonly bold?: boolean;
  /** Where a text may be broken; at every space unless it says otherwise. */
  readonly breakAt?: string | RegExp;
  /** Whether a word that is wider than the line by itself is broken; else it stands out. */
  readonly breakWords?: boolean;
}

/** Spaces at which a text with numbers in it may be broken: not between a number, its unit, and the number in brackets behind it. */
export const NOT_BEFORE_UNIT = /(?<!\d) (?!\(\d)| (?!mm|in\b|%|\(\d)/;

/** A text's lines, none wider than `width`, in the unit of its size, but for what the options let stand out. */
export function wrapText(text: string, width: number, options: WrapOptions): string[] {
  const { measure, size, bold = false, breakAt = " ", breakWords = false } = options;
  const fits = (words: string) => measure(words, size, bold) <= width;
  const lines: string[] = [];
  const appends = (word: string): boolean => {
    if (lines.length === 0) return false;
    const longer = `${lines.at(-1)} ${word}`;
    if (!fits(longer)) return false;
    lines[lines.length - 1] = longer;
    return true;
  };
  for (const word of text.split(breakAt)) {
    if (appends(word)) continue;
    const [first, ...rest] = breakWords ? breakWord(word, fits) : [word];
    if (first === word || !appends(first!)) lines.push(first!);
    for (const piece of rest) if (!appends(piece)) lines.push(piece);
  }
  return lines;
}

function breakWord(word: string, fits: (words: string) => boolean): string[] {
  if (fits(word) || word.length < 2) return [word];
  let count = word.length - 1;
  while (count > 1 && !fits(word.slice(0, count))) count--;
  return [word.slice(0, count), ...breakWord(word.slice(count), fits)];
}
