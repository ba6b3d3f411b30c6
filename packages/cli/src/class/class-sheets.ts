// The class's own files: class.pdf for the machines and the benches, class.csv for a spreadsheet.
import { existsSync, readFileSync } from "node:fs";
import { basename, extname, join } from "node:path";
import { WriteError } from "@lamplane/export/write-error";
import type { Design } from "@lamplane/parameters/table";
import type { BoardSheet } from "@lamplane/sheets";
import { VERSION } from "../version.ts";
import { CLASS } from "../words/class.ts";
import { writeWhole } from "./plane-files.ts";

/** What the files are made of. */
export interface ClassContent {
  readonly designs: readonly Design[];
  /** Of the designs in the roster. */
  readonly numbers: readonly number[];
  readonly boards: BoardSheet | undefined;
}

/** Writes the files and gives their names. @throws WriteError where something else of such a name is there */
export async function writeClassSheets(
  roster: string,
  { designs, numbers, boards }: ClassContent,
  folder: string,
): Promise<string[]> {
  const [first] = designs;
  if (!first) return [];
  const { classSheet } = await import("@lamplane/sheets");
  const { classPdf } = await import("@lamplane/sheets/pages");
  const { classCsv } = await import("@lamplane/export/content");
  const name = basename(roster, extname(roster));
  const pdf = await classPdf(classSheet(name, designs, numbers, boards), { paper: first.shop.paper, version: VERSION });
  const files = [
    { path: join(folder, "class.pdf"), content: pdf, mark: "<pdf:Producer>lamplane" },
    { path: join(folder, "class.csv"), content: classCsv(designs, numbers), mark: "number,name,iron width" },
  ];
  for (const { path, mark } of files) refuseForeignFile(path, mark);
  for (const { path, content } of files) writeWhole(path, content);
  return files.map(({ path }) => path);
}

/** An older one of ours is replaced; anything else stays as it is. */
function refuseForeignFile(path: string, mark: string): void {
  if (existsSync(path) && !readFileSync(path, "latin1").includes(mark))
    throw new WriteError(path, CLASS.foreign, CLASS.foreignRemedy);
}
