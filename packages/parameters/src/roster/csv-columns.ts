// What the columns of a table hold: a head is a parameter's path or its name, and the unit of its lengths.
import { rowsOf, TABLE } from "../table/index.ts";

/** A table by its name; any other roster is YAML. */
export const isTableFile = (file: string): boolean => /\.(csv|tsv)$/i.test(file);

export interface CsvColumn {
  readonly path: string;
  /** Unit of the column's bare lengths, where its head names one. */
  readonly unit?: string;
}

/**
 * A head is a path or the parameter's name, and the unit of its lengths where it is another than the base's: "iron.width",
 * "Iron width (in)".
 */
export function columnOf(head: string): CsvColumn {
  const [, name = head, unit] = /^(.*\S)\s+\(?(mm|cm|in)\)?$/.exec(head) ?? [];
  const path = pathOfHead(name);
  return unit === undefined ? { path } : { path, unit };
}

/** Head of a new column: the parameter's name, or its path where the other heads are paths or the name is another's too. */
export function headOf(path: string, heads: readonly string[]): string {
  const { name } = rowsOf(TABLE).find((each) => each.path === path)!.row;
  const usePaths = heads.some((head) => head.includes("."));
  return usePaths || columnOf(name).path !== path ? path : name;
}

/** Capitals do not count. What is given and what is measured may have one name: then it is what is given. */
function pathOfHead(head: string): string {
  const wanted = head.toLowerCase();
  const rows = rowsOf(TABLE);
  const found =
    rows.find(({ path }) => path.toLowerCase() === wanted) ?? rows.find(({ row }) => row.name.toLowerCase() === wanted);
  return found?.path ?? head;
}
