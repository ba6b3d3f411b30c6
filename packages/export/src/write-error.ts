// The one error of writing that a maker can mend: what was in the way, where, and what to do about it.

/** A pack could not be written; nothing that was there before has changed. */
export class WriteError extends Error {
  override readonly name = "CouldNotWrite";
  /** What could not be written, as the caller spelled it. */
  readonly path: string;
  /** What was found there. */
  readonly found: string;
  readonly remedy: string;

  constructor(path: string, found: string, remedy: string, cause?: unknown) {
    super(`could not write ${path}: ${found}; ${remedy}`, cause === undefined ? {} : { cause });
    this.path = path;
    this.found = found;
    this.remedy = remedy;
  }
}

const SYSTEM_ERRORS: Readonly<Record<string, readonly [found: string, remedy: string]>> = {
  EACCES: ["writing there is not permitted", "choose another folder or change its permissions"],
  EPERM: ["writing there is not permitted", "choose another folder or change its permissions"],
  ENOENT: ["its folder is not there", "make it first or choose another folder"],
  EROFS: ["the disk can only be read", "choose a folder on another disk"],
  ENOSPC: ["the disk is full", "free some space or choose a folder on another disk"],
  EDQUOT: ["your share of the disk is used up", "free some space or choose a folder on another disk"],
  ENOTDIR: ["a part of its path is a file, not a folder", "choose another folder or move that file away"],
  EEXIST: ["something else is already there", "move it away or choose another folder"],
  ENOTEMPTY: ["something else was put there meanwhile", "move it away or choose another folder, then try again"],
  EISDIR: ["a folder of that name is there", "move it away or choose another name"],
  EFBIG: ["a file would grow larger than is allowed", "raise the limit (ulimit -f) or choose a folder on another disk"],
  EIO: ["the disk failed", "look to the disk, or choose a folder on another one"],
  EMFILE: ["too many files are open", "close some programs, then try again"],
  ENFILE: ["too many files are open", "close some programs, then try again"],
  ELOOP: ["symbolic links on its way lead round in a circle", "choose another folder"],
  EBUSY: ["another program is using it", "close that, then try again"],
  ETXTBSY: ["another program is using it", "close that, then try again"],
  EINVAL: ["the disk takes no file of that name", "choose another name or a folder on another disk"],
  ENXIO: ["the disk is no longer there", "connect it again or choose a folder on another disk"],
  ENODEV: ["the disk is no longer there", "connect it again or choose a folder on another disk"],
  ESTALE: ["the network disk no longer knows it", "connect it again or choose a folder on another disk"],
  ETIMEDOUT: ["the network disk does not answer", "try again or choose a folder on another disk"],
  ENOMEM: ["the machine's memory is used up", "close some programs, then try again"],
  ENAMETOOLONG: ["its path is too long for the disk", "choose a folder with a shorter path"],
};

/** An error of the file system as a WriteError; any other, which is our bug, as it is. */
export function toWriteError(path: string, error: unknown): unknown {
  const code = systemErrorCode(error);
  if (error instanceof WriteError || code === undefined) return error;
  const [found, remedy] = SYSTEM_ERRORS[code] ?? [
    `the system reported ${code}`,
    "look into that or choose another folder",
  ];
  return new WriteError(path, found, remedy, error);
}

/** The system's code of an error, such as ENOENT; node's own codes for wrong calls (ERR_…) are not among them. */
export function systemErrorCode(error: unknown): string | undefined {
  const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined;
  return code !== undefined && /^E(?!RR_)/.test(code) ? code : undefined;
}
