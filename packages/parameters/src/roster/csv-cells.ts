// A table of comma-separated values → its rows of cells, each with its place. @see RFC 4180
import type { SourcePosition } from "../yaml/fault.ts";

export interface CsvCell {
  readonly text: string;
  readonly at: SourcePosition;
  /** Offsets of the cell in the text, quotes and spaces round its text among it. */
  readonly start: number;
  readonly end: number;
}

export interface CsvTable {
  /** Without the empty rows. */
  readonly rows: readonly (readonly CsvCell[])[];
  /** What parts the cells: spreadsheets of countries with a decimal comma write a semicolon. */
  readonly separator: string;
  /** Where a quote opens that is never closed. */
  readonly openQuote?: SourcePosition;
}

const SEPARATORS = [",", ";", "\t"];

/** The table in a text; the separator is the one that its first line has most of. */
export function csvCells(text: string): CsvTable {
  const separator = separatorOf(text);
  const rows: CsvCell[][] = [[]];
  const lexer = new CellLexer(text);
  for (;;) {
    const { cell, openQuote, end } = lexer.next(separator);
    rows.at(-1)!.push(cell);
    if (openQuote) return { rows: withoutEmpty(rows), separator, openQuote };
    if (end === "text") return { rows: withoutEmpty(rows), separator };
    if (end === "line") rows.push([]);
  }
}

const withoutEmpty = (rows: readonly CsvCell[][]): CsvCell[][] =>
  rows.filter((cells) => cells.some(({ text }) => text !== ""));

function separatorOf(text: string): string {
  const head = text.slice(0, text.search(/\r?\n|$/)).replace(/"[^"]*"/g, "");
  const count = (separator: string) => head.split(separator).length;
  return SEPARATORS.toSorted((a, b) => count(b) - count(a))[0]!;
}

/** Walks over the text cell by cell and keeps the line and column. */
class CellLexer {
  #offset = 0;
  #line = 1;
  #lineStart = 0;
  readonly #text: string;

  constructor(text: string) {
    this.#text = text;
  }

  next(separator: string) {
    const start = this.#offset;
    const at = { line: this.#line, column: start - this.#lineStart + 1 };
    const isQuoted = this.#text[this.#offset] === '"';
    const quoted = isQuoted ? this.#quoted() : "";
    const rest = this.#until(separator);
    const cell = { text: ((quoted ?? "") + rest).trim(), at, start, end: this.#offset };
    const end = this.#end(separator);
    return { cell, end, ...(quoted === undefined ? { openQuote: at } : {}) };
  }

  /** Undefined where the quote is not closed. A doubled quote stands for one. */
  #quoted(): string | undefined {
    const match = /^"((?:[^"]|"")*)"/.exec(this.#text.slice(this.#offset));
    if (!match) return undefined;
    const lines = match[0].split("\n");
    if (lines.length > 1) {
      this.#line += lines.length - 1;
      this.#lineStart = this.#offset + match[0].lastIndexOf("\n") + 1;
    }
    this.#offset += match[0].length;
    return match[1]!.replaceAll('""', '"');
  }

  #until(separator: string): string {
    const start = this.#offset;
    while (this.#offset < this.#text.length && !`${separator}\r\n`.includes(this.#text[this.#offset]!))
      this.#offset += 1;
    return this.#text.slice(start, this.#offset);
  }

  #end(separator: string): "cell" | "line" | "text" {
    if (this.#offset >= this.#text.length) return "text";
    const isCell = this.#text[this.#offset] === separator;
    this.#offset += this.#text.startsWith("\r\n", this.#offset) ? 2 : 1;
    if (isCell) return "cell";
    this.#line += 1;
    this.#lineStart = this.#offset;
    return this.#offset >= this.#text.length ? "text" : "line";
  }
}
