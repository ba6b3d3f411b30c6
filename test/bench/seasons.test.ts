// A year's movement: worked by hand once, then what must hold for any wood, rings and air.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { moistureRange, type SeasonsInput, seasonSeries, seasons } from "../../packages/bench/src/seasons/seasons.ts";
import { movementOf } from "../../packages/parameters/src/wood/moisture.ts";
import { findSpecies } from "../../packages/parameters/src/wood/species.ts";
import { theirsOf } from "../outside/check.ts";
import { moistureRow, WOOD_CHECKS } from "../outside/wood.ts";

const movementIn = (name: string, rings: number): SeasonsInput["movement"] => {
  const wood = findSpecies(name).found;
  if (!wood) throw new Error(name);
  return {
    bodyWidth: movementOf(wood, rings),
    bodyHeight: movementOf(wood, 90 - rings),
    wedgeWidth: movementOf(wood, rings),
    pinRadial: movementOf(wood, 90),
    pinTangential: movementOf(wood, 0),
  };
};
/** Moistures in air of 20 °C with 30 and 65 %. */
const [DRY, DAMP] = [theirsOf(WOOD_CHECKS, moistureRow(20, 30)), theirsOf(WOOD_CHECKS, moistureRow(20, 65))];
const BEECH: SeasonsInput = {
  planned: 9,
  driest: { temperature: 20, humidity: 30 },
  dampest: { temperature: 20, humidity: 65 },
  sizes: {
    ironWidth: 48,
    coreWidth: 49.6,
    cheek: 8,
    bodyHeight: 58,
    wedgeWidth: 48,
    pinBody: 48.8,
    tenonLength: 8.4,
    tenon: 9.5,
    hole: 9.7,
  },
  movement: movementIn("American beech", 0),
  leastGap: 0.3,
};

describe("American beech, flat sawn, cut at 9 %, air at 20 °C of 30 and 65 %", () => {
  // Moistures 6.1882 and 11.9963 (eq. 4-5, computed apart from the project); C_T 0.00431, C_R 0.00190 (table 13-5, read).
  const year = seasons(BEECH);
  test("the moistures", () => {
    expect(year.driest.moisture).toBeCloseTo(DRY, 4);
    expect(year.dampest.moisture).toBeCloseTo(DAMP, 4);
    expect(year.valid).toBe(true);
  });
  test("each in its own air (eq. 4-5, computed apart from the project)", () => {
    const { driest, dampest } = moistureRange({ driest: BEECH.driest, dampest: { temperature: 10, humidity: 70 } });
    expect(driest).toBeCloseTo(DRY, 4);
    expect(dampest).toBeCloseTo(theirsOf(WOOD_CHECKS, moistureRow(10, 70)), 4);
  });
  test("dry: the core loses 0.601 of the 1.6 mm over the iron, and three quarters of the room at the pin's shoulders", () => {
    // 49.6·0.00431·(6.1882 − 9) = −0.6011; 8·… = −0.0969; 58·0.00190·… = −0.3099 (by hand)
    expect(year.driest.coreWidth).toBeCloseTo(48.9989, 4);
    expect(year.driest.cheek).toBeCloseTo(7.903, 4);
    expect(year.driest.bodyHeight).toBeCloseTo(57.6901, 4);
    expect(year.driest.sideGap).toBeCloseTo(0.9989, 4);
    expect(year.driest.pinEndGap).toBeCloseTo(0.0995, 4);
    // The pin is 48.8 + 2·8.4 = 65.6 long as the body is wide; the body shrinks by 65.6·0.00431·2.8118 = 0.7950 (by hand).
    expect(year.driest.tenonProud).toBeCloseTo(0.795 / 2, 4);
  });
  test("damp: the tenon swells by up to 9.5·0.00431·2.9963 in a hole that keeps its size along the grain", () => {
    expect(year.dampest.coreWidth).toBeCloseTo(49.6 + 0.6405, 4);
    expect(year.dampest.tenonGap).toBeCloseTo(9.7 - 9.5 - 0.12268, 4);
  });
  test("as planned nothing has moved", () => {
    expect(year.planned).toMatchObject({ moisture: 9, coreWidth: 49.6, cheek: 8, bodyHeight: 58, wedgeWidth: 48 });
    expect(year.planned.sideGap).toBeCloseTo(1.6, 12);
    expect(year.planned.tenonGap).toBeCloseTo(0.2, 12);
  });
});

test("rings up on edge move the width less and the height more", () => {
  const flat = seasons(BEECH);
  const quarter = seasons({ ...BEECH, movement: movementIn("American beech", 90) });
  expect(quarter.driest.coreWidth!).toBeGreaterThan(flat.driest.coreWidth!);
  expect(quarter.driest.bodyHeight!).toBeLessThan(flat.driest.bodyHeight!);
});

test("a wood of which only the shrinkage is known moves by eq. 13-3; one not in the tables is left open", () => {
  const oak = seasons({ ...BEECH, movement: movementIn("white oak", 20) });
  expect(oak.driest.coreWidth!).toBeLessThan(49.6);
  const none = { coefficient: undefined, shrinkage: undefined };
  const unknown = seasons({ ...BEECH, movement: { ...BEECH.movement, bodyWidth: none } });
  expect(unknown.driest).toMatchObject({ coreWidth: undefined, sideGap: undefined, wedgeGap: undefined });
  expect(unknown.driest.bodyHeight).toBeDefined();
  expect(unknown.clearance()).toEqual({
    sideClearance: undefined,
    endClearance: undefined,
    wedgeClearance: undefined,
  });
});

test("says so where a coefficient alone is used beyond 6 … 14 %", () => {
  const movement = { ...BEECH.movement, bodyWidth: { coefficient: 0.00431, shrinkage: undefined } };
  const driest = { temperature: 20, humidity: 20 };
  expect(seasons({ ...BEECH, movement, driest }).valid).toBe(false);
  expect(seasons({ ...BEECH, driest }).valid).toBe(true);
});

const anyYear = fc
  .record({
    planned: fc.integer({ min: 3, max: 20 }),
    dry: fc.integer({ min: 5, max: 60 }),
    damp: fc.integer({ min: 61, max: 95 }),
    temperature: fc.integer({ min: -20, max: 50 }),
    rings: fc.integer({ min: 0, max: 90 }),
    body: fc.constantFrom("American beech", "sugar maple", "white oak", "lignum vitae", "purpleheart"),
    wedge: fc.constantFrom("American beech", "black cherry", "eastern hophornbeam"),
  })
  .map(({ planned, dry, damp, temperature, rings, body, wedge }): SeasonsInput => {
    const wedgeWidth = movementIn(wedge, rings).wedgeWidth;
    return {
      ...BEECH,
      planned,
      driest: { temperature, humidity: dry },
      dampest: { temperature, humidity: damp },
      movement: { ...movementIn(body, rings), wedgeWidth },
    };
  });

describe("any year", () => {
  test("the clearances to plan leave the least gap at the worst of the year, and no more", () => {
    fc.assert(
      fc.property(anyYear, (year) => {
        const { sizes, leastGap } = year;
        const { sideClearance, endClearance, wedgeClearance } = seasons(year).clearance();
        const worst = (changed: Partial<SeasonsInput["sizes"]>, gap: "sideGap" | "pinEndGap" | "wedgeGap") => {
          const { driest, planned, dampest } = seasons({ ...year, sizes: { ...sizes, ...changed } });
          return Math.min(driest[gap]!, planned[gap]!, dampest[gap]!);
        };
        expect(worst({ coreWidth: sizes.ironWidth + sideClearance! }, "sideGap")).toBeCloseTo(leastGap, 9);
        expect(worst({ pinBody: sizes.coreWidth - 2 * endClearance! }, "pinEndGap")).toBeCloseTo(leastGap, 9);
        expect(worst({ wedgeWidth: sizes.coreWidth - wedgeClearance! }, "wedgeGap")).toBeCloseTo(leastGap, 9);
      }),
    );
  });
  test("the series runs from dry to damp, and every size grows with the moisture, evenly within 6 … 14 % and without a step beyond", () => {
    fc.assert(
      fc.property(anyYear, (year) => {
        const series = seasonSeries(year, 13);
        expect(series).toHaveLength(13);
        expect(series[0]).toEqual(seasons(year).driest);
        expect(series[12]).toEqual(seasons(year).dampest);
        const growth = (key: "coreWidth" | "cheek" | "bodyHeight" | "wedgeWidth" | "moisture") =>
          series.slice(1).map((season, i) => season[key]! - series[i]![key]!);
        for (const key of ["coreWidth", "cheek", "bodyHeight", "wedgeWidth", "moisture"] as const) {
          const steps = growth(key);
          expect(Math.min(...steps), key).toBeGreaterThan(0);
          const even = series[0]!.moisture >= 6 && series[12]!.moisture <= 14;
          expect(Math.max(...steps), key).toBeLessThan(even ? Math.min(...steps) + 1e-9 : 2 * Math.min(...steps));
        }
      }),
    );
  });
});
