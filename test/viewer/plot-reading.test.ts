// What a plot says at a place is what the plane's own geometry gives there, in the maker's unit.
import { asBuiltPlane } from "@lamplane/bench";
import { readDesign } from "@lamplane/parameters/design";
import { mouthPlot } from "@lamplane/sheets";
import { expect, test } from "vitest";
import { isPlot, readingText, valuesAt } from "../../packages/viewer/src/plots/plot-reading.ts";

function plotOf(units: string) {
  const reading = readDesign(
    `units: ${units}\niron: { width: 48 mm, thickness: 3.6 mm }\nbed: { angle: 47 }\nramp: { angle: 60 }\nsole: { allowance: 3 mm }\nmouth: { opening: 0.15 mm }\n`,
    "",
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  const plot = mouthPlot(asBuiltPlane(reading.design));
  if (!isPlot(plot)) throw new Error("no lines to read");
  return plot;
}

const cot = (degrees: number): number => 1 / Math.tan((degrees * Math.PI) / 180);

test("the mouth opens by cot(bed) + cot(ramp) for each mm off the sole: plane trigonometry", () => {
  for (const off of [3, 3.25, 3.5, 3.99]) {
    const [mouth, wanted] = valuesAt(plotOf("mm"), off);
    expect(mouth).toEqual({ name: "mouth", value: expect.closeTo(0.15 + (off - 3) * (cot(47) + cot(60)), 4) });
    expect(wanted).toEqual({ name: "wanted", value: 0.15 });
  }
});

test("a line is not read beyond its ends: the mouth is shut before it opens", () => {
  const plot = plotOf("mm");
  const { from, to } = plot.axes.x;
  expect(valuesAt(plot, from).map(({ name }) => name)).toEqual(["wanted"]);
  expect(valuesAt(plot, to).map(({ name }) => name)).toEqual(["mouth", "wanted"]);
  expect(valuesAt(plot, to + 1)).toEqual([]);
});

test("a reading is in the maker's unit", () => {
  expect(readingText(plotOf("mm"), 3.5)).toBe(
    "wood taken off the sole since glue-up 3.5 mm: mouth 0.9 mm, wanted 0.15 mm",
  );
  expect(readingText(plotOf("in"), 3.5)).toBe(
    "wood taken off the sole since glue-up 0.138 in: mouth 0.036 in, wanted 0.006 in",
  );
});
