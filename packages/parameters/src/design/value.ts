// One given value against its row: the value, or what to write instead.
import type { NumberRow, Row, TextRow } from "../parameter.ts";
import { UNIT_OF } from "../parameter.ts";
import { inMillimetres, limitText, readNumberText, trimmed, type Units } from "../units.ts";
import { type Given, shown } from "./given.ts";
import { hasHidden } from "./source.ts";
import { nearest } from "./suggest.ts";

export type Value = number | string;
export type Understood = { readonly value: Value } | { readonly fault: string };

/** @param units unit of a length that carries none */
export function understood(given: Given, row: Row, units: Units): Understood {
  if (given.kind === "nothing")
    return { fault: `no value is given; write ${allowed(row, units)}, or leave the key out` };
  if (given.kind === "map" || given.kind === "other") {
    const read = given.kind === "map" ? "a group of keys" : given.words;
    return { fault: `read ${read}; write ${allowed(row, units)}` };
  }
  if (row.kind === "number") return numberOf(given, row, units);
  if (given.kind !== "text" || given.bare === "number") {
    const read = given.kind === "text" ? given.text : String(given.kind === "number" ? given.value : "");
    const quoted = row.kind === "text" ? `; if ${shown(read)} is meant, put it in quotes` : "";
    return { fault: `read the number ${shown(read)}; write ${allowed(row, units)}${quoted}` };
  }
  return row.kind === "text" ? textOf(given.text, row) : choiceOf(given.text, row.choices);
}

/** What may stand in a row, in words. */
export function allowed(row: Row, units: Units): string {
  if (row.kind === "choice") return row.choices.join(", ");
  if (row.kind === "text")
    return `text of up to ${row.maxLength} characters${row.pattern ? `: ${row.pattern.words}` : ""}`;
  return `${numberIn(row.min, row, units)} to ${numberIn(row.max, row, units)}${row.auto ? ", or auto" : ""}`;
}

function numberIn(value: number, row: NumberRow, units: Units): string {
  if (row.quantity === "length") return limitText(value, units);
  const unit = UNIT_OF[row.quantity];
  return `${trimmed(value, 4)}${unit === "" || unit === "°" ? unit : ` ${unit}`}`;
}

function numberOf(given: Given, row: NumberRow, units: Units): Understood {
  if (given.kind === "number") return withinLimits(given.value, String(given.value), row, units);
  const text = given.kind === "text" ? given.text : "";
  if (text === "auto" && row.auto !== undefined) return { value: "auto" };
  if (text === "auto") return { fault: `nothing solves this one, so auto is no value; write ${allowed(row, units)}` };
  const reading = readNumberText(text, row.quantity, units);
  if ("fault" in reading) return { fault: `read "${shown(text)}": ${reading.fault}` };
  return withinLimits(reading.value, text, row, units);
}

function withinLimits(given: number, read: string, row: NumberRow, units: Units): Understood {
  if (!Number.isFinite(given))
    return { fault: `read ${read}, which is no finite number; write ${allowed(row, units)}` };
  const value = row.quantity === "length" ? inMillimetres(given, "mm") : given;
  if (value < row.min || value > row.max) {
    const inside = row.quantity === "length" && units === "in" ? `, which is ${limitText(value, units)}` : "";
    return { fault: `read ${shown(read)}${inside}; allowed is ${allowed(row, units)}` };
  }
  if (row.quantity === "count" && !Number.isInteger(value))
    return { fault: `read ${shown(read)}; write a whole number` };
  return { value: value + 0 };
}

function textOf(text: string, row: TextRow): Understood {
  if (hasHidden(text)) return { fault: "the text holds a character that does not show; delete it" };
  if (text.trim() === "") return { fault: "the text is empty; write some, or leave the key out" };
  if (text.length > row.maxLength)
    return { fault: `the text has ${text.length} characters; allowed are ${row.maxLength}` };
  if (row.pattern && !row.pattern.regex.test(text))
    return { fault: `read "${shown(text)}"; write ${row.pattern.words}` };
  return { value: text };
}

function choiceOf(text: string, choices: readonly string[]): Understood {
  if (choices.includes(text)) return { value: text };
  const near = nearest(text, choices);
  const hint = near === undefined ? "" : `; did you mean ${near}?`;
  return { fault: `read "${shown(text)}"; write one of ${choices.join(", ")}${hint}` };
}
