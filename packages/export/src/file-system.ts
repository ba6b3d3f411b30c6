// What writing a pack asks of the disk and of the system, each call one step; tests put a failing disk in its place.
import { lstat, mkdir, open, readdir, readFile, rename, rm } from "node:fs/promises";
import { hasCode } from "./could-not-write.ts";

export type Found = { kind: "nothing" } | { kind: "folder" | "file" | "link"; changed: number };

export interface FileSystem {
  /** What stands at a path, itself and not what a link points to; `changed` in ms since 1970. */
  look(path: string): Promise<Found>;
  read(path: string): Promise<string>;
  list(folder: string): Promise<string[]>;
  /** Makes the folder and those above it; no error where it is there. */
  makeFolders(folder: string): Promise<void>;
  /** Makes one folder; an error where anything has its name. */
  makeNewFolder(folder: string): Promise<void>;
  /** Writes a new file, which is on the disk when this is done. */
  write(path: string, content: Uint8Array): Promise<void>;
  /** Waits until the names in a folder are on the disk. */
  settle(folder: string): Promise<void>;
  rename(from: string, to: string): Promise<void>;
  /** Removes a file, or a folder with all in it; links are removed, not followed. */
  remove(path: string): Promise<void>;
  /** Milliseconds since 1970. */
  now(): number;
  /** Number of this process, and whether one of a given number is running. */
  readonly process: number;
  isRunning(process: number): boolean;
}

export const disk: FileSystem = {
  look,
  read: (path) => readFile(path, "utf8"),
  list: (folder) => readdir(folder),
  makeFolders: async (folder) => void (await mkdir(folder, { recursive: true })),
  makeNewFolder: (folder) => mkdir(folder),
  write,
  settle,
  rename,
  remove: (path) => rm(path, { recursive: true, force: true }),
  now: Date.now,
  process: process.pid,
  isRunning,
};

async function look(path: string): Promise<Found> {
  try {
    const status = await lstat(path);
    const kind = status.isSymbolicLink() ? "link" : status.isDirectory() ? "folder" : "file";
    return { kind, changed: status.mtimeMs };
  } catch (error) {
    if (hasCode(error, "ENOENT")) return { kind: "nothing" };
    throw error;
  }
}

async function write(path: string, content: Uint8Array): Promise<void> {
  const file = await open(path, "wx");
  try {
    await file.writeFile(content);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Some systems (Windows) have no way to wait for a folder, and say so by one of these codes. */
const CANNOT_SETTLE = ["EISDIR", "EPERM", "EINVAL", "ENOTSUP"];

async function settle(folder: string): Promise<void> {
  try {
    const opened = await open(folder, "r");
    await opened.sync().finally(() => opened.close());
  } catch (error) {
    if (!CANNOT_SETTLE.some((code) => hasCode(error, code))) throw error;
  }
}

function isRunning(number: number): boolean {
  try {
    process.kill(number, 0); // signal 0 only asks
    return true;
  } catch (error) {
    return !hasCode(error, "ESRCH");
  }
}
