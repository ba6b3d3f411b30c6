// The last change to a design file, kept in a file of its own beside it, so that it can be taken back byte for byte.
import { createHash } from "node:crypto";
import {
  closeSync,
  fsyncSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { toWriteError } from "@lamplane/export/write-error";
import { InputRefused } from "./io.ts";
import { UNDO } from "./words/measured.ts";

interface UndoRecord {
  /** What was changed, as it was typed. */
  readonly values: readonly string[];
  /** The file's whole text before. */
  readonly before: string;
  /** SHA-256 of its text after: of any other text nothing is taken back. */
  readonly after: string;
}

/** `.plane.yaml.undo` beside `plane.yaml`. */
const recordName = (file: string): string => {
  const real = realpathSync(file);
  return join(dirname(real), `.${basename(real)}.undo`);
};

const hashOf = (text: string): string => createHash("sha256").update(text).digest("hex");

/** Keeps a text that is about to be replaced, readable by whom the file is. Written out before the file itself is. @throws WriteError */
export function keepForUndo(file: string, values: readonly string[], before: string, after: string): void {
  const record: UndoRecord = { values, before, after: hashOf(after) };
  const name = recordName(file);
  const beside = `${name}.${process.pid}.tmp`;
  try {
    const handle = openSync(beside, "wx", statSync(file).mode & 0o777);
    try {
      const bytes = Buffer.from(JSON.stringify(record));
      for (let at = 0; at < bytes.length; ) at += writeSync(handle, bytes, at);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(beside, name);
  } catch (error) {
    rmSync(beside, { force: true });
    throw toWriteError(name, error);
  }
}

/** What undoing brings back. @param text the file's as it stands @throws InputRefused where there is nothing to take back, or the file was changed since */
export function lastChange(file: string, text: string): Pick<UndoRecord, "values" | "before"> {
  const record = readRecord(file);
  if (record === undefined || record.before === text) throw new InputRefused(UNDO.none({ file }));
  if (record.after === hashOf(text)) return record;
  throw new InputRefused(UNDO.changedSince({ file, values: record.values }));
}

export const forgetUndo = (file: string): void => rmSync(recordName(file), { force: true });

function readRecord(file: string): UndoRecord | undefined {
  try {
    const { values, before, after } = JSON.parse(readFileSync(recordName(file), "utf8")) as Partial<UndoRecord>;
    const isRecord = Array.isArray(values) && typeof before === "string" && typeof after === "string";
    return isRecord ? { values, before, after } : undefined;
  } catch {
    return undefined; // none, or none of ours
  }
}
