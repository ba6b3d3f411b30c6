// The class's own files: class.pdf for the machines and the benches, class.csv for a spreadsheet, the shop's sheets with all parts
// and jigs as an archive of drawings and programs. Command and page make the same.
import type { Design } from "@lamplane/parameters/table";
import { type BoardSheet, classSheet } from "@lamplane/sheets";
import type { ClassNesting } from "../nested/class-nesting.ts";
import { classNestedFiles } from "../nested/nested-files.ts";
import { zipArchive } from "../zip.ts";
import { classCsv } from "./class-csv.ts";

export interface ClassInput {
  /** The roster's, without its ending. */
  readonly name: string;
  /** With the shared numbers in them. */
  readonly designs: readonly Design[];
  /** Of the designs in the roster. */
  readonly numbers: readonly number[];
  readonly boards: BoardSheet | undefined;
  /** Absent where the shop has no sheets. */
  readonly nesting?: ClassNesting | undefined;
  readonly version: string;
}

export const CLASS_FILES = ["class.pdf", "class.csv", "class-sheets.zip"] as const;
export type ClassFile = (typeof CLASS_FILES)[number];

/** Undefined for a class without planes, and for its sheets where the shop has none. */
export async function classFile(file: ClassFile, input: ClassInput): Promise<Uint8Array | string | undefined> {
  const { name, designs, numbers, boards, nesting, version } = input;
  const [first] = designs;
  if (!first) return undefined;
  if (file === "class.csv") return classCsv(designs, numbers);
  const nested = nesting && classNestedFiles(nesting, name, version);
  if (file === "class-sheets.zip") return nested && zipArchive(nested.texts);
  const { classPdf } = await import("@lamplane/sheets/pages");
  const sheet = classSheet(name, designs, numbers, boards);
  return classPdf(sheet, { paper: first.shop.paper, version }, nested?.sheets);
}
