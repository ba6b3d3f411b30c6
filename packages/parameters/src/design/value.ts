// One given value against its row: the value, or what to write instead.
import type { NumberRow, Row, TextRow } from "../parameter.ts";
import { UNIT_OF } from "../parameter.ts";
import { formatLimit, formatQuantity, parseNumber, toMillimetres, type Units } from "../units.ts";
import { type RawNode, sanitizeForMessage } from "./raw-node.ts";
import { hasHidden } from "./source.ts";
import { nearestWord } from "./suggest.ts";

export type ParameterValue = number | string;
export type DecodedValue = { readonly value: ParameterValue } | { readonly fault: string };

/** @param units unit of a length that carries none */
export function decodeValue(node: RawNode, row: Row, units: Units): DecodedValue {
  if (node.kind === "nothing")
    return { fault: `no value is given; write ${allowedText(row, units)}, or leave the key out` };
  if (node.kind === "map" || node.kind === "other") {
    const read = node.kind === "map" ? "a group of keys" : node.words;
    return { fault: `read ${read}; write ${allowedText(row, units)}` };
  }
  if (row.kind === "number") return decodeNumber(node, row, units);
  if (node.kind !== "text" || node.bare === "number") {
    const read = node.kind === "text" ? node.text : String(node.kind === "number" ? node.value : "");
    const quoted = row.kind === "text" ? `; if ${sanitizeForMessage(read)} is meant, put it in quotes` : "";
    return { fault: `read the number ${sanitizeForMessage(read)}; write ${allowedText(row, units)}${quoted}` };
  }
  return row.kind === "text" ? decodeText(node.text, row) : decodeChoice(node.text, row.choices);
}

/** What may stand in a row, in words. */
export function allowedText(row: Row, units: Units): string {
  if (row.kind === "choice") return row.choices.join(", ");
  if (row.kind === "text")
    return `text of up to ${row.maxLength} characters${row.pattern ? `: ${row.pattern.words}` : ""}`;
  return `${limitValueText(row.min, row, units)} to ${limitValueText(row.max, row, units)}${row.auto ? ", or auto" : ""}`;
}

function limitValueText(value: number, row: NumberRow, units: Units): string {
  if (row.quantity === "length") return formatLimit(value, units);
  const unit = UNIT_OF[row.quantity];
  return formatQuantity(value, unit, 4);
}

function decodeNumber(node: RawNode, row: NumberRow, units: Units): DecodedValue {
  if (node.kind === "number") return checkLimits(node.value, String(node.value), row, units);
  const text = node.kind === "text" ? node.text : "";
  if (text === "auto" && row.auto !== undefined) return { value: "auto" };
  if (text === "auto")
    return { fault: `nothing solves this one, so auto is no value; write ${allowedText(row, units)}` };
  const reading = parseNumber(text, row.quantity, units);
  if ("fault" in reading) return { fault: `read "${sanitizeForMessage(text)}": ${reading.fault}` };
  return checkLimits(reading.value, text, row, units);
}

function checkLimits(number: number, read: string, row: NumberRow, units: Units): DecodedValue {
  if (!Number.isFinite(number))
    return { fault: `read ${read}, which is no finite number; write ${allowedText(row, units)}` };
  const value = row.quantity === "length" ? toMillimetres(number, "mm") : number;
  if (value < row.min || value > row.max) {
    const inside = row.quantity === "length" && units === "in" ? `, which is ${formatLimit(value, units)}` : "";
    return { fault: `read ${sanitizeForMessage(read)}${inside}; allowed is ${allowedText(row, units)}` };
  }
  if (row.quantity === "count" && !Number.isInteger(value))
    return { fault: `read ${sanitizeForMessage(read)}; write a whole number` };
  return { value: value + 0 };
}

function decodeText(text: string, row: TextRow): DecodedValue {
  if (hasHidden(text)) return { fault: "the text holds a character that does not show; delete it" };
  if (text.trim() === "") return { fault: "the text is empty; write some, or leave the key out" };
  if (text.length > row.maxLength)
    return { fault: `the text has ${text.length} characters; allowed are ${row.maxLength}` };
  if (row.pattern && !row.pattern.regex.test(text))
    return { fault: `read "${sanitizeForMessage(text)}"; write ${row.pattern.words}` };
  return { value: text };
}

function decodeChoice(text: string, choices: readonly string[]): DecodedValue {
  if (choices.includes(text)) return { value: text };
  const near = nearestWord(text, choices);
  const hint = near === undefined ? "" : `; did you mean ${near}?`;
  return { fault: `read "${sanitizeForMessage(text)}"; write one of ${choices.join(", ")}${hint}` };
}
