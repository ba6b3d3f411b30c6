// The pin as a beam and its tenons in the cheeks: worked values, and integrals taken numerically as the judge.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bendingMoment, bendingSag, shearSag } from "../../../packages/parameters/src/bench/beam.ts";
import {
  dowelBearingStrength,
  strengthAtAngle,
  thrustToGrain,
} from "../../../packages/parameters/src/bench/bearing.ts";
import { type PinLoad, pinStrength } from "../../../packages/parameters/src/bench/pin-strength.ts";
import { flattedSection, roundSection } from "../../../packages/parameters/src/bench/section.ts";
import { TABLE } from "../../../packages/parameters/src/table/index.ts";
import { species } from "../../../packages/parameters/src/wood/species.ts";

/** Midpoint rule. */
function integral(f: (x: number) => number, from: number, to: number, steps = 20_000): number {
  const step = (to - from) / steps;
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += f(from + (i + 0.5) * step);
  return sum * step;
}

describe("sections", () => {
  test("round 12: I 1017.876, S 169.646 (worked apart from the project)", () => {
    const { secondMoment, modulus } = roundSection(12);
    expect(secondMoment).toBeCloseTo(1017.876, 3);
    expect(modulus).toBeCloseTo(169.646, 3);
  });
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
  // Beam tables (from memory), worked apart from the project: d 12, L 54, W 2000.
  test.each([
    [54, 13_500, 12_600, 0.31973],
    [54, 13_500, 200_000, 0.020143],
    [46, 15_500, 12_600, 0.36549],
  ])("loaded over %d of 54 mm: M %d N·mm, E %d, sag %d mm", (loaded, moment, elasticity, sag) => {
    const load = { load: 2000, span: 54, loaded };
    expect(bendingMoment(load)).toBeCloseTo(moment, 6);
    expect(bendingSag(load, { ...round12, elasticity })).toBeCloseTo(sag, 5);
  });
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
  // Hankinson's formula, n = 2, P 54.0, Q 10.1: computed apart from the project.
  test.each([
    [0, 54.0],
    [10, 47.743],
    [20, 35.798],
    [30, 25.879],
    [45, 17.017],
    [60, 12.676],
    [90, 10.1],
  ])("%d°: %d MPa", (angle, strength) => expect(strengthAtAngle(54.0, 10.1, angle)).toBeCloseTo(strength, 3));

  const PSI = 0.006894757; // MPa
  // NDS table 12.3.3 (formula quoted), computed apart from the project in psi; D 0.5 in and 0.375 in.
  test.each([
    [0.63, 12.7, 0, 7056],
    [0.63, 12.7, 90, 4414.57],
    [0.63, 12.7, 45, 5431.15],
    [0.64, 9.525, 0, 7168],
    [0.64, 9.525, 90, 5215.25],
  ])("dowel bearing, G %d, D %d mm, %d°: %d psi", (gravity, diameter, angle, psi) =>
    expect(dowelBearingStrength(gravity, diameter, angle)! / (psi * PSI)).toBeCloseTo(1, 5),
  );
  test("dowel bearing, G .63, D 12.7: 48.649 and 30.437 MPa", () => {
    expect(dowelBearingStrength(0.63, 12.7, 0)).toBeCloseTo(48.649, 3);
    expect(dowelBearingStrength(0.63, 12.7, 90)).toBeCloseTo(30.437, 3);
  });
  test("a small dowel bears alike in every direction (16 600·G^1.84 psi, from memory); none above an inch", () => {
    expect(dowelBearingStrength(0.5, 6, 0)).toBeCloseTo(16_600 * 0.5 ** 1.84 * PSI, 3);
    expect(dowelBearingStrength(0.5, 6, 90)).toBe(dowelBearingStrength(0.5, 6, 0));
    expect(dowelBearingStrength(0.5, 25.5, 0)).toBeUndefined();
  });
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
  bearing: 8,
  cheek: 8,
  thrustToGrain: 45,
  shearOut: 15,
};
const strengthOf = (name: string) => {
  const answer = species(name);
  if (!answer.found?.strength) throw new Error(name);
  return answer.found.strength;
};
const MAPLE = strengthOf("sugar maple");

describe("pin in its cheeks", () => {
  test("sugar maple, d 12, L 54, W 2000: σ 79.577, τ 11.789, sag in bending 0.31973 (worked apart from the project)", () => {
    const pin = pinStrength(PIN, MAPLE, MAPLE);
    expect(pin.bending.stress).toBeCloseTo(79.577, 3);
    expect(pin.bending.factor).toBeCloseTo(109 / 79.577, 4);
    expect(pin.tenonShear.stress).toBeCloseTo(11.789, 3);
    expect(pin.tenonShear.factor).toBeCloseTo(16.1 / 11.789, 4);
    expect(pin.sag?.bending).toBeCloseTo(0.31973, 5);
    expect(pin.sag?.total).toBeGreaterThan(pin.sag!.bending);
  });
  test("the cheek: 1000 N on 12 × 8 at 45° to the grain, and on two planes 15 × 8 (by hand)", () => {
    const pin = pinStrength(PIN, MAPLE, MAPLE);
    expect(pin.cheekBearing.stress).toBeCloseTo(10.4167, 4);
    expect(pin.cheekBearing.strength).toBeCloseTo(17.017, 3);
    expect(pin.tenonCrushing.strength).toBe(10.1);
    expect(pin.cheekShearOut.stress).toBeCloseTo(4.16667, 5);
    expect(pin.cheekShearOut.factor).toBeCloseTo(16.1 / 4.16667, 4);
  });
  test("what the tables lack is not made up", () => {
    const vitae = strengthOf("lignum vitae");
    const pin = pinStrength(PIN, vitae, vitae);
    expect(pin.sag).toBeUndefined();
    for (const part of [pin.bending, pin.tenonShear, pin.tenonCrushing, pin.cheekBearing, pin.cheekShearOut]) {
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
          for (const part of ["bending", "tenonShear", "tenonCrushing", "cheekBearing", "cheekShearOut"] as const) {
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
