// The few things that writing a pack asks of the disk; a test may put its own in their place and let any of them fail.
import * as disk from "node:fs/promises";
import { dirname, join } from "node:path";
import { codeOf } from "./could-not-write.ts";
import { bytesOf, type Files, isManifestOf, MANIFEST } from "./manifest.ts";
import { foldersAbove } from "./pack-names.ts";

/** The part of node:fs/promises that a pack needs. */
export interface FileSystem {
  lstat(path: string): Promise<{ isDirectory(): boolean; isSymbolicLink(): boolean }>;
  mkdir(path: string, options?: { recursive: boolean }): Promise<unknown>;
  readdir(path: string): Promise<string[]>;
  readFile(path: string, encoding: "utf8"): Promise<string>;
  rename(from: string, to: string): Promise<void>;
  rm(path: string, options: { recursive: boolean; force: boolean }): Promise<void>;
  open(path: string, flags: "r" | "wx"): Promise<OpenFile>;
}
export interface OpenFile {
  writeFile(bytes: Uint8Array): Promise<void>;
  sync(): Promise<void>;
  close(): Promise<void>;
}

export const DISK: FileSystem = disk;

export type Found = "nothing" | "pack" | "folder" | "file" | "link";

/** What is at a path; a pack only where its manifest says that it is one of this design. */
export async function foundAt(fs: FileSystem, path: string, design: string): Promise<Found> {
  const there = await unlessMissing(fs.lstat(path));
  if (there === undefined) return "nothing";
  if (there.isSymbolicLink()) return "link";
  if (!there.isDirectory()) return "file";
  const manifest = await unlessMissing(fs.readFile(join(path, MANIFEST), "utf8"));
  return manifest !== undefined && isManifestOf(design, manifest) ? "pack" : "folder";
}

async function unlessMissing<T>(asked: Promise<T>): Promise<T | undefined> {
  try {
    return await asked;
  } catch (error) {
    if (["ENOENT", "EISDIR"].includes(codeOf(error) ?? "")) return undefined;
    throw error;
  }
}

/** Writes files into a folder that must not be there yet; when it returns, they are on the disk and not only in its cache. */
export async function writeFolder(fs: FileSystem, folder: string, files: Files): Promise<void> {
  await fs.mkdir(folder);
  const inside = [...new Set([...files.keys()].flatMap(foldersAbove))];
  for (const each of inside) await fs.mkdir(join(folder, each), { recursive: true });
  for (const [path, content] of files) await writeWhole(fs, join(folder, path), bytesOf(content));
  for (const each of inside) await settle(fs, join(folder, each));
  await settle(fs, folder);
}

async function writeWhole(fs: FileSystem, path: string, bytes: Uint8Array): Promise<void> {
  const file = await fs.open(path, "wx");
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Has a folder's list of names written out. Not every system can, and a pack is whole without it, so no failure counts. */
export async function settle(fs: FileSystem, folder: string): Promise<void> {
  const opened = await fs.open(folder, "r").catch(() => undefined);
  await opened?.sync().catch(() => undefined);
  await opened?.close().catch(() => undefined);
}

/** Removes a folder of our own; what cannot be removed now, a later run removes. */
export async function removeQuietly(fs: FileSystem, folder: string): Promise<void> {
  await fs.rm(folder, { recursive: true, force: true }).catch(() => undefined);
}

/** Has a change of names in a path's folder written out. */
export const settleNames = (fs: FileSystem, path: string): Promise<void> => settle(fs, dirname(path));
