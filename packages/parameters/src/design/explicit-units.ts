// Lengths that carry no unit get the file's own beside them, so that they keep their length when the file's unit changes.
import { isMap, isSeq, type Scalar, type YAMLMap } from "yaml";
import { type Design, LIST_NAMES, LISTS, listsWithin, rowsOf, TABLE, type TableSection } from "../table/index.ts";
import { isBareLength } from "../units.ts";
import { nodeAt, pairAt, replaceScalar, scalarAt } from "../yaml/editable-map.ts";
import type { Edit } from "../yaml/edits.ts";
import { valueAt } from "./path.ts";

/**
 * Edits that write the unit behind every bare length of a sound design.
 * @param root map of the text
 * @param design what the text means
 * @param word how a text is written as a value
 */
export function explicitUnits(text: string, root: YAMLMap, design: Design, word: (length: string) => string): Edit[] {
  const inSection = (section: TableSection, map: YAMLMap): Edit[] =>
    rowsOf(section).flatMap(({ path, row }) => {
      if (row.kind === "lengths") {
        const node = nodeAt(map, path.split("."));
        return node ? [replaceScalar(text, node, word(String(valueAt(design, path))))] : [];
      }
      const scalar = row.kind === "number" && row.quantity === "length" ? scalarAt(map, path.split(".")) : undefined;
      if (!scalar || !isBare(scalar)) return [];
      const [start, end] = scalar.range!;
      const figures = typeof scalar.value === "number" ? text.slice(start, end) : String(scalar.value).trim();
      return [replaceScalar(text, scalar, word(`${figures} ${design.units}`))];
    });
  const inItems = (list: unknown, edits: (item: YAMLMap) => Edit[]): Edit[] =>
    isSeq(list) ? list.items.flatMap((item) => (isMap(item) ? edits(item) : [])) : [];
  const ofLists = LIST_NAMES.flatMap((name) => {
    const list = pairAt(root, name)?.value;
    const within = Object.entries(listsWithin(name));
    return inItems(list, (item) => [
      ...inSection(LISTS[name].item, item),
      ...within.flatMap(([key, inner]) => inItems(pairAt(item, key)?.value, (each) => inSection(inner.item, each))),
    ]);
  });
  return [...inSection(TABLE, root), ...ofLists];
}

const isBare = ({ value }: Scalar): boolean =>
  typeof value === "number" || (typeof value === "string" && isBareLength(value));
