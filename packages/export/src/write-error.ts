// The one error of writing that a maker can mend: what was in the way, where, and what to do about it.

import { SYSTEM_ERRORS, WRITING } from "./words/writing.ts";

/** A pack could not be written; nothing that was there before has changed. */
export class WriteError extends Error {
  override readonly name = "CouldNotWrite";
  /** What could not be written, as the caller spelled it. */
  readonly path: string;
  /** What was found there. */
  readonly found: string;
  readonly remedy: string;

  constructor(path: string, found: string, remedy: string, cause?: unknown) {
    super(WRITING.failed({ path, found, remedy }), cause === undefined ? {} : { cause });
    this.path = path;
    this.found = found;
    this.remedy = remedy;
  }
}

/** An error of the file system as a WriteError; any other, which is our bug, as it is. */
export function toWriteError(path: string, error: unknown): unknown {
  const code = systemErrorCode(error);
  if (error instanceof WriteError || code === undefined) return error;
  const [found, remedy] = SYSTEM_ERRORS[code] ?? [WRITING.unknown({ code }), WRITING.unknownRemedy];
  return new WriteError(path, found, remedy, error);
}

/** The system's code of an error, such as ENOENT; node's own codes for wrong calls (ERR_…) are not among them. */
export function systemErrorCode(error: unknown): string | undefined {
  const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined;
  return code !== undefined && /^E(?!RR_)/.test(code) ? code : undefined;
}
