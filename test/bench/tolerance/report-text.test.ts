// Every figure in the tolerance report is the one that its sentence speaks of, in the maker's unit and to its decimals.
import { type ResultTolerance, type ToleranceReport, toleranceReport, toleranceText } from "@lamplane/bench";
import { type Design, isAssumption, TABLE } from "@lamplane/parameters/table";
import type { Units } from "@lamplane/parameters/units";
import { describe, expect, test } from "vitest";
import { mouthWords } from "../../../packages/bench/src/tolerance/index.ts";
import { TOLERANCE, TOLERANCE_NOTES } from "../../../packages/bench/src/words/tolerance.ts";
import { type Changes, designWith, taperedDesigns, WORKED } from "../../support/designs.ts";
import { expectDecimalLength, expectFigure, expectLength, partsOf } from "../../support/figures-in-text.ts";

/** A ± is finer than a rule is read, in inches with all its thousandths. */
const PLUS_MINUS = { mm: 2, in: 3 } as const;

const expectPlusMinus = (text: string, mm: number, units: Units) => {
  expect(text[0]).toBe("±");
  expectDecimalLength(text, mm, units, PLUS_MINUS, units === "in");
};
const expectHeld = (text: string, { tolerance, unit }: { tolerance: number; unit: string }, units: Units) => {
  if (unit === "mm") return expectPlusMinus(text, tolerance, units);
  expect(text[0]).toBe("±");
  expectFigure(text, tolerance, { decimals: 2, unit: "°" });
};
/** Shares are whole percents, from 10 % down with one decimal; a share below a thousandth is named so. */
const expectPercent = (text: string, share: number) =>
  expectFigure(text, share * 100, { decimals: share >= 0.1 || share === 0 ? 0 : 1, unit: "%" });

interface Case {
  readonly design: Design;
  readonly report: ToleranceReport;
  readonly units: Units;
}

const caseOf = (changes: Changes, units: Units): Case => {
  const design = designWith({ ...changes, units });
  return { design, report: toleranceReport(design, { runs: 300 }), units };
};

const UNITS = ["mm", "in"] as const;
/** A number of the maker's own for everything that is an assumption of ours. */
const OWN_NUMBERS: Changes = Object.fromEntries(
  Object.entries(TABLE.hand).flatMap(([key, row]) =>
    row.kind === "number" && isAssumption(row) ? [[`hand.${key}`, 1.01 * Number(row.default)]] : [],
  ),
);
const CHANGES: readonly Changes[] = [
  WORKED,
  { ...WORKED, "hand.placing": "marks" },
  { ...WORKED, "hand.mouthWithin": 0.05 },
  { ...WORKED, "hand.mouthWithin": 0.5 },
  { ...WORKED, "hand.placing": "marks", "hand.sawAngle": 2, "hand.mouthWithin": 0.6 },
  { ...WORKED, "sole.allowance": 0.05 },
  { ...WORKED, "sole.allowance": 0, "mouth.opening": 0.3 },
  { ...WORKED, ...OWN_NUMBERS },
  ...taperedDesigns(31, 5).map(({ changes }) => changes),
];
const CASES = CHANGES.flatMap((changes) => UNITS.map((units) => caseOf(changes, units)));

const isWhole = (result: ToleranceReport["results"][number]): result is ResultTolerance => "within" in result;
const mouthOf = ({ results }: ToleranceReport) => results[0] as ResultTolerance;

/** The first line that a sentence made, taken apart. */
function findParts<Key extends string>(
  lines: readonly string[],
  sentence: (data: never) => string,
  keys: readonly Key[],
  fixed = {},
) {
  for (const line of lines) {
    const parts = partsOf(sentence, keys, line.trim(), fixed);
    if (parts) return parts;
  }
  return undefined;
}

test("a front block that is set to its mark although contact was asked for is reported first, and no other", () => {
  const first = CASES.map(({ design, report }) => toleranceText(report, design)[0] === TOLERANCE.setToMark);
  expect(first).toEqual(
    CASES.map(({ design, report }) => report.placing === "marks" && design.hand.placing === "contact"),
  );
  expect(first).toContain(true);
});

test("with numbers of his own throughout no assumption is reported", () => {
  expect(Object.keys(OWN_NUMBERS).length).toBeGreaterThan(1);
  const { design, report } = caseOf({ ...WORKED, ...OWN_NUMBERS }, "mm");
  for (const all of [false, true])
    expect(toleranceText(report, design, all).slice(0, -TOLERANCE_NOTES.length).join("\n")).not.toMatch(/assumption/);
});

describe("the maker's question", () => {
  test.each(CASES)("has the mouth, the deciding step and what it must be held to (%#)", ({ design, report, units }) => {
    const lines = mouthWords(report, design);
    const mouth = mouthOf(report);
    const question = findParts(lines, TOLERANCE.mouth, ["planned", "within", "allowance"])!;
    expectLength(question.planned, design.mouth.opening, units);
    expectPlusMinus(question.within, mouth.within, units);
    expectLength(question.allowance, design.sole.allowance, units);
    const largest = mouth.lines.reduce((a, b) => (b.share > a.share ? b : a));
    const deciding = findParts(lines, TOLERANCE.deciding, ["held", "share"], largest)!;
    expectHeld(deciding.held, largest, units);
    expectPercent(deciding.share, largest.share);
    expectNeeded(lines, { design, report, units });
  });

  /** What is left of the variance wanted, once the others have theirs, is the deciding step's. */
  function expectNeeded(lines: readonly string[], { design, report, units }: Case) {
    const { within, deciding } = mouthOf(report);
    const { label } = deciding!;
    const wanted = design.hand.mouthWithin;
    const left = wanted ** 2 - (within ** 2 - deciding!.effect ** 2);
    const names = ["target", "needed"] as const;
    if (left <= 0) {
      const parts = findParts(lines, TOLERANCE.notEnough, ["target", "percent"], { label })!;
      expectPlusMinus(parts.target, wanted, units);
      return expectFigure(parts.percent, (100 * wanted) / within, { decimals: 0 });
    }
    const needed = { tolerance: Math.sqrt(left) / Math.abs(deciding!.derivative), unit: deciding!.unit };
    const parts =
      within <= wanted
        ? findParts(lines, TOLERANCE.alreadyWithin, [...names, "held"], { label })!
        : findParts(lines, TOLERANCE.needed, names, { label })!;
    expectPlusMinus(parts.target, wanted, units);
    expectHeld(parts.needed, needed, units);
    if ("held" in parts) expectHeld(String(parts.held), deciding!, units);
  }

  test.each(CASES)("has the other placing, and how far to stop short where there is wood for it (%#)", (each) => {
    const { design, report, units } = each;
    const { placedOtherwise, afterRepeat, mouthGrowth } = report.mouth;
    const lines = mouthWords(report, design);
    const to = report.placing === "contact" ? "marks" : "contact";
    const otherwise = findParts(lines, TOLERANCE.otherPlacing, ["within"], { to });
    expect(otherwise !== undefined).toBe(placedOtherwise !== undefined);
    if (otherwise) expectPlusMinus(otherwise.within, placedOtherwise!, units);
    // Stopped short by this, two standard deviations of the mouth are still to come off.
    const short = mouthOf(report).within / mouthGrowth;
    if (short > design.sole.allowance) {
      const { within, allowance } = findParts(lines, TOLERANCE.tooLittle, ["within", "allowance"])!;
      expectPlusMinus(within, afterRepeat.within, units);
      return expectLength(allowance, design.sole.allowance, units);
    }
    const repeat = findParts(lines, TOLERANCE.repeat, ["within", "short", "growth"])!;
    expectPlusMinus(repeat.within, afterRepeat.within, units);
    expectLength(repeat.short, short, units);
    expectFigure(repeat.growth, mouthGrowth, { decimals: 2 });
  });

  test("stopping short is advised with an allowance just large enough for it, and not of one just too small", () => {
    const { report } = caseOf(WORKED, "mm");
    const short = mouthOf(report).within / report.mouth.mouthGrowth;
    const tooLittle = (allowance: number) => {
      const { design, report } = caseOf({ ...WORKED, "sole.allowance": allowance, "hand.placing": "marks" }, "mm");
      const ours = mouthOf(report).within / report.mouth.mouthGrowth;
      expect(ours > allowance).toBe(allowance < short);
      return findParts(mouthWords(report, design), TOLERANCE.tooLittle, ["within", "allowance"]) !== undefined;
    };
    expect([tooLittle(short * 0.5), tooLittle(short * 3)]).toEqual([true, false]);
  });
});

/** Cells of a row that are set apart by two spaces or more. */
const cellsOf = (line: string) => line.trim().split(/ {2,}/);

describe("the table of results", () => {
  test.each(CASES)("has a row for each: planned, ± and the step with the largest share (%#)", (each) => {
    const { design, report, units } = each;
    const lines = toleranceText(report, design);
    for (const result of report.results.filter(isWhole)) {
      const row = lines.find((line) => line.startsWith(`${result.label}  `))!;
      const [, planned, within, decides] = cellsOf(row);
      expectLength(`${planned!.replace(/ \(|$/, (end) => ` ${units}${end}`)}`, result.planned, units);
      expectPlusMinus(within!, result.within, units);
      const shares = new Map<string, number>();
      for (const { step, share } of result.lines) shares.set(step, (shares.get(step) ?? 0) + share);
      const [step, share] = [...shares].reduce((most, next) => (next[1] > most[1] + 1e-9 ? next : most));
      expectPercent(partsOf(TOLERANCE.shared, ["share"], decides!, { step })!.share, share);
    }
  });

  test.each(CASES)("is set in columns that stand under their heads (%#)", ({ design, report, units }) => {
    const lines = toleranceText(report, design);
    const head = lines.find((line) => line.includes(TOLERANCE.heads({ units })))!;
    const columns = [TOLERANCE.heads({ units }), TOLERANCE.withinHead, TOLERANCE.stepHead].map((h) => head.indexOf(h));
    for (const { label } of report.results) {
      const row = lines.find((line) => line.startsWith(`${label}  `))!;
      for (const at of columns) expect(row.slice(at - 2, at + 1), row).toMatch(/^ {2}\S$/);
    }
  });

  test.each(CASES)("reports the trial, and each assumption once (%#)", ({ design, report }) => {
    const lines = toleranceText(report, design);
    const tried = findParts(lines, TOLERANCE.triedBriefly, ["runs", "closed", "tooLate", "collide"])!;
    expect(Number(tried.runs)).toBe(300);
    expectPercent(tried.closed, report.trial.closed);
    expectPercent(tried.tooLate, report.trial.tooLate);
    expectPercent(tried.collide, report.trial.collide);
    const assumed = new Set(report.results.filter(isWhole).flatMap(({ assumptions }) => assumptions));
    const wanted = [...new Set([...assumed].map(({ parameter }) => parameter))];
    const reported = lines.find((line) =>
      line.startsWith(TOLERANCE.assumedBriefly({ labels: [], parameters: [] }).slice(0, 15)),
    );
    expect(/ Set your own: (.*)\.$/.exec(reported ?? "")?.[1]?.split(", ") ?? []).toEqual(wanted);
  });
});

describe("every detail", () => {
  test.each(CASES)("has each result with its errors, largest share first, and its runs (%#)", (each) => {
    const { design, report, units } = each;
    const lines = toleranceText(report, design, true);
    for (const result of report.results.filter(isWhole)) {
      const from = lines.findIndex((line) => line.startsWith(`${result.label}: `));
      const [, planned, within] = /^(.*?) (±.*)$/.exec(lines[from]!.slice(result.label.length + 2).split("; ")[0]!)!;
      expectLength(planned!, result.planned, units);
      expectPlusMinus(within!, result.within, units);
      expectPlusMinus(partsOf(TOLERANCE.worst, ["worst"], lines[from]!.split("; ")[1]!)!.worst, result.worst, units);
      const rows = lines.slice(from + 1, from + 1 + result.lines.length).map(cellsOf);
      const reported = rows.map(([label]) => result.lines.find((line) => line.label === label)!);
      expect(new Set(reported).size).toBe(result.lines.length);
      for (const [i, line] of reported.slice(1).entries())
        expect(line.share).toBeLessThanOrEqual(reported[i]!.share + 1e-9);
      rows.forEach(([, held, effect, share, step], i) => {
        expectHeld(held!, reported[i]!, units);
        expectEffect(effect!, reported[i]!.effect, units);
        expectPercent(share!, reported[i]!.share);
        expect(step).toBe(reported[i]!.step);
      });
      expectAssumptions(lines.slice(from + 1 + rows.length), result, units);
      const runs = partsOf(
        TOLERANCE.runs,
        ["low", "high", "middle", "deviation"],
        lines[from + 1 + rows.length + result.assumptions.length]!.trim(),
      )!;
      const drawn = report.trial.results[result.key];
      for (const key of ["low", "high", "middle", "deviation"] as const) expectLength(runs[key], drawn[key], units);
    }
  });

  /** Under half of what is printed at all it is named as under that. */
  function expectEffect(text: string, mm: number, units: Units) {
    const least = units === "mm" ? 0.01 : 0.001 * 25.4;
    if (mm >= least / 2) return expectPlusMinus(text, mm, units);
    expect(text).toBe(TOLERANCE.under({ least: 10 ** -PLUS_MINUS[units], unit: units }));
  }

  function expectAssumptions(lines: readonly string[], { assumptions }: ResultTolerance, units: Units) {
    assumptions.forEach((assumption, i) => {
      const { label, parameter } = assumption;
      const keys = ["held", "share", "half", "double"] as const;
      const parts = partsOf(TOLERANCE.assumed, keys, lines[i]!.trim(), { label, parameter })!;
      expectHeld(parts.held, assumption, units);
      expectPercent(parts.share, assumption.share);
      expectPlusMinus(parts.half, assumption.withinAtHalf, units);
      expectPlusMinus(parts.double, assumption.withinAtDouble, units);
    });
  }

  test.each(CASES)("ends with the trial as a whole and the notes (%#)", ({ design, report, units }) => {
    const lines = toleranceText(report, design, true);
    const at = lines.indexOf(TOLERANCE.trial({ runs: 300, seed: 1 }));
    const shares = [report.trial.collide, report.trial.closed, report.trial.tooLate];
    [TOLERANCE.collide, TOLERANCE.closed, TOLERANCE.tooLate].forEach((words, i) => {
      const line = lines[at + 1 + i]!.trim();
      expect(line.endsWith(words)).toBe(true);
      expectPercent(line.slice(0, -words.length).trim(), shares[i]!);
    });
    const repeat = partsOf(TOLERANCE.afterRepeat, ["low", "high"], lines[at + 4]!.trim())!;
    expectLength(repeat.low, report.trial.mouthAfterRepeat.low, units);
    expectLength(repeat.high, report.trial.mouthAfterRepeat.high, units);
    expect(lines.slice(at + 6)).toEqual(TOLERANCE_NOTES);
  });
});
