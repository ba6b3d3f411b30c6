// The day at the machines against each plane's own figures: every plane stands once at each set-up that is still before it, and what
// a class shares is a number that every plane can take.

import { checkWithoutCures } from "@lamplane/bench/checks";
import { type Elevation, elevation, figureValue } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import {
  MOST_SIDE_PLAY,
  machineSetups,
  SETUP_KEYS,
  type SetupKey,
  setupLines,
  shareSetups,
} from "../../../packages/bench/src/class/index.ts";
import { SHARED_WORDS } from "../../../packages/bench/src/words/class.ts";
import { type Changes, designWith, WORKED } from "../../support/designs.ts";
import { expectLength } from "../../support/figures-in-text.ts";

const EACH: readonly Changes[] = [
  {},
  { "iron.width": 50.8 },
  { "iron.width": 44.3, "bed.angle": 50 },
  { "capIron.thickness": 0 },
  { "wedge.angle": 7, "pin.diameter": 11 },
  { "iron.width": 48.4, "body.trim": 40 },
];
const FREE: Changes = { "ramp.angle": "auto", "pin.height": "auto", "body.sideClearance": 1.6 };
const CLASS: readonly Design[] = EACH.map((changes) => designWith({ ...WORKED, ...FREE, ...changes }));

/** What a set-up is set to, by the words of geometry: the plane's figures and measures, none worked out anew. */
const SETTING: Readonly<Record<SetupKey, (plane: Elevation) => number | undefined>> = {
  blankLength: (plane) => figureValue(plane, "blankLength"),
  blankHeight: ({ design }) => design.body.height + design.sole.allowance,
  cheek: ({ design }) => design.body.cheek,
  coreWidth: (plane) => figureValue(plane, "coreWidth"),
  sawRamp: ({ ramp }) => 90 - ramp.angle,
  sawBed: ({ design }) => 90 - design.bed.angle,
  recessDepth: ({ recess }) => recess?.depth,
  pinHole: ({ pinSize, design }) => pinSize.tenon + design.pin.tenonClearance,
  pinHeight: ({ pin, design }) => pin.centre.y + design.sole.allowance,
  wedgeAngle: ({ design }) => design.wedge.angle,
};

describe("machine set-ups of a class", () => {
  const setups = machineSetups(CLASS);

  test("come in the order of the work, each with every plane that has such a cut, once", () => {
    expect(setups.map(({ key }) => key)).toEqual(SETUP_KEYS);
    for (const { key, settings } of setups) {
      const has = CLASS.flatMap((design, i) => (SETTING[key](elevation(design)) === undefined ? [] : [i]));
      expect(
        settings.flatMap(({ planes }) => planes).toSorted((a, b) => a - b),
        key,
      ).toEqual(has);
    }
  });
  test("are set to each plane's own number to a hundredth, the setting for most planes first, and no number twice", () => {
    for (const { key, unit, settings } of setups) {
      expect(unit).toBe(key === "sawRamp" || key === "sawBed" || key === "wedgeAngle" ? "°" : "mm");
      for (const { value, planes } of settings)
        for (const plane of planes)
          expect(Math.abs(value - SETTING[key](elevation(CLASS[plane]!))!), key).toBeLessThanOrEqual(0.005 + 1e-9);
      expect(new Set(settings.map(({ value }) => value)).size).toBe(settings.length);
      for (const [i, { value, planes }] of settings.slice(1).entries()) {
        const before = settings[i]!;
        expect(before.planes.length).toBeGreaterThanOrEqual(planes.length);
        if (before.planes.length === planes.length) expect(before.value).toBeLessThan(value);
      }
    }
  });
  test("have a place of its own on each plane for both cuts and the pin's hole, from the toe end before it is trimmed", () => {
    for (const { key, places } of setups) {
      const column = { sawRamp: "rampMark", sawBed: "bedMark", pinHeight: "pinFromToe" }[key as string];
      expect(places?.column).toBe(column);
      for (const [plane, at] of places?.values ?? []) {
        const own = elevation(CLASS[plane]!);
        const wanted =
          column === "pinFromToe"
            ? own.pin.centre.x + own.design.body.trim / 2
            : figureValue(own, column as "rampMark");
        expect(at).toBeCloseTo(wanted!, 9);
      }
      if (places) expect(places.values.size).toBe(CLASS.length);
    }
  });
  test("leave out planes that are past the step, and what no plane has before it any more", () => {
    const done = (at: string) =>
      CLASS.map((design, i) => (i < 2 ? { ...design, measured: { ...design.measured, done: at } } : design) as Design);
    const setupsAfter = (at: string) =>
      new Map(
        machineSetups(done(at)).map(({ key, settings }) => [key, settings.flatMap(({ planes }) => planes).toSorted()]),
      );
    const afterCuts = setupsAfter("cuts");
    expect(afterCuts.get("sawRamp")).toEqual([2, 3, 4, 5]);
    expect(afterCuts.get("wedgeAngle")).toEqual([0, 1, 2, 3, 4, 5]);
    const all = CLASS.map((design) => ({ ...design, measured: { ...design.measured, done: "cuts" } }) as Design);
    expect(machineSetups(all).map(({ key }) => key)).not.toContain("sawBed");
  });
});

describe("numbers that a class shares", () => {
  const result = shareSetups(CLASS);
  if (!("designs" in result)) throw new Error("no core width does for these planes");
  const { designs, shared } = result;

  test("are steps of a rule, and what each plane then comes out as", () => {
    for (const { value, planes } of shared.coreWidth) {
      expect(Math.abs(value * 10 - Math.round(value * 10))).toBeLessThan(1e-6);
      for (const { plane, preferred } of planes) {
        expect(elevation(designs[plane]!).widths.core).toBeCloseTo(value, 6);
        expect(preferred).toBeCloseTo(elevation(CLASS[plane]!).widths.core, 9);
      }
    }
    for (const { value, planes } of shared.rampAngle)
      for (const { plane, preferred } of planes) {
        expect(elevation(designs[plane]!).ramp.angle).toBeCloseTo(value, 6);
        expect(preferred).toBeCloseTo(
          elevation(
            designs[plane]!.ramp.angle === "auto"
              ? designs[plane]!
              : { ...designs[plane]!, ramp: { ...designs[plane]!.ramp, angle: "auto" } },
          ).ramp.angle,
          1,
        );
        expect(Math.abs(value - preferred)).toBeLessThanOrEqual(3 + 1e-9);
      }
    for (const { value, planes } of shared.pinHeight)
      for (const { plane } of planes) expect(elevation(designs[plane]!).pin.centre.y).toBeCloseTo(value, 6);
  });
  test("give each iron its side play: no less than 0.8 and no more than 1/8 in, where it was between them", () => {
    for (const { planes } of shared.coreWidth)
      for (const { plane } of planes) {
        const play = designs[plane]!.body.sideClearance;
        expect(play).toBeGreaterThanOrEqual(0.8 - 1e-9);
        expect(play).toBeLessThanOrEqual(MOST_SIDE_PLAY + 1e-9);
      }
  });
  test("bring no complaint that a plane did not have by itself", () => {
    const complaints = (design: Design) =>
      new Set(checkWithoutCures(elevation(design)).map(({ severity, code }) => `${severity} ${code}`));
    const alone = CLASS.map((design, i) =>
      complaints({ ...design, body: { ...design.body, sideClearance: designs[i]!.body.sideClearance } }),
    );
    for (const [i, design] of designs.entries())
      for (const complaint of complaints(design)) expect(alone[i]!.has(complaint), `${i}: ${complaint}`).toBe(true);
  });
  test("are as few core widths as can be, or as many as are asked for", () => {
    const asked = shareSetups(CLASS, shared.coreWidth.length + 1);
    expect("shared" in asked && asked.shared.coreWidth.length).toBe(shared.coreWidth.length + 1);
    const fewer = shareSetups(CLASS, shared.coreWidth.length - 1);
    if (shared.coreWidth.length > 1) expect(fewer).toEqual({ fewestCoreWidths: shared.coreWidth.length });
  });
  test("are reported a line each, with the planes by their numbers in the roster", () => {
    const numbers = [11, 12, 13, 14, 15, 16];
    for (const units of ["mm", "in"] as const) {
      const lines = setupLines(result, { ...CLASS[0]!, units }, numbers);
      const count = shared.coreWidth.length + shared.rampAngle.length + shared.pinHeight.length;
      expect(lines).toHaveLength(1 + count);
      expect(lines[0]).toBe(SHARED_WORDS.widths({ count: shared.coreWidth.length }));
      for (const [i, { value, planes }] of shared.coreWidth.entries()) {
        const [text, named] = lines[1 + i]!.trim().split(": ");
        expectLength(text!, value, units);
        expect(spelledOut(named!)).toEqual(planes.map(({ plane }) => numbers[plane]));
      }
      for (const [i, { value, planes }] of [...shared.rampAngle, ...shared.pinHeight].entries()) {
        const [, text, named] = /: (.*) for (planes? .*)$/.exec(lines[1 + shared.coreWidth.length + i]!)!;
        if (i < shared.rampAngle.length) expect(Number.parseFloat(text!)).toBeCloseTo(value, 2);
        else expectLength(text!, value, units);
        expect(spelledOut(named!)).toEqual(planes.map(({ plane }) => numbers[plane]));
      }
    }
  });

  /** Numbers out of "planes 3, 5–8". */
  const spelledOut = (text: string): number[] =>
    text
      .replace(/^planes? /, "")
      .split(", ")
      .flatMap((span) => {
        const [from, to = from] = span.split("–").map(Number) as [number, number?];
        return Array.from({ length: to - from + 1 }, (_, i) => from + i);
      });
});

test("a class of which every core is milled shares no width, and says so", () => {
  const milled = CLASS.map((design) => ({ ...design, measured: { ...design.measured, done: "core" } }) as Design);
  const result = shareSetups(milled);
  if (!("designs" in result)) throw new Error("refused");
  expect(result.shared.coreWidth).toEqual([]);
  expect(setupLines(result, CLASS[0]!, [1, 2, 3, 4, 5, 6])[0]).toBe(SHARED_WORDS.noWidths);
});
