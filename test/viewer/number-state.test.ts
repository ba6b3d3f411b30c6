// What typing and stepping make of a number, without a page: expectations are worked from the table's row.
import { rowAt } from "@lamplane/parameters/design";
import type { NumberRow } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import {
  inputText,
  type NumberState,
  numberAria,
  parseTyped,
  stepState,
  withNewerValue,
} from "../../packages/viewer/src/sheet/number-state.ts";

const style = { units: "mm", shop: { smallestFraction: "1/64", bothUnits: "no" } } as const;
const numberRow = (path: string) => rowAt(path) as NumberRow;
const [bed, pin, measured] = ["bed.angle", "pin.height", "measured.ironThickness"].map(numberRow) as [
  NumberRow,
  NumberRow,
  NumberRow,
];
const angle: NumberState = { value: 47, planned: 47, style, unit: "°" };
const height: NumberState = { value: 31.25, planned: "auto", style, unit: "mm" };

describe("a typed text", () => {
  test.each([
    ["what stands there already", bed, "47°", angle, { kind: "unchanged" }],
    ["another value, with spaces round it", bed, " 50 ", angle, { kind: "value", value: 50 }],
    ["auto where the row has one", pin, "auto", { ...height, planned: 30 }, { kind: "auto" }],
    ["nothing where a value may be taken back", measured, "", { ...height, planned: 31.25 }, { kind: "blank" }],
    ["nothing in a blank that is empty", measured, "", { ...height, isVoid: true }, { kind: "unchanged" }],
  ] as const)("%s", (_, row, text, state, expected) => expect(parseTyped(text, row, state)).toEqual(expected));
  test.each([
    ["auto where the row has none", bed, "auto"],
    ["nothing where a value must stand", bed, ""],
    ["more than the row allows", bed, String(bed.max + 1)],
  ] as const)("%s is a fault", (_, row, text) => expect(parseTyped(text, row, angle).kind).toBe("fault"));
});

describe("a step", () => {
  test("is the row's, keeps to its limits and makes a planned number of auto", () => {
    expect(stepState(angle, 3, bed).value).toBeCloseTo(47 + 3 * bed.step, 9);
    expect(stepState(angle, 1e6, bed).value).toBe(bed.max);
    expect(stepState({ ...height, isVoid: true }, 1, pin)).toMatchObject({ planned: 31.25 + pin.step, isVoid: false });
  });
  test("that the drawing does not hold yet stays over what is drawn, also as what is planned", () => {
    const ahead = stepState(height, 2, pin);
    const shown = withNewerValue({ ...height, isLocked: false }, ahead);
    expect(shown).toEqual({ ...height, isLocked: false, isVoid: false, value: ahead.value, planned: ahead.value });
    expect(numberAria(shown, pin)["aria-valuetext"]).not.toContain("auto");
    expect(numberAria(height, pin)["aria-valuetext"]).toContain(", auto");
  });
});

test("a blank that is not filled is empty and says so", () => {
  const blank = { ...height, isVoid: true };
  expect(inputText(blank)).toBe("");
  expect(numberAria(blank, measured)).toMatchObject({
    "aria-valuenow": undefined,
    "aria-valuetext": "not measured yet",
  });
});
