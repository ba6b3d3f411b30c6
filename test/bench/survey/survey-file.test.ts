// Readings files: what is understood, what is refused and where; no text of any kind makes it throw.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseSurvey, readingFaultText } from "../../../packages/bench/src/survey/index.ts";
import { BED } from "./beds.ts";

const GOOD = `units: mm
straightedge:
  - from: [0, 10]
    to: [80, 10]
    gaps: [{at: 0, refuses: 0.04}, {at: 40, fits: 0.10, refuses: 0.12}, {at: 80, fits: 0, refuses: 0.04}]
heights:
  error: 0.01
  points: [[0, 0, 0.00], [20, 0, 0.01], [40, 0, 0.02], [0, 25, -0.01]]
`;

const faultsOf = (text: string) => parseSurvey(text, BED).faults ?? [];
/** Line, column and path of each fault. */
const placesOf = (text: string) => faultsOf(text).map(({ line, column, path }) => `${line}:${column} ${path}`);
const changed = (from: string, to: string) => {
  expect(GOOD).toContain(from);
  return GOOD.replace(from, to);
};

describe("a sound file", () => {
  it("gives stations on the bed and intervals in mm", () => {
    const { readings } = parseSurvey(GOOD, BED);
    expect(readings!.straightedges[0]!.gaps[1]).toEqual({
      place: { along: 40, across: 10 },
      low: 0.1,
      high: 0.12,
      line: 5,
      column: 36,
    });
    expect(readings!.straightedges[0]!.gaps.map(({ low, high }) => [low, high])).toEqual([
      [0, 0.04],
      [0.1, 0.12],
      [0, 0.04],
    ]);
    expect(readings!.heights[3]!.place).toEqual({ along: 0, across: 25 });
    expect(readings!.heights[3]!.low).toBeCloseTo(-0.02, 12);
    expect(readings!.heights[3]!.high).toBeCloseTo(0, 12);
  });

  it("may be in inches, and a length may carry its own unit", () => {
    const text = `units: in
straightedge:
  - from: [0, 1/2 in]
    to: [3, 12.7 mm]
    gaps: [{at: 0, refuses: 0.0015}, {at: 1 1/2 in, fits: 0.0015, refuses: 0.002}, {at: 3, refuses: 0.0015}]
`;
    const { readings } = parseSurvey(text, BED);
    expect(readings!.units).toBe("in");
    expect(readings!.straightedges[0]!.from).toEqual({ along: 0, across: 12.7 });
    expect(readings!.straightedges[0]!.gaps[1]).toMatchObject({ low: 0.0381, high: 0.0508 });
    expect(readings!.straightedges[0]!.gaps[1]!.place.along).toBeCloseTo(38.1, 9);
  });

  it("takes a limit as a message shows it: a bed of 80 mm ends at 3.15 in", () => {
    const points = "[[0, 0, 0], [3.15, 0, 0], [0, 1, 0], [1, 1, 0]]";
    expect(faultsOf(`units: in\nheights: {error: 0.0005, points: ${points}}`)).toEqual([]);
    expect(faultsOf(`units: in\nheights: {error: 0.0005, points: ${points.replace("3.15", "3.16")}}`)).toHaveLength(1);
  });

  it("places a station by its distance along a diagonal", () => {
    const text = changed("from: [0, 10]\n    to: [80, 10]", "from: [0, 0]\n    to: [60, 45]")
      .replace("at: 40", "at: 25")
      .replace("at: 80", "at: 75");
    const place = parseSurvey(text, BED).readings!.straightedges[0]!.gaps[1]!.place;
    expect(place.along).toBeCloseTo(20, 9);
    expect(place.across).toBeCloseTo(15, 9);
  });
});

describe("faults, each with its place", () => {
  it.each([
    ["an unknown key", changed("units: mm", "unit: mm"), ["1:1 unit"]],
    ["an unknown unit", changed("units: mm", "units: cm"), ["1:8 units"]],
    [
      "an unknown key in a reading",
      changed("{at: 0, refuses", "{at: 0, refuse"),
      ["5:12 straightedge.0.gaps.0.refuses", "5:20 straightedge.0.gaps.0.refuse"],
    ],
    ["a word for a number", changed("fits: 0.10", "fits: thin"), ["5:51 straightedge.0.gaps.1.fits"]],
    ["a number that is not finite", changed("0.12", ".inf"), ["5:66 straightedge.0.gaps.1.refuses"]],
    ["not a number", changed("0.12", ".nan"), ["5:66 straightedge.0.gaps.1.refuses"]],
    ["a gap under 0", changed("fits: 0.10", "fits: -0.1"), ["5:51 straightedge.0.gaps.1.fits"]],
    ["a place off the bed", changed("[80, 10]", "[81, 10]"), ["4:10 straightedge.0.to.0"]],
    ["a height off the bed", changed("[0, 25, -0.01]", "[0, 51, 0]"), ["8:60 heights.points.3.1"]],
    ["a station beyond the straightedge", changed("at: 80", "at: 81"), ["5:78 straightedge.0.gaps.2.at"]],
    ["fits over refuses", changed("fits: 0.10", "fits: 0.2"), ["5:65 straightedge.0.gaps.1.refuses"]],
    ["fits the same as refuses", changed("fits: 0.10", "fits: 0.12"), ["5:66 straightedge.0.gaps.1.refuses"]],
    [
      "nothing that refuses",
      changed("fits: 0.10, refuses: 0.12", "fits: 0.10"),
      ["5:36 straightedge.0.gaps.1.refuses"],
    ],
    ["two stations", changed(", {at: 80, fits: 0, refuses: 0.04}", ""), ["5:11 straightedge.0.gaps"]],
    ["one station twice", changed("at: 80", "at: 40"), ["5:73 straightedge.0.gaps.2"]],
    ["one height twice", changed("[20, 0, 0.01]", "[0, 0, 0.01]"), ["8:26 heights.points.1"]],
    ["a straightedge of no length", changed("[80, 10]", "[0, 10]"), ["4:9 straightedge.0.to"]],
    ["three heights", changed(", [0, 25, -0.01]", ""), ["8:11 heights.points"]],
    ["a height of two numbers", changed("[40, 0, 0.02]", "[40, 0]"), ["8:41 heights.points.2"]],
    ["no error", changed("  error: 0.01\n", ""), ["7:3 heights.error"]],
    ["an error of 0", changed("error: 0.01", "error: 0"), ["7:10 heights.error"]],
    ["no readings", "units: mm\n", ["1:1 "]],
    ["an empty file", "", ["1:1 "]],
    ["a list for the file", "- 1\n", ["1:1 "]],
    ["a list for the heights", "heights: [1]\n", ["1:10 heights"]],
    ["an alias", "straightedge: &x 1\nheights: *x\n", ["1:18 straightedge", "2:10 heights"]],
    ["a key twice", "units: mm\nunits: mm\n", ["1:1 ", "2:1 units"]],
    ["a bracket left open", "heights: {error: [\n", ["2:1 ", "2:1 "]],
  ])("%s", (_, text, places) => {
    expect(placesOf(text)).toEqual(places);
  });

  it("reports all at once, in the file's order, with what was read and what is allowed", () => {
    const text = changed("units: mm", "units: ells").replace("[80, 10]", "[90, 60]").replace("0.12", "thick");
    const faults = faultsOf(text);
    expect(faults.map(({ path }) => path)).toEqual([
      "units",
      "straightedge.0.to.0",
      "straightedge.0.to.1",
      "straightedge.0.gaps.1.refuses",
    ]);
    expect(readingFaultText(faults[0]!)).toBe('read "ells"; allowed: mm or in');
    expect(readingFaultText(faults[1]!)).toBe('read "90"; allowed: on the bed, up from its tip, 0 mm to 80 mm');
  });

  it("refuses more readings than anyone takes", () => {
    const points = Array.from({ length: 201 }, (_, i) => `[${i * 0.3}, 0, 0]`).join(", ");
    expect(faultsOf(`heights: {error: 0.01, points: [${points}]}`)).toHaveLength(1);
    const gaps = [0, 10, 20, 30].map((at) => `{at: ${at}, refuses: 0.04}`).join(", ");
    const placements = Array.from({ length: 51 }, () => `- {from: [0, 10], to: [80, 10], gaps: [${gaps}]}`).join("\n");
    const faults = faultsOf(`straightedge:\n${placements}\n`);
    expect(faults).toMatchObject([{ code: "fewer-readings", most: 200, count: 204 }]);
  });
});

describe("nothing throws", () => {
  it.each([
    ["brackets without end", "[".repeat(50_000)],
    ["mappings without end", "a: ".repeat(5_000)],
    ["a zero byte", "\u0000"],
    ["two documents", "a: 1\n---\nb: 2"],
    ["a mapping as a key", "? {a: 1}\n: 2"],
    ["a tag", "heights: !!binary x"],
    ["only a comment", "# nothing"],
  ])("%s", (_, text) => {
    expect(faultsOf(text).length).toBeGreaterThan(0);
  });

  it("any text is read or refused, never both", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 200 }), (text) => {
        const { readings, faults } = parseSurvey(text, BED);
        return readings === undefined ? faults!.length > 0 : faults === undefined;
      }),
    );
  });

  it("a sound file with any stretch of it replaced is read or refused", () => {
    const scrap = fc.oneof(
      fc.string({ maxLength: 8 }),
      fc.constantFrom("[", "]", "{", "}", ":", "- ", "*a", "&a ", "null", ".inf", "'", "\t"),
    );
    fc.assert(
      fc.property(fc.nat(GOOD.length), fc.nat(12), scrap, (at, length, text) => {
        const { readings, faults } = parseSurvey(GOOD.slice(0, at) + text + GOOD.slice(at + length), BED);
        const sound = (readings?.straightedges ?? [])
          .flatMap(({ gaps }) => gaps)
          .every(({ low, high }) => low >= 0 && low < high);
        return readings === undefined
          ? faults!.length > 0 && faults!.every(({ line, column }) => line >= 1 && column >= 1)
          : sound;
      }),
      { numRuns: 1000 },
    );
  });
});
