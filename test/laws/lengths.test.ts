// One length, one text: whatever prints a length, in either unit, prints the same of it.
import { formatFigure } from "@lamplane/bench";
import { bedBlockDrawing, cheekDrawing, frontBlockDrawing, wedgeDrawing } from "@lamplane/parameters/drawings";
import { elevation } from "@lamplane/parameters/elevation";
import { jigPlans } from "@lamplane/parameters/jigs";
import type { Design } from "@lamplane/parameters/table";
import { formatBareLength, formatDimension, formatLength, formatValue, parseLength } from "@lamplane/parameters/units";
import { layoutPictures, traveller } from "@lamplane/sheets";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkCommand } from "../../packages/cli/src/commands/check.ts";
import { figuresCommand } from "../../packages/cli/src/commands/figures.ts";
import { mouthCommand } from "../../packages/cli/src/commands/mouth.ts";
import { nextCommand } from "../../packages/cli/src/commands/next.ts";
import { stockCommand } from "../../packages/cli/src/commands/stock.ts";
import { stepContext } from "../../packages/sheets/src/traveller/step-context.ts";
import { formatOnDrawing } from "../../packages/viewer/src/state/format.ts";
import { type Changes, designWith, randomDesigns } from "../support/designs.ts";

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
  const said = (
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
  const { steps, keyFigures, stock, jigs, findings } = traveller(design);
  return {
    figures: said((io) => figuresCommand(io, design, { json: false, all: true })),
    check: said((io) => checkCommand(io, design, { json: false, all: true })),
    next: said((io) => nextCommand(io, design, "plane.yaml", false)),
    stock: said((io) => stockCommand(io, design, { json: false, all: true })),
    mouth: said((io) => mouthCommand(io, design, { seen: "0.1 mm", json: false, all: true })),
    traveller: textsOf([steps, keyFigures, stock, jigs, findings]),
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

const INCHES = /(-?\d+\.\d{3}|-?(?:\d+ )?\d+(?:\/\d+)?)([+−]?) in(?: \((-?\d+\.\d{3})\))?/g;

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
