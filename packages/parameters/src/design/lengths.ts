// Lengths in a row as a maker writes them, as a design holds them, and as numbers.
import type { LengthsRow } from "../parameter.ts";
import { formatDecimal, formatLength, type LengthStyle, parseLength, type Units } from "../units.ts";
import { VALUE_KINDS } from "../words/design-faults.ts";
import type { DesignNode } from "./design-nodes.ts";
import type { ValueDetail } from "./fault.ts";

type Decoded = { readonly value: string } | { readonly fault: ValueDetail };

/** A list of lengths, or text with a plus or comma between them. @param units unit of a length that carries none */
export function decodeLengths(node: DesignNode, row: LengthsRow, units: Units): Decoded {
  if (node.kind === "map" || node.kind === "other")
    return { fault: { code: "not-a-value", what: node.kind === "map" ? VALUE_KINDS.map : node.words } };
  const items = node.kind === "list" ? node.items.map(itemText) : splitItems(itemText(node) ?? "");
  if (items.length === 1 && row.words.includes(items[0] ?? "")) return { value: items[0]! };
  if (items.length === 0) return { fault: { code: "no-value" } };
  if (items.length > row.most) return { fault: { code: "too-many-lengths", count: items.length } };
  if (items.length === 1 && !/\d/.test(items[0] ?? ""))
    return { fault: { code: "unknown-choice", read: items[0] ?? "" } };
  const values: number[] = [];
  for (const item of items) {
    if (item === undefined) return { fault: { code: "not-a-value", what: VALUE_KINDS.innerList } };
    const reading = parseLength(item, units);
    if ("fault" in reading) return { fault: { code: "not-a-number", read: item, reason: reading.fault } };
    const { value } = reading;
    if (value < row.min || value > row.max) return { fault: { code: "out-of-limits", read: item, value } };
    values.push(value);
  }
  return { value: lengthsText(values) };
}

/** Undefined for what is no single value. */
const itemText = (node: DesignNode): string | undefined =>
  node.kind === "text" ? node.text : node.kind === "number" ? String(node.value) : undefined;

const splitItems = (text: string): string[] =>
  text
    .replace(/^\s*\[|\]\s*$/g, "")
    .split(/\+|,\s+/)
    .map((item) => item.trim());

/** Lengths as a design holds them. @param values mm */
export const lengthsText = (values: readonly number[]): string =>
  values.map((value) => `${formatDecimal(value, 6)} mm`).join(" + ");

/** Lengths that a design holds, mm; undefined where it holds a word. */
export function parseLengths(text: string): number[] | undefined {
  const values = text.split("+").map((item) => Number.parseFloat(item));
  return values.some(Number.isNaN) ? undefined : values;
}

/** Lengths as a maker reads them, "17.3 mm + 15 mm + 17.3 mm"; a word as it stands. */
export const formatLengths = (text: string, style: LengthStyle): string =>
  parseLengths(text)
    ?.map((value) => formatLength(value, style))
    .join(" + ") ?? text;

/** Lengths typed outside a file. @param units unit of a length that carries none */
export const readLengths = (text: string, row: LengthsRow, units: Units): Decoded =>
  decodeLengths({ kind: "text", at: { line: 0, column: 0 }, text }, row, units);
