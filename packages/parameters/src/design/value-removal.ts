// One value taken out of a maker's file again. Every other byte stays as it was; a comment behind the value stays too.
import { isMap, type Pair, type YAMLMap } from "yaml";
import type { ListName } from "../table/index.ts";
import { endOf, pairAt, parseEditableMap, splitByteOrderMark, startOf } from "../yaml/editable-map.ts";
import { applyEdits, type Edit } from "../yaml/edits.ts";
import { faultText } from "./fault-text.ts";
import { rowAt } from "./path.ts";
import { readOwnDesign } from "./read.ts";

/**
 * The text without one value, so that the table's default holds, or nothing where the table has none (what is measured).
 * Sections stay, empty ones too.
 * @param source a design that readDesign takes
 * @returns the text as it is where the value is not in it
 * @throws Error for a path that the table does not have or demands, or a text that readDesign refuses (our bug)
 */
export function removeValue(source: string, path: string): string {
  const row = rowAt(path);
  if (row.kind === "number" && row.required) throw new Error(`a design cannot be without ${path}`);
  return removeAt(source, path.split("."));
}

/**
 * The text without one of the design's lists.
 * @param source a design that readDesign takes
 * @returns the text as it is where the list is not in it
 * @throws Error for a text that readDesign refuses (our bug)
 */
export const removeList = (source: string, list: ListName): string => removeAt(source, [list]);

function removeAt(source: string, keys: string[]): string {
  const read = readOwnDesign(source);
  if (!read.ok) throw new Error(`a value is taken out of a sound design only; ${read.faults.map(faultText)[0]}`);
  const { mark, text } = splitByteOrderMark(source);
  return mark + applyEdits(text, removeKey(text, parseEditableMap(text), keys));
}

/** Edits that take the value at a chain of keys out of a text. */
export function removeKey(text: string, map: YAMLMap, [key = "", ...rest]: string[]): Edit[] {
  const pair = pairAt(map, key);
  if (!pair) return [];
  if (rest.length > 0) return isMap(pair.value) ? removeKey(text, pair.value, rest) : [];
  return [map.flow ? removeFromFlow(text, map, pair) : removeLines(text, pair)];
}

/** With the comma behind it, or the one before it where it is the last. A comment between stays, and is no comma. */
function removeFromFlow(text: string, { items }: YAMLMap, pair: Pair): Edit {
  const [start, end] = [startOf(pair), endOf(pair)];
  const next = /^((?:\s|#.*)*),[ \t]*/.exec(text.slice(end));
  if (next) return { start, end: end + next[0].length, text: next[1]!.includes("#") ? next[1]! : "" };
  const previous = items[items.indexOf(pair) - 1];
  const isBare = previous && /^\s*,\s*$/.test(text.slice(endOf(previous), start));
  return { start: isBare ? endOf(previous) : start, end, text: "" }; // else a comment: then it is YAML, which takes a last comma
}

/** With its line or lines; a comment at the end of the last becomes a line of its own. */
function removeLines(text: string, pair: Pair): Edit {
  const start = text.lastIndexOf("\n", startOf(pair) - 1) + 1;
  const end = endOf(pair);
  if (text[end - 1] === "\n") return { start, end, text: "" }; // a block of text owns its last line end
  const rest = /^[^\r\n]*(\r?\n|$)/.exec(text.slice(end))![0];
  const comment = rest.indexOf("#");
  const kept = comment < 0 ? "" : text.slice(start, startOf(pair)) + rest.slice(comment);
  return { start, end: end + rest.length, text: kept };
}
