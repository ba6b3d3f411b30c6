// Each plane's own design file in the class's folder: what the roster and the class say is set in it, what is measured there stays.
import { existsSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { toWriteError } from "@lamplane/export/write-error";
import { faultText } from "@lamplane/parameters/design";
import {
  contradictions,
  type DesignText,
  type FileChange,
  planeFileText,
  type RosterPlane,
  rosterDesign,
} from "@lamplane/parameters/roster";
import type { Design } from "@lamplane/parameters/table";
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
  /** The name as the roster has it, where that is another. */
  readonly written?: string;
  readonly file: string;
  /** As the roster and the file's measured values make it; absent where the row or the file has faults. */
  readonly design?: Design;
  /** The file as it stands; absent where there is none yet. */
  readonly before?: DesignText;
  /** A line each. */
  readonly faults: readonly string[];
}

export const planeFile = (folder: string, name: string): string => join(folder, `${name}.yaml`);

/** A row's plane, with what its file holds already. @param roster the roster's file, for the faults */
export function classPlane(row: RosterPlane, base: Design, folder: string, roster: string): ClassPlane {
  const { written } = row;
  return { ...readPlane(row, base, folder, roster), ...(written === undefined ? {} : { written }) };
}

function readPlane(row: RosterPlane, base: Design, folder: string, roster: string): ClassPlane {
  const file = planeFile(folder, row.name);
  const name = row.name === "" ? CLASS.unnamed({ line: row.at.line }) : row.name;
  if (row.faults.length > 0) return { name, file, faults: faultLines(row.faults, faultText).split("\n") };
  if (!existsSync(file)) return { name, file, design: rosterDesign(row, base), faults: [] };
  const before = readPlaneFile(file);
  if ("faults" in before) return { name, file, ...before };
  const faults = contradictions(row, before.design, { file, roster });
  if (faults.length > 0) return { name, file, before, faults };
  return { name, file, before, design: rosterDesign(row, base, before.design.measured), faults };
}

function readPlaneFile(file: string): DesignText | { faults: string[] } {
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
  const { changes, ...now } = planeFileText(design, {
    base,
    before,
    roster: basename(roster),
    shop: shopAccess(file, undefined),
  });
  if (!before) writeWhole(file, now.text);
  else if (changes.length > 0) replaceFile(file, now.text);
  return { design: now.design, changes };
}

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
