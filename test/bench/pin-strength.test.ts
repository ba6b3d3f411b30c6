// The pin as a beam and its tenons in the cheeks: integrals taken numerically as the judge; worked values stand in test/outside.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bendingSag, shearSag } from "../../packages/bench/src/strength/beam.ts";
import { thrustToGrain } from "../../packages/bench/src/strength/bearing.ts";
import { type PinLoad, pinStrength } from "../../packages/bench/src/strength/pin-strength.ts";
import { flattedSection, roundSection } from "../../packages/bench/src/strength/section.ts";
import { TABLE } from "../../packages/parameters/src/table/index.ts";
import { findSpecies } from "../../packages/parameters/src/wood/species.ts";

/** Midpoint rule. */
function integral(f: (x: number) => number, from: number, to: number, steps = 20_000): number {
  const step = (to - from) / steps;
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += f(from + (i + 0.5) * step);
  return sum * step;
}

describe("sections", () => {
  test.each(["round", "flatted"] as const)("%s: area, centroid and second moment by adding up strips", (kind) => {
    fc.assert(
      fc.property(fc.double({ min: TABLE.pin.diameter.min, max: TABLE.pin.diameter.max, noNaN: true }), (d) => {
        const r = d / 2;
        const width = (y: number) => (kind === "flatted" && y < 0 ? d : 2 * Math.sqrt(Math.max(0, r * r - y * y)));
        const over = (f: (y: number) => number) => integral(f, -r, 0) + integral(f, 0, r);
        const area = over(width);
        const centroid = over((y) => y * width(y)) / area;
        const second = over((y) => (y - centroid) ** 2 * width(y));
        const section = kind === "flatted" ? flattedSection(d) : roundSection(d);
        expect(section.area / area).toBeCloseTo(1, 5);
        expect(section.centroid / d).toBeCloseTo(centroid / d, 5);
        expect(section.secondMoment / second).toBeCloseTo(1, 5);
        expect(section.toBack + section.toFlat).toBeCloseTo(d, 9);
        expect(section.toBack).toBeCloseTo(r - section.centroid, 9);
        expect(section.modulus).toBeCloseTo(
          Math.min(section.secondMoment / section.toBack, section.secondMoment / section.toFlat),
          9,
        );
      }),
      { numRuns: 10 },
    );
  });
  test("a flatted pin is stronger than the round it is drawn on, weaker than the square around it", () => {
    const d = 12.7;
    expect(flattedSection(d).modulus).toBeGreaterThan(roundSection(d).modulus);
    expect(flattedSection(d).modulus).toBeLessThan(d ** 3 / 6);
    expect(flattedSection(d).centroid).toBeLessThan(0);
  });
});

const round12 = { ...roundSection(12), elasticity: 12_600, shearModulus: 12_600 / 16 };

describe("beam", () => {
  test("its sag is the curvature integrated twice, and the shear's part the shear strain integrated once", () => {
    const part = fc.double({ min: 0.05, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 20, max: 90, noNaN: true }), part, (span, share) => {
        const [load, loaded] = [1000, span * share];
        const start = (span - loaded) / 2;
        const pressed = (x: number) => (load / loaded) * Math.max(0, x - start);
        const shear = (x: number) => load / 2 - pressed(x);
        const moment = (x: number) => (load / 2) * x - (pressed(x) * Math.max(0, x - start)) / 2;
        const { elasticity, secondMoment, shearModulus, area, shearFactor } = round12;
        // Virtual work: a unit load at mid-span makes moments x/2 on each half.
        const bent = integral((x) => (moment(x) * x) / (elasticity * secondMoment), 0, span / 2, 4000);
        const sheared = integral((x) => (shearFactor * shear(x)) / (shearModulus * area), 0, span / 2, 4000);
        expect(bendingSag({ load, span, loaded }, round12) / bent).toBeCloseTo(1, 5);
        expect(shearSag({ load, span, loaded }, round12) / sheared).toBeCloseTo(1, 5);
      }),
      { numRuns: 50 },
    );
  });
});

describe("wood at an angle to the grain", () => {
  test("the wedge's upper side at 53° thrusts at 37° to the cheek's grain", () => {
    expect(thrustToGrain(47 + 6)).toBe(37);
    expect(thrustToGrain(90)).toBe(0);
  });
});

const PIN: PinLoad = {
  clamp: 2000,
  section: "round",
  diameter: 12,
  tenon: 12,
  span: 54,
  loaded: 54,
  tenonArm: 4.5,
  bearing: 8,
  cheek: 8,
  thrustToGrain: 45,
  shearOut: 15,
};
const strengthOf = (name: string) => {
  const answer = findSpecies(name);
  if (!answer.found?.strength) throw new Error(name);
  return answer.found.strength;
};
const MAPLE = strengthOf("sugar maple");

describe("pin in its cheeks", () => {
  test("factors are the handbook's strengths over the stresses", () => {
    const pin = pinStrength(PIN, MAPLE, MAPLE);
    expect(pin.bending.factor).toBeCloseTo(MAPLE.bending! / pin.bending.stress, 9);
    expect(pin.tenonShear.factor).toBeCloseTo(MAPLE.shearAlong! / pin.tenonShear.stress, 9);
    expect(pin.sag?.total).toBeGreaterThan(pin.sag!.bending);
  });
  test("the cheek: 1000 N on 12 × 8 at 45° to the grain, and on two planes 15 × 8 (by hand)", () => {
    const pin = pinStrength(PIN, MAPLE, MAPLE);
    expect(pin.cheekBearing.stress).toBeCloseTo(10.4167, 4);
    expect(pin.tenonCrushing.strength).toBe(MAPLE.compressionAcross);
    expect(pin.cheekShearOut.stress).toBeCloseTo(4.16667, 5);
    expect(pin.cheekShearOut.factor).toBeCloseTo(MAPLE.shearAlong! / 4.16667, 4);
  });
  test("the tenon at its shoulder: 1000 N on an arm of 4.5 over π·12³/32 (by hand)", () => {
    const pin = pinStrength(PIN, MAPLE, MAPLE);
    expect(pin.tenonBending.stress).toBeCloseTo(26.526, 3);
    expect(pin.tenonBending.factor).toBeCloseTo(109 / 26.526, 3);
  });
  test("where no clamp is enough there is no factor, and no sag", () => {
    const pin = pinStrength({ ...PIN, clamp: Number.POSITIVE_INFINITY }, MAPLE, MAPLE);
    expect(pin.sag).toBeUndefined();
    for (const part of [pin.bending, pin.tenonBending, pin.cheekShearOut]) expect(part.factor).toBeUndefined();
  });
  test("what the tables lack is not made up", () => {
    const vitae = strengthOf("lignum vitae");
    const pin = pinStrength(PIN, vitae, vitae);
    expect(pin.sag).toBeUndefined();
    for (const part of [
      pin.bending,
      pin.tenonShear,
      pin.tenonBending,
      pin.tenonCrushing,
      pin.cheekBearing,
      pin.cheekShearOut,
    ]) {
      expect(part.stress).toBeGreaterThan(0);
      expect(part).toMatchObject({ strength: undefined, factor: undefined });
    }
  });
  test("no wood left to the edge is no strength, no load is no stress", () => {
    expect(pinStrength({ ...PIN, shearOut: -1 }, MAPLE, MAPLE).cheekShearOut.factor).toBe(0);
    expect(pinStrength({ ...PIN, clamp: 0 }, MAPLE, MAPLE).bending).toMatchObject({ stress: 0, factor: Infinity });
  });
  test("twice the force halves every factor; a thicker pin or tenon is never weaker", () => {
    const size = fc.double({ min: 4, max: 30, noNaN: true });
    const section = fc.constantFrom("round" as const, "flatted" as const);
    fc.assert(
      fc.property(
        size,
        size,
        section,
        fc.double({ min: 1, max: 5000, noNaN: true }),
        (diameter, tenon, kind, clamp) => {
          const load = { ...PIN, diameter, tenon, section: kind, clamp };
          const pin = pinStrength(load, MAPLE, MAPLE);
          const twice = pinStrength({ ...load, clamp: 2 * clamp }, MAPLE, MAPLE);
          const thicker = pinStrength({ ...load, diameter: diameter + 1, tenon: tenon + 1 }, MAPLE, MAPLE);
          for (const part of [
            "bending",
            "tenonShear",
            "tenonBending",
            "tenonCrushing",
            "cheekBearing",
            "cheekShearOut",
          ] as const) {
            expect(pin[part].factor! / twice[part].factor!).toBeCloseTo(2, 9);
            expect(thicker[part].factor!).toBeGreaterThanOrEqual(pin[part].factor!);
            expect(Number.isFinite(pin[part].factor)).toBe(true);
          }
          expect(thicker.sag!.total).toBeLessThan(pin.sag!.total);
        },
      ),
    );
  });
});
