// One length, one text: whatever prints a length, in either unit, prints the same of it.
import { figuresAsBuilt, formatFigure, LEAST_RUNS } from "@lamplane/bench";
import { valueAt } from "@lamplane/parameters/design";
import { bedBlockDrawing, cheekDrawing, frontBlockDrawing, wedgeDrawing } from "@lamplane/parameters/drawings";
import { elevation } from "@lamplane/parameters/elevation";
import { jigPlans } from "@lamplane/parameters/jigs";
import { type Design, rowsOf, TABLE } from "@lamplane/parameters/table";
import { formatBareLength, formatDimension, formatLength, formatValue, parseLength } from "@lamplane/parameters/units";
import { layoutPictures } from "@lamplane/sheets";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkCommand } from "../../packages/cli/src/commands/check.ts";
import { figuresCommand } from "../../packages/cli/src/commands/figures.ts";
import { mouthCommand } from "../../packages/cli/src/commands/mouth.ts";
import { nextCommand } from "../../packages/cli/src/commands/next.ts";
import { stockCommand } from "../../packages/cli/src/commands/stock.ts";
import { toleranceCommand } from "../../packages/cli/src/commands/tolerance.ts";
import { stepContext } from "../../packages/sheets/src/traveller/step-context.ts";
import { formatOnDrawing } from "../../packages/viewer/src/state/format.ts";
import { type Changes, designWith, randomDesigns } from "../support/designs.ts";
import { drawnTraveller } from "../support/travellers.ts";

const FRACTIONS = ["1/8", "1/16", "1/32", "1/64"] as const;
const STYLES: readonly Changes[] = [
  { units: "mm" },
  ...FRACTIONS.map((smallestFraction) => ({ units: "in", "shop.smallestFraction": smallestFraction })),
];
const withUnit = (bare: string, { units }: Design): string =>
  units === "mm" ? `${bare} mm` : bare.replace(/( \(|$)/, " in$1");

describe.each(STYLES)("in %o", (style) => {
  const design = designWith(style);
  const step = stepContext(design, "core");
  /** Each path's formatter of a single length, its unit added where the path leaves it to the sheet. */
  const paths: Readonly<Record<string, (mm: number) => string>> = {
    "commands and checks": (mm) => formatValue(mm, "mm", design),
    "a figure that may err either way": (mm) => formatFigure(design, "mouthX", mm, "mm"),
    tables: (mm) => withUnit(formatBareLength(mm, design), design),
    "layout and the traveller's drawings": (mm) =>
      design.units === "mm" ? `${formatDimension(mm, design)} mm` : formatDimension(mm, design),
    "the traveller's sentences": (mm) => step.mm(mm),
    "the traveller's tables": (mm) => step.lengthRow("", mm).value,
    "the page's drawing": (mm) =>
      design.units === "mm"
        ? `${formatOnDrawing(mm, "mm", design)} mm`
        : formatOnDrawing(mm, "mm", design).replace("″", " in"),
  };
  const agree = (mm: number) => {
    const texts = Object.entries(paths).map(([path, format]) => [path, format(mm)]);
    expect(texts).toEqual(Object.keys(paths).map((path) => [path, formatLength(mm, design)]));
  };
  test("400 random lengths read the same on every path", () => {
    fc.assert(fc.property(fc.double({ min: -50, max: 900, noNaN: true }), agree), { numRuns: 400 });
  });
  test("so does each division of the rule up to an inch, and it stands alone", () => {
    const parts = Number(design.shop.smallestFraction.slice(2));
    for (let count = 1; count <= parts; count++) {
      const mm = (count * 25.4) / parts;
      agree(mm);
      if (design.units === "in") expect(formatLength(mm, design)).toMatch(/^(1|\d+\/\d+) in$/);
      const read = parseLength(formatLength(mm, design), "mm");
      expect("value" in read && Math.abs(read.value - mm)).toBeLessThan(0.0051);
    }
  });
});

/** All that each path prints of a plane. */
function printed(design: Design): Readonly<Record<string, string>> {
  const plane = elevation(design);
  const printedBy = (
    command: (io: { out: (text: string) => void; err: (text: string) => void; showsProgress: boolean }) => unknown,
  ) => {
    let text = "";
    command({
      out: (more) => {
        text += more;
      },
      err: () => {},
      showsProgress: false,
    });
    return text;
  };
  const { steps, keyFigures, setUps, stock, fitTest, findings } = drawnTraveller(design);
  return {
    figures: printedBy((io) => figuresCommand(io, design, { json: false, all: true })),
    check: printedBy((io) => checkCommand(io, design, { json: false, all: true })),
    next: printedBy((io) => nextCommand(io, design, { file: "plane.yaml", json: false })),
    stock: printedBy((io) => [true, false].map((all) => stockCommand(io, design, { json: false, all }))),
    mouth: printedBy((io) =>
      [true, false].map((all) => mouthCommand(io, design, { seen: "0.1 mm", json: false, all })),
    ),
    tolerance: printedBy((io) =>
      [true, false].map((all) => toleranceCommand(io, design, { seed: 1, runs: LEAST_RUNS, json: false, all })),
    ),
    traveller: textsOf([steps, keyFigures, setUps, stock, fitTest, findings]),
    layout: textsOf(layoutPictures(plane)),
    jigs: textsOf(jigPlans(plane)),
    DXF: textsOf([
      frontBlockDrawing(plane, "blank"),
      bedBlockDrawing(plane, "blank"),
      cheekDrawing(plane, "blank", "left"),
      wedgeDrawing(plane),
    ]),
  };
}

/** Every text within plain data. */
function textsOf(data: unknown): string {
  if (typeof data === "string") return data;
  return typeof data === "object" && data !== null ? Object.values(data).map(textsOf).join("\n") : "";
}

/** How far something may be off is in decimals, and so is what a caliper reads from season to season: no rule is read to it. */
const INCHES = /(?<![±\d./]|\d\.\d{3} to )(-?\d+\.\d{3}|-?(?:\d+ )?\d+(?:\/\d+)?)([+−]?) in(?: \((-?\d+\.\d{3})\))?/g;

/** Thousandths of an inch → the texts that stand for them, over all paths. */
function textsByThousandth(all: Readonly<Record<string, string>>): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (const text of Object.values(all))
    for (const [whole, figure, , thousandths] of text.matchAll(INCHES)) {
      const read = parseLength(`${thousandths ?? figure} in`, "in");
      if (!("value" in read)) throw new Error(`${whole} is no length`);
      const key = (read.value / 25.4).toFixed(3);
      found.set(key, (found.get(key) ?? new Set()).add(whole));
    }
  return found;
}

test("what planes in inches print: one text for each thousandth, over all papers and commands, and no mm", () => {
  let lengths = 0;
  for (const { changes } of randomDesigns(31, 3)) {
    const all = printed(designWith({ ...changes, units: "in" }));
    const texts = textsByThousandth(all);
    lengths += texts.size;
    for (const [thousandths, forms] of texts) expect([...forms], thousandths).toHaveLength(1);
    const { figures: _, check: __, ...rest } = all; // formulas are in mm, and so are cures as they are typed back
    for (const [path, text] of Object.entries(rest)) expect(text.match(/.{0,60}\d mm\b.{0,30}/g), path).toBeNull();
  }
  expect(lengths).toBeGreaterThan(400);
});

test("what planes in mm print: no inches, and no length in more than hundredths", () => {
  for (const { design } of randomDesigns(32, 3)) {
    const all = printed(design);
    for (const [path, text] of Object.entries(all)) {
      expect(text.match(/.{0,60}(\d\/\d+|\d) in\b(?! from|side| \d+\)).{0,30}|.{0,40}\d″/g), path).toBeNull();
      expect(text.match(/\d\.\d{3,} mm(?! for each)/g), path).toBeNull();
    }
  }
});

/** A length as it is printed, its unit taken from the sheet where the sheet says it once. */
interface PrintedLength {
  readonly text: string;
  readonly mm: number;
}

const MILLIMETRES = /(?<![\d.])(-?\d+(?:\.\d+)?) mm\b/g;
const BARE = /^-?\d+(?:\.\d+)?$/gm;

/** Lengths that a text prints. @param isSheet whether bare numbers on lines of their own are lengths: dimensions of a drawing */
function lengthsIn(text: string, { units }: Design, isSheet: boolean): PrintedLength[] {
  if (units === "in")
    return [...text.matchAll(INCHES)].map(([whole, figure, , thousandths]) => {
      const read = parseLength(`${thousandths ?? figure} in`, "in");
      return { text: whole, mm: "value" in read ? read.value : Number.NaN };
    });
  const bare = isSheet
    ? [...text.matchAll(BARE)].map(([figure]) => ({ text: `${figure} mm`, mm: Number(figure) }))
    : [];
  return [...bare, ...[...text.matchAll(MILLIMETRES)].map(([whole, figure]) => ({ text: whole, mm: Number(figure) }))];
}

/** Under this two different lengths are often alike; those of the mouth are held in mouth-agreement.test.ts. mm */
const TELLS_APART = 2;

/** A drill by its name, or its shank: the nearest of a chart. */
const DRILL = /[\d./ ]+(mm|in)(?= (drill|shank))/g;

/** How far from the tips the glue stops, on every plane. */
const GLUE_FREE_TEXTS = { mm: ["3 mm", "5 mm"], in: ["1/8 in", "3/16 in"] };

/** How far off the length itself a text may be that was rounded otherwise: one in its last place. mm */
function lastPlace({ text }: PrintedLength, { units }: Design): number {
  if (units === "in") return 0.0255;
  return Math.min(0.1, 10 ** -(/\.(\d+)/.exec(text)?.[1]?.length ?? 0)) + 1e-9;
}

describe.each(["mm", "in"] as const)("lengths of figures.json, in %s", (units) => {
  test("read on traveller, next and layout as they read there, each wherever it stands", () => {
    const [agreeing, faults] = [new Map<string, Set<string>>(), [] as string[]];
    for (const { changes } of randomDesigns(33, 4)) {
      const design = designWith({ ...changes, units });
      // A hole is given by its drill, which a chart gives; the greatest allowance stands on no paper.
      const known = figuresAsBuilt(design).filter(
        ({ key, value, unit }) =>
          unit === "mm" && Math.abs(value) > TELLS_APART && key !== "pinHoleDiameter" && key !== "greatestAllowance",
      );
      const given = rowsOf(TABLE).flatMap(({ path, row }) => {
        const value = row.kind === "number" && row.quantity === "length" ? valueAt(design, path) : undefined;
        return typeof value === "number" ? [formatLength(value, design)] : [];
      });
      const isOther = (text: string) => given.includes(text) || GLUE_FREE_TEXTS[units].includes(text);
      const { traveller: steps, next, layout } = printed(design);
      for (const [path, text] of Object.entries({ steps, next, layout }))
        for (const length of lengthsIn(text!.replace(DRILL, ""), design, path === "layout")) {
          const { text: read, mm } = length;
          const near = known.filter(({ value }) => Math.abs(value - mm) <= lastPlace(length, design));
          const same = near.filter(({ value }) => formatLength(value, design) === read);
          for (const { key } of same) agreeing.set(key, (agreeing.get(key) ?? new Set()).add(path));
          if (near.length > 0 && same.length === 0 && !isOther(read))
            faults.push(
              `${path}: ${read} beside ${near.map(({ key, value }) => `${key} ${formatLength(value, design)}`)}`,
            );
        }
    }
    expect(faults).toEqual([]);
    expect(agreeing.size).toBeGreaterThan(30);
    expect([...agreeing.values()].filter((paths) => paths.size > 1).length).toBeGreaterThan(10);
  });
});
