// Each plane's own design file in the class's folder: what the roster and the class say is set in it, what is measured there stays.
import { existsSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { toWriteError } from "@lamplane/export/write-error";
import { faultText, formatParameter, readDesign, setValue, valueAt, withValue } from "@lamplane/parameters/design";
import type { RosterPlane } from "@lamplane/parameters/roster";
import { type Design, rowsOf, TABLE } from "@lamplane/parameters/table";
import { decodeDesignBytes, readDesignBytes } from "../design-file.ts";
import { faultLines } from "../file-content.ts";
import { replaceFile } from "../file-replacement.ts";
import { InputRefused } from "../io.ts";
import { shopAccess } from "../shop-file.ts";
import { CLASS } from "../words/class.ts";
import type { LoadedRoster } from "./roster-file.ts";

/** A row of the roster with its design file. */
export interface ClassPlane {
  readonly name: string;
  readonly file: string;
  /** As the roster and the file's measured values make it; absent where the row or the file has faults. */
  readonly design?: Design;
  /** The file as it stands; absent where there is none yet. */
  readonly before?: { readonly text: string; readonly design: Design };
  /** A line each. */
  readonly faults: readonly string[];
}

export const planeFile = (folder: string, name: string): string => join(folder, `${name}.yaml`);

/** A row's plane, with what its file holds already. @param roster the roster's file, for the faults */
export function classPlane(row: RosterPlane, base: Design, folder: string, roster: string): ClassPlane {
  const file = planeFile(folder, row.name);
  const name = row.name === "" ? CLASS.unnamed({ line: row.at.line }) : row.name;
  if (row.faults.length > 0) return { name, file, faults: faultLines(row.faults, faultText).split("\n") };
  if (!existsSync(file)) return { name, file, design: designOf(row, base, {}), faults: [] };
  const before = readPlaneFile(file);
  if ("faults" in before) return { name, file, ...before };
  const faults = contradictions(row, before.design, { file, roster });
  if (faults.length > 0) return { name, file, before, faults };
  return { name, file, before, design: designOf(row, base, before.design.measured), faults };
}

function readPlaneFile(file: string): { text: string; design: Design } | { faults: string[] } {
  try {
    const bytes = readDesignBytes(file);
    return {
      design: decodeDesignBytes(bytes, file),
      text: new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes),
    };
  } catch (error) {
    if (error instanceof InputRefused) return { faults: error.message.split("\n") };
    throw error;
  }
}

function designOf(row: RosterPlane, base: Design, measured: Partial<Design["measured"]>): Design {
  const begun = withValue({ ...base, measured: { ...base.measured, ...measured } }, "name", row.name);
  return row.values.reduce((design, { path, value }) => withValue(design, path, value), begun);
}

/** A measured value that the roster has and the plane's file has otherwise: nobody can say which of the two holds. */
const contradictions = (row: RosterPlane, own: Design, files: { file: string; roster: string }): string[] =>
  row.values.flatMap(({ path, value }) => {
    const there = path.startsWith("measured.") ? valueAt(own, path) : undefined;
    if (there === undefined || isSame(there, value)) return [];
    const text = (each: number | string) => formatParameter(path, each, own);
    return [CLASS.contradiction({ ...files, line: row.at.line, path, theirs: text(value), own: text(there) })];
  });

const ROUNDED = 1e-6; // mm: what is written into a file is rounded to it

const isSame = (a: unknown, b: unknown): boolean =>
  typeof a === "number" && typeof b === "number" ? Math.abs(a - b) <= ROUNDED : a === b;

/** A parameter that the class sets otherwise in a plane's file than it stood there. */
export interface FileChange {
  readonly path: string;
  readonly from: number | string | undefined;
  readonly to: number | string;
}

const changesBetween = (from: Design, to: Design): FileChange[] =>
  rowsOf(TABLE).flatMap(({ path }) => {
    const [before, after] = [valueAt(from, path), valueAt(to, path)];
    return after === undefined || isSame(before, after) ? [] : [{ path, from: before, to: after }];
  });

/**
 * Writes a plane's file so that it reads as the design, or leaves it where it does already.
 * @returns the design as the file has it, and what changed in a file that was there
 * @throws WriteError
 */
export function writePlaneFile(
  { file, before }: ClassPlane,
  design: Design,
  { base }: LoadedRoster,
  roster: string,
): { design: Design; changes: readonly FileChange[] } {
  const changes = changesBetween(before?.design ?? base.design, design);
  if (before && changes.length === 0) return { design: before.design, changes };
  const from = before?.text ?? base.text;
  const set = changes.reduce((text, { path, to }) => setValue(text, path, to), from);
  const text = before ? set : withHead(set, CLASS.fileHead({ name: design.name, roster: basename(roster) }));
  const read = readDesign(text, file, shopAccess(file, undefined));
  if (!read.ok) throw new Error(`${file} would not read back: ${faultLines(read.faults, faultText)}`);
  if (before) replaceFile(file, text);
  else writeWhole(file, text);
  return { design: read.design, changes: before ? changes : [] };
}

/** A comment before everything, behind a byte order mark. */
const withHead = (text: string, head: string): string => text.replace(/^\ufeff?/, (mark) => `${mark}# ${head}\n`);

/** A new file, whole or not at all. @throws WriteError */
export function writeWhole(file: string, content: string | Uint8Array): void {
  const fresh = join(dirname(file), `.${basename(file)}.part`); // of a run that broke off: the next writes over it
  try {
    writeFileSync(fresh, content);
    renameSync(fresh, file);
  } catch (error) {
    rmSync(fresh, { force: true });
    throw toWriteError(file, error);
  }
}
