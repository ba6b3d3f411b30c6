// A disk that fails when it is told to, for tests of what is left behind.
import * as disk from "node:fs/promises";
import type { FileSystem } from "@lamplane/export";

interface DiskFailure {
  /** Whether an operation fails: its name, and its number from 1. */
  readonly only: (operation: string, nth: number) => boolean;
  readonly code?: string;
}

/**
 * The real disk, some of whose operations fail without having done anything; and how many there were. Its `sync` waits for no
 * platter, which takes most of the time and shows to no reader.
 */
export function failingFileSystem({ only, code = "EIO" }: DiskFailure): {
  fileSystem: FileSystem;
  count: () => number;
} {
  let count = 0;
  const guarded =
    <A extends unknown[], R>(name: string, act: (...args: A) => Promise<R>) =>
    async (...args: A): Promise<R> => {
      if (only(name, ++count)) throw Object.assign(new Error(`${code}: injected`), { code });
      return act(...args);
    };
  const fileSystem: FileSystem = {
    lstat: guarded("lstat", (path: string) => disk.lstat(path)),
    mkdir: guarded("mkdir", (path: string, options?: { recursive: boolean }) => disk.mkdir(path, options)),
    readdir: guarded("readdir", (path: string) => disk.readdir(path)),
    readFile: guarded("readFile", (path: string, encoding?: "utf8") =>
      disk.readFile(path, encoding),
    ) as FileSystem["readFile"],
    readlink: guarded("readlink", (path: string) => disk.readlink(path)),
    symlink: guarded("symlink", (to: string, path: string) => disk.symlink(to, path)),
    link: guarded("link", disk.link),
    copyFile: guarded("copyFile", (from: string, to: string) => disk.copyFile(from, to)),
    rename: guarded("rename", disk.rename),
    rmdir: guarded("rmdir", (path: string) => disk.rmdir(path)),
    rm: guarded("rm", (path: string, options: { recursive: boolean; force: boolean }) => disk.rm(path, options)),
    open: guarded("open", async (path: string, flags: "r" | "wx") => {
      const file = await disk.open(path, flags);
      return {
        writeFile: guarded("writeFile", (bytes: Uint8Array) => file.writeFile(bytes)),
        sync: guarded("sync", async () => undefined),
        close: async () => {
          await file.close(); // closed even where it fails, so that no handle stays open
          await guarded("close", async () => {})();
        },
      };
    }),
  };
  return { fileSystem, count: () => count };
}
