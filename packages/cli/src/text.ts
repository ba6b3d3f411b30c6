// Figures and findings as lines for a terminal; nothing depends on colour.
import { MEASURED_ROWS, type UnreadValue } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { formatValue } from "@lamplane/parameters/units";

/** Values that were not read, each with what it is taken for. */
export const unreadText = (design: Design, unread: readonly UnreadValue[]): string =>
  unread.map(({ key, unit, taken }) => `${MEASURED_ROWS[key].name} ${formatValue(taken, unit, design)}`).join(", ");

/** Rows of columns, each as wide as its widest. */
export const alignColumns = (rows: readonly (readonly string[])[]): string => alignRows(rows).join("\n");

/** Columns of a terminal. */
export const WIDEST = 80;

/** Rows as tables no wider than a terminal: columns that find no room stand in a further one, behind the first column again. */
export function foldColumns(rows: readonly (readonly string[])[]): string[][][] {
  const widths = (rows[0] ?? []).map((_, k) => Math.max(...rows.map((row) => row[k]!.length)));
  const groups: number[][] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const [k, width] of widths.entries()) {
    if (k === 0) continue;
    if (used + 2 + width > WIDEST) {
      groups.push([0]);
      used = widths[0]!;
    }
    groups.at(-1)!.push(k);
    used += 2 + width;
  }
  return groups.map((columns) => rows.map((row) => columns.map((k) => row[k]!)));
}

/** Words in lines no wider than a terminal, two spaces between them. */
export function wrapWords(words: readonly string[]): string[] {
  const lines: string[] = [];
  for (const word of words) {
    const line = lines.at(-1);
    if (line === undefined || line.length + 2 + word.length > WIDEST) lines.push(word);
    else lines[lines.length - 1] = `${line}  ${word}`;
  }
  return lines;
}

/** Rows of columns whose last one, a text, goes on below itself where it passes the edge of a terminal; each as its lines. */
export function alignWithText(rows: readonly (readonly string[])[]): string[][] {
  const starts = alignRows(
    rows.map((row) => row.slice(0, -1)),
    true,
  );
  return rows.map((row, i) => {
    const indent = " ".repeat(starts[i]!.length + 2);
    return breakText(row.at(-1)!, WIDEST - indent.length).map(
      (part, k) => (k === 0 ? `${starts[i]}  ` : indent) + part,
    );
  });
}

/** A text in lines no wider than `width`, broken between words. */
export function breakText(text: string, width = WIDEST): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const line = lines.at(-1);
    if (line === undefined || line.length + 1 + word.length > width) lines.push(word);
    else lines[lines.length - 1] = `${line} ${word}`;
  }
  return lines;
}

/** The same as lines; all of one length where something follows them. */
export function alignRows(rows: readonly (readonly string[])[], isFull = false): string[] {
  const widths = (rows[0] ?? []).map((_, k) => Math.max(...rows.map((row) => row[k]!.length)));
  const lines = rows.map((row) => row.map((cell, k) => cell.padEnd(widths[k]!)).join("  "));
  return isFull ? lines : lines.map((line) => line.trimEnd());
}
