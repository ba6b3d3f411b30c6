// Writes the class's own files into its folder.
import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { ClassFile, ClassInput } from "@lamplane/export/content";
import { toWriteError, WriteError } from "@lamplane/export/write-error";
import { CLASS } from "../words/class.ts";
import { writeWhole } from "./plane-files.ts";

/** What each of ours holds. */
const MARKS: Readonly<Record<ClassFile, string>> = {
  "class.pdf": "<pdf:Producer>lamplane",
  "class.csv": "number,name,iron width",
  "class-sheets.zip": "class-sheets/sheets.txt",
};

/**
 * Writes the files and gives their names; one of ours that the class no longer has goes.
 * @throws WriteError where something else of such a name is there
 */
export async function writeClassSheets(input: ClassInput, folder: string): Promise<string[]> {
  const { CLASS_FILES, classFile } = await import("@lamplane/export/content");
  const written: { path: string; content: Uint8Array | string }[] = [];
  for (const file of CLASS_FILES) {
    const content = await classFile(file, input);
    if (content !== undefined) written.push({ path: join(folder, file), content });
  }
  for (const file of CLASS_FILES) refuseForeignFile(join(folder, file), MARKS[file]);
  const paths = CLASS_FILES.map((file) => join(folder, file));
  for (const path of paths) if (!written.some((each) => each.path === path)) removeFile(path);
  for (const { path, content } of written) writeWhole(path, content);
  return written.map(({ path }) => path);
}

/** @throws WriteError */
function removeFile(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch (error) {
    throw toWriteError(path, error);
  }
}

/** An older one of ours is replaced; anything else stays as it is. */
function refuseForeignFile(path: string, mark: string): void {
  if (existsSync(path) && !readFileSync(path, "latin1").includes(mark))
    throw new WriteError(path, CLASS.foreign, CLASS.foreignRemedy);
}
