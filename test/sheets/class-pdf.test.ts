// The class's sheet as another program reads it: every set-up with its planes, every jig, a page a pupil; and the table beside it.
import { readFileSync } from "node:fs";
import { asBuiltPlane } from "@lamplane/bench";
import { machineSetups, sharedJigs, shareSetups } from "@lamplane/bench/class";
import { classCsv } from "@lamplane/export/content";
import { readDesign, withValue } from "@lamplane/parameters/design";
import { jigPlans } from "@lamplane/parameters/jigs";
import type { Design } from "@lamplane/parameters/table";
import { classSheet } from "@lamplane/sheets";
import { classPdf } from "@lamplane/sheets/pages";
import { beforeAll, describe, expect, test } from "vitest";
import { requireProgram, runForStdout } from "../support/outside-programs.ts";
import { withPdf, wordsOf } from "../support/pages.ts";

function school(irons: readonly (readonly [string, number, number])[], units: "mm" | "in" = "mm"): Design[] {
  const read = readDesign(readFileSync("examples/class/school-smoother.yaml"), "base");
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const planes = irons.map(([name, width, thickness]) =>
    [
      ["name", name],
      ["units", units],
      ["iron.width", width],
      ["iron.thickness", thickness],
    ].reduce((design, [path, value]) => withValue(design, path as string, value as string | number), read.design),
  );
  const shared = shareSetups(planes);
  if (!("designs" in shared)) throw new Error("no groups were asked for");
  return [...shared.designs];
}
const IRONS = [
  ["anna", 50.8, 3.1],
  ["ben", 48, 3.6],
  ["carla", 50.4, 3.2],
] as const;

describe("class.pdf", () => {
  const designs = school(IRONS);
  let bytes: Uint8Array;
  beforeAll(async () => {
    bytes = await classPdf(classSheet("evening", designs), { paper: "A4", version: "0.1.0" });
  });
  const pagesBy = (pdftotext: string): string[] =>
    withPdf(bytes, (file) => runForStdout(pdftotext, ["-raw", file, "-"]))
      .split("\f")
      .map((page) => page.replace(/\s+/g, " "));

  test("begins with every plane, then has a page a set-up in the order of the work, jigs, and a page a pupil", (context) => {
    const pages = pagesBy(requireProgram(context, "pdftotext"));
    for (const [i, [name]] of IRONS.entries()) expect(pages[0]).toContain(`${i + 1} ${name}`);
    const titles = pages.slice(1, 11).map((page) => /Set-up (\d+): [A-Z][a-z ]+/.exec(page)?.[1]);
    expect(titles).toEqual(["1", "2", "3", "4", "5", "6", "7", "8", "9", "10"]);
    for (const page of pages.slice(1, 11)) {
      const [, number, work] = /Set-up (\d+): ([A-Z][a-z]+ [a-z]+)/.exec(page)!;
      expect(pages[0]).toContain(` ${number} ${work}`);
    }
    expect(pages[11]).toContain("Jigs to make");
    for (const [i, [name]] of IRONS.entries()) expect(pages[12 + i]).toContain(`${i + 1} ${name}`);
  });

  test("mills cores 1 and 3 together, and core 2 apart", (context) => {
    const page = pagesBy(requireProgram(context, "pdftotext"))[4]!;
    const [both, one] = [page.indexOf("52 mm"), page.indexOf("49.6 mm")];
    expect(both).toBeGreaterThan(0);
    expect(one).toBeGreaterThan(both);
    expect(page.slice(both, one)).toMatch(/1 anna.*3 carla/);
    expect(page.slice(one)).toMatch(/2 ben/);
  });
});

test("a set-up that a plane has passed no longer lists it", () => {
  const designs = school(IRONS);
  const milled = designs.map((design, i) => (i === 0 ? withValue(design, "measured.coreWidth", 52.17) : design));
  const core = machineSetups(milled).find(({ key }) => key === "coreWidth")!;
  expect(core.settings.flatMap(({ planes }) => planes).toSorted()).toEqual([1, 2]);
  const ramp = machineSetups(milled).find(({ key }) => key === "sawRamp")!;
  expect(ramp.settings.flatMap(({ planes }) => planes)).toEqual([0, 1, 2]);
});

test("a jig serves the planes for which its working faces come out alike, and no others", () => {
  const designs = school([...IRONS, ["dora", 50.9, 3.1]]);
  const jigs = sharedJigs(designs);
  const cradles = jigs.filter(({ name }) => name === "bed-cradle").map(({ planes }) => planes);
  expect(cradles).toEqual([[0, 2, 3], [1]]);
  for (const { name, planes } of jigs) {
    const sizes = planes.map((plane) => {
      const { bodies } = jigPlans(asBuiltPlane(designs[plane]!)).find((jig) => jig.name === name)!;
      return bodies.flatMap(({ boundary }) => boundary.flatMap(({ from }) => [from.x, from.y]));
    });
    for (const size of sizes)
      for (const [k, value] of size.entries()) expect(Math.abs(value - sizes[0]![k]!)).toBeLessThanOrEqual(0.1);
  }
  const count = designs.reduce((sum, design) => sum + jigPlans(asBuiltPlane(design)).length, 0);
  expect(jigs.reduce((sum, { planes }) => sum + planes.length, 0)).toBe(count);
});

test("class.csv has decimals with the unit in the head, no fraction that turns into a date", () => {
  const [head, ...rows] = classCsv(school(IRONS, "in"))
    .trimEnd()
    .split("\r\n")
    .map((line) => line.split(","));
  const cell = (row: number, name: string) => rows[row]![head!.indexOf(name)];
  expect(head!.slice(0, 3)).toEqual(["number", "name", "iron width in"]);
  expect(cell(0, "iron width in")).toBe("2");
  expect(Number(cell(1, "core width in")) * 25.4).toBeCloseTo(asBuiltPlane(school(IRONS, "in")[1]!).widths.core, 2);
  expect(cell(2, "saw bed deg")).toBe("43");
  for (const row of rows) for (const each of row.slice(2)) expect(each).toMatch(/^[\d.]*$/);
});

test("a table higher than its page goes on on the next: nothing is written below the foot or lost", async (context) => {
  const designs = school(IRONS);
  const jigs = Array.from({ length: 260 }, (_, i) => `jig-number-${i}`);
  const notCut = { heading: "On no sheet", rows: [[jigs.join(", "), "No room is left."] as const] };
  const sheets = { plane: "evening", title: "evening", subject: "sheets", pages: [], notCut };
  const bytes = await classPdf(classSheet("evening", designs), { paper: "A4", version: "0.1.0" }, sheets);
  const words = wordsOf(requireProgram(context, "pdftotext"), bytes);
  const foot = Math.max(...words.filter(({ text }) => text === "Follow").map(({ box }) => box.top));
  const named = words.filter(({ text }) => text.startsWith("jig-number-"));
  expect(new Set(named.map(({ text }) => text.replace(",", ""))).size).toBe(jigs.length);
  expect(new Set(named.map(({ page }) => page)).size).toBeGreaterThan(1);
  for (const { box, text } of named) expect(box.bottom, text).toBeLessThan(foot);
});

test("pieces that come from boards are not crosscut a second time", () => {
  const designs = school(IRONS);
  const keys = (boards?: Parameters<typeof classSheet>[3]) =>
    classSheet("evening", designs, undefined, boards).setups.map(({ key }) => key);
  expect(keys()).toContain("blankLength");
  expect(keys({ design: designs[0]!, name: "evening", boards: [], cuts: [] })).toEqual(
    keys().filter((key) => key !== "blankLength"),
  );
});
