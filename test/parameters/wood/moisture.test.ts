// Moisture and movement: what must hold for any wood and any air; the handbook's values stand in test/outside.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  acrossRings,
  equilibriumMoisture,
  movementLaw,
  movementOf,
} from "../../../packages/parameters/src/wood/moisture.ts";
import { findSpecies, speciesNames } from "../../../packages/parameters/src/wood/species.ts";

const SUGAR_MAPLE = { radial: 0.00165, tangential: 0.00353 };

describe("equilibrium moisture", () => {
  test("dry air takes everything, and damper air never dries", () => {
    expect(equilibriumMoisture(20, 0)).toBe(0);
    fc.assert(
      fc.property(fc.double({ min: -20, max: 50, noNaN: true }), fc.integer({ min: 1, max: 98 }), (t, humidity) => {
        const [drier, damper] = [equilibriumMoisture(t, humidity), equilibriumMoisture(t, humidity + 1)];
        expect(drier).toBeGreaterThan(0);
        expect(damper).toBeGreaterThan(drier);
        expect(damper).toBeLessThan(30);
      }),
    );
  });
});

describe("movement", () => {
  const law = (coefficient?: number, shrinkage?: number) => (from: number, to: number) =>
    movementLaw({ coefficient, shrinkage }, [from, to]);

  test("drier is never wider: any species, rings, planned moisture and two moistures, however wide the year", () => {
    const moisture = fc.double({ min: 1, max: 30, noNaN: true });
    const rings = fc.double({ min: 0, max: 90, noNaN: true });
    for (const name of speciesNames()) {
      const movement = (angle: number) => movementOf(findSpecies(name).found!, angle);
      if (Object.values(movement(0)).every((each) => each === undefined)) continue;
      fc.assert(
        fc.property(moisture, moisture, moisture, rings, (planned, one, other, angle) => {
          const [dry, damp] = [Math.min(one, other), Math.max(one, other)];
          fc.pre(damp - dry > 1e-6);
          const width = (m: number) => movementLaw(movement(angle), [planned, m])!.change(50, planned, m);
          expect(width(dry), name).toBeLessThan(width(damp));
        }),
      );
    }
  });
  test("says where eq. 13-2 is used beyond 6 … 14 %, and knows nothing of a wood not in the tables", () => {
    expect(law(0.00353)(6, 14)!.valid).toBe(true);
    expect(law(0.00353)(5.9, 14)!.valid).toBe(false);
    expect(law(0.00353, 9.9)(5.9, 14)!.valid).toBe(true);
    expect(law(0.00353, 9.9)(5.9, 31)!.valid).toBe(false);
    expect(law()(8, 12)).toBeUndefined();
  });
  test("green to ovendry is the shrinkage itself, and wetter than that nothing moves", () => {
    const change = law(undefined, 9.9)(30, 0)!.change;
    expect(change(100, 30, 0)).toBeCloseTo(-9.9, 10);
    expect(change(100, 30, 45)).toBe(0);
  });
  test("eq. 13-3 there and back is where it began; both laws grow with moisture", () => {
    const moisture = fc.integer({ min: 0, max: 300 }).map((tenths) => tenths / 10);
    const shrinkage = fc.double({ min: 2, max: 13, noNaN: true });
    fc.assert(
      fc.property(moisture, moisture, shrinkage, (from, to, s) => {
        const { change } = law(undefined, s)(from, to)!;
        const there = 50 + change(50, from, to);
        expect(there + change(there, to, from)).toBeCloseTo(50, 9);
        const constant = law(s / (3000 - 20 * s))(from, to)!;
        expect(Math.sign(change(50, from, to))).toBe(Math.sign(to - from));
        expect(Math.sign(constant.change(50, from, to))).toBe(Math.sign(to - from));
      }),
    );
  });
  test("eq. 13-3 from 10 % is eq. 13-2 with S/(3000 − 20·S)", () => {
    const [byShrinkage, byCoefficient] = [law(undefined, 9.9), law(9.9 / (3000 - 20 * 9.9))];
    expect(byShrinkage(10, 13)!.change(60, 10, 13)).toBeCloseTo(byCoefficient(10, 13)!.change(60, 10, 13), 10);
  });
});

describe("rings at an angle", () => {
  test("width and height together always move by radial and tangential together", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 90, noNaN: true }), (rings) => {
        const sum = acrossRings(SUGAR_MAPLE, rings) + acrossRings(SUGAR_MAPLE, 90 - rings);
        expect(sum).toBeCloseTo(0.00165 + 0.00353, 12);
      }),
    );
  });
  test("a species' movement leaves out what its row leaves out", () => {
    const shrinkage = { radial: 4.8, tangential: 9.9, volume: 14.7, source: "a row", tags: [] };
    expect(movementOf({ coefficient: undefined, shrinkage }, 90)).toEqual({ coefficient: undefined, shrinkage: 4.8 });
    const coefficient = { radial: 0.00165, tangential: 0.00353, source: "a row", tags: [] };
    expect(movementOf({ coefficient, shrinkage: undefined }, 0)).toEqual({
      coefficient: 0.00353,
      shrinkage: undefined,
    });
    expect(acrossRings(shrinkage, 45)).toBeCloseTo(7.35, 10);
  });
});
