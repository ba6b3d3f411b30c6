// A plane's own file in a class: it reads as the row's plane, says what the class set otherwise, and leaves every other byte.
import { readDesign } from "@lamplane/parameters/design";
import { contradictions, type DesignText, planeFileText, rosterDesign } from "@lamplane/parameters/roster";
import type { Design } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";

const textOf = (text: string): DesignText => {
  const read = readDesign(text, "a.yaml");
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return { text, design: read.design };
};
const CUTTER = (name: string, diameter: number) =>
  `  - { name: ${name}, kind: end, diameter: ${diameter}, cutting: 22, speed: 18000, feed: 1200, plunge: 400 }\n`;
const base = textOf("# the class's plane\niron: { width: 50.8, thickness: 3.2 }\nbed: { angle: 47 } # steep\n");
const row = (values: readonly [string, number | string][]) =>
  ({
    name: "anna",
    at: { line: 4, column: 3 },
    faults: [],
    values: values.map(([path, value]) => ({ path, value })),
  }) as never;

describe("a file that is not there yet", () => {
  const design = rosterDesign(row([["iron.width", 48]]), base.design);
  const made = planeFileText(design, { base, roster: "class.csv" });

  test("is the base's text with the row's values and a head that names plane and roster, and reports no change", () => {
    expect(made.design).toEqual(design);
    expect(made.design.iron.width).toBe(48);
    expect(made.design.name).toBe("anna");
    expect(made.text).toMatch(/^# .*anna.*class\.csv/);
    expect(made.text).toContain("bed: { angle: 47 } # steep");
    expect(made.changes).toEqual([]);
  });
  test("carries no boards, which are the class's own", () => {
    const boarded = { ...base, design: { ...base.design, boards: [{ name: "oak" }] as never } };
    expect(rosterDesign(row([]), boarded.design).boards).toEqual([]);
  });
});

describe("a file that is there", () => {
  const before = textOf(
    "name: anna\niron: { width: 48, thickness: 3.2 }\nbed: { angle: 47 } # steep\nmeasured: { ironWidth: 47.9 }\n",
  );

  test("stays byte for byte where it reads as the class has it, to the rounding of a file", () => {
    for (const off of [0, 4e-7, -4e-7]) {
      const design = { ...before.design, iron: { ...before.design.iron, width: 48 + off } };
      expect(planeFileText(design, { base, before, roster: "class.csv" })).toEqual({ ...before, changes: [] });
    }
  });
  test("has what the class sets otherwise set in it, each with what stood there", () => {
    const design = { ...before.design, bed: { ...before.design.bed, angle: 50 } };
    const { text, changes } = planeFileText(design, { base, before, roster: "class.csv" });
    expect(changes).toEqual([{ path: "bed.angle", from: 47, to: 50 }]);
    expect(text).toBe(before.text.replace("angle: 47", "angle: 50"));
  });
  test("has a list of the shop's that differs written anew, reported by how many things it holds", () => {
    const cutters = textOf(`${base.text}cutters:\n${CUTTER("six", 6)}${CUTTER("three", 3)}`).design.cutters;
    const design = { ...before.design, cutters };
    const { design: read, changes, text } = planeFileText(design, { base, before, roster: "class.csv" });
    expect(changes).toEqual([{ path: "cutters", from: 0, to: 2 }]);
    expect(read.cutters).toEqual(cutters);
    expect(text.startsWith(before.text.trimEnd())).toBe(true);
    const again = planeFileText(design, { base, before: { text, design: read }, roster: "class.csv" });
    expect(again.changes).toEqual([]);
  });
});

describe("what is measured in the roster and in the plane's file", () => {
  const own = textOf("name: anna\niron: { width: 48, thickness: 3.2 }\nmeasured: { ironWidth: 47.9 }\n").design;
  const files = { file: "anna.yaml", roster: "class.csv" };

  test("is a contradiction only where both are there and differ by more than rounding", () => {
    const reported = (value: number, path = "measured.ironWidth") => contradictions(row([[path, value]]), own, files);
    expect(reported(47.9)).toEqual([]);
    expect(reported(47.9 + 4e-7)).toEqual([]);
    expect(reported(47.8)).toHaveLength(1);
    expect(reported(47.8)[0]).toMatch(/47\.8 mm.*47\.9 mm|47\.9 mm.*47\.8 mm/);
    expect(reported(3.1, "measured.ironThickness")).toEqual([]);
    expect(reported(47.9, "iron.width")).toEqual([]);
    expect(reported(48, "iron.width")).toEqual([]);
  });
  test("is of another iron where the roster's is further from the reading than the one before", () => {
    const reported = (width: number) => contradictions(row([["iron.width", width]]), own, files);
    expect(reported(50)).toEqual([
      expect.stringMatching(/iron\.width: 50 mm here.* ironWidth 47\.9 mm.*lamplane measured/),
    ]);
    expect(reported(47.85)).toEqual([]);
    expect(reported(47.7)).toHaveLength(1);
  });
  test("and of a row and a file, the file's measured values stay with the plane", () => {
    const design: Design = rosterDesign(row([["bed.angle", 50]]), base.design, own.measured);
    expect([design.measured.ironWidth, design.bed.angle]).toEqual([47.9, 50]);
  });
});
