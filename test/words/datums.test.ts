// Where a length is measured from: one starting point for each thing, on every paper, in every command, on every page.
import { readFileSync } from "node:fs";
import { asBuiltPlane, expectedValue, MEASURED_ROWS, type MeasuredKey } from "@lamplane/bench";
import { distance, type Point } from "@lamplane/geometry";
import { readDesign, rowAt } from "@lamplane/parameters/design";
import { FIGURES, layerShapes } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatLength } from "@lamplane/parameters/units";
import { travellerSteps } from "@lamplane/sheets";
import { expect, test } from "vitest";
import { runCommand } from "../support/running.ts";
import { wordingTexts } from "../support/wording.js";

const EXAMPLES = ["apprentice-smoother", "trestle-jack", "figured-finisher", "layered-smoother"] as const;
const designOf = (name: string): Design => {
  const reading = readDesign(readFileSync(`examples/${name}.yaml`, "utf8"), name);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.design;
};

/** Degrees between a line and the sole. */
const bearing = (from: Point, to: Point): number =>
  (Math.atan2(Math.abs(to.y - from.y), Math.abs(to.x - from.x)) * 180) / Math.PI;

const ALONG_THE_SOLE: readonly MeasuredKey[] = ["pinHoleFromEnd", "bedTipFromEnd", "rampTipFromEnd"];

test.each(EXAMPLES)("%s: what is written down along the sole is what the tables ask for", (name) => {
  const design = designOf(name);
  const steps = travellerSteps(design);
  for (const key of ALONG_THE_SOLE) {
    const expected = formatLength(expectedValue(design, key)!, design);
    const step = steps.find((each) => each.key === MEASURED_ROWS[key].at)!;
    expect(step.blanks.find((blank) => blank.key === key)?.expected, key).toBe(expected);
    const fromEnd = step.numbers.filter(({ label }) => /from the toe end of the cheeks/i.test(label));
    expect(
      fromEnd.map(({ value }) => value),
      key,
    ).toContain(expected);
  }
});

test("a place along the sole is called so by its figure and by its blank", () => {
  for (const key of ALONG_THE_SOLE) {
    expect(rowAt(`measured.${key}`).help, key).toMatch(/from the toe end of the cheeks/i);
    expect(FIGURES[MEASURED_ROWS[key].figure as keyof typeof FIGURES].help, key).toMatch(
      /from the toe end of the cheeks/i,
    );
  }
});

test.each(EXAMPLES)("%s: the glue-up's number is that of `figures`, and of the dry fit", async (name) => {
  const { figures } = JSON.parse((await runCommand("figures", `examples/${name}.yaml`, "--json")).out);
  const design = designOf(name);
  const [dry, glue] = ["dry-fit", "glue-up"].map((key) => travellerSteps(design).find((step) => step.key === key)!);
  for (const key of ["bedTipFromEnd", "rampTipFromEnd"]) {
    const text = formatLength(figures[key].value, design);
    for (const step of [dry!, glue!])
      expect(
        step.numbers.map(({ value }) => value),
        key,
      ).toContain(text);
  }
});

test("the recess begins at one edge: the lower edge of the bed, its feather off", () => {
  const lines = wordingTexts().flatMap(({ text }) => text.split("\n"));
  const ends = lines.filter((line) =>
    /lower end of the recess, up|to the lower end of the recess|its lower end, up/i.test(line),
  );
  expect(ends.length).toBeGreaterThanOrEqual(3);
  for (const line of ends) expect(line).toMatch(/from its lower edge, (the )?feather (taken )?off/);
  expect(lines.filter((line) => /recess from (bed tip|edge\b)/i.test(line))).toEqual([]);
});

test.each(EXAMPLES)("%s: the feather is off before anything is measured from the edge that this leaves", (name) => {
  const steps = travellerSteps(designOf(name));
  const isCut = (text: string) => /^Cut the feather off/.test(text);
  const cutAt = steps.findIndex(({ instructions }) => instructions.some(isCut));
  const measuredAt = steps.findIndex(({ numbers }) => numbers.some(({ label }) => /feather off/.test(label)));
  expect(cutAt).toBeGreaterThanOrEqual(0);
  expect(measuredAt).toBeGreaterThanOrEqual(cutAt);
  const { instructions } = steps[cutAt]!;
  const recess = instructions.findIndex((text) => /along the recess/.test(text));
  if (recess >= 0) expect(instructions.findIndex(isCut)).toBeLessThan(recess);
});

test("layered-smoother: the recess's end on a layer as cut is as far up as its outline has it", () => {
  const design = designOf("layered-smoother");
  const { boundary } = layerShapes(asBuiltPlane(design), "blank").find(({ isSetBack }) => isSetBack)!.shape;
  // The bed's line on a middle layer ends where the recess begins and where the feather was: drawn from the one to the other.
  const parallel = boundary.filter(({ from, to }) => Math.abs(bearing(from, to) - design.bed.angle) < 1e-6);
  const lowest = Math.min(...parallel.map(({ to }) => to.y));
  const bedLine = parallel.find(({ to }) => to.y === lowest)!; // the other is the floor of the recess
  const cuts = travellerSteps(design).find(({ key }) => key === "cuts")!;
  const shown = cuts.numbers.find(({ label }) => /lower end of the recess/i.test(label))!.value;
  expect(Number.parseFloat(shown)).toBeCloseTo(distance(bedLine.from, bedLine.to), 1);
  const bed = travellerSteps(design).find(({ key }) => key === "bed")!;
  expect(bed.instructions.join(" ")).toMatch(/Truing has left the flat at the tip of the bed lower/);
});

test.each(["apprentice-smoother", "trestle-jack"])(
  "%s: the recess's lower end is one length on every paper",
  async (name) => {
    const file = `examples/${name}.yaml`;
    const { figures } = JSON.parse((await runCommand("figures", file, "--json")).out);
    const design = designOf(name);
    const text = formatLength(figures.recessFromBedEdge.value, design);
    const step = travellerSteps(design).find(({ key }) => key === "recess")!;
    expect(step.numbers.find(({ label }) => /lower edge/.test(label))?.value).toContain(text);
    expect((await runCommand("figures", file)).out).toContain(`recess from lower edge of bed`);
  },
);

test("no paper counts from the line of the finished toe what can be measured from an end", () => {
  const pages = wordingTexts().filter(({ path }) => path.includes("sheets"));
  for (const { text } of pages) expect(text).not.toMatch(/from the line of the finished toe/);
});

test.each(EXAMPLES)("%s: the tables give what can be touched once the feather is off", (name) => {
  const design = designOf(name);
  const { bed } = design;
  const step = travellerSteps(design).find(({ key }) => key === "dry-fit")!;
  const foot = step.numbers.find(({ label }) => /^Foot of the bed/.test(label));
  const rise = bed.featherChamfer / Math.tan((bed.angle * Math.PI) / 180);
  expect(foot?.value).toBe(formatLength(expectedValue(design, "bedTipFromEnd")! + rise, design));
  expect(foot?.isRead).toBe(true);
});
