// Verdicts on made-up beds, and how often the ranges told to the maker hold the truth.
import { describe, expect, it } from "vitest";
import { type BedSurvey, bedSurvey, type Readings } from "../../../../packages/parameters/src/bench/survey/index.ts";
import { BED, between, diagonalOf, gapsOf, heightsOf, PLACEMENTS, type Shape, seeded } from "./beds.ts";

const SEEDS = Array.from({ length: 400 }, (_, seed) => seed);
const FLAT: Shape = { along: 0, across: 0, twist: 0 };

const someShape = (random: () => number): Shape => ({
  along: between(random, -0.2, 0.2),
  across: between(random, -0.2, 0.2),
  twist: between(random, -0.2, 0.2),
});

/** Share of seeds, in percent, whose survey passes `holds`. */
const percent = (holds: (seed: number) => boolean) => (SEEDS.filter(holds).length / SEEDS.length) * 100;

const truthOf = (shape: Shape) => [shape.along, shape.across, diagonalOf(shape, 1), diagonalOf(shape, -1)];

const within = (value: number, { low, high }: { low: number; high: number }) => low <= value && value <= high;

describe("the fitted surface", () => {
  it("is exact for exact readings, whatever the tilt", () => {
    const shape = { along: 0.12, across: -0.05, twist: 0.03 };
    const survey = bedSurvey(
      heightsOf(shape, 1e-9, () => 0.5),
      BED,
    );
    survey.lines.forEach((line, i) => {
      expect(line.hollow).toBeCloseTo(truthOf(shape)[i]!, 9);
    });
  });

  it("agrees on gaps and on heights of the same bed", () => {
    const shape = { along: -0.15, across: 0.1, twist: 0.06 };
    const gaps = bedSurvey(gapsOf(shape, 1e-6, 0.2, seeded(3)), BED);
    gaps.lines.forEach((line, i) => {
      expect(line.hollow).toBeCloseTo(truthOf(shape)[i]!, 5);
    });
  });

  it("finds the principal directions of a bed curved obliquely", () => {
    // z = k·p², p the distance from the axis through the centre square to 30°: curvature 2k that way, none along the axis
    const k = 1e-4;
    const [cos, sin] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const shape = {
      along: (k * cos * cos * BED.length ** 2) / 4,
      across: (k * sin * sin * BED.width ** 2) / 4,
      twist: (2 * k * cos * sin * BED.length * BED.width) / 4,
    };
    const [first, second] = bedSurvey(
      heightsOf(shape, 1e-9, () => 0.5),
      BED,
    ).principal!;
    expect(first.angle).toBeCloseTo(30, 6);
    expect(first.curvature).toBeCloseTo(2 * k, 10);
    expect(first.hollow).toBeCloseTo(
      ((2 * k * (BED.length / cos) ** 2) / 8) * 1 * (sin / cos <= BED.width / BED.length ? 1 : Number.NaN),
      6,
    );
    expect(second.angle).toBeCloseTo(-60, 6);
    expect(second.hollow).toBeCloseTo(0, 6);
  });
});

describe("ranges hold the truth as often as they say", () => {
  const NAMES = ["along", "across", "rising diagonal", "falling diagonal"];
  const coverage = (
    readings: (shape: Shape, random: () => number) => Readings,
    of: (survey: BedSurvey, i: number) => { low: number; high: number },
  ) =>
    NAMES.map((_, i) =>
      percent((seed) => {
        const random = seeded(seed);
        const shape = someShape(random);
        return within(truthOf(shape)[i]!, of(bedSurvey(readings(shape, random), BED), i));
      }),
    );

  it("95 % with a gauge as good as stated: between 90 and 99 in 100", () => {
    for (const share of coverage(
      (shape, random) => heightsOf(shape, 0.01, random),
      (survey, i) => survey.lines[i]!.likely,
    )) {
      expect(share).toBeGreaterThanOrEqual(90);
      expect(share).toBeLessThanOrEqual(99);
    }
  });

  it("95 % with a gauge four times worse than stated, by its scatter", () => {
    const read = (shape: Shape, random: () => number) => heightsOf(shape, 0.005, random, 4);
    for (const share of coverage(read, (survey, i) => survey.lines[i]!.likely)) {
      expect(share).toBeGreaterThanOrEqual(90);
      expect(share).toBeLessThanOrEqual(99);
    }
  });

  it("the certain range always, with feeler gauges and a straightedge that rocks", () => {
    const read = (shape: Shape, random: () => number) => gapsOf(shape, 0.02, 0.3, random);
    for (const share of coverage(read, (survey, i) => survey.lines[i]!.certain)) expect(share).toBe(100);
  });

  it("95 % with feeler gauges: 90 in 100 or more although contact errs to one side", () => {
    const read = (shape: Shape, random: () => number) => gapsOf(shape, 0.01, 0.3, random);
    for (const share of coverage(read, (survey, i) => survey.lines[i]!.likely))
      expect(share).toBeGreaterThanOrEqual(90);
  });
});

describe("verdicts", () => {
  const judged = (shape: Shape, error = 0.005, seed = 1) => bedSurvey(heightsOf(shape, error, seeded(seed)), BED);

  it("flat passes", () => {
    expect(judged(FLAT)).toMatchObject({ verdict: "flat", passes: true, missing: [], work: undefined });
  });

  it("slightly hollow passes", () => {
    expect(judged({ along: 0.05, across: 0.03, twist: 0 })).toMatchObject({ verdict: "hollow", passes: true });
  });

  it("hollow over the limit does not, and the limit is the maker's", () => {
    const shape = { along: 0.15, across: 0.02, twist: 0 };
    expect(judged(shape)).toMatchObject({ verdict: "hollow", passes: false });
    expect(bedSurvey(heightsOf(shape, 0.005, seeded(1)), BED, { hollow: 0.3 })).toMatchObject({ passes: true });
  });

  it("a hump in one direction alone fails, with the direction", () => {
    const survey = judged({ along: 0, across: -0.06, twist: 0 });
    expect(survey).toMatchObject({ verdict: "humped", passes: false });
    expect(survey.worst!.hollow).toBeLessThan(-0.05);
  });

  it("a small hump fails where the readings are good enough to show it", () => {
    expect(judged({ along: -0.01, across: 0, twist: 0 }, 0.001).verdict).toBe("humped");
  });

  it("a twisted bed is in wind, humped on one diagonal and hollow on the other", () => {
    const survey = judged({ along: 0, across: 0, twist: 0.1 });
    expect(survey.verdict).toBe("wound");
    expect(survey.worst!.name).toBe("diagonal");
    expect(survey.worst!.from).toEqual({ along: 0, across: 50 });
  });

  it("coarse readings of a flat bed decide nothing", () => {
    const survey = judged(FLAT, 0.05);
    expect(survey).toMatchObject({ verdict: "undecided", passes: false, work: undefined });
    expect(survey.possibleHump).toBeGreaterThan(0.05);
  });

  it("a high spot between the stations of a hollow bed does not pass", () => {
    const { heights, ...rest } = heightsOf({ along: 0.04, across: 0.02, twist: 0 }, 0.003, seeded(1));
    const spot = heights[4]!;
    const bumped = heights.map((reading) =>
      reading === spot ? { ...reading, low: reading.low + 0.05, high: reading.high + 0.05 } : reading,
    );
    const survey = bedSurvey({ ...rest, heights: bumped }, BED);
    expect(survey).toMatchObject({ verdict: "undecided", passes: false });
    expect(survey.fit.errors).toBe("student");
    expect(survey.fit.doubtful.map(({ place }) => place)).toContainEqual(spot.place);
  });

  it("an honest flat bed is called humped or in wind at most 5 times in 100", () => {
    expect(percent((seed) => ["humped", "wound"].includes(judged(FLAT, 0.01, seed).verdict))).toBeLessThanOrEqual(5);
  });

  it("a bed humped by 0.1 never passes, by gauge or by feelers", () => {
    const humped = { along: -0.1, across: 0.02, twist: 0 };
    expect(percent((seed) => judged(humped, 0.02, seed).passes)).toBe(0);
    expect(percent((seed) => bedSurvey(gapsOf(humped, 0.04, 0.2, seeded(seed)), BED).passes)).toBe(0);
  });

  it("a bed flat under every leaf of 0.02 passes", () => {
    expect(bedSurvey(gapsOf(FLAT, 0.02, 0, seeded(1)), BED)).toMatchObject({ verdict: "flat", passes: true });
  });

  it("more readings with the same thick leaf rule out nothing more", () => {
    const few = bedSurvey(gapsOf(FLAT, 0.08, 0, seeded(1), 3), BED);
    const many = bedSurvey(gapsOf(FLAT, 0.08, 0, seeded(1), 15), BED);
    expect(few.verdict).toBe("undecided");
    expect(many.verdict).toBe("undecided");
  });
});

describe("what cannot be told is said", () => {
  const only = (keep: (i: number) => boolean) =>
    bedSurvey(
      gapsOf(
        FLAT,
        0.02,
        0,
        seeded(1),
        5,
        PLACEMENTS.filter((_, i) => keep(i)),
      ),
      BED,
    );
  const told = (survey: BedSurvey) => survey.lines.map(({ name }) => name);

  it("nothing across: only along is told", () => {
    const survey = only((i) => i < 3);
    expect(survey).toMatchObject({ verdict: "undecided", principal: undefined, possibleHump: Infinity });
    expect(told(survey)).toEqual(["along"]);
    expect(survey.missing.join()).toMatch(/across the bed.*wind/);
  });

  it("along and across without a diagonal: the wind is missing", () => {
    const survey = only((i) => i < 6);
    expect(told(survey)).toEqual(["along", "across"]);
    expect(survey.missing).toHaveLength(1);
    expect(survey.missing[0]).toMatch(/wind.*diagonal/);
  });

  it("both diagonals alone tell themselves, neither along nor across", () => {
    expect(told(only((i) => i >= 6))).toEqual(["diagonal", "diagonal"]);
  });

  it("heights on one line tell that line only", () => {
    const all = heightsOf(FLAT, 0.01, seeded(1));
    const survey = bedSurvey({ ...all, heights: all.heights.filter(({ place }) => place.across === 25) }, BED);
    expect(told(survey)).toEqual(["along"]);
  });

  it("a hump that is shown fails, although the rest is missing", () => {
    const humped = gapsOf({ along: -0.2, across: 0, twist: 0 }, 0.02, 0, seeded(1), 5, PLACEMENTS.slice(0, 3));
    expect(bedSurvey(humped, BED)).toMatchObject({ verdict: "humped", passes: false });
  });
});
