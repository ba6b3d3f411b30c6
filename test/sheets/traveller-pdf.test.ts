// The traveller's PDF as another program reads it: every number, blank, tick and caution on the page, nothing beyond it, the same bytes.
import { readFileSync } from "node:fs";
import { CAUTIONS, JOB_STEPS, MEASURED_KEYS } from "@lamplane/bench";
import { readDesign } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { STEP_ROOM, type Traveller, traveller } from "@lamplane/sheets";
import { appendixPdf, cardPdf, travellerPdf } from "@lamplane/sheets/pages";
import { afterEach, beforeAll, describe, expect, test, vi } from "vitest";
import { designWith, WORKED } from "../support/designs.ts";
import { requireProgram, runForStdout } from "../support/outside-programs.ts";
import { withPdf, wordsOf } from "../support/pages.ts";
import { drawnStep } from "../support/travellers.ts";

function example(name: string): Design {
  const file = `examples/${name}.yaml`;
  const reading = readDesign(readFileSync(file), file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.design;
}

const pdfOf = (told: Traveller, paper = told.design.shop.paper) => travellerPdf(told, { paper, version: "0.1.0" });
const cardOf = (told: Traveller, paper = told.design.shop.paper) => cardPdf(told, { paper, version: "0.1.0" });
const appendixOf = (told: Traveller) => appendixPdf(told, { paper: told.design.shop.paper, version: "0.1.0" });
const flat = (text: string) => text.replace(/\s+/g, " ");

/** The text in the order in which it was put on the page. */
const textOf = (pdftotext: string, bytes: Uint8Array) =>
  flat(withPdf(bytes, (file) => runForStdout(pdftotext, ["-raw", file, "-"])));

afterEach(() => vi.useRealTimers());

describe.each([
  ["metric, straight", () => example("apprentice-smoother")],
  ["metric, curved", () => example("figured-finisher")],
  ["inches", () => example("trestle-jack")],
])("%s", (_, designOf) => {
  let told: Traveller;
  let bytes: Uint8Array;
  beforeAll(async () => {
    told = traveller(designOf());
    bytes = await pdfOf(told);
  });

  test("every step's title, numbers, blanks, instructions and checks stand in order", (context) => {
    const text = textOf(requireProgram(context, "pdftotext"), bytes);
    let at = 0;
    const next = (words: string, what: string) => {
      const found = text.indexOf(flat(words), at);
      expect(found, `${what}: "${words}" after ${at}`).toBeGreaterThanOrEqual(at);
      at = found + 1;
    };
    for (const { key, title, numbers, blanks, instructions, checks } of told.steps) {
      next(title, key);
      for (const { value } of numbers) next(value, key);
      for (const { key: measured, expected } of blanks) {
        next(`expected ${expected}`, key);
        next(`${measured} =`, key);
      }
      for (const sentence of [...instructions, ...checks]) next(sentence, key);
    }
    const wanted = told.steps.flatMap(({ blanks }) => blanks.map((blank) => blank.key));
    // a straight ramp has no radius, an even iron one thickness
    expect(new Set([...wanted, "rampRadius", "ironThicknessAtTop"])).toEqual(new Set(MEASURED_KEYS));
  });

  test("every caution is on the card once, and in the traveller at its steps alone", async (context) => {
    const pdftotext = requireProgram(context, "pdftotext");
    const [text, card] = [textOf(pdftotext, bytes), textOf(pdftotext, await cardOf(told))];
    const atSteps = told.steps.flatMap(({ cautions }) => cautions.map((caution) => caution.text));
    for (const { text: caution } of Object.values(CAUTIONS)) {
      const times = (of: string) => of.split(flat(caution)).length - 1;
      expect(times(text), caution).toBe(atSteps.filter((each) => each === caution).length);
      expect(times(card), caution).toBe(1);
    }
    for (const each of [text, card]) expect(each).toContain("manual, local rules and trained practice");
  });

  test("the card has every key figure and every set-up, numbered by its step, on two pages", async (context) => {
    const card = await cardOf(told);
    const text = textOf(requireProgram(context, "pdftotext"), card);
    for (const { label, value } of told.keyFigures) expect(text).toContain(flat(`${label} ${value}`));
    for (const { step, title, rows } of told.setUps) {
      expect(text).toContain(flat(`${step} ${title}`));
      const { numbers, instructions, picture } = drawnStep(told.steps[step - 1]!);
      const drawn = picture.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
      const atStep = [...numbers.map((number) => number.value), ...instructions, ...drawn].join("\n");
      for (const { value } of rows) {
        expect(text, title).toContain(flat(value));
        expect(atStep, title).toContain(value.replace(/, no (less|more)$/, ""));
      }
    }
    expect(text).toContain("page 1 of 2 ");
  });

  test("no word lies outside the printer's margin, and pages are counted", (context) => {
    const words = wordsOf(requireProgram(context, "pdftotext"), bytes);
    const margin = 8; // mm
    for (const { text, page, box, size } of words) {
      const inside =
        box.left > margin &&
        box.top > margin / 2 &&
        box.right < size.width - margin &&
        box.bottom < size.height - margin / 2;
      expect(inside, `${text} on page ${page}: ${JSON.stringify(box)}`).toBe(true);
    }
    const pages = Math.max(...words.map(({ page }) => page));
    const text = textOf(requireProgram(context, "pdftotext"), bytes);
    expect(text).toContain(`page 1 of ${pages} `);
    expect(text).toContain(`page ${pages} of ${pages} `);
  });

  test("plots, strength and sources stand in the appendix", async (context) => {
    const text = textOf(requireProgram(context, "pdftotext"), await appendixOf(told));
    for (const { picture } of told.plots) expect(text).toContain(flat(picture.title));
    for (const { label } of told.strength) expect(text).toContain(flat(label));
    expect(text).toContain(flat(told.strengthCaution));
    expect(text).toContain("29 CFR 1910.213(p), sanding machines");
    for (const { message } of told.findings) expect(text).toContain(flat(message));
    expect(told.plots.map(({ picture }) => picture.name)).toEqual([
      "mouth-over-life",
      "throat-width",
      "seasons",
      "bed-over-year",
      "mouth-over-year",
      "mouth-shares",
    ]);
  });

  test("every jig stands at its step with its picture; stock list, tools and the fit test stand before the steps", (context) => {
    const text = textOf(requireProgram(context, "pdftotext"), bytes);
    const jigs = new Map(told.steps.flatMap(({ jigs }) => jigs).map((jig) => [jig.name, jig]));
    expect([...jigs.values()].filter(({ draw }) => draw(STEP_ROOM))).toHaveLength(7);
    for (const { title, against, use } of [...jigs.values()])
      expect(text).toContain(flat(`${title} ${against} ${use}`));
    expect(text).toContain(flat(told.fitTest!.use));
    for (const tool of told.tools) expect(text).toContain(flat(tool));
    for (const row of told.stock.rows) expect(text).toContain(row[0]);
  });
});

test("the same bytes in another year", async () => {
  vi.useFakeTimers({ toFake: ["Date"] });
  vi.setSystemTime(new Date("2025-03-01T10:00:00Z"));
  const design = designWith(WORKED);
  const first = await pdfOf(traveller(design));
  vi.setSystemTime(new Date("2031-12-24T23:59:59Z"));
  expect(Buffer.compare(Buffer.from(await pdfOf(traveller(design))), Buffer.from(first))).toBe(0);
});

test("warnings stand on the card with what they mean", async (context) => {
  const told = traveller(designWith({ ...WORKED, "bed.angle": 41, "ramp.angle": 67 }));
  const warnings = told.findings.filter(({ severity }) => severity === "warning");
  expect(warnings.map(({ code }) => code)).toContain("bed-saw-angle");
  const text = textOf(requireProgram(context, "pdftotext"), await cardOf(told));
  for (const { message } of warnings) expect(text).toContain(flat(message));
  expect(text).toContain("Warning: it may not work well");
});

test.each(["A3", "Tabloid"] as const)("%s lies across with two columns and half the pages", async (paper) => {
  const told = traveller(designWith(WORKED));
  const single = paper === "A3" ? "A4" : "Letter";
  const pages = async (on: typeof paper | typeof single) => {
    const text = Buffer.from(await pdfOf(told, on)).toString("latin1");
    return [...text.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(
      ([, w, h]) => [Number(w), Number(h)] as const,
    );
  };
  const [two, one] = [await pages(paper), await pages(single)];
  expect(Math.abs(two.length - one.length / 2)).toBeLessThanOrEqual(1); // its columns are a little wider
  for (const [width, height] of two) expect(width).toBeGreaterThan(height);
  for (const [width, height] of one) expect(width).toBeLessThan(height);
});

test("a measured value stands in its blank, and its changes say what was planned", async (context) => {
  const planned = designWith(WORKED);
  const design = { ...planned, measured: { ...planned.measured, ironThickness: 3.6, coreWidth: 50.1 } };
  const text = textOf(requireProgram(context, "pdftotext"), await pdfOf(traveller(design)));
  expect(text).toMatch(/coreWidth = 50\.1 mm/);
  expect(text).toContain("was 48 mm");
});

test("names and woods of any length and script stay on the page", async (context) => {
  const name = "a".repeat(60);
  const design = { ...designWith(WORKED), name, wood: { ...designWith(WORKED).wood, body: "木".repeat(60) } };
  const words = wordsOf(requireProgram(context, "pdftotext"), await pdfOf(traveller(design)));
  for (const { text, box, size } of words) expect(box.right, text).toBeLessThan(size.width - 8);
});

describe.each(["apprentice-smoother", "trestle-jack", "figured-finisher", "workshop-jointer", "tapered-panel"])(
  "%s",
  (name) => {
    test("every step stands on a page of its own and the card on two, in mm on A4 and Letter, in inches on Letter", async (context) => {
      const pdftotext = requireProgram(context, "pdftotext");
      const pages = 1 + JOB_STEPS.length; // the first page is of the whole job
      for (const units of ["mm", "in"] as const) {
        const told = traveller({ ...example(name), units });
        for (const paper of units === "mm" ? (["A4", "Letter"] as const) : (["Letter"] as const)) {
          const text = textOf(pdftotext, await pdfOf(told, paper));
          expect(text, `${units} ${paper}`).toContain(`page ${pages} of ${pages} `);
          expect(textOf(pdftotext, await cardOf(told, paper)), `${units} ${paper}`).toContain("page 2 of 2 ");
          expect(text.match(/[^.]{0,40}, continued/)?.[0], `${units} ${paper}`).toBeUndefined();
          expect(text.match(/Check before going on/g)).toHaveLength(JOB_STEPS.length - 1); // after the last nothing follows
        }
      }
    });
  },
);
