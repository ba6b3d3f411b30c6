// The map of a sound YAML text with the offsets of its parts, for edits that leave everything else as it is.
import { isMap, isNode, isScalar, type Node, type Pair, parseDocument, type Scalar, type YAMLMap } from "yaml";
import type { Edit } from "./edits.ts";
import { PARSE_OPTIONS } from "./parse-options.ts";

/** A byte order mark, which belongs to no value, and the text behind it. */
export function splitByteOrderMark(source: string): { readonly mark: string; readonly text: string } {
  const mark = source.startsWith("\ufeff") ? "\ufeff" : "";
  return { mark, text: source.slice(mark.length) };
}

/** @param text YAML whose root is a map */
export const parseEditableMap = (text: string): YAMLMap => parseDocument(text, PARSE_OPTIONS).contents as YAMLMap;

export const keyOf = (pair: Pair): Scalar => pair.key as Scalar;
export const startOf = (pair: Pair): number => keyOf(pair).range![0];
/** Offset behind a pair's value, or behind its key where it has none. */
export const endOf = (pair: Pair): number => ((pair.value as Scalar | null)?.range ?? keyOf(pair).range)![1];

/** The pair with a key. */
export const pairAt = (map: YAMLMap, key: string): Pair | undefined =>
  map.items.find((pair) => keyOf(pair).value === key);

/** What stands at the end of a chain of keys. */
export function nodeAt(map: YAMLMap, [key = "", ...rest]: readonly string[]): Node | undefined {
  const value = pairAt(map, key)?.value;
  if (rest.length > 0) return isMap(value) ? nodeAt(value, rest) : undefined;
  return isNode(value) ? value : undefined;
}

/** The scalar at the end of a chain of keys. */
export function scalarAt(map: YAMLMap, keys: readonly string[]): Scalar | undefined {
  const node = nodeAt(map, keys);
  return isScalar(node) ? node : undefined;
}

/** Another text in the place of a scalar or list; a block of text owns its last line end, which stays. */
export function replaceScalar(text: string, { range }: Pick<Node, "range">, by: string): Edit {
  const [start, end] = range!;
  return { start, end: start + text.slice(start, end).trimEnd().length, text: by };
}
