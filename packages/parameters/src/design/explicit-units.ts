// Lengths that carry no unit get the file's own told beside them, so that they keep their length when the file's unit changes.
import { isMap, isScalar, type Scalar, type YAMLMap } from "yaml";
import { rowsOf, TABLE } from "../table/index.ts";
import type { Units } from "../units.ts";

/**
 * The text of a sound design with every bare length told with its unit; every other byte as it was.
 * @param root map of the text
 * @param word how a text is written as a value
 */
export function makeUnitsExplicit(text: string, root: YAMLMap, units: Units, word: (length: string) => string): string {
  const bare = rowsOf(TABLE).flatMap(({ path, row }) => {
    const scalar = row.kind === "number" && row.quantity === "length" ? scalarAt(root, path.split(".")) : undefined;
    return scalar && isBare(scalar) ? [scalar] : [];
  });
  return bare
    .sort((a, b) => b.range![0] - a.range![0])
    .reduce((now, { value, range }) => {
      const [start, end] = range!;
      const figures = typeof value === "number" ? text.slice(start, end) : String(value).trim();
      return `${now.slice(0, start)}${word(`${figures} ${units}`)}${now.slice(end)}`;
    }, text);
}

/** A number, or a text of figures alone such as `1 3/4`. */
const isBare = ({ value }: Scalar): boolean =>
  typeof value === "number" || (typeof value === "string" && /^[\d\s./⁄¼-¾⅐-⅞+-]+$/.test(value));

function scalarAt(map: YAMLMap, [key = "", ...rest]: string[]): Scalar | undefined {
  const value = map.items.find((pair) => (pair.key as Scalar).value === key)?.value;
  if (rest.length > 0) return isMap(value) ? scalarAt(value, rest) : undefined;
  return isScalar(value) ? value : undefined;
}
