// From a file's name, and changes made on the command line, to a design; or a refusal that tells every fault.
import { readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { asCouldNotWrite } from "@lamplane/export";
import {
  completeDesign,
  type Design,
  type Fault,
  LARGEST_FILE,
  readDesign,
  withValue,
} from "@lamplane/parameters/design";
import { type Row, rowsOf, TABLE } from "@lamplane/parameters/table";
import { readNumberText } from "@lamplane/parameters/units";
import { InputRefused } from "./io.ts";

/**
 * The design in a file, with `changes` ("bed.angle=50") made to it.
 * @throws InputRefused with one line for every fault.
 */
export function designFrom(file: string, changes: readonly string[] = []): Design {
  const design = designIn(contentOf(file), file);
  return changes.length === 0 ? design : changed(design, changes);
}

/** The design in a file's bytes. @throws InputRefused with one line for every fault. */
export function designIn(content: Uint8Array, file: string): Design {
  const reading = readDesign(content, file);
  if (!reading.ok) throw new InputRefused(faultLines(reading.faults));
  return reading.design;
}

/** Replaces a file whole, or leaves it as it was. @throws CouldNotWrite */
export function replaceFile(file: string, text: string): void {
  const beside = `${file}.${process.pid}.tmp`;
  try {
    writeFileSync(beside, text, { flag: "wx", mode: statSync(file).mode });
    renameSync(beside, file);
  } catch (error) {
    rmSync(beside, { force: true });
    throw asCouldNotWrite(file, error);
  }
}

/** A file's bytes. @throws InputRefused where it cannot be read, or is no design file by its size. */
export function contentOf(file: string): Uint8Array {
  try {
    const { size } = statSync(file);
    if (size > LARGEST_FILE)
      throw new InputRefused(
        `${file}:1:1: is ${size} bytes; a design file has at most ${LARGEST_FILE}. Is it the right file?`,
      );
    return readFileSync(file);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (error instanceof InputRefused || code === undefined) throw error;
    const found: Record<string, string> = {
      ENOENT: "there is no such file; `lamplane new FILE` writes one to begin with",
      EISDIR: "this is a folder; name the design file in it",
      EACCES: "this file may not be read by you",
      ERR_INVALID_ARG_VALUE: "this is not a file name",
    };
    throw new InputRefused(`${file}: ${found[code] ?? `could not be read (${code})`}`);
  }
}

/** Each fault on a line: where, which parameter, what is wrong. */
export const faultLines = (faults: readonly Fault[]): string =>
  faults
    .map(({ file, line, column, path, message }) =>
      [line > 0 ? `${file}:${line}:${column}` : file, path, message].filter((part) => part !== "").join(": "),
    )
    .join("\n");

function changed(design: Design, changes: readonly string[]): Design {
  const complete = completeDesign(changes.reduce(changedOnce, design));
  if (complete.ok) return complete.design;
  throw new InputRefused(faultLines(complete.faults.map((fault) => ({ ...fault, file: "--with" }))));
}

function changedOnce(design: Design, change: string): Design {
  const [, path, text] = /^([^=]+)=(.*)$/s.exec(change) ?? [];
  if (path === undefined || text === undefined)
    throw new InputRefused(`--with ${change}: write KEY=VALUE, such as bed.angle=50`);
  const row = rowOrRefusal(path);
  if (row.kind !== "number" || (text === "auto" && row.auto !== undefined)) return withValue(design, path, text);
  const read = readNumberText(text, row.quantity, design.units);
  if ("fault" in read) throw new InputRefused(`--with ${path}: ${read.fault}`);
  return withValue(design, path, read.value);
}

/** A row of the parameter table by its path. @throws InputRefused where there is none. */
function rowOrRefusal(path: string): Row {
  const found = rowsOf(TABLE).find((entry) => entry.path === path);
  if (!found) throw noSuchParameter(path);
  return found.row;
}

export const noSuchParameter = (path: string): InputRefused =>
  new InputRefused(`${path}: there is no such parameter; \`lamplane explain\` lists them`);
