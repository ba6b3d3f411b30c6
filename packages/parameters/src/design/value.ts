// One value as read against its row: what it means, or what is wrong with it.
import type { ChoiceRow, NumberRow, Row, TextRow } from "../parameter.ts";
import { parseNumber, toMillimetres, type Units } from "../units.ts";
import { VALUE_KINDS } from "../words/design-faults.ts";
import { hasHidden } from "../yaml/source.ts";
import type { DesignNode } from "./design-nodes.ts";
import type { ValueDetail } from "./fault.ts";
import { decodeLengths } from "./lengths.ts";

export type ParameterValue = number | string;
export type DecodedValue = { readonly value: ParameterValue } | { readonly fault: ValueDetail };

/** @param units unit of a length that carries none */
export function decodeValue(node: DesignNode, row: Row, units: Units): DecodedValue {
  if (node.kind === "nothing") return { fault: { code: "no-value" } };
  if (row.kind === "lengths") return decodeLengths(node, row, units);
  if (node.kind === "map") return { fault: { code: "not-a-value", what: VALUE_KINDS.map } };
  if (node.kind === "list") return { fault: { code: "not-a-value", what: VALUE_KINDS.list } };
  if (node.kind === "other") return { fault: { code: "not-a-value", what: node.words } };
  if (row.kind === "number") return decodeNumber(node, row, units);
  if (node.kind !== "text" || node.bare === "number") {
    const read = node.kind === "text" ? node.text : String(node.kind === "number" ? node.value : "");
    return { fault: { code: "number-for-text", read } };
  }
  return row.kind === "text" ? decodeText(node.text, row) : decodeChoice(node.text, row);
}

function decodeNumber(node: DesignNode, row: NumberRow, units: Units): DecodedValue {
  if (node.kind === "number") return checkLimits(node.value, String(node.value), row);
  const text = node.kind === "text" ? node.text : "";
  if (text === "auto" && row.auto !== undefined) return { value: "auto" };
  if (text === "auto") return { fault: { code: "nothing-solves" } };
  const reading = parseNumber(text, row.quantity, units);
  if ("fault" in reading) return { fault: { code: "not-a-number", read: text, reason: reading.fault } };
  return checkLimits(reading.value, text, row);
}

function checkLimits(number: number, read: string, row: NumberRow): DecodedValue {
  if (!Number.isFinite(number)) return { fault: { code: "not-finite", read } };
  const value = row.quantity === "length" ? toMillimetres(number, "mm") : number;
  if (value < row.min || value > row.max) return { fault: { code: "out-of-limits", read, value } };
  if (row.quantity === "count" && !Number.isInteger(value)) return { fault: { code: "not-whole", read } };
  return { value: value + 0 };
}

function decodeText(text: string, row: TextRow): DecodedValue {
  if (hasHidden(text)) return { fault: { code: "hidden-in-text" } };
  if (text.trim() === "") return { fault: { code: "empty-text" } };
  if (text.length > row.maxLength) return { fault: { code: "text-too-long", length: text.length } };
  if (row.pattern && !row.pattern.regex.test(text)) return { fault: { code: "text-not-of-pattern", read: text } };
  return { value: text };
}

function decodeChoice(text: string, { choices, oldChoices = {} }: ChoiceRow): DecodedValue {
  const value = Object.hasOwn(oldChoices, text) ? oldChoices[text]! : text;
  return choices.includes(value) ? { value } : { fault: { code: "unknown-choice", read: text } };
}
