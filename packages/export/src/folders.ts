// Folders made on the way to a file. Node.js's own `recursive` never returns on file systems that make none and say that
// the way there is missing, such as /proc.
import { dirname } from "node:path";
import type { FileSystem } from "./pack-files.ts";
import { WRITING } from "./words/writing.ts";
import { systemErrorCode, WriteError } from "./write-error.ts";

type FolderMaker = Pick<FileSystem, "lstat" | "mkdir" | "readdir">;

/**
 * Makes a folder and those on the way to it; one that is there stays as it is.
 * @throws the system's error, or WriteError where a folder is missing and none can be made
 */
export async function makeFolders(fs: FolderMaker, path: string): Promise<void> {
  try {
    await fs.mkdir(path);
  } catch (error) {
    if (await isFolder(fs, path)) return;
    const parent = dirname(path);
    if (systemErrorCode(error) !== "ENOENT" || parent === path) throw error;
    if (await isFolder(fs, parent))
      throw new WriteError(path, WRITING.noFolder({ parent }), WRITING.noFolderRemedy, error);
    await makeFolders(fs, parent);
    await fs.mkdir(path);
  }
}

/** Whether a folder is there, or a symbolic link that leads to one. */
async function isFolder(fs: FolderMaker, path: string): Promise<boolean> {
  try {
    const found = await fs.lstat(path);
    if (found.isSymbolicLink()) await fs.readdir(path);
    return found.isSymbolicLink() || found.isDirectory();
  } catch {
    return false;
  }
}
