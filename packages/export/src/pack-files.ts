// The few things that writing a pack asks of the disk; a test may put its own in their place and let any of them fail.
import * as disk from "node:fs/promises";
import { dirname, join } from "node:path";
import { isManifestOf, MANIFEST, type PackFiles, toBytes } from "./manifest.ts";
import { ancestorFolders } from "./pack-names.ts";
import { systemErrorCode } from "./write-error.ts";

/** The part of node:fs/promises that a pack needs. */
export interface FileSystem {
  lstat(path: string): Promise<FileStatus>;
  mkdir(path: string, options?: { recursive: boolean }): Promise<unknown>;
  readdir(path: string): Promise<string[]>;
  readFile(path: string, encoding: "utf8"): Promise<string>;
  readFile(path: string): Promise<Uint8Array>;
  readlink(path: string): Promise<string>;
  symlink(to: string, path: string): Promise<void>;
  link(from: string, to: string): Promise<void>;
  copyFile(from: string, to: string): Promise<void>;
  rename(from: string, to: string): Promise<void>;
  /** Removes an empty folder and nothing else. */
  rmdir(path: string): Promise<void>;
  rm(path: string, options: { recursive: boolean; force: boolean }): Promise<void>;
  open(path: string, flags: "r" | "wx"): Promise<OpenFile>;
}
export interface FileStatus {
  isDirectory(): boolean;
  isFile(): boolean;
  isSymbolicLink(): boolean;
  readonly ino: number;
  readonly size: number;
  readonly mtimeMs: number;
}
export interface OpenFile {
  writeFile(bytes: Uint8Array): Promise<void>;
  sync(): Promise<void>;
  close(): Promise<void>;
}

export const DISK: FileSystem = disk;

export type PathKind = "nothing" | "pack" | "folder" | "file" | "link";

/** What is at a path; a pack only where its manifest says that it is one of this design. */
export async function inspectPath(fs: FileSystem, path: string, design: string): Promise<PathKind> {
  const there = await undefinedIfMissing(fs.lstat(path));
  if (there === undefined) return "nothing";
  if (there.isSymbolicLink()) return "link";
  if (!there.isDirectory()) return "file";
  const manifest = await undefinedIfMissing(fs.readFile(join(path, MANIFEST), "utf8"));
  return manifest !== undefined && isManifestOf(design, manifest) ? "pack" : "folder";
}

async function undefinedIfMissing<T>(asked: Promise<T>): Promise<T | undefined> {
  try {
    return await asked;
  } catch (error) {
    if (["ENOENT", "EISDIR"].includes(systemErrorCode(error) ?? "")) return undefined;
    throw error;
  }
}

/** Paths, parted by "/", of everything below a folder that is no folder itself; in order. */
export async function listFiles(fs: FileSystem, folder: string, below = ""): Promise<string[]> {
  const paths: string[] = [];
  for (const name of (await fs.readdir(join(folder, below))).sort()) {
    const path = below === "" ? name : `${below}/${name}`;
    const isFolder = (await fs.lstat(join(folder, path))).isDirectory();
    paths.push(...(isFolder ? await listFiles(fs, folder, path) : [path]));
  }
  return paths;
}

/** Whether a folder with a temporary name was left by a run of ours: its manifest, written first, says so, or came no further. */
export async function isOwnFolder(fs: FileSystem, path: string, design: string): Promise<boolean> {
  const found = await inspectPath(fs, path, design);
  return found === "pack" || (found === "folder" && (await fs.readdir(path)).every((name) => name === MANIFEST));
}

/**
 * Writes files into a folder that must not be there yet, the manifest first and alone, so that a run that breaks off
 * leaves a folder known for ours. When it returns, all are on the disk and not only in its cache.
 */
export async function writeFolder(fs: FileSystem, folder: string, files: PackFiles): Promise<void> {
  await fs.mkdir(folder);
  const inside = [...new Set([...files.keys()].flatMap(ancestorFolders))];
  await writeAndSync(fs, join(folder, MANIFEST), toBytes(files.get(MANIFEST) ?? ""));
  for (const each of inside) await fs.mkdir(join(folder, each), { recursive: true });
  for (const [path, content] of files)
    if (path !== MANIFEST) await writeAndSync(fs, join(folder, path), toBytes(content));
  for (const each of inside) await syncFolder(fs, join(folder, each));
  await syncFolder(fs, folder);
}

async function writeAndSync(fs: FileSystem, path: string, bytes: Uint8Array): Promise<void> {
  const file = await fs.open(path, "wx");
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Has a folder's list of names written out. Not every system can, and a pack is whole without it, so no failure counts. */
export async function syncFolder(fs: FileSystem, folder: string): Promise<void> {
  const opened = await fs.open(folder, "r").catch(() => undefined);
  await opened?.sync().catch(() => undefined);
  await opened?.close().catch(() => undefined);
}

/** Removes a folder of our own, its manifest last; what cannot be removed now, a later run knows and removes. */
export async function tryRemoveFolder(fs: FileSystem, folder: string): Promise<void> {
  try {
    for (const name of await fs.readdir(folder))
      if (name !== MANIFEST) await fs.rm(join(folder, name), { recursive: true, force: true });
    await fs.rm(folder, { recursive: true, force: true });
  } catch {
    // A later run tries again.
  }
}

/** Has a change of names in a path's folder written out. */
export const syncParentFolder = (fs: FileSystem, path: string): Promise<void> => syncFolder(fs, dirname(path));
