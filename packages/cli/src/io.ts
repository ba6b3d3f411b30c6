// Where the command speaks and where it stands; tests put something else in its place.
import { toWriteError } from "@lamplane/export/write-error";

export interface Io {
  /** @throws BrokenPipe once whoever read the output has gone */
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Whether progress may be shown by rewriting a line. */
  readonly showsProgress: boolean;
  /** Absent where nobody is there to answer. */
  readonly prompts?: Prompts | undefined;
  /** Resolves when all output has gone out. @throws WriteError where it could not */
  readonly flush?: () => Promise<void>;
}

/** What a command may ask a maker who sits before a terminal. Each throws InputRefused where the question is broken off. */
export interface Prompts {
  readonly confirm: (question: string) => Promise<boolean>;
  /** @param fault what is wrong with an answer; undefined where nothing is */
  readonly text: (question: string, initial: string, fault: (answer: string) => string | undefined) => Promise<string>;
  readonly choose: <Choice extends string>(
    question: string,
    choices: readonly { readonly value: Choice; readonly label: string }[],
  ) => Promise<Choice>;
}

/** Whoever read the output has gone (`… | head -1`): what was asked for has been had, and no more of it is wanted. */
export class BrokenPipe extends Error {}

/** The process's own streams. */
export function processIo(): Io {
  const out = streamWriter(process.stdout);
  const err = streamWriter(process.stderr);
  return {
    out: (text) => {
      if (out.failure()?.code === "EPIPE") throw new BrokenPipe();
      out.say(text);
    },
    err: err.say,
    showsProgress: process.stderr.isTTY === true && process.env.TERM !== "dumb",
    flush: async () => {
      await Promise.all([out.flush(), err.flush()]);
      const failure = out.failure(); // a failure of the error output can be reported nowhere
      if (failure && failure.code !== "EPIPE") throw toWriteError("the standard output", failure);
    },
  };
}

/** A stream that keeps its first failure instead of ending the process by it. */
function streamWriter(stream: NodeJS.WriteStream) {
  let failure: NodeJS.ErrnoException | undefined;
  let last = Promise.resolve();
  const fail = (error: Error | null | undefined) => {
    failure ??= error ?? undefined;
  };
  stream.on("error", fail);
  return {
    failure: () => failure,
    say: (text: string) => {
      last = new Promise((resolve) => {
        const gone = (error: Error | null | undefined) => {
          fail(error);
          resolve();
        };
        stream.write(text, gone);
      });
    },
    flush: () => last,
  };
}

/** Exit codes, as the README lists them. */
export const EXIT = { done: 0, checkFailed: 1, inputRefused: 2, couldNotWrite: 3, ourBug: 4 } as const;
export type Exit = (typeof EXIT)[keyof typeof EXIT];

/** What was asked cannot be understood; its message is for the maker. */
export class InputRefused extends Error {}
