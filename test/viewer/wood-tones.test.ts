// Whatever the species, its colour stands off paper and slate, and lines stand off it.
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { COEFFICIENTS } from "../../packages/parameters/src/wood/species-data.ts";
import { woodTones } from "../../packages/viewer/src/page/wood-tones.ts";
import { contrast } from "../support/contrast.ts";

const SHEET = readFileSync("packages/viewer/public/sheet.css", "utf8");
const inSheet = (name: string) =>
  new RegExp(`${name}: var\\(--light, (#\\w+)\\) var\\(--dark, (#\\w+)\\)`).exec(SHEET)!.slice(1, 3) as [
    string,
    string,
  ];

test("contrast is WCAG's", () => expect(contrast("#777777", "#ffffff")).toBeCloseTo(4.48, 2)); // WebAIM

test.each([0, 1] as const)("every species of the tables, %i: light is 0, dark 1", (theme) => {
  const [paper, ink] = [inSheet("--paper")[theme], inSheet("--ink")[theme]];
  const species = [...COEFFICIENTS.map(([name]) => name), "Walnut, black", "Mahogany, true", "a wood of no table"];
  for (const name of species)
    for (const tone of woodTones(name)) {
      const colour = theme === 0 ? tone.light : tone.dark;
      expect(contrast(colour, paper), `${name} ${tone.name} on paper`).toBeGreaterThanOrEqual(1.6);
      expect(contrast(colour, ink), `${name} ${tone.name} under ink`).toBeGreaterThanOrEqual(3);
    }
});

test("a dark wood is shown darker than a pale one", () => {
  const [walnut, maple] = ["walnut, black", "maple, sugar"].map((name) => woodTones(name)[0]!);
  expect(contrast(walnut!.light, "#ffffff")).toBeGreaterThan(contrast(maple!.light, "#ffffff"));
});
