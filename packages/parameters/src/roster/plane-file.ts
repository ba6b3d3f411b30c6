// Each plane's own design file: what the roster sets over the base is set in it, what is measured there stays.
import { setList } from "../design/carry-shop.ts";
import { formatParameter } from "../design/parameter-text.ts";
import { valueAt, withValue } from "../design/path.ts";
import { readDesign, type ShopAccess } from "../design/read.ts";
import { removeList } from "../design/value-removal.ts";
import { setValue } from "../design/value-update.ts";
import { type Design, isListName, LIST_NAMES, rowsOf, TABLE } from "../table/index.ts";
import { PLANE_FILE } from "../words/plane-file.ts";
import type { RosterPlane } from "./roster.ts";

/** A design with the text that it was read from. */
export interface DesignText {
  readonly text: string;
  readonly design: Design;
}

/**
 * A row's plane: the base with the row's values, and what was measured of it. Boards are the class's, so none of its planes has any.
 * @param measured in the plane's own file
 */
export function rosterDesign(row: RosterPlane, base: Design, measured: Partial<Design["measured"]> = {}): Design {
  const begun = { ...base, boards: [], measured: { ...base.measured, ...measured } };
  return row.values.reduce(
    (design, { path, value }) => withValue(design, path, value),
    withValue(begun, "name", row.name),
  );
}

/**
 * Measured values that the roster has and the plane's file has otherwise, and values measured on another iron than the roster's,
 * a line each: nobody can say which of the two holds.
 * @param own the plane's file as it reads
 */
export const contradictions = (row: RosterPlane, own: Design, files: { file: string; roster: string }): string[] =>
  row.values.flatMap(({ path, value }) => {
    const text = (each: number | string) => formatParameter(path, each, own);
    const line = row.at.line;
    if (path in MEASURED_ON_IRON) {
      const key = MEASURED_ON_IRON[path]!;
      const reading = own.measured[key];
      if (reading === undefined || !isOfOldIron(reading, Number(valueAt(own, path)), Number(value))) return [];
      return [PLANE_FILE.oldIron({ ...files, line, path, key, now: text(value), reading: text(reading) })];
    }
    const there = path.startsWith("measured.") ? valueAt(own, path) : undefined;
    if (there === undefined || isSame(there, value)) return [];
    return [PLANE_FILE.contradiction({ ...files, line, path, theirs: text(value), own: text(there) })];
  });

/** What is measured on an iron, by the size that the roster gives of it. */
const MEASURED_ON_IRON: Readonly<Record<string, "ironWidth" | "ironThickness">> = {
  "iron.width": "ironWidth",
  "iron.thickness": "ironThickness",
};

/** Whether a reading is nearer to the iron that the file speaks of than to another one that the roster now has. */
const isOfOldIron = (reading: number, before: number, now: number): boolean =>
  !isSame(before, now) && Math.abs(reading - before) < Math.abs(reading - now);

/** A parameter, or a list of the shop's, that the class sets otherwise in a plane's file than it stood there; of a list, how long. */
export interface FileChange {
  readonly path: string;
  readonly from: number | string | undefined;
  readonly to: number | string;
}

interface PlaneFileContext {
  readonly base: DesignText;
  readonly before?: DesignText | undefined;
  readonly roster: string;
  readonly shop?: ShopAccess;
}

/**
 * The text of a plane's file that reads as the design.
 * @param before the file as it stands; without one the base's text is begun with
 * @param roster the roster's name, for the head of a new file
 * @param shop where the file that stands there names a shop file
 * @returns the design as the text has it, and what changed in a file that was there
 */
export function planeFileText(
  design: Design,
  { base, before, roster, shop }: PlaneFileContext,
): DesignText & { readonly changes: readonly FileChange[] } {
  const lists = before ? LISTS_OF_THE_SHOP.filter((name) => !isSameList(before.design[name], design[name])) : [];
  const changes = [
    ...changesBetween(before?.design ?? base.design, design),
    ...lists.map((path) => ({ path, from: before!.design[path].length, to: design[path].length })),
  ];
  if (before && changes.length === 0) return { ...before, changes };
  const from = before?.text ?? removeList(base.text, "boards");
  const set = changes.reduce(
    (text, { path, to }) => (isListName(path) ? setList(text, path, design[path]) : setValue(text, path, to)),
    from,
  );
  const text = before ? set : withHead(set, PLANE_FILE.head({ name: design.name, roster }));
  const read = readDesign(text, "", shop);
  if (!read.ok) throw new Error(`the file of ${design.name} would not read back`);
  return { text, design: read.design, changes: before ? changes : [] };
}

/** Boards are the class's own. */
const LISTS_OF_THE_SHOP = LIST_NAMES.filter((name) => name !== "boards");

const isSameList = (a: readonly object[], b: readonly object[]): boolean => JSON.stringify(a) === JSON.stringify(b);

const ROUNDED = 1e-6; // mm: what is written into a file is rounded to it

const isSame = (a: unknown, b: unknown): boolean =>
  typeof a === "number" && typeof b === "number" ? Math.abs(a - b) <= ROUNDED : a === b;

const changesBetween = (from: Design, to: Design): FileChange[] =>
  rowsOf(TABLE).flatMap(({ path }) => {
    const [before, after] = [valueAt(from, path), valueAt(to, path)];
    return after === undefined || isSame(before, after) ? [] : [{ path, from: before, to: after }];
  });

/** A comment before everything, behind a byte order mark. */
const withHead = (text: string, head: string): string => text.replace(/^\ufeff?/, (mark) => `${mark}# ${head}\n`);
