// Verdicts on made-up beds, and how often the ranges told to the maker hold the truth.
import type { Interval } from "@lamplane/geometry/numerics";
import { describe, expect, it } from "vitest";
import { bedCurvature } from "../../../packages/bench/src/survey/curvature.ts";
import {
  type BedSurvey,
  type Direction,
  judgeBed,
  type Sagitta,
  type SurveyReadings,
} from "../../../packages/bench/src/survey/index.ts";
import { BED, type BedForm, diagonalOf, gapsOf, heightsOf, PLACEMENTS, randomBetween, seededUniform } from "./beds.ts";

const SEEDS = Array.from({ length: 100 }, (_, seed) => seed);
const FEEL = 0.005;
const FLAT: BedForm = { along: 0, across: 0, twist: 0 };

const someShape = (random: () => number): BedForm => ({
  along: randomBetween(random, -0.2, 0.2),
  across: randomBetween(random, -0.2, 0.2),
  twist: randomBetween(random, -0.2, 0.2),
});

/** Share of seeds, in percent, whose survey passes `holds`. */
const percent = (holds: (seed: number) => boolean) => (SEEDS.filter(holds).length / SEEDS.length) * 100;

const truthOf = (shape: BedForm) => [shape.along, shape.across, diagonalOf(shape, 1), diagonalOf(shape, -1)];

const within = (value: number, { low, high }: { low: number; high: number }) => low <= value && value <= high;

describe("the fitted surface", () => {
  it("is exact for exact readings, whatever the tilt", () => {
    const shape = { along: 0.12, across: -0.05, twist: 0.03 };
    const survey = judgeBed(
      heightsOf(shape, 1e-9, () => 0.5),
      BED,
    );
    survey.lines.forEach((line, i) => {
      expect(line.hollow).toBeCloseTo(truthOf(shape)[i]!, 9);
    });
  });

  it("agrees on gaps and on heights of the same bed", () => {
    const shape = { along: -0.15, across: 0.1, twist: 0.06 };
    const gaps = judgeBed(gapsOf(shape, 1e-6, seededUniform(3)), BED);
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
    const [first, second] = judgeBed(
      heightsOf(shape, 1e-9, () => 0.5),
      BED,
    ).principal!;
    expect(first.angle).toBeCloseTo(30, 6);
    expect(first.curvature).toBeCloseTo(2 * k, 10);
    // Turned 30°, the chord through the centre meets the tip and the top before the edges: 80 / cos 30° long.
    expect(first.hollow).toBeCloseTo((2 * k * (BED.length / cos) ** 2) / 8, 9);
    expect(second.angle).toBeCloseTo(-60, 6);
    expect(second.hollow).toBeCloseTo(0, 6);
  });
});

describe("ranges hold the truth as often as they say", () => {
  const DIRECTIONS: readonly Direction[] = [
    [1, 0],
    [0, 1],
    [1, 1],
    [1, -1],
    [1, 0.4],
  ];
  const truth = ({ along, across, twist }: BedForm, [x, y]: Direction) =>
    along * x * x + twist * x * y + across * y * y;
  type Read = (shape: BedForm, random: () => number) => SurveyReadings;

  /** In how many of a hundred surveys of random beds the range holds the truth, for each direction. */
  const coverage = (read: Read, rangeOf: (sagitta: Sagitta) => Interval) => {
    const surveys = SEEDS.map((seed) => {
      const random = seededUniform(seed);
      const shape = someShape(random);
      return { shape, curvature: bedCurvature(read(shape, random), BED, FEEL) };
    });
    return DIRECTIONS.map((direction) => {
      const held = surveys.filter(({ shape, curvature }) =>
        within(truth(shape, direction), rangeOf(curvature.sagitta(direction)!)),
      );
      return (held.length / SEEDS.length) * 100;
    });
  };

  it.each<[string, Read]>([
    ["a gauge as good as stated", (shape, random) => heightsOf(shape, 0.01, random)],
    ["a gauge four times worse than stated, by its scatter", (shape, random) => heightsOf(shape, 0.005, random, 4)],
    ["few stations", (shape, random) => heightsOf(shape, 0.02, random, 1, 3, 3)],
  ])("95 %% means 90 to 99 in 100 with %s", (_, read) => {
    for (const share of coverage(read, ({ likely }) => likely)) {
      expect(share).toBeGreaterThanOrEqual(90);
      expect(share).toBeLessThanOrEqual(99);
    }
  });

  it.each<[string, Read]>([
    ["a gauge as good as stated", (shape, random) => heightsOf(shape, 0.01, random)],
    ["feelers under a straightedge that rocks", (shape, random) => gapsOf(shape, 0.02, random)],
    ["feelers thicker than most of the shape", (shape, random) => gapsOf(shape, 0.1, random, 3)],
  ])("certain means always with %s", (_, read) => {
    for (const share of coverage(read, ({ certain }) => certain)) expect(share).toBe(100);
  });

  it("with feelers the likely range never claims more than the certain one", () => {
    const read: Read = (shape, random) => gapsOf(shape, 0.04, random);
    for (const share of coverage(read, ({ likely }) => likely)) expect(share).toBe(100);
  });

  it("where readings contradict each other, certain still holds every fit of readings off by their error", () => {
    const all = heightsOf({ along: 0.1, across: 0, twist: 0 }, 0.01, seededUniform(5));
    const shifted = (by: (i: number) => number) => ({
      ...all,
      heights: all.heights.map((reading, i) => {
        const off = by(i);
        return { ...reading, low: reading.low + off, high: reading.high + off };
      }),
    });
    const contradicting = (i: number) => (i === 7 ? 0.1 : 0);
    const told = bedCurvature(shifted(contradicting), BED, FEEL);
    expect(told.fit.allWithin).toBe(false);
    const random = seededUniform(9);
    for (let run = 0; run < 200; run++) {
      const off = shifted((i) => contradicting(i) + (random() < 0.5 ? -0.01 : 0.01));
      const { hollow } = bedCurvature(off, BED, FEEL).sagitta([1, 0])!;
      expect(within(hollow, told.sagitta([1, 0])!.certain)).toBe(true);
    }
  });

  it("all directions at once: 95 in 100 or more hold in every one", () => {
    const held = percent((seed) => {
      const random = seededUniform(seed);
      const shape = someShape(random);
      const curvature = bedCurvature(heightsOf(shape, 0.01, random), BED, FEEL);
      return DIRECTIONS.every((direction) =>
        within(truth(shape, direction), curvature.sagitta(direction)!.likelyAnywhere),
      );
    });
    expect(held).toBeGreaterThanOrEqual(95);
  });

  it("leaves of 0.04 that go in nowhere leave room for that hollow and two thirds of that hump on each line read, the feel beside it", () => {
    for (const { certain } of judgeBed(gapsOf(FLAT, 0.04, seededUniform(1)), BED).lines) {
      expect(certain.low).toBeCloseTo(-(0.04 + 1.25 * FEEL) / 1.5, 9);
      expect(certain.high).toBeCloseTo(0.04 + 1.25 * FEEL, 9);
    }
  });
});

it("a reading without width is our bug, never a silent answer", () => {
  const { heights, ...rest } = heightsOf(FLAT, 0.01, seededUniform(1));
  const exact = heights.map((reading) => ({ ...reading, low: reading.high }));
  expect(() => judgeBed({ ...rest, heights: exact }, BED)).toThrow(/between two values/);
});

describe("verdicts", () => {
  const judged = (shape: BedForm, error = 0.005, seed = 1) =>
    judgeBed(heightsOf(shape, error, seededUniform(seed)), BED);

  it("flat passes", () => {
    expect(judged(FLAT)).toMatchObject({ verdict: "flat", passes: true, missing: [], work: undefined });
  });

  it("slightly hollow passes", () => {
    expect(judged({ along: 0.05, across: 0.03, twist: 0 })).toMatchObject({ verdict: "hollow", passes: true });
  });

  it("hollow over the limit does not, and the limit is the maker's", () => {
    const shape = { along: 0.15, across: 0.02, twist: 0 };
    expect(judged(shape)).toMatchObject({ verdict: "hollow", passes: false });
    expect(judgeBed(heightsOf(shape, 0.005, seededUniform(1)), BED, { hollow: 0.3 })).toMatchObject({ passes: true });
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

  it("a saddle is humped, not in wind", () => {
    expect(judged({ along: -0.1, across: 0.1, twist: 0 }).verdict).toBe("humped");
  });

  it("coarse readings of a flat bed decide nothing", () => {
    const survey = judged(FLAT, 0.05);
    expect(survey).toMatchObject({ verdict: "undecided", passes: false, work: undefined });
    expect(survey.possibleHump).toBeGreaterThan(0.05);
  });

  it("a high spot between the stations of a hollow bed does not pass", () => {
    const { heights, ...rest } = heightsOf({ along: 0.04, across: 0.02, twist: 0 }, 0.003, seededUniform(1));
    const spot = heights[4]!;
    const bumped = heights.map((reading) =>
      reading === spot ? { ...reading, low: reading.low + 0.05, high: reading.high + 0.05 } : reading,
    );
    const survey = judgeBed({ ...rest, heights: bumped }, BED);
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
    expect(percent((seed) => judgeBed(gapsOf(humped, 0.04, seededUniform(seed)), BED).passes)).toBe(0);
  });

  it("a bed flat under every leaf of 0.02 passes", () => {
    expect(judgeBed(gapsOf(FLAT, 0.02, seededUniform(1)), BED)).toMatchObject({ verdict: "flat", passes: true });
  });

  it("a bed flat under the usual smallest leaves passes: 0.04 mm and 0.0015 in, not 0.08 mm", () => {
    const verdictUnder = (leaf: number) => judgeBed(gapsOf(FLAT, leaf, seededUniform(1), 3), BED).verdict;
    expect([0.0381, 0.04, 0.08].map(verdictUnder)).toEqual(["flat", "flat", "undecided"]);
  });

  it.each([
    ["few readings", 3, 0],
    ["many, which leave little room for certain", 20, 0],
    ["many, one of which contradicts the others", 20, 0.03],
  ])("the hump left possible is never less than either range leaves: %s", (_, rows, slip) => {
    const readings = heightsOf(FLAT, 0.01, seededUniform(2), 1, rows);
    const [first, ...others] = readings.heights;
    const heights = [{ ...first!, low: first!.low + slip, high: first!.high + slip }, ...others];
    const { possibleHump, lines } = judgeBed({ ...readings, heights }, BED);
    for (const { likelyAnywhere, certain } of lines) {
      expect(possibleHump).toBeGreaterThanOrEqual(-likelyAnywhere.low);
      expect(possibleHump).toBeGreaterThanOrEqual(-certain.low);
    }
  });

  it("more readings with the same thick leaf rule out nothing more", () => {
    const few = judgeBed(gapsOf(FLAT, 0.08, seededUniform(1), 3), BED);
    const many = judgeBed(gapsOf(FLAT, 0.08, seededUniform(1), 15), BED);
    expect(few.verdict).toBe("undecided");
    expect(many.verdict).toBe("undecided");
  });
});

describe("a bed near its limits", () => {
  it("hollow by 0.1125 does not pass a limit of 0.1: at the ends the gap is 0, not the middle of its leaf", () => {
    const shape = { along: 0.1125, across: 0, twist: 0 };
    const survey = judgeBed(gapsOf(shape, 0.04, seededUniform(1), 3), BED, { hollow: 0.1 });
    expect(survey.passes).toBe(false);
    expect(survey.possibleHollow).toBeGreaterThan(0.1125);
    expect(survey.lines[0]!.hollow).toBeGreaterThan(0.09);
  });

  it("5 µm of noise on an exact surface is a surface", () => {
    const random = seededUniform(4);
    const exact = gapsOf({ along: 0.03, across: 0.01, twist: 0 }, 1e-6, random);
    const straightedges = exact.straightedges.map(({ gaps, ...edge }) => ({
      ...edge,
      gaps: gaps.map((reading, i) => {
        const felt = Math.max(0, reading.low + (i % 4 === 0 ? 0 : randomBetween(random, -0.005, 0.005)));
        return { ...reading, low: Math.max(0, felt - 0.0005), high: felt + 0.0005 };
      }),
    }));
    const survey = judgeBed({ ...exact, straightedges }, BED);
    expect(survey).toMatchObject({ verdict: "hollow", passes: true });
  });
});

describe("what cannot be told is said", () => {
  const only = (keep: (i: number) => boolean) =>
    judgeBed(
      gapsOf(
        FLAT,
        0.02,
        seededUniform(1),
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
    const all = heightsOf(FLAT, 0.01, seededUniform(1));
    const survey = judgeBed({ ...all, heights: all.heights.filter(({ place }) => place.across === 25) }, BED);
    expect(told(survey)).toEqual(["along"]);
  });

  it("a hump that is shown fails, although the rest is missing", () => {
    const humped = gapsOf({ along: -0.2, across: 0, twist: 0 }, 0.02, seededUniform(1), 5, PLACEMENTS.slice(0, 3));
    expect(judgeBed(humped, BED)).toMatchObject({ verdict: "humped", passes: false });
  });
});
