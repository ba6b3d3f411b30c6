// One value of a design by its dotted path; designs are never changed, only copied.
import { type Design, isRow, type Row, TABLE, type TableSection } from "../table/index.ts";
import { knownPaths, nearestWord } from "./suggest.ts";

interface Branch {
  readonly [key: string]: unknown;
}

/**
 * The value at a path such as `iron.width`; undefined where a measured value is still to come.
 * @throws Error for a path that the table does not have (our bug)
 */
export function valueAt(design: Design, path: string): number | string | undefined {
  rowAt(path);
  const value = path.split(".").reduce<unknown>((branch, key) => (branch as Branch | undefined)?.[key], design);
  return value as number | string | undefined;
}

/**
 * A copy of the design with another value at the path; whether it is allowed is not asked here.
 * @throws Error for a path that the table does not have (our bug)
 */
export function withValue(design: Design, path: string, value: number | string | undefined): Design {
  rowAt(path);
  return replaceAt(design as unknown as Branch, path.split("."), value) as unknown as Design;
}

/**
 * The table's row at a path.
 * @throws Error for a path that the table does not have (our bug)
 */
export function rowAt(path: string): Row {
  let entry: Row | TableSection | undefined = TABLE;
  for (const key of path.split("."))
    entry = entry && !isRow(entry) && Object.hasOwn(entry, key) ? entry[key] : undefined;
  if (entry && isRow(entry)) return entry;
  throw new Error(`no parameter is called "${path}"; the nearest is ${nearestWord(path, knownPaths()) ?? "none"}`);
}

function replaceAt(branch: Branch, [key = "", ...rest]: string[], value: unknown): Branch {
  if (rest.length > 0) return { ...branch, [key]: replaceAt((branch[key] ?? {}) as Branch, rest, value) };
  if (value !== undefined) return { ...branch, [key]: value };
  return Object.fromEntries(Object.entries(branch).filter(([name]) => name !== key));
}
