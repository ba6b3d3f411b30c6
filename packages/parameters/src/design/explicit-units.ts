// Lengths that carry no unit get the file's own beside them, so that they keep their length when the file's unit changes.
import type { Scalar, YAMLMap } from "yaml";
import { type Design, rowsOf, TABLE } from "../table/index.ts";
import { isBareLength } from "../units.ts";
import { nodeAt, replaceScalar, scalarAt } from "../yaml/editable-map.ts";
import type { Edit } from "../yaml/edits.ts";
import { valueAt } from "./path.ts";

/**
 * Edits that write the unit behind every bare length of a sound design.
 * @param root map of the text
 * @param design what the text means
 * @param word how a text is written as a value
 */
export function explicitUnits(text: string, root: YAMLMap, design: Design, word: (length: string) => string): Edit[] {
  return rowsOf(TABLE).flatMap(({ path, row }) => {
    if (row.kind === "lengths") {
      const node = nodeAt(root, path.split("."));
      return node ? [replaceScalar(text, node, word(String(valueAt(design, path))))] : [];
    }
    const scalar = row.kind === "number" && row.quantity === "length" ? scalarAt(root, path.split(".")) : undefined;
    if (!scalar || !isBare(scalar)) return [];
    const [start, end] = scalar.range!;
    const figures = typeof scalar.value === "number" ? text.slice(start, end) : String(scalar.value).trim();
    return [replaceScalar(text, scalar, word(`${figures} ${design.units}`))];
  });
}

const isBare = ({ value }: Scalar): boolean =>
  typeof value === "number" || (typeof value === "string" && isBareLength(value));
