// What was given, before it is understood: the same shape for a file and for plain values.

/** Where in the file, both from 1; 0 where there is no file. */
export interface SourcePosition {
  readonly line: number;
  readonly column: number;
}

/** Something that was not understood, and what to write instead. */
export interface Fault extends SourcePosition {
  readonly file: string;
  /** Dotted path of the parameter; empty for the file as a whole. */
  readonly path: string;
  readonly message: string;
}

export interface RawEntry {
  readonly key: string;
  readonly at: SourcePosition;
  readonly value: RawNode;
}

/** Text that YAML takes for a number stays text, so that it is read in one place; `bare` tells it from quoted text. */
export type RawNode =
  | { readonly kind: "map"; readonly at: SourcePosition; readonly entries: readonly RawEntry[] }
  | { readonly kind: "text"; readonly at: SourcePosition; readonly text: string; readonly bare?: "number" }
  | { readonly kind: "number"; readonly at: SourcePosition; readonly value: number }
  | { readonly kind: "nothing"; readonly at: SourcePosition }
  | { readonly kind: "other"; readonly at: SourcePosition; readonly words: string }
  /** Already reported; nothing more is said about it. */
  | { readonly kind: "refused"; readonly at: SourcePosition };

const MOST = 100; // faults: more than anyone reads at once, and a bound on the work for a hostile file

/** Collects faults; gives them sorted by place. */
export class Faults {
  readonly #found: Fault[] = [];
  #beyond = 0;
  readonly #file: string;

  constructor(file: string) {
    this.#file = file;
  }

  /** @param message a function, so that a suggestion is only looked for while it will be shown */
  add(at: SourcePosition, path: string, message: string | (() => string)): void {
    if (this.#found.length >= MOST) {
      this.#beyond += 1;
      return;
    }
    const words = typeof message === "string" ? message : message();
    this.#found.push({
      file: this.#file,
      line: at.line,
      column: at.column,
      path: sanitizeForMessage(path),
      message: words,
    });
  }

  sorted(): Fault[] {
    const sorted = this.#found.sort((a, b) => a.line - b.line || a.column - b.column);
    const last = sorted.at(-1);
    if (last && this.#beyond > 0)
      sorted.push({ ...last, path: "", message: `${this.#beyond} more faults are not shown; mend these first` });
    return sorted;
  }
}

/** Text from outside, made fit for one line of a message. */
export function sanitizeForMessage(text: string): string {
  const clean = text.replace(/[\p{C}\u2028\u2029]/gu, "�");
  return clean.length > 60 ? `${clean.slice(0, 60)}…` : clean;
}
