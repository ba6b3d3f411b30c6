// A file's text replaced: its rights, its owner and every other name of it stay, and a crash loses neither the old text nor the new.
import * as fs from "node:fs";
import { basename, dirname, join } from "node:path";
import { toWriteError, WriteError } from "@lamplane/export/write-error";
import { FILE_FAULTS } from "./words/commands.ts";

/** What replacing a file asks of the disk; a test may put its own in its place and let any of it fail. */
export type SyncDisk = Pick<
  typeof fs,
  | "closeSync"
  | "existsSync"
  | "fchmodSync"
  | "fchownSync"
  | "fsyncSync"
  | "ftruncateSync"
  | "openSync"
  | "realpathSync"
  | "renameSync"
  | "rmSync"
  | "statSync"
  | "writeSync"
>;

/**
 * Replaces a file's text whole, or leaves it as it was; of a symbolic link, what it leads to. A new file takes the old
 * one's name where it can have its rights and owner. A file with further names (hard links), or of an owner who cannot
 * be kept, is written in place, once its new text stands whole beside it.
 * @throws WriteError
 */
export function replaceFile(file: string, text: string, disk: SyncDisk = fs): void {
  try {
    const real = disk.realpathSync(file);
    const old = disk.openSync(real, "r+"); // refuses a file that may not be written, before anything is done
    try {
      const stat = disk.statSync(real);
      const fresh = `${real}.${process.pid}.tmp`;
      const keepsOwner = writeFresh(disk, fresh, Buffer.from(text), stat);
      if (keepsOwner && stat.nlink === 1) renameOver(disk, fresh, real);
      else writeInPlace(disk, fresh, old, real, Buffer.from(text));
      syncFolder(disk, dirname(real));
    } finally {
      disk.closeSync(old);
    }
  } catch (error) {
    throw toWriteError(file, error);
  }
}

/** Where the new text of a file that is written in place stands whole until that is done. */
export function wholeCopyName(file: string): string {
  const real = fs.realpathSync(file);
  return join(dirname(real), `.${basename(real)}.whole`);
}

/** Writes a new file out to the disk. @returns whether it has the owner and the group of the old one */
function writeFresh(disk: SyncDisk, path: string, bytes: Uint8Array, { mode, uid, gid }: fs.Stats): boolean {
  const handle = disk.openSync(path, "wx", 0o600);
  try {
    const keepsOwner = tryChown(disk, handle, uid, gid);
    disk.fchmodSync(handle, mode & 0o7777); // after the owner, whose change takes rights away
    writeAll(disk, handle, bytes);
    return keepsOwner;
  } catch (error) {
    disk.rmSync(path, { force: true });
    throw error;
  } finally {
    disk.closeSync(handle);
  }
}

function tryChown(disk: SyncDisk, handle: number, uid: number, gid: number): boolean {
  try {
    disk.fchownSync(handle, uid, gid);
    return true;
  } catch {
    return false;
  }
}

function renameOver(disk: SyncDisk, fresh: string, real: string): void {
  try {
    disk.renameSync(fresh, real);
  } catch (error) {
    disk.rmSync(fresh, { force: true });
    throw error;
  }
}

/** From the first byte on the old text is gone: the new one has its own name by then, and keeps it until all is written. */
function writeInPlace(disk: SyncDisk, fresh: string, old: number, real: string, bytes: Uint8Array): void {
  const whole = wholeCopyName(real);
  nameWholeCopy(disk, fresh, whole, real);
  try {
    writeAll(disk, old, bytes);
  } catch (error) {
    throw new WriteError(real, FILE_FAULTS.brokeOff, FILE_FAULTS.copyBack({ whole }), error);
  }
  disk.rmSync(whole, { force: true });
}

/** One that is there already is of a run that was broken off: it may be the only whole text. */
function nameWholeCopy(disk: SyncDisk, fresh: string, whole: string, real: string): void {
  try {
    if (disk.existsSync(whole)) throw new WriteError(real, FILE_FAULTS.leftWhole({ whole }), FILE_FAULTS.compare);
    disk.renameSync(fresh, whole);
    syncFolder(disk, dirname(whole));
  } catch (error) {
    disk.rmSync(fresh, { force: true });
    throw error;
  }
}

/** All of a text from the beginning and nothing behind it, on the disk and not only in its cache. */
function writeAll(disk: SyncDisk, handle: number, bytes: Uint8Array): void {
  for (let at = 0; at < bytes.length; ) at += disk.writeSync(handle, bytes, at, bytes.length - at, at);
  disk.ftruncateSync(handle, bytes.length);
  disk.fsyncSync(handle);
}

/** Has a change of names written out. Not every system can, and the file is whole without it. */
function syncFolder(disk: SyncDisk, folder: string): void {
  try {
    const handle = disk.openSync(folder, "r");
    disk.fsyncSync(handle);
    disk.closeSync(handle);
  } catch {
    // The names go out when the system next writes.
  }
}
