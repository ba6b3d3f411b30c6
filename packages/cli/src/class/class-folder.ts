// The folder of a class on the disk.
import * as disk from "node:fs/promises";
import { makeFolders } from "@lamplane/export";
import { toWriteError } from "@lamplane/export/write-error";

/** @throws WriteError */
export async function makeClassFolder(folder: string): Promise<void> {
  try {
    await makeFolders(disk, folder);
  } catch (error) {
    throw toWriteError(folder, error);
  }
}
