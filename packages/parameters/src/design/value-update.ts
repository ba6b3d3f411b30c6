// One value written into a maker's file. Every other byte stays as it was: comments, spacing, order.
import { isMap, parse, type Scalar, type YAMLMap } from "yaml";
import { type Row, UNIT_OF } from "../table/index.ts";
import { formatDecimal, fromMillimetres, toMillimetres, type Units } from "../units.ts";
import {
  endOf,
  keyOf,
  pairAt,
  parseEditableMap,
  replaceScalar,
  splitByteOrderMark,
  startOf,
} from "../yaml/editable-map.ts";
import { applyEdits, type Edit } from "../yaml/edits.ts";
import { explicitUnits } from "./explicit-units.ts";
import { faultText } from "./fault-text.ts";
import { rowAt } from "./path.ts";
import { readOwnDesign } from "./read.ts";

const INCH_PLACES = 4; // decimals of an inch that a maker would still write; a length that needs more is written in mm

/**
 * The text with one value set, its key and section added where they are missing. Reading the result says whether
 * the value is allowed. Where the file's unit is set to the other, every length without a unit gets the old one written
 * behind it, and stays as long as it was.
 * @param source a design that readDesign takes
 * @param value mm, degrees or a word, as in a design
 * @throws Error for a path that the table does not have, or a text that readDesign refuses (our bug)
 */
export function setValue(source: string, path: string, value: number | string): string {
  const row = rowAt(path);
  const read = readOwnDesign(source);
  if (!read.ok) throw new Error(`a value is written into a sound design only; ${read.faults.map(faultText)[0]}`);
  const { mark, text } = splitByteOrderMark(source);
  const root = parseEditableMap(text);
  const style = fileStyle(text, root);
  const { isJson } = style;
  const explicit =
    path === "units" && value !== read.design.units
      ? explicitUnits(text, root, read.design, (word) => yamlWordText(word, isJson))
      : [];
  const written = yamlValueText(value, row, read.design.units, isJson);
  return mark + applyEdits(text, [...explicit, setKey(text, root, path.split("."), written, style)]);
}

export interface FileStyle {
  /** JSON wants its words and keys in quotes. */
  readonly isJson: boolean;
  readonly newline: string;
}

export const fileStyle = (text: string, root: YAMLMap): FileStyle => ({
  isJson: root.flow === true && text[startOf(root.items[0]!)] === '"',
  newline: text.includes("\r\n") ? "\r\n" : "\n",
});

/** The edit that sets what stands at a chain of keys, added where they are missing. @param value as it is to be written */
export function setKey(
  text: string,
  map: YAMLMap,
  [key = "", ...rest]: string[],
  value: string,
  style: FileStyle,
): Edit {
  const pair = pairAt(map, key);
  if (!pair) return appendKeys(text, map, [key, ...rest], value, style);
  if (isMap(pair.value)) return setKey(text, pair.value, rest, value, style);
  const scalar = pair.value as Scalar | null;
  if (rest.length === 0) return replaceScalar(text, scalar!, value);
  if (typeof scalar?.value === "string")
    return replaceScalar(text, scalar, besideShopName(text, scalar, rest, value, style));
  const behind = text.indexOf(":", keyOf(pair).range![1]) + 1; // an empty section, which may have a comment
  return insertion(behind, ` { ${flowText(rest, value, style)} }`);
}

/** Keys added behind the last of a map. */
function appendKeys(text: string, map: YAMLMap, keys: string[], value: string, style: FileStyle): Edit {
  const [first, last] = [map.items[0], map.items.at(-1)];
  if (!first || !last) {
    const start = map.range![0] + 1;
    return insertion(start, ` ${flowText(keys, value, style)}${text[start] === "}" ? " " : ""}`);
  }
  const end = text.slice(0, endOf(last)).trimEnd().length;
  if (map.flow) return insertion(end, `, ${flowText(keys, value, style)}`);
  const lineEnd = end + text.slice(end).search(/\r?\n|$/);
  const indent = " ".repeat(startOf(first) - (text.lastIndexOf("\n", startOf(first) - 1) + 1));
  const lines = keys.map((key, depth) => `${indent}${"  ".repeat(depth)}${key}:`).join(style.newline);
  return insertion(lineEnd, `${style.newline}${lines} ${value}`);
}

/** `shop: my-shop.yaml` with a value of the design's own beside it. */
function besideShopName(text: string, { range }: Scalar, keys: string[], value: string, style: FileStyle): string {
  const name = text.slice(range![0], range![1]).trimEnd();
  return `{ ${flowText(["file"], name, style)}, ${flowText(keys, value, style)} }`;
}

const insertion = (start: number, text: string): Edit => ({ start, end: start, text });

function flowText([key = "", ...rest]: string[], value: string, style: FileStyle): string {
  const name = style.isJson ? JSON.stringify(key) : key;
  return `${name}: ${rest.length > 0 ? `{ ${flowText(rest, value, style)} }` : value}`;
}

/** A value as YAML reads it back. */
export function yamlValueText(value: number | string, row: Row, units: Units, isJson: boolean): string {
  if (typeof value === "string") return yamlWordText(value, isJson);
  const number = numberText(value, row, units);
  return Number.isFinite(Number(number)) ? number : yamlWordText(number, isJson);
}

/** A number as a maker writes it in a file of these units; with its unit where it is round in the other only. */
export function numberText(value: number, row: Row, units: Units): string {
  const mm = formatDecimal(value, 6);
  if (row.kind === "number" && row.quantity === "feed" && units === "in") return `${mm} ${UNIT_OF.feed}`;
  if (row.kind !== "number" || row.quantity !== "length" || units === "mm") return mm;
  const inches = formatDecimal(fromMillimetres(value, "in"), INCH_PLACES);
  return toMillimetres(Number(inches), "in") === Number(mm) ? inches : `${mm} mm`;
}

/** Plain where YAML reads it back as the same word, also between braces. */
function yamlWordText(word: string, isJson: boolean): string {
  const isPlain = !isJson && /^[\w.][\w./-]*( [\w./-]+)*$/.test(word) && parse(word) === word;
  return isPlain ? word : JSON.stringify(word);
}
