// Every figure in a survey's text is the survey's own, in the maker's unit, with all its decimals; and what a bed's survey keeps
// when the bed is seen from the other side, or is curved twice as much.
import type { Units } from "@lamplane/parameters/units";
import { describe, expect, test } from "vitest";
import { type BedSurvey, judgeBed, type SurveyReadings, surveyText } from "../../../packages/bench/src/survey/index.ts";
import { SURVEY } from "../../../packages/bench/src/words/survey.ts";
import { expectDecimalLength, expectFigure, partsOf } from "../../support/figures-in-text.ts";
import { BED, type BedForm, feeledGaps, gapsOf, heightsOf, PLACEMENTS, seededUniform } from "./beds.ts";

const UNITS = ["mm", "in"] as const;
const MM = { mm: 1, in: 25.4 } as const;

const expectFine = (text: string, mm: number, units: Units) =>
  expectDecimalLength(text, mm, units, { mm: 3, in: 4 }, true);
const expectBareFine = (text: string, mm: number, units: Units) =>
  expectFigure(text, mm / MM[units], { decimals: units === "mm" ? 3 : 4, fixed: true });
const expectPlace = (text: string, mm: number, units: Units) =>
  expectFigure(text, mm / MM[units], { decimals: units === "mm" ? 1 : 2, fixed: true });

const exact = (shape: BedForm): SurveyReadings => heightsOf(shape, 0.003, () => 0.5);
const spiked = (over: number, error: number): SurveyReadings => {
  const readings = heightsOf({ along: 0, across: 0, twist: 0 }, error, () => 0.5);
  const heights = readings.heights.map((reading, i) => ({
    ...reading,
    line: 10 + i,
    low: reading.low + (i === 7 ? over : 0),
    high: reading.high + (i === 7 ? over : 0),
  }));
  return { ...readings, heights };
};

/** Beds for each verdict and each reason for having none. */
const READ: Readonly<Record<string, SurveyReadings>> = {
  dome: exact({ along: -0.1, across: -0.06, twist: 0.08 }),
  "other dome": exact({ along: -0.1, across: -0.06, twist: -0.08 }),
  "dome askew": exact({ along: -0.1, across: 0.06, twist: 0.1 }),
  wind: exact({ along: 0, across: 0, twist: 0.21 }),
  "other wind": exact({ along: 0.01, across: 0, twist: -0.21 }),
  hollow: exact({ along: 0.05, across: 0.02, twist: 0.013 }),
  "too hollow": exact({ along: 0.3, across: 0.1, twist: 0.02 }),
  flat: exact({ along: 0, across: 0, twist: 0 }),
  "flat to leaves": gapsOf({ along: 0, across: 0, twist: 0 }, 0.02, seededUniform(1)),
  "hump possible": gapsOf({ along: 0, across: 0, twist: 0 }, 0.12, seededUniform(1)),
  "hollow in doubt": heightsOf({ along: 0.097, across: 0, twist: 0 }, 0.008, () => 0.5),
  "hollow, more likely too much": heightsOf({ along: 0.102, across: 0, twist: 0 }, 0.008, () => 0.5),
  "felt hollow": feeledGaps({ along: 0.07, across: 0.03, twist: 0 }, 0.02, "normal", seededUniform(3)),
  rough: spiked(0.2, 0.005),
  "low spot": spiked(-0.2, 0.005),
  "askew alone": gapsOf({ along: 0, across: 0, twist: 0 }, 0.02, seededUniform(1), 3, [
    [
      { along: 0, across: 7 },
      { along: 77, across: 29 },
    ],
  ]),
  "no diagonal": gapsOf({ along: 0, across: 0, twist: 0 }, 0.02, seededUniform(1), 5, PLACEMENTS.slice(0, 6)),
  "along alone": gapsOf({ along: 0.03, across: 0, twist: 0 }, 0.02, seededUniform(1), 3, PLACEMENTS.slice(0, 1)),
};
const SURVEYS = Object.entries(READ).map(([name, readings]) => ({ name, survey: judgeBed(readings, BED) }));
const CASES = SURVEYS.flatMap((each) => UNITS.map((units) => ({ ...each, units })));

test("the beds tried are judged in all five ways, and left open for all four reasons", () => {
  const verdicts = SURVEYS.map(({ survey }) => `${survey.verdict}${survey.passes ? "" : ", fails"}`);
  for (const verdict of ["flat", "hollow", "hollow, fails", "humped, fails", "wound, fails", "undecided, fails"])
    expect(verdicts).toContain(verdict);
  const open = SURVEYS.filter(({ survey }) => survey.verdict === "undecided").map(
    ({ survey }) => surveyText(survey, "mm")[0]!,
  );
  for (const why of [SURVEY.incomplete, SURVEY.rough]) expect(open).toContain(SURVEY.undecided({ why }));
  expect(open.some((line) => /a hump of/.test(line))).toBe(true);
  for (const mapped of [true, false]) {
    const doubtful = open.map((line) => partsOf(SURVEY.undecided, ["why"], line)!.why);
    expect(doubtful.some((why) => partsOf(SURVEY.maybeHollow, ["hollow", "allowed"], why, { mapped }))).toBe(true);
  }
});

/** Where a line runs, in the words of the text. */
function expectRun(text: string, line: BedSurvey["lines"][number], units: Units) {
  const { name, from, to } = line;
  if (name === "along" || name === "across") return expect(text).toBe(name);
  // From the tip, where along is 0, to the top: left is where across is least.
  if (name === "diagonal") return expect(text).toBe(SURVEY.diagonal({ side: from.across === 0 ? "left" : "right" }));
  const [, ...places] = /^line from (\S+) (?:mm|in)? ?up, (\S+) (?:mm|in)? ?across to (\S+).* up, (\S+).* across$/.exec(
    text,
  )!;
  for (const [i, mm] of [from.along, from.across, to.along, to.across].entries()) expectPlace(places[i]!, mm, units);
}

describe.each(CASES)("$name in $units", ({ survey, units }) => {
  const lines = surveyText(survey, units, true);
  const head = lines[0]!;

  test("the verdict's figures", () => {
    const { worst, hollowest, limits, possibleHump, possibleHollow, verdict, passes } = survey;
    if (verdict === "humped") {
      const parts = partsOf(SURVEY.humped, ["by", "where"], head)!;
      expectFine(parts.by, -worst!.hollow, units);
      return expectRun(parts.where, worst!, units);
    }
    if (verdict === "wound") {
      const parts = partsOf(SURVEY.wound, ["hump", "humpAt", "hollow", "hollowAt"], head)!;
      expectFine(parts.hump, -worst!.hollow, units);
      expectFine(parts.hollow, hollowest!.hollow, units);
      expectRun(parts.humpAt, worst!, units);
      return expectRun(parts.hollowAt, hollowest!, units);
    }
    if (verdict === "undecided") {
      const { why } = partsOf(SURVEY.undecided, ["why"], head)!;
      const hump = partsOf(SURVEY.maybeHump, ["hump", "limit"], why);
      const mapped = survey.work !== undefined;
      const hollow = partsOf(SURVEY.maybeHollow, ["hollow", "allowed"], why, { mapped });
      if (hump) {
        expectFine(hump.hump, possibleHump, units);
        return expectFine(hump.limit, limits.hump, units);
      }
      if (hollow) {
        expectFine(hollow.hollow, possibleHollow, units);
        return expectFine(hollow.allowed, limits.hollow, units);
      }
      return expect([SURVEY.incomplete, SURVEY.rough]).toContain(why);
    }
    const noHump = (text: string) => {
      if (possibleHump === 0) return expect(text).toBe(SURVEY.noHump);
      expectFine(partsOf(SURVEY.noHumpOver, ["hump"], text)!.hump, possibleHump, units);
    };
    if (verdict === "flat") return noHump(partsOf(SURVEY.flat, ["hump"], head)!.hump);
    const parts = passes
      ? partsOf(SURVEY.hollow, ["by", "where", "allowed", "hump"], head)!
      : partsOf(SURVEY.tooHollow, ["by", "where", "allowed"], head)!;
    expectFine(parts.by, hollowest!.hollow, units);
    expectRun(parts.where, hollowest!, units);
    expectFine(parts.allowed, limits.hollow, units);
    if ("hump" in parts) noHump(String(parts.hump));
  });

  test("each line of the bed: straight, hollow or humped, by how much, and its range", () => {
    const from = lines.indexOf(SURVEY.shape) + 1;
    expect(from > 0).toBe(survey.lines.length > 0);
    const worst = survey.worst?.name === "oblique" && survey.worst.hollow < 0 ? [survey.worst] : [];
    const rows = lines.slice(from, from + survey.lines.length + worst.length);
    // Shapes stand under each other, and so do ranges.
    const columns = rows.map((row) =>
      [row.search(/(straight|hollow|humped) \S+ \S+ +\S+ to \S+$/), row.search(/\S+ to \S+$/)].join(),
    );
    expect(new Set(columns).size).toBeLessThanOrEqual(1);
    [...survey.lines, ...worst].forEach((line, i) => {
      const [, run, shape, by, low, high] = /^(.*?) {2,}(straight|hollow|humped) (\S+ \S+) +(\S+) to (\S+)$/.exec(
        lines[from + i]!,
      )!;
      expectRun(run!, line, units);
      expectFine(by!, Math.abs(line.hollow), units);
      const isNothing = Number.parseFloat(by!) === 0;
      expect(shape).toBe(isNothing ? "straight" : line.hollow < 0 ? "humped" : "hollow");
      for (const [text, mm] of [
        [low!, line.likely.low],
        [high!, line.likely.high],
      ] as const) {
        expect(text[0]).toBe(mm < 0 ? "-" : "+");
        expectBareFine(text, mm, units);
      }
    });
  });

  test("the readings to look at again: where, what was read, what fits, and by how much", () => {
    const keys = ["read", "fitted", "side", "by"] as const;
    survey.fit.doubtful.forEach((doubtful, i) => {
      const line = lines[1 + survey.missing.length + i]!;
      const where = /^Check the (.*?): /.exec(line)![1]!;
      const parts =
        /^Check the .*?: (?<read>.*?) read, (?<fitted>.*?) fits .* is (?<by>.*?) too (?<side>high|low) /.exec(line)!
          .groups as Record<(typeof keys)[number], string>;
      const [, kind, along, across, number] = /^(\w+) at (\S+) up, (\S+) across \(line (\d+)\)$/.exec(where)!;
      expect([kind, Number(number)]).toEqual([doubtful.kind, doubtful.line]);
      expectPlace(along!, doubtful.place.along, units);
      expectPlace(across!, doubtful.place.across, units);
      const [low, high] = parts.read.split(" to ");
      expectBareFine(low!, doubtful.low, units);
      expectFine(high!, doubtful.high, units);
      expectFine(parts.fitted, doubtful.fitted, units);
      expectFine(parts.by, Math.abs(doubtful.proud), units);
      expect(parts.side).toBe(doubtful.proud > 0 ? "high" : "low");
    });
  });

  test("how many readings there are, how many to check the others, and their misfit", () => {
    const { readings, spare, chiSquare, chiSquareLimit, errors } = survey.fit;
    const parts = partsOf(SURVEY.fit, ["count", "check", "range"], lines.at(-1)!)!;
    expect(Number(parts.count)).toBe(readings);
    expect(parts.range).toBe(errors === "normal" ? SURVEY.ownError : SURVEY.scatter);
    if (chiSquareLimit === undefined) return expect(parts.check).toBe(SURVEY.noSpare);
    const check = partsOf(SURVEY.spare, ["spare", "misfit", "limit"], parts.check)!;
    expect(Number(check.spare)).toBe(spare);
    expectFigure(check.misfit, chiSquare, { decimals: 1, fixed: true });
    expectFigure(check.limit, chiSquareLimit, { decimals: 1, fixed: true });
  });

  test("the map: places up and across, and whole hundredths of a mm or thousandths of an inch", () => {
    const at = lines.indexOf(SURVEY.map({ unit: units }));
    expect(at >= 0).toBe(survey.work !== undefined);
    if (!survey.work) return;
    const { along, across, takeOff } = survey.work;
    const columns = lines[at + 2]!.trim().split(/ +/);
    expect(columns.at(-1)).toBe(units);
    // Places of the map have no zeros at their end, unlike those in a sentence.
    const expectStation = (text: string, mm: number) =>
      expectFigure(text, mm / MM[units], { decimals: units === "mm" ? 1 : 2 });
    for (const [j, mm] of across.entries()) expectStation(columns[j]!, mm);
    const fine = units === "mm" ? 0.01 : 0.0254;
    takeOff.forEach((row, i) => {
      const line = lines[at + 3 + i]!;
      expect(/^[a-z]*/.exec(line)![0]).toBe(i === 0 ? "tip" : i === takeOff.length - 1 ? "top" : "");
      const [place, cells] = line.replace(/^[a-z]+/, "").split("|");
      expectStation(place!.trim(), along[i]!);
      const amounts = cells!
        .trim()
        .split(/ +/)
        .map((cell) => (cell === "." ? 0 : Number(cell)));
      for (const [j, off] of row.entries()) expect(Math.abs(amounts[j]! - off / fine)).toBeLessThan(0.5 + 1e-6);
    });
    expect(new Set(lines.slice(at + 3, at + 3 + takeOff.length).map((line) => line.indexOf("|"))).size).toBe(1);
    // Left stands over the first column, right over the last.
    const [sides, first] = [lines[at + 1]!, lines[at + 2]!];
    expect(sides.indexOf(SURVEY.left) + SURVEY.left.length).toBe(first.indexOf(columns[0]!) + columns[0]!.length);
    expect(sides.length).toBe(first.length - units.length - 1);
  });

  test("in short: where there is work, the map alone; else the lines without their ranges", () => {
    const short = surveyText(survey, units);
    expect(short[0]).toBe(head);
    const isChecked = survey.fit.chiSquareLimit !== undefined && survey.fit.errors === "normal";
    expect(short.includes(lines.at(-1)!)).toBe(!isChecked);
    expect(short.includes(SURVEY.map({ unit: units }))).toBe(survey.work !== undefined);
    expect(short.some((line) => line === SURVEY.shape || / to [+-]\d/.test(line))).toBe(false);
    expect(short.some((line) => line.startsWith("along "))).toBe(
      survey.work === undefined && survey.lines.some(({ name }) => name === "along"),
    );
  });
});

const expectHollow = (line: BedSurvey["worst"], wanted: number | undefined) =>
  expect(line?.hollow).toEqual(wanted === undefined ? undefined : expect.closeTo(wanted, 5));

function expectOffs({ work }: BedSurvey, wanted: readonly (readonly number[])[] | undefined) {
  expect(work?.takeOff).toEqual(wanted?.map((row) => row.map((off) => expect.closeTo(off, 6))));
}

test("a hump that is just allowed is not what leaves a bed open", () => {
  const { survey } = SURVEYS.find(({ name }) => name === "hollow in doubt")!;
  const why = (possibleHump: number) => surveyText({ ...survey, possibleHump }, "mm")[0]!;
  const { hump } = survey.limits;
  expect([why(hump), why(hump * 1.01)].map((line) => /the hollow may be/.test(line))).toEqual([true, false]);
});

/** The readings of the same bed as its mirror image shows them: left is right. */
function mirrored(readings: SurveyReadings): SurveyReadings {
  const over = <Place extends { readonly along: number; readonly across: number }>(place: Place) => ({
    ...place,
    across: BED.width - place.across,
  });
  return {
    ...readings,
    straightedges: readings.straightedges.map(({ from, to, gaps }) => ({
      from: over(from),
      to: over(to),
      gaps: gaps.map((gap) => ({ ...gap, place: over(gap.place) })),
    })),
    heights: readings.heights.map((height) => ({ ...height, place: over(height.place) })),
  };
}

test.each(Object.entries(READ))("%s: its mirror image is judged the same, with left for right", (_, readings) => {
  const [one, other] = [judgeBed(readings, BED), judgeBed(mirrored(readings), BED)];
  expect([other.verdict, other.passes]).toEqual([one.verdict, one.passes]);
  expectHollow(other.worst, one.worst?.hollow);
  expectHollow(other.hollowest, one.hollowest?.hollow);
  if (one.missing.length > 0) return;
  expect(other.possibleHump).toBeCloseTo(one.possibleHump, 5);
  expect(other.possibleHollow).toBeCloseTo(one.possibleHollow, 5);
  const [[most], [turned]] = [one.principal!, other.principal!];
  expect(turned.curvature).toBeCloseTo(most.curvature, 9);
  // An angle and one half a turn on are the same line.
  expect(Math.abs(Math.sin(((turned.angle + most.angle) * Math.PI) / 180))).toBeLessThan(
    one.principal![0].curvature - one.principal![1].curvature > 1e-9 ? 1e-6 : 2,
  );
  expectOffs(
    other,
    one.work?.takeOff.map((row) => row.toReversed()),
  );
});

test("twice the curve, read twice as coarsely and judged by twice the limits, is the same verdict with twice the figures", () => {
  const twice = (readings: SurveyReadings): SurveyReadings => ({
    ...readings,
    straightedges: readings.straightedges.map((edge) => ({
      ...edge,
      gaps: edge.gaps.map((gap) => ({ ...gap, low: 2 * gap.low, high: 2 * gap.high })),
    })),
    heights: readings.heights.map((height) => ({ ...height, low: 2 * height.low, high: 2 * height.high })),
  });
  for (const { name, survey } of SURVEYS) {
    const { hollow, hump, feel } = survey.limits;
    const double = judgeBed(twice(READ[name]!), BED, { hollow: 2 * hollow, hump: 2 * hump, feel: 2 * feel });
    expect([name, double.verdict, double.passes]).toEqual([name, survey.verdict, survey.passes]);
    expectHollow(double.worst, survey.worst && 2 * survey.worst.hollow);
    expect(double.fit.chiSquare).toBeCloseTo(survey.fit.chiSquare, 4);
    expectOffs(
      double,
      survey.work?.takeOff.map((row) => row.map((off) => 2 * off)),
    );
    if (survey.missing.length > 0) continue;
    expect(double.possibleHump).toBeCloseTo(2 * survey.possibleHump, 3);
    expect(double.possibleHollow).toBeCloseTo(2 * survey.possibleHollow, 3);
  }
});
