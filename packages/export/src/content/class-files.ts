// The class's own files: class.pdf for the machines and the benches, class.csv for a spreadsheet. Command and page make the same.
import type { Design } from "@lamplane/parameters/table";
import { type BoardSheet, classSheet } from "@lamplane/sheets";
import { classCsv } from "./class-csv.ts";

export interface ClassInput {
  /** The roster's, without its ending. */
  readonly name: string;
  /** With the shared numbers in them. */
  readonly designs: readonly Design[];
  /** Of the designs in the roster. */
  readonly numbers: readonly number[];
  readonly boards: BoardSheet | undefined;
  readonly version: string;
}

export const CLASS_FILES = ["class.pdf", "class.csv"] as const;
export type ClassFile = (typeof CLASS_FILES)[number];

/** Undefined for a class without planes. */
export async function classFile(file: ClassFile, input: ClassInput): Promise<Uint8Array | string | undefined> {
  const { name, designs, numbers, boards, version } = input;
  const [first] = designs;
  if (!first) return undefined;
  if (file === "class.csv") return classCsv(designs, numbers);
  const { classPdf } = await import("@lamplane/sheets/pages");
  return classPdf(classSheet(name, designs, numbers, boards), { paper: first.shop.paper, version });
}
