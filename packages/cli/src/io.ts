// Where the command speaks and where it stands; tests put something else in its place.

export interface Io {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Whether progress may be shown by rewriting a line. */
  readonly showsProgress: boolean;
}

export const PROCESS_IO: Io = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  showsProgress: process.stderr.isTTY === true && process.env.TERM !== "dumb",
};

/** Exit codes, as the README tells them. */
export const EXIT = { done: 0, checkFailed: 1, inputRefused: 2, couldNotWrite: 3, ourBug: 4 } as const;
export type Exit = (typeof EXIT)[keyof typeof EXIT];

/** What was asked cannot be understood; its message is for the maker. */
export class InputRefused extends Error {}
