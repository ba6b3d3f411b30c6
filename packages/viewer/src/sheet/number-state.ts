// What a number on the sheet holds, and what typing or stepping makes of it. Plain data, no element.

import type { NumberRow } from "@lamplane/parameters/table";
import { formatValue, type LengthStyle } from "@lamplane/parameters/units";
import type { ChangeValue } from "../protocol/sheet-data.ts";
import { formatOnDrawing, limitsText, parseInput, stepSize, stepValue } from "../state/format.ts";
import { NUMBER } from "../words/page.ts";

export interface NumberState {
  readonly value: number;
  /** What stands in the design: a number or `auto`. */
  readonly planned: ChangeValue | undefined;
  readonly style: LengthStyle;
  readonly unit: string;
  /** Fixed by a step that is done: shown, not to be changed. */
  readonly isLocked?: boolean;
  /** Not measured yet: the blank stays empty, and a first step begins at the value expected. */
  readonly isVoid?: boolean;
}

/** What a typed text means for a number. */
export type TypedInput =
  | { readonly kind: "unchanged" }
  | { readonly kind: "auto" }
  /** A measured value is taken back. */
  | { readonly kind: "blank" }
  | { readonly kind: "value"; readonly value: number }
  /** No value here, and why. */
  | { readonly kind: "fault"; readonly message: string };

/** Text in the box. */
export const inputText = ({ value, unit, style, isVoid }: NumberState): string =>
  isVoid ? "" : formatOnDrawing(value, unit, style);

export function parseTyped(typed: string, row: NumberRow, state: NumberState): TypedInput {
  const text = typed.trim();
  if (text === inputText(state)) return { kind: "unchanged" };
  if (text === "" && row.unset === true) return { kind: "blank" };
  if (text === "auto" && row.auto !== undefined) return { kind: "auto" };
  const reading = parseInput(text, row, state.style);
  if ("fault" in reading) return { kind: "fault", message: reading.fault };
  if (reading.value < row.min || reading.value > row.max)
    return { kind: "fault", message: NUMBER.allowed(limitsText(row, state.style)) };
  return { kind: "value", value: reading.value };
}

/** The number some steps on. */
export function stepState(state: NumberState, steps: number, row: NumberRow): NumberState {
  const value = stepValue(state.value, steps, row, state.style);
  return { ...state, value, planned: value, isVoid: false };
}

/** What is drawn, with a value in it that is newer than the drawing. */
export const withNewerValue = (drawn: NumberState, { value, planned }: NumberState): NumberState => ({
  ...drawn,
  value,
  planned,
  isVoid: false,
});

/** Whether two states show and say the same, whatever design each comes from. */
export const isSameState = (a: NumberState, b: NumberState): boolean =>
  a.value === b.value &&
  a.planned === b.planned &&
  a.unit === b.unit &&
  a.isLocked === b.isLocked &&
  a.isVoid === b.isVoid &&
  a.style.units === b.style.units &&
  a.style.shop.smallestFraction === b.style.shop.smallestFraction &&
  a.style.shop.bothUnits === b.style.shop.bothUnits;

/** The value without the digits that only solving gave it, mm or degrees. */
export const roundValue = (value: number): number => Math.round(value * 1000) / 1000;

/** What a screen reader says of the number. */
export function numberAria(state: NumberState, row: NumberRow): Readonly<Record<string, string | number | undefined>> {
  const { value, unit, style, planned, isVoid } = state;
  const shown = `${formatValue(value, unit, style)}${planned === "auto" ? ", auto" : ""}`;
  return {
    "aria-valuenow": isVoid ? undefined : roundValue(value),
    "aria-valuetext": isVoid ? NUMBER.notMeasured : shown,
    "aria-description": NUMBER.help({
      help: row.help,
      limits: limitsText(row, style),
      step: formatValue(stepSize(row, style), unit, style),
    }),
  };
}
