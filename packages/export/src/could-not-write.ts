// The error of a pack that could not be written: what was found, where, and what to do about it. It is never our bug.

/** A pack could not be written, and what stood at its place still stands there. The command turns it into exit code 3. */
export class CouldNotWrite extends Error {
  /** What stands in the way. */
  readonly found: string;
  /** Path at which it was found. */
  readonly where: string;
  /** What the maker can do about it. */
  readonly cure: string;

  constructor(found: string, where: string, cure: string, cause?: unknown) {
    super(`Could not write the pack: ${where}: ${found}. ${cure}`, { cause });
    this.name = "CouldNotWrite";
    this.found = found;
    this.where = where;
    this.cure = cure;
  }
}

interface SystemError extends Error {
  readonly code: string;
  readonly path?: string;
}

const ELSEWHERE = "or write the pack to another folder";
const NOT_ALLOWED = ["you are not allowed to write here", `Change its permissions, ${ELSEWHERE}.`] as const;
const DISK_FULL = ["the disk is full", `Free some room on it, ${ELSEWHERE}.`] as const;
const FILE_IN_WAY = ["a file stands where a folder is needed", `Move the file away, ${ELSEWHERE}.`] as const;

/** What the system's error codes mean to a maker, and what to do. */
const REASONS: Readonly<Record<string, readonly [found: string, cure: string]>> = {
  EACCES: NOT_ALLOWED,
  EPERM: NOT_ALLOWED,
  EROFS: ["the disk can only be read", `Make it writable, ${ELSEWHERE}.`],
  ENOSPC: DISK_FULL,
  EDQUOT: DISK_FULL,
  ENOTDIR: FILE_IN_WAY,
  EEXIST: FILE_IN_WAY,
  ENAMETOOLONG: ["the name is too long for this disk", "Give the design a shorter name."],
};

/**
 * What to throw for an error met while writing: the disk's refusals in a maker's words, anything else (our bug) as it came.
 * @param where path to name where the system named none
 */
export function writingError(error: unknown, where: string): unknown {
  if (!isSystemError(error)) return error;
  const [found, cure] = REASONS[error.code] ?? [error.message, `Put that right, ${ELSEWHERE}.`];
  return new CouldNotWrite(found, error.path ?? where, cure, error);
}

/** Whether an error came from the system (it then has a code such as ENOENT), or is one of Node's own about wrong arguments. */
function isSystemError(error: unknown): error is SystemError {
  return error instanceof Error && /^E[A-Z0-9]+$/.test(String((error as Partial<SystemError>).code));
}

export const hasCode = (error: unknown, code: string): boolean => isSystemError(error) && error.code === code;
