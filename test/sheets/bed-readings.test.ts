// The survey's lines on the bed's step, and the year's bed angle and mouth as plots.
import { blankSheet, figuresAsBuilt, straightedgePlacements } from "@lamplane/bench";
import { elevation } from "@lamplane/parameters/elevation";
import { travellerSteps } from "@lamplane/sheets";
import { expect, test } from "vitest";
import { yearPlots } from "../../packages/sheets/src/plots/year.ts";
import { isBuildable } from "../support/buildable.ts";
import { designWith, randomDesigns, WORKED } from "../support/designs.ts";

const DESIGNS = [
  designWith(WORKED),
  designWith({ ...WORKED, units: "in" }),
  ...randomDesigns(95, 8, isBuildable).map(({ design }) => design),
];

test("the bed's step has a line for each station of each placement of the survey's own sheet", () => {
  for (const design of DESIGNS) {
    const plane = elevation(design);
    const { readings } = travellerSteps(design).find(({ key }) => key === "bed")!;
    expect(readings).toHaveLength(straightedgePlacements(plane).length);
    expect(readings!.every(({ stations }) => stations.length <= 5)).toBe(true);
    const sheet = blankSheet(plane);
    const stations = [...sheet.matchAll(/at: ([^,]+), fits/g)].map((match) => match[1]);
    expect(readings!.flatMap((row) => row.stations)).toEqual(stations);
    for (const { placement } of readings!) expect(sheet).toContain(`# ${placement}`);
  }
  expect(travellerSteps(DESIGNS[0]!).filter(({ readings }) => readings !== undefined)).toHaveLength(1);
});

test("the year's plots end at the figures of the driest and the dampest days", () => {
  let drawn = 0;
  for (const design of DESIGNS) {
    const plane = elevation(design);
    const plots = yearPlots(plane);
    if (plots.length === 0) continue;
    drawn++;
    const figures = figuresAsBuilt(design);
    const value = (key: string) => figures.find((figure) => figure.key === key)!.value;
    const words = plots.map(({ marks }) =>
      marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])).join(" "),
    );
    for (const key of ["bedAngleDriest", "bedAngleDampest"])
      expect(words[0]).toContain(String(Math.round(value(key) * 100) / 100));
    if (design.units === "mm")
      for (const key of ["mouthDriest", "mouthDampest"])
        expect(words[1]).toContain(String(Math.round(value(key) * 1000) / 1000));
  }
  expect(drawn).toBeGreaterThan(5);
});
