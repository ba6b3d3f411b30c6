// A fault: something in a design that was not understood. It has a place, and says what was read and what may stand there.

/** Where something was typed, counted from 1; 0, 0 for values that never were text. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

export interface Fault extends Place {
  /** Name of the file as it was given; empty for values that never were a file. */
  readonly file: string;
  /** Dotted path of the parameter or section; empty when the file as a whole is meant. */
  readonly path: string;
  /** A whole sentence that begins with the path, where there is one; no place in it. */
  readonly message: string;
}

/** Takes note of a fault; `message` without the path. */
export type Report = (place: Place, path: string, message: string) => void;

/** Faults in the order of their places. */
export const inOrder = (faults: readonly Fault[]): Fault[] =>
  [...faults].sort((a, b) => a.line - b.line || a.column - b.column);

/** A report that adds to a list. */
export const reportInto =
  (faults: Fault[], file: string): Report =>
  (place, path, message) =>
    faults.push({ file, ...place, path, message: path === "" ? message : `${path}: ${message}` });
