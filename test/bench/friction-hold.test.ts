// Friction on the iron and the wedge: equilibrium itself as the judge; worked values of statics stand in test/outside.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cuttingForce,
  drivingForce,
  frictionAngle,
  type HoldInput,
  holdAt,
  requiredClamp,
  rollingFrictionAngle,
} from "../../packages/bench/src/strength/friction-hold.ts";
import { cosDeg, sinDeg, tanDeg } from "../../packages/geometry/src/trig.ts";
import { TABLE } from "../../packages/parameters/src/table/index.ts";

const within = ({ min, max }: { min: number; max: number }) => fc.double({ min, max, noNaN: true });
const friction = within(TABLE.hold.friction.steel);
const bedAngle = within(TABLE.bed.angle);
const wedgeAngle = within(TABLE.wedge.angle);

describe("clamp wanted on the iron", () => {
  test("nothing where the bed alone holds: μ₂ at or over cot β; nothing is enough where the wedge passes no pull on", () => {
    expect(requiredClamp(cuttingForce(5, 48), 60, { upper: 0.3, bed: 0.6, taper: 0 })).toBe(0);
    expect(requiredClamp(240, 60, { upper: 0.3, bed: 0.57, taper: 0 })).toBeGreaterThan(0);
    expect(requiredClamp(240, 60, { upper: -0.01, bed: 0.57, taper: 0 })).toBe(Number.POSITIVE_INFINITY);
  });
  test("it is the least: the friction it calls up just balances the push up the bed", () => {
    fc.assert(
      fc.property(bedAngle, friction, friction, (beta, upper, bed) => {
        const clamp = requiredClamp(1000, beta, { upper, bed, taper: 0 });
        const holding = upper * clamp + bed * (clamp + 1000 * sinDeg(beta));
        const pushed = 1000 * cosDeg(beta);
        if (clamp > 0) expect(holding).toBeCloseTo(pushed, 6);
        else expect(holding).toBeGreaterThanOrEqual(pushed);
      }),
    );
  });
  test("never more for a steeper bed", () => {
    fc.assert(
      fc.property(within({ min: 35, max: 64 }), within({ min: 0.02, max: 0.9 }), (beta, mu) => {
        const steeper = requiredClamp(1000, beta + 1, { upper: mu, bed: mu, taper: 0 });
        expect(steeper).toBeLessThanOrEqual(requiredClamp(1000, beta, { upper: mu, bed: mu, taper: 0 }));
      }),
    );
  });
});

const contact = (angle: number, alongIron: number, atPin: number) => ({
  angle,
  taper: 0,
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
});

test("a round pin rolls on its tenons: μ 0.35, tenon 9.5, diameter 12.7: tan φ = 0.2618 (by hand)", () => {
  expect(tanDeg(rollingFrictionAngle(0.35, 9.5, 12.7))).toBeCloseTo(0.26181, 5);
  expect(rollingFrictionAngle(0.35, 12.7, 12.7)).toBe(frictionAngle(0.35));
});

const plane = (bed: number, wedge: number, section: "round" | "flatted", tenon = 9.5, taper = 0): HoldInput => ({
  forcePerMm: 5,
  ironWidth: 48,
  bedAngle: bed,
  taper,
  wedgeAngle: wedge,
  pin: { section, diameter: 12.7, tenon },
});
const GIVEN = { steel: 0.25, wood: 0.35 };

describe("iron, wedge and pin as one", () => {
  // 240·(cos 47 − 0.25·sin 47) = 119.798 N; flatted atan 0.35 = 19.29°, round atan(0.35·9.5/12.7) = 14.67°, with 8 mm 12.43°.
  test.each([
    ["flatted", 6, 9.5, 246.394], // 119.798 / (0.25 + tan 13.29)
    ["flatted", 1, 9.5, 239.597], // friction on the iron decides: 119.798 / 0.5
    ["round", 12, 9.5, 403.827], // 119.798 / (0.25 + tan 2.671)
  ] as const)("%s pin, wedge %d°, tenon %d: %d N (by hand)", (section, wedge, tenon, clamp) =>
    expect(holdAt(plane(47, wedge, section, tenon), GIVEN).clamp).toBeCloseTo(clamp, 2),
  );
  test("a round pin on 8 mm tenons cannot hold a wedge of 14°, whatever the friction on the iron", () => {
    const steep = plane(47, 14, "round", 8);
    expect(holdAt(steep, GIVEN).holdMargin).toBeCloseTo(12.433 - 14, 3);
    for (const steel of [0.05, 0.25, 1])
      expect(holdAt(steep, { steel, wood: 0.35 }).clamp).toBe(Number.POSITIVE_INFINITY);
  });
  test("agrees with a solver that knows forces and friction cones only, over 1000 random planes", () => {
    const section = fc.constantFrom("round" as const, "flatted" as const);
    const tenon = fc.double({ min: 5, max: 12.7, noNaN: true });
    let [held, lost] = [0, 0];
    fc.assert(
      fc.property(
        bedAngle,
        wedgeAngle,
        section,
        tenon,
        fc.oneof(fc.constant(0), within(TABLE.iron.taper)),
        within({ min: 0.05, max: 0.8 }),
        within({ min: 0.05, max: 0.8 }),
        (bed, wedge, kind, thick, taper, steel, wood) => {
          const input = plane(bed, wedge, kind, thick, taper);
          const { clamp, holdMargin } = holdAt(input, { steel, wood });
          fc.pre(Math.abs(holdMargin) > 1e-3);
          const scanned = leastClampByScan(input, steel, wood);
          if (Number.isFinite(clamp)) held++;
          else lost++;
          if (scanned === undefined || !Number.isFinite(clamp)) expect([scanned, clamp]).toEqual([undefined, Infinity]);
          else expect(Math.abs(scanned - clamp)).toBeLessThan(1e-6 * Math.max(1, clamp));
        },
      ),
      { numRuns: 1000, seed: 12 },
    );
    expect(Math.min(held, lost)).toBeGreaterThan(100);
  });
  test("more friction never asks for more clamp nor makes a margin smaller, and everything is finite where the pin holds", () => {
    const section = fc.constantFrom("round" as const, "flatted" as const);
    const pair = fc.tuple(friction, friction).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
    fc.assert(
      fc.property(bedAngle, wedgeAngle, section, pair, pair, (bed, wedge, kind, steel, wood) => {
        const [low, high] = [0, 1].map((i) => holdAt(plane(bed, wedge, kind), { steel: steel[i]!, wood: wood[i]! }));
        expect(high!.clamp).toBeLessThanOrEqual(low!.clamp);
        expect(high!.holdMargin).toBeGreaterThanOrEqual(low!.holdMargin);
        expect(high!.lockingMargin).toBeGreaterThanOrEqual(low!.lockingMargin);
        if (low!.holdMargin > 0) expect(Number.isFinite(low!.clamp)).toBe(true);
      }),
    );
  });
  // 119.798 / (0.25·(cos 1 − tan 13.29·sin 1) + sin 1 + tan 13.29·cos 1), and the same with −1 (by hand).
  test.each([
    [1, 238.379],
    [-1, 255.047],
  ])("an iron of taper %d°: %d N (by hand), and the margin at the pin more by its taper", (taper, clamp) => {
    const hold = holdAt(plane(47, 6, "flatted", 9.5, taper), GIVEN);
    expect(hold.clamp).toBeCloseTo(clamp, 2);
    expect(hold.holdMargin).toBeCloseTo(13.29 + taper, 3);
    expect(hold.lockingMargin).toBeCloseTo(14.036 + 13.29 + Math.min(0, taper), 3);
  });
  test("a wedge that slides out over the iron holds nothing, however much the iron tapers", () => {
    // Friction angles 2.86 and 2.86 against a wedge of 6: it comes out, though 2.86 + 5 is over 6.
    const hold = holdAt(plane(47, 6, "flatted", 9.5, 5), { steel: 0.05, wood: 0.05 });
    expect(hold.holdMargin).toBeGreaterThan(0);
    expect(hold.clamp).toBe(Number.POSITIVE_INFINITY);
  });
  test("a round pin holds less than a flatted one", () =>
    expect(holdAt(plane(47, 6, "round"), GIVEN).clamp).toBeGreaterThan(holdAt(plane(47, 6, "flatted"), GIVEN).clamp));
});

type Force = readonly [x: number, y: number];
const turned = ([x, y]: Force, angle: number): Force => [
  x * cosDeg(angle) - y * sinDeg(angle),
  x * sinDeg(angle) + y * cosDeg(angle),
];
const along = ([x, y]: Force, angle: number): number => x * cosDeg(angle) + y * sinDeg(angle);

/**
 * The least clamp by trial: iron and wedge as free bodies in the plane's own x and y. For each trial the pin's reaction is
 * scanned through its friction cone; the wedge's balance gives what the iron gets from it, which must lie in that
 * contact's cone, and the iron's balance what the bed gives, which must lie in the bed's. Undefined where no clamp holds.
 * A round pin turns before it slides: its cone is as wide as the moment of its tenons' friction balances at its rim.
 */
function leastClampByScan(input: HoldInput, steel: number, wood: number): number | undefined {
  const { bedAngle: beta, taper, wedgeAngle: omega, pin } = input;
  const face = beta - taper;
  const force = input.forcePerMm * input.ironWidth;
  const rim = pin.section === "round" ? (wood * pin.tenon) / pin.diameter : wood;
  /** Pull down the bed on the iron, and whether iron and wedge stay put against each other, at a share of the pin's cone. */
  const wedgeAt = (clamp: number, share: number) => {
    // Square off the wedge's upper side, into it, plus friction along it, toward the edge; then sized to press with `clamp`.
    const shape = turned([-rim * share, -1], face + omega);
    const size = clamp / -along(shape, face + 90);
    const onIron: Force = [shape[0] * size, shape[1] * size];
    return { onIron, pull: -along(onIron, beta), stays: Math.abs(along(onIron, face)) <= steel * clamp };
  };
  /** Friction left on the bed against sliding up it, and against sliding down it. */
  const bedLeft = (clamp: number, share: number) => {
    const { onIron } = wedgeAt(clamp, share);
    const onBed: Force = [onIron[0] + force, onIron[1]];
    const friction = steel * -along(onBed, beta + 90);
    return { up: friction - along(onBed, beta), down: friction + along(onBed, beta) };
  };
  const STEPS = 200;
  const shares = Array.from({ length: STEPS + 1 }, (_, i) => 1 - (2 * i) / STEPS);
  /** The reaction nearest to the cone's holding side with which the wedge stays on the iron. */
  const first = shares.findIndex((share) => wedgeAt(1, share).stays);
  if (first < 0) return undefined;
  let [yes, no] = [shares[first]!, first === 0 ? shares[0]! : shares[first - 1]!];
  for (let i = 0; i < 60 && yes !== no; i++) {
    const middle = (yes + no) / 2;
    if (wedgeAt(1, middle).stays) yes = middle;
    else no = middle;
  }
  // Between the two reactions at which the wedge just stays lie all that it can have: one holds where neither end slips off.
  const other = shares.findLast((share) => wedgeAt(1, share).stays)!;
  const bedHolds = (clamp: number, holding: number) =>
    bedLeft(clamp, holding).up >= 0 && bedLeft(clamp, other).down >= 0;
  if (wedgeAt(1, yes).pull <= 0) return undefined;
  if (bedAloneHolds(force, beta, steel)) return 0;
  let [low, high] = [0, 1e9];
  if (!bedHolds(high, yes)) return undefined;
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (bedHolds(middle, yes)) high = middle;
    else low = middle;
  }
  return high;
}
const bedAloneHolds = (force: number, beta: number, steel: number): boolean =>
  along([force, 0], beta) <= steel * -along([force, 0], beta + 90);
