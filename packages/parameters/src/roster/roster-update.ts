// A plane's values written into its row of the roster. Every other byte stays as it was.
import { isMap, isSeq, type Pair, type YAMLMap } from "yaml";
import { rowAt } from "../design/path.ts";
import type { ParameterValue } from "../design/value.ts";
import { removeKey } from "../design/value-removal.ts";
import { fileStyle, numberText, setKey, yamlValueText } from "../design/value-update.ts";
import type { Units } from "../units.ts";
import { keyOf, pairAt, parseEditableMap, splitByteOrderMark } from "../yaml/editable-map.ts";
import { applyEdits, type Edit } from "../yaml/edits.ts";
import { type CsvCell, csvCells } from "./csv-cells.ts";
import { columnOf, headOf, isTableFile } from "./csv-columns.ts";

/** Undefined takes the value out of the row, so that the base's holds. */
export type RosterChange = readonly [path: string, value: ParameterValue | undefined];

interface RosterUpdate {
  /** The roster's name, which tells a table from YAML. */
  readonly file: string;
  /** Of the row among the planes, from 0. */
  readonly row: number;
  readonly changes: readonly RosterChange[];
  /** The base design's, in which bare lengths are read. */
  readonly units: Units;
}

/** @param source a roster that parseRoster takes. @throws Error for a path that the table does not have (our bug) */
export function setRosterValues(source: string, { file, row, changes, units }: RosterUpdate): string {
  const { mark, text } = splitByteOrderMark(source);
  const set = isTableFile(file) ? setCell : setPlaneKey;
  return mark + changes.reduce((now, change) => set(now, row, change, units), text);
}

function setPlaneKey(text: string, row: number, [path, value]: RosterChange, units: Units): string {
  const root = parseEditableMap(text);
  const planes = pairAt(root, "planes")!.value;
  const plane = (isSeq(planes) ? planes.items[row] : undefined) as YAMLMap;
  const { map, keys } = placeOf(plane, path);
  if (value === undefined) return applyEdits(text, removeKey(text, map, keys));
  const style = fileStyle(text, root);
  return applyEdits(text, [setKey(text, map, keys, yamlValueText(value, rowAt(path), units, style.isJson), style)]);
}

/** Where a path stands in a row or belongs: keys may be nested as in a design, or dotted. */
function placeOf(map: YAMLMap, path: string): { map: YAMLMap; keys: string[] } {
  const nameOf = (pair: Pair) => String(keyOf(pair).value);
  if (map.items.some((pair) => nameOf(pair) === path)) return { map, keys: [path] };
  for (const pair of map.items)
    if (isMap(pair.value) && path.startsWith(`${nameOf(pair)}.`)) {
      const inner = placeOf(pair.value, path.slice(nameOf(pair).length + 1));
      if (inner.map.items.some((each) => nameOf(each) === inner.keys[0])) return inner;
    }
  return { map, keys: path.split(".") };
}

function setCell(text: string, row: number, [path, value]: RosterChange, units: Units): string {
  const { rows, separator } = csvCells(text);
  const [head = [], ...body] = rows;
  const cells = body[row]!;
  const column = head.findIndex((cell) => columnOf(cell.text).path === path);
  if (value === undefined)
    return column < 0 || !cells[column] ? text : applyEdits(text, [replaceCell(text, cells[column], "")]);
  const unit = column < 0 ? undefined : columnOf(head[column]!.text).unit;
  const written = cellText(value, path, { separator, unit, units });
  if (cells[column]) return applyEdits(text, [replaceCell(text, cells[column], written)]);
  const at = column < 0 ? head.length : column;
  const added = `${separator.repeat(at - cells.length + 1)}${written}`;
  const names = head.map(({ text: own }) => own);
  return applyEdits(text, [
    ...(column < 0 ? [behind(head, `${separator}${headOf(path, names)}`)] : []),
    behind(cells, added),
  ]);
}

/** Spaces round what stood in the cell stay. */
function replaceCell(text: string, { start, end }: CsvCell, by: string): Edit {
  const cell = text.slice(start, end);
  const first = start + cell.length - cell.trimStart().length;
  return { start: first, end: Math.max(first, start + cell.trimEnd().length), text: by };
}

const behind = (cells: readonly CsvCell[], text: string): Edit => {
  const { end } = cells.at(-1)!;
  return { start: end, end, text };
};

interface CellStyle {
  readonly separator: string;
  /** Of the column's bare lengths. */
  readonly unit: string | undefined;
  readonly units: Units;
}

/** In a table of semicolons decimals have a comma. */
function cellText(value: ParameterValue, path: string, style: CellStyle): string {
  const plain = typeof value === "string" ? value : quantityText(value, path, style);
  const text = style.separator === ";" && typeof value === "number" ? plain.replace(".", ",") : plain;
  return /["\r\n]/.test(text) || text.includes(style.separator) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** A unit that is neither of a design's is not reckoned in: the length brings its own. */
function quantityText(value: number, path: string, { unit, units }: CellStyle): string {
  const text = numberText(value, rowAt(path), unit === "in" || unit === "mm" ? unit : units);
  return unit === "cm" ? `${numberText(value, rowAt(path), "mm")} mm` : text;
}
