// One value taken out of a maker's file again. Every other byte stays as it was; a comment behind the value stays too.
import { isMap, type Pair, parseDocument, type Scalar, type YAMLMap } from "yaml";
import { rowAt } from "./path.ts";
import { readDesign } from "./read.ts";
import { PARSE_OPTIONS } from "./yaml-nodes.ts";

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
  const read = readDesign(source, "");
  if (!read.ok) throw new Error(`a value is taken out of a sound design only; ${read.faults[0]?.message}`);
  const bom = source.startsWith("\ufeff") ? "\ufeff" : "";
  const text = source.slice(bom.length);
  return bom + removeKey(text, parseDocument(text, PARSE_OPTIONS).contents as YAMLMap, path.split("."));
}

function removeKey(text: string, map: YAMLMap, [key = "", ...rest]: string[]): string {
  const at = map.items.findIndex((pair) => keyOf(pair).value === key);
  const pair = map.items[at];
  if (!pair) return text;
  if (rest.length > 0) return isMap(pair.value) ? removeKey(text, pair.value, rest) : text;
  return map.flow ? removeFromFlow(text, map, at) : removeLines(text, pair);
}

/** With the comma behind it, or the one before it where it is the last. A comment between stays, and is no comma. */
function removeFromFlow(text: string, { items }: YAMLMap, at: number): string {
  const pair = items[at]!;
  const [start, behind] = [keyOf(pair).range![0], text.slice(endOf(pair))];
  const next = /^((?:\s|#.*)*),[ \t]*/.exec(behind);
  if (next) return text.slice(0, start) + (next[1]!.includes("#") ? next[1] : "") + behind.slice(next[0].length);
  const previous = items[at - 1];
  const isBare = previous && /^\s*,\s*$/.test(text.slice(endOf(previous), start));
  return text.slice(0, isBare ? endOf(previous) : start) + behind; // else a comment: then it is YAML, which takes a last comma
}

/** With its line or lines; a comment at the end of the last becomes a line of its own. */
function removeLines(text: string, pair: Pair): string {
  const start = text.lastIndexOf("\n", keyOf(pair).range![0] - 1) + 1;
  const end = endOf(pair);
  if (text[end - 1] === "\n") return text.slice(0, start) + text.slice(end); // a block of text owns its last line end
  const rest = /^[^\r\n]*(\r?\n|$)/.exec(text.slice(end))![0];
  const comment = rest.indexOf("#");
  const kept = comment < 0 ? "" : text.slice(start, keyOf(pair).range![0]) + rest.slice(comment);
  return text.slice(0, start) + kept + text.slice(end + rest.length);
}

const keyOf = (pair: Pair): Scalar => pair.key as Scalar;
const endOf = (pair: Pair): number => ((pair.value as Scalar | null)?.range ?? keyOf(pair).range)![1];
