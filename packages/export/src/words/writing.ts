// What kept files from being written, and what to do about it.
import { sentence } from "@lamplane/parameters/words";

/** What an error of the file system found, and what to do about it, by the system's code. */
export const SYSTEM_ERRORS: Readonly<Record<string, readonly [found: string, remedy: string]>> = {
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

export const WRITING = {
  failed: sentence(
    ({ path, found, remedy }: { path: string; found: string; remedy: string }) =>
      `could not write ${path}: ${found}; ${remedy}`,
    { path: "packs/my-plane", found: "the disk is full", remedy: "free some space" },
  ),
  unknown: sentence(({ code }: { code: string }) => `the system reported ${code}`, { code: "EXDEV" }),
  unknownRemedy: "look into that or choose another folder",
  noFolder: sentence(({ parent }: { parent: string }) => `no folder can be made in ${parent}`, { parent: "packs" }),
  noFolderRemedy: "choose another folder",
} as const;

/** Another run that writes the same pack. */
export const PACK_LOCK = {
  running: sentence(({ id }: { id: number }) => `another run of lamplane, process ${id}, is writing it now`, {
    id: 4711,
  }),
  unseen: sentence(
    ({ folder }: { folder: string }) => `a run that cannot be seen from here is writing it (${folder})`,
    {
      folder: "packs/.my-plane.new",
    },
  ),
  wait: "wait until it has ended, then try again",
  waitUnseen: sentence(
    ({ minutes }: { minutes: number }) =>
      `wait until it has ended, then try again; where it has broken off, what it left is put in order after ${minutes} minutes`,
    { minutes: 10 },
  ),
} as const;

/** What stands where a pack would go. */
export const PACK_PLACE = {
  folder: "there is a folder that is no pack of this design",
  file: "there is a file",
  link: "there is a symbolic link, which is not followed",
  remedy: "it was left as it is: move it away or choose another folder",
  notSwapped: sentence(
    ({ code }: { code: string }) => `neither the new pack nor the old one could be put there (${code})`,
    { code: "EACCES" },
  ),
  swapRemedy: sentence(
    ({ old }: { old: string }) =>
      `the pack that was there is whole in ${old}: move it back, or write again, which puts it back first`,
    { old: "packs/.my-plane.old" },
  ),
} as const;
