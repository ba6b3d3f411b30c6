// One value written into a maker's file. Every other byte stays as it was: comments, spacing, order.
import { isMap, type Pair, parse, parseDocument, type Scalar, type YAMLMap } from "yaml";
import type { Row } from "../table/index.ts";
import { formatDecimal, fromMillimetres, toMillimetres, type Units } from "../units.ts";
import { makeUnitsExplicit } from "./explicit-units.ts";
import { rowAt } from "./path.ts";
import { readDesign } from "./read.ts";
import { PARSE_OPTIONS } from "./yaml-nodes.ts";

const INCH_PLACES = 4; // decimals of an inch that a maker would still write; a length that needs more is written in mm

/**
 * The text with one value set, its key and section added where they are missing. Whether the value is allowed is said by
 * reading the result. Where the file's unit is set to the other, every length that has none of its own is told in the old
 * one, and stays as long as it was.
 * @param source a design that readDesign takes
 * @param value mm, degrees or a word, as in a design
 * @throws Error for a path that the table does not have, or a text that readDesign refuses (our bug)
 */
export function setValue(source: string, path: string, value: number | string): string {
  const row = rowAt(path);
  const read = readDesign(source, "");
  if (!read.ok) throw new Error(`a value is written into a sound design only; ${read.faults[0]?.message}`);
  const bom = source.startsWith("\ufeff") ? "\ufeff" : "";
  const text = source.slice(bom.length);
  const root = parseRoot(text);
  const isJson = root.flow === true && text[keyOf(root.items[0]).range![0]] === '"';
  if (path === "units" && value !== read.design.units) {
    const told = makeUnitsExplicit(text, root, read.design.units, (word) => yamlWordText(word, isJson));
    if (told !== text) return setValue(bom + told, path, value);
  }
  const style = { isJson, newline: text.includes("\r\n") ? "\r\n" : "\n" };
  return bom + setKey(text, root, path.split("."), yamlValueText(value, row, read.design.units, isJson), style);
}

const parseRoot = (text: string): YAMLMap => parseDocument(text, PARSE_OPTIONS).contents as YAMLMap;

interface FileStyle {
  /** JSON wants its words and keys in quotes. */
  readonly isJson: boolean;
  readonly newline: string;
}

function setKey(text: string, map: YAMLMap, [key = "", ...rest]: string[], value: string, style: FileStyle): string {
  const pair = map.items.find((item) => keyOf(item).value === key);
  if (!pair) return appendKeys(text, map, [key, ...rest], value, style);
  if (isMap(pair.value)) return setKey(text, pair.value, rest, value, style);
  if (rest.length > 0) {
    const behind = text.indexOf(":", keyOf(pair).range![1]) + 1; // an empty section, which may have a comment
    return `${text.slice(0, behind)} { ${flowText(rest, value, style)} }${text.slice(behind)}`;
  }
  const [start, end] = (pair.value as Scalar).range!;
  const lineEnd = /\r?\n$/.exec(text.slice(start, end))?.[0] ?? ""; // a block of text owns its last line end
  return `${text.slice(0, start)}${value}${lineEnd}${text.slice(end)}`;
}

/** The text with keys added behind the last of a map. */
function appendKeys(text: string, map: YAMLMap, keys: string[], value: string, style: FileStyle): string {
  const last = map.items.at(-1);
  if (!last) {
    const start = map.range![0] + 1;
    const gap = text[start] === "}" ? " " : "";
    return `${text.slice(0, start)} ${flowText(keys, value, style)}${gap}${text.slice(start)}`;
  }
  const end = text.slice(0, endOf(last)).trimEnd().length;
  if (map.flow) return `${text.slice(0, end)}, ${flowText(keys, value, style)}${text.slice(end)}`;
  const lineEnd = end + text.slice(end).search(/\r?\n|$/);
  const first = keyOf(map.items[0]).range![0];
  const indent = " ".repeat(first - (text.lastIndexOf("\n", first - 1) + 1));
  const lines = keys.map((key, depth) => `${indent}${"  ".repeat(depth)}${key}:`).join(style.newline);
  return `${text.slice(0, lineEnd)}${style.newline}${lines} ${value}${text.slice(lineEnd)}`;
}

function flowText([key = "", ...rest]: string[], value: string, style: FileStyle): string {
  const name = style.isJson ? JSON.stringify(key) : key;
  return `${name}: ${rest.length > 0 ? `{ ${flowText(rest, value, style)} }` : value}`;
}

const keyOf = (pair: Pair | undefined): Scalar => pair!.key as Scalar;
const endOf = (pair: Pair): number => ((pair.value as Scalar | null)?.range ?? keyOf(pair).range)![1];

function yamlValueText(value: number | string, row: Row, units: Units, isJson: boolean): string {
  if (typeof value === "string") return yamlWordText(value, isJson);
  if (row.kind !== "number" || row.quantity !== "length" || units === "mm") return formatDecimal(value, 6);
  const inches = formatDecimal(fromMillimetres(value, "in"), INCH_PLACES);
  const mm = formatDecimal(value, 6);
  return toMillimetres(Number(inches), "in") === Number(mm) ? inches : yamlWordText(`${mm} mm`, isJson);
}

/** Plain where YAML reads it back as the same word, also between braces. */
function yamlWordText(word: string, isJson: boolean): string {
  const isPlain = !isJson && /^[\w.][\w./-]*( [\w./-]+)*$/.test(word) && parse(word) === word;
  return isPlain ? word : JSON.stringify(word);
}
