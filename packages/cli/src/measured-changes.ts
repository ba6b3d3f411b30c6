// What is typed behind `lamplane measured`: KEY=VALUE writes a value, KEY= takes it back; each becomes an edit of the file's text.
import { isMeasuredKey } from "@lamplane/bench";
import { nearNames, removeValue, setValue } from "@lamplane/parameters/design";
import { type Design, TABLE } from "@lamplane/parameters/table";
import { parseNumber } from "@lamplane/parameters/units";
import { InputRefused } from "./io.ts";
import { ARGUMENT_FAULT } from "./words/commands.ts";
import { MEASURED } from "./words/measured.ts";

type RowKey = keyof typeof TABLE.measured;

export interface MeasuredChange {
  readonly key: RowKey;
  /** As it was typed; empty where the value is taken back. */
  readonly text: string;
}

/** @throws InputRefused where it is no KEY=VALUE, or nothing of that name is measured */
export function parseChange(typed: string): MeasuredChange {
  const [, key, text] = /^(?:measured\.)?([^=.]+)=(.*)$/s.exec(typed) ?? [];
  if (key === undefined || text === undefined) throw new InputRefused(MEASURED.keyValue({ typed }));
  if (key === "done" || isMeasuredKey(key)) return { key, text: text.trim() };
  const known = Object.keys(TABLE.measured);
  throw new InputRefused(ARGUMENT_FAULT.unknownMeasured({ name: key, near: nearNames(key, known), known }));
}

export const isTakenBack = ({ text }: MeasuredChange): boolean => text === "";

/** The file's text with the change made. @throws InputRefused where the value is no number, or there is none to take back */
export function applyChange(text: string, design: Design, change: MeasuredChange): string {
  const { key, text: typed } = change;
  const path = `measured.${key}`;
  if (isTakenBack(change)) {
    const without = removeValue(text, path);
    if (without === text) throw new InputRefused(MEASURED.noSuchValue({ key }));
    return without;
  }
  const row = TABLE.measured[key];
  if (row.kind === "choice") return setValue(text, path, typed);
  const read = parseNumber(typed, row.quantity, design.units);
  if ("fault" in read) throw new InputRefused(MEASURED.notNumber({ key, typed, fault: read.fault }));
  return setValue(text, path, read.value);
}
