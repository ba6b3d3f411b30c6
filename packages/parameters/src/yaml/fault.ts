// What was not understood in a maker's file, as data; sentences are made by who shows it.

/** Where in the file, both from 1; 0 where there is no file. */
export interface SourcePosition {
  readonly line: number;
  readonly column: number;
}

/** A code and what its sentence needs. */
export interface FaultDetail {
  readonly code: string;
}

/** Something that was not understood, with its place. */
export type LocatedFault<Detail extends FaultDetail> = SourcePosition & {
  readonly file: string;
  /** Dotted path of the value; empty for the file as a whole. */
  readonly path: string;
} & Detail;

/** FaultCollector of any text and any YAML, whatever it is a file of. */
export type SourceDetail =
  | { readonly code: "file-too-large"; readonly mostBytes: number }
  | { readonly code: "not-utf8" }
  | { readonly code: "hidden-character"; readonly codePoint: number }
  | { readonly code: "nested-too-deep"; readonly deepest: number }
  | { readonly code: "more-faults"; readonly count: number };

const MOST = 100; // faults: more than anyone reads at once, and a bound on the work for a hostile file

/** Collects faults. */
export class FaultCollector<Detail extends FaultDetail> {
  readonly #found: LocatedFault<Detail | SourceDetail>[] = [];
  #beyond = 0;
  readonly #file: string;

  constructor(file: string) {
    this.#file = file;
  }

  get isEmpty(): boolean {
    return this.#found.length === 0;
  }

  add({ line, column }: SourcePosition, path: string, detail: Detail | SourceDetail): void {
    if (this.#found.length >= MOST) this.#beyond += 1;
    else this.#found.push({ file: this.#file, line, column, path: sanitizeForMessage(path), ...detail });
  }

  sorted(): LocatedFault<Detail | SourceDetail>[] {
    return this.#withCount(this.#found.toSorted((a, b) => a.line - b.line || a.column - b.column));
  }

  /** In the order in which they were added. */
  asAdded(): LocatedFault<Detail | SourceDetail>[] {
    return this.#withCount([...this.#found]);
  }

  #withCount(faults: LocatedFault<Detail | SourceDetail>[]): LocatedFault<Detail | SourceDetail>[] {
    const last = faults.at(-1);
    if (!last || this.#beyond === 0) return faults;
    const { file, line, column } = last;
    return [...faults, { file, line, column, path: "", code: "more-faults", count: this.#beyond }];
  }
}

/** Text from outside, made fit for one line of a message. One that is too long ends behind a whole word, where it has any. */
export function sanitizeForMessage(text: string): string {
  const clean = text.replace(/[\p{C}\u2028\u2029]/gu, "�");
  if (clean.length <= LONGEST_QUOTE) return clean;
  const cut = clean.slice(0, LONGEST_QUOTE + 1);
  const words = cut.slice(0, Math.max(0, cut.lastIndexOf(" ")));
  const kept = words.length > LONGEST_QUOTE / 2 ? words : cut.slice(0, LONGEST_QUOTE);
  return `${kept.replace(/[\ud800-\udbff]$/, "")}…`; // half a character is none
}

const LONGEST_QUOTE = 60;
