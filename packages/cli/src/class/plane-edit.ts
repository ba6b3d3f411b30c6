// Changes made on the page of one plane of a class, written where they belong: what was measured into the plane's own file,
// everything else into its row of the roster.
import { existsSync, mkdirSync, rmSync } from "node:fs";
import { basename, dirname } from "node:path";
import { toWriteError } from "@lamplane/export/write-error";
import { completeDesign, faultText, readDesign, removeValue, setValue, valueAt } from "@lamplane/parameters/design";
import {
  type DesignText,
  decodeRoster,
  parseRoster,
  type RosterChange,
  type RosterPlane,
  rosterDesign,
  setRosterValues,
} from "@lamplane/parameters/roster";
import { type Design, rowsOf, TABLE } from "@lamplane/parameters/table";
import { decodeDesignBytes, readDesignBytes } from "../design-file.ts";
import { faultLines } from "../file-content.ts";
import { replaceFile } from "../file-replacement.ts";
import { InputRefused } from "../io.ts";
import { shopAccess } from "../shop-file.ts";
import { PLANE_EDIT } from "../words/class.ts";
import { planeFile, writeWhole } from "./plane-files.ts";

/** What the page of a plane sends. */
export interface PlaneEdit {
  /** Its name in files. */
  readonly plane: string;
  readonly changes: readonly RosterChange[];
  /** Its design file as the page read it: what the file begins with where there is none yet. */
  readonly text: string;
}

interface EditedClass {
  readonly roster: string;
  readonly base: Design;
  /** Folder with the planes' own files. */
  readonly out: string;
}

interface WrittenFile {
  readonly file: string;
  readonly text: string;
  /** As it stands; undefined where there is none. */
  readonly before: string | undefined;
}

/**
 * Writes every changed file, or none.
 * @returns the files' names
 * @throws InputRefused where a value is not allowed, or the roster has no such plane; WriteError
 */
export function writePlaneEdit(edit: PlaneEdit, at: EditedClass): string[] {
  const files = editedFiles(edit, at);
  const done: WrittenFile[] = [];
  try {
    for (const each of files) {
      writeFile(each);
      done.push(each);
    }
  } catch (error) {
    for (const each of done) takeBack(each);
    throw error;
  }
  return files.map(({ file }) => basename(file));
}

function writeFile({ file, text, before }: WrittenFile): void {
  if (before !== undefined) {
    replaceFile(file, text);
    return;
  }
  try {
    mkdirSync(dirname(file), { recursive: true });
  } catch (error) {
    throw toWriteError(dirname(file), error);
  }
  writeWhole(file, text);
}

function takeBack({ file, before }: WrittenFile): void {
  if (before === undefined) rmSync(file, { force: true });
  else replaceFile(file, before);
}

/** @throws InputRefused */
function editedFiles({ plane, changes, text }: PlaneEdit, { roster, base, out }: EditedClass): WrittenFile[] {
  const before = textOf(roster);
  const { index, row } = requireRow(before, roster, plane, base);
  for (const [path] of changes) {
    if (!rowsOf(TABLE).some((each) => each.path === path)) throw new InputRefused(PLANE_EDIT.noParameter({ path }));
    if (path === "name") throw new InputRefused(PLANE_EDIT.name({ plane, roster: basename(roster) }));
  }
  const isInRow = (path: string) => row.values.some((each) => each.path === path);
  const isMeasured = (path: string) => path.startsWith("measured.");
  const file = planeFile(out, plane);
  const own = existsSync(file) ? readOwn(file) : undefined;
  const ofRow = changes.filter(([path]) => !isMeasured(path) || isInRow(path));
  const ofFile = changes.filter(
    ([path]) => isMeasured(path) && (!isInRow(path) || (own && valueAt(own.design, path) !== undefined)),
  );
  const after = setRosterValues(before, { file: roster, row: index, changes: ofRow, units: base.units });
  const ownAfter = ofFile.length === 0 ? undefined : withMeasured(own?.text ?? text, ofFile, file, plane);
  const { row: rowAfter } = requireRow(after, roster, plane, base);
  const complete = completeDesign(rosterDesign(rowAfter, base, ownAfter?.design.measured ?? own?.design.measured));
  if (!complete.ok) throw new InputRefused(faultLines(complete.faults, faultText));
  return [
    ...(ownAfter && ownAfter.text !== own?.text ? [{ file, text: ownAfter.text, before: own?.text }] : []),
    ...(after === before ? [] : [{ file: roster, text: after, before }]),
  ];
}

const textOf = (file: string): string => new TextDecoder("utf-8", { ignoreBOM: true }).decode(readDesignBytes(file));

/** @throws InputRefused where the plane's file is no design */
function readOwn(file: string): DesignText {
  return { text: textOf(file), design: decodeDesignBytes(readDesignBytes(file), file) };
}

/** The plane's row and its place. @throws InputRefused where there is none, or it has faults */
function requireRow(text: string, roster: string, plane: string, base: Design): { index: number; row: RosterPlane } {
  const read = parseRoster(text, basename(roster));
  if (!read.ok) throw new InputRefused(faultLines(read.faults, faultText));
  const rows = decodeRoster(read.roster, base.units);
  const index = rows.findIndex(({ name }) => name === plane);
  const row = rows[index];
  if (!row) throw new InputRefused(PLANE_EDIT.noRow({ plane, roster: basename(roster) }));
  if (row.faults.length > 0) throw new InputRefused(faultLines(row.faults, faultText));
  return { index, row };
}

/** The text of a plane's file with values measured or taken back. @throws InputRefused where it is then no design of the plane */
function withMeasured(text: string, changes: readonly RosterChange[], file: string, plane: string): DesignText {
  const begun = readDesign(text, basename(file), shopAccess(file, undefined));
  if (!begun.ok) throw new InputRefused(faultLines(begun.faults, faultText));
  if (begun.design.name !== plane) throw new InputRefused(PLANE_EDIT.otherPlane({ plane, read: begun.design.name }));
  const written = changes.reduce(
    (now, [path, value]) => (value === undefined ? removeValue(now, path) : setValue(now, path, value)),
    text,
  );
  const read = readDesign(written, basename(file), shopAccess(file, undefined));
  if (!read.ok) throw new InputRefused(faultLines(read.faults, faultText));
  return { text: written, design: read.design };
}
