// A class's parts and jigs on the shop's sheets: laid by us, judged by Clipper2; what has no room is refused with its figure.
import { sharedJigs } from "@lamplane/bench/class";
import { classFile } from "@lamplane/export/content";
import { nestClass, nestingLines } from "@lamplane/export/nested";
import { withValue } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { designWith, WORKED } from "../support/designs.ts";
import { faultsOfSheets, sheet } from "../support/nested.ts";
import { cutter, withRouter } from "../support/router-designs.ts";

const CUTTERS = [cutter("end-6", 6), cutter("drill-6", 6, { kind: "drill", step: 5 })];
const SHEETS = [
  sheet("ply-9", "ply", [900, 500, 9]),
  sheet("ply-12", "ply", [900, 500, 12], 2),
  sheet("cheeks", "wood", [700, 300, 8], 2),
];
const plane = (name: string, thickness: number): Design => ({
  ...withRouter(designWith({ ...WORKED, name, "iron.thickness": thickness }), CUTTERS),
  sheets: SHEETS,
});
const designs = [plane("anna", 3.6), plane("ben", 3.6), plane("carla", 3.2)];
const numbers = [1, 2, 4];

function layoutOf(planes: readonly Design[]) {
  const { sheets, noPlace } = nestClass(planes, numbers)!.planned;
  return { sheets: sheets.map(({ sheet }) => sheet), noPlace };
}

describe("three planes, two of them alike", () => {
  const { sheets, noPlace } = layoutOf(designs);
  const names = sheets.flatMap(({ items }) => items.map(({ item }) => item.name));
  const platesOf = (jig: string) => names.filter((name) => name.replace(/-\d+$/, "") === jig);

  test("have every cheek on a sheet once, by the plane's number in the roster", () => {
    const cheeks = numbers.flatMap((number) => [`${number} cheek-left`, `${number} cheek-right`]);
    expect(names.filter((name) => name.includes("cheek-")).toSorted()).toEqual(cheeks);
    expect(new Set(names).size).toBe(names.length);
  });

  test("have each shared jig once, under the first plane that it serves", () => {
    const jigs = sharedJigs(designs).map(({ name, planes }) => `${numbers[planes[0]!]} ${name}`);
    const laid = new Set([...names, ...noPlace.map(({ item }) => item.name)].map((name) => name.replace(/-\d+$/, "")));
    expect([...laid].filter((name) => !name.includes("cheek-")).toSorted()).toEqual(
      jigs.filter((jig) => laid.has(jig)).toSorted(),
    );
    expect(platesOf("1 bed-gauge")).toHaveLength(1);
    expect(platesOf("2 bed-gauge")).toHaveLength(0);
  });

  test("keep web, cutters' ways, margin and grain, as Clipper2 judges", () => {
    expect(faultsOfSheets(sheets, designs[0]!)).toEqual([]);
  });
});

test("a class larger than its sheets says how much room each part wants, alike parts on one line", () => {
  const six = Array.from({ length: 6 }, (_, i) => plane(`p${i}`, 3.6));
  const nesting = nestClass(
    six.map((design) => ({ ...design, sheets: [{ ...SHEETS[2]!, count: 1 }] })),
    [1, 2, 3, 4, 5, 6],
  )!;
  const { sheets, noPlace } = nesting.planned;
  const placed = sheets.flatMap(({ sheet: { items } }) => items).length;
  expect(noPlace).toHaveLength(12 - placed);
  expect(noPlace.every(({ code }) => code === "room")).toBe(true);
  const [head, what, why] = nestingLines(nesting);
  expect(head).toBe(`Sheets: 1 sheet laid out, ${12 - placed} left over:`);
  expect(what).toMatch(/^ {2}\d cheek-(left|right)(, \d cheek-(left|right))* and \d cheek-right$/);
  expect(why).toMatch(/No room is left for its [\d.]+ mm × [\d.]+ mm on the sheets of its thickness/);
});

test("cheeks that are milled take no sheet any more; a shop without sheets lays nothing out", () => {
  const milled = designs.map((design) => withValue(design, "measured.coreWidth", 49.6));
  const names = layoutOf(milled).sheets.flatMap(({ items }) => items.map(({ item }) => item.name));
  expect(names.some((name) => name.includes("cheek"))).toBe(false);
  expect(
    nestClass(
      designs.map((design) => ({ ...design, sheets: [] })),
      numbers,
    ),
  ).toBeUndefined();
});

test("class-sheets.zip has a drawing and a program a sheet and their list; another program unpacks it", async () => {
  const nesting = nestClass(designs, numbers)!;
  const input = { name: "evening", designs, numbers, boards: undefined, nesting, version: "0" };
  const files = unzipSync((await classFile("class-sheets.zip", input)) as Uint8Array);
  const sheets = nesting.planned.sheets.map(({ sheet: { piece } }, i) => `class-sheets/${i + 1}-${piece.name}`);
  expect(Object.keys(files).toSorted()).toEqual(
    [...sheets.flatMap((name) => [`${name}.dxf`, `${name}.ngc`]), "class-sheets/sheets.txt"].toSorted(),
  );
  expect(new TextDecoder().decode(files["class-sheets/sheets.txt"])).toContain("4 cheek-left, 4 cheek-right");
  expect(await classFile("class-sheets.zip", { ...input, nesting: undefined })).toBeUndefined();
});
