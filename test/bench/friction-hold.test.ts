// Friction on the iron and the wedge: equilibrium itself as the judge; worked values of statics stand in test/outside.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cuttingForce,
  drivingForce,
  frictionAngle,
  type Hold,
  holdAt,
  holdRange,
  isSelfLocking,
  lockingMargin,
  requiredClamp,
  rollingFrictionAngle,
  withdrawingForce,
} from "../../packages/bench/src/strength/friction-hold.ts";
import { cosDeg, sinDeg, tanDeg } from "../../packages/geometry/src/trig.ts";
import { TABLE } from "../../packages/parameters/src/table/index.ts";

const within = ({ min, max }: { min: number; max: number }) => fc.double({ min, max, noNaN: true });
const friction = within(TABLE.hold.friction.steel);
const bedAngle = within(TABLE.bed.angle);
const wedgeAngle = within(TABLE.wedge.angle);

describe("clamp wanted on the iron", () => {
  test("5 N/mm on 48 mm at 47°, 0.25 on both faces: 240·(cos 47 − 0.25·sin 47)/0.5 = 239.60 N (by hand)", () => {
    const force = cuttingForce(5, 48);
    expect(force).toBe(240);
    expect(requiredClamp(force, 47, { upper: 0.25, bed: 0.25 })).toBeCloseTo(239.597, 3);
  });
  test("nothing where the bed alone holds: μ₂ at or over cot β", () => {
    expect(requiredClamp(240, 60, { upper: 0.3, bed: 0.6 })).toBe(0);
    expect(requiredClamp(240, 60, { upper: 0.3, bed: 0.57 })).toBeGreaterThan(0);
  });
  test("it is the least: the friction it calls up just balances the push up the bed", () => {
    fc.assert(
      fc.property(bedAngle, friction, friction, (beta, upper, bed) => {
        const clamp = requiredClamp(1000, beta, { upper, bed });
        const holding = upper * clamp + bed * (clamp + 1000 * sinDeg(beta));
        const pushed = 1000 * cosDeg(beta);
        if (clamp > 0) expect(holding).toBeCloseTo(pushed, 6);
        else expect(holding).toBeGreaterThanOrEqual(pushed);
      }),
    );
  });
  test("never more for a steeper bed or for more friction", () => {
    fc.assert(
      fc.property(within({ min: 35, max: 64 }), within({ min: 0.02, max: 0.9 }), (beta, mu) => {
        const clamp = requiredClamp(1000, beta, { upper: mu, bed: mu });
        expect(requiredClamp(1000, beta + 1, { upper: mu, bed: mu })).toBeLessThanOrEqual(clamp);
        expect(requiredClamp(1000, beta, { upper: mu + 0.1, bed: mu })).toBeLessThanOrEqual(clamp);
        expect(requiredClamp(1000, beta, { upper: mu, bed: mu + 0.1 })).toBeLessThanOrEqual(clamp);
      }),
    );
  });
});

const contact = (angle: number, alongIron: number, atPin: number) => ({
  angle,
  alongIron: frictionAngle(alongIron),
  atPin: frictionAngle(atPin),
});

describe("wedge", () => {
  test("equilibrium: the two faces' reactions and the push on the butt sum to nothing", () => {
    fc.assert(
      fc.property(wedgeAngle, friction, friction, (angle, alongIron, atPin) => {
        const wedge = contact(angle, alongIron, atPin);
        // Face 1 along x: normal 1000 up, friction back along −x. Face 2 at the wedge angle: its reaction leans by φ.
        const downward = 1000;
        const reaction = downward / cosDeg(angle + wedge.atPin);
        const back = reaction * sinDeg(angle + wedge.atPin) + 1000 * alongIron;
        expect(drivingForce(1000, wedge)).toBeCloseTo(back, 6);
      }),
    );
  });
  test("locks exactly where it must be drawn out", () => {
    fc.assert(
      fc.property(wedgeAngle, friction, friction, (angle, alongIron, atPin) => {
        const wedge = contact(angle, alongIron, atPin);
        fc.pre(Math.abs(lockingMargin(wedge)) > 1e-9);
        expect(isSelfLocking(wedge)).toBe(withdrawingForce(1000, wedge) > 0);
      }),
    );
  });
});

test("a round pin rolls on its tenons: μ 0.35, tenon 9.5, diameter 12.7: tan φ = 0.2618 (by hand)", () => {
  expect(tanDeg(rollingFrictionAngle(0.35, 9.5, 12.7))).toBeCloseTo(0.26181, 5);
  expect(rollingFrictionAngle(0.35, 12.7, 12.7)).toBe(frictionAngle(0.35));
});

describe("range over both frictions", () => {
  const input = (bed: number, wedge: number, section: "round" | "flatted") => ({
    forcePerMm: 5,
    ironWidth: 48,
    bedAngle: bed,
    wedgeAngle: wedge,
    pin: { section, diameter: 12.7, tenon: 9.5 },
  });

  test("the rule of choosing the low friction for locking and the high one for driving is in it", () => {
    const [low, high] = [
      { steel: 0.15, wood: 0.25 },
      { steel: 0.4, wood: 0.5 },
    ];
    const range = holdRange(input(47, 6, "flatted"), low, high);
    expect(range.lockingMargin.least).toBeCloseTo(holdAt(input(47, 6, "flatted"), low).lockingMargin, 12);
    expect(range.clamp.most).toBeCloseTo(requiredClamp(240, 47, { upper: 0.15, bed: 0.15 }), 12);
    expect(range.driving.most).toBeGreaterThan(range.driving.least);
  });
  test("a round pin locks less than a flatted one", () => {
    const at = { steel: 0.25, wood: 0.35 };
    const [round, flatted] = [holdAt(input(47, 6, "round"), at), holdAt(input(47, 6, "flatted"), at)];
    expect(round.lockingMargin).toBeLessThan(flatted.lockingMargin);
  });
  test("holds every hold between, and is finite over the whole table", () => {
    const section = fc.constantFrom("round" as const, "flatted" as const);
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const pair = fc.tuple(friction, friction).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
    fc.assert(
      fc.property(bedAngle, wedgeAngle, section, pair, pair, share, share, (bed, wedge, kind, steel, wood, p, q) => {
        const plane = input(bed, wedge, kind);
        const range = holdRange(plane, { steel: steel[0], wood: wood[0] }, { steel: steel[1], wood: wood[1] });
        const between = { steel: steel[0] + p * (steel[1] - steel[0]), wood: wood[0] + q * (wood[1] - wood[0]) };
        const hold = holdAt(plane, between);
        for (const key of Object.keys(hold) as (keyof Hold)[]) {
          expect(Number.isFinite(range[key].least) && Number.isFinite(range[key].most)).toBe(true);
          expect(hold[key], key).toBeGreaterThanOrEqual(range[key].least - 1e-6);
          expect(hold[key], key).toBeLessThanOrEqual(range[key].most + 1e-6);
        }
      }),
      { numRuns: 1000 },
    );
  });
  test("a wedge that the round pin lets go turns its withdrawing force between the ends of the range", () => {
    const plane = input(45, 20, "round");
    const wood = 0.3;
    const range = holdRange(plane, { steel: 0.15, wood }, { steel: 0.9, wood });
    const ends = [0.15, 0.9].map((steel) => holdAt(plane, { steel, wood }).withdrawing);
    expect(range.withdrawing.most).toBeGreaterThan(Math.max(...ends) + 1);
  });
});
