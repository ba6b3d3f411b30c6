// Derivatives of the plane as made against those worked out by hand and differences over whole elevations, and the closed form against the elevations themselves.
import {
  applyErrors,
  asBuiltPlane,
  type ErrorKey,
  type Errors,
  errorSources,
  gradients,
  NO_ERRORS,
  type ResultKey,
  type TolerancePlan,
  tolerancePlan,
} from "@lamplane/bench";
import { cosDeg, cotDeg, sinDeg, tanDeg } from "@lamplane/geometry";
import { elevation, figureValue, fromToeEnd, tipGap } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, randomDesigns, seeded, taperedDesigns, WORKED } from "../../support/designs.ts";
import { gradientsByHand } from "./derivatives-by-hand.ts";
import { derivativesThroughElevation, resultsThroughElevation } from "./through-elevation.ts";

const RESULTS: readonly ResultKey[] = ["mouthOpening", "glueGap", "pinToRamp", "wedgeAtPin", "wedgeTipFromEdge"];
const planWith = (changes: Changes): TolerancePlan => tolerancePlan(elevation(designWith(changes)));
const placings = ["contact", "marks"] as const;

/** Pin low and high, tight curves and wide: the pin is nearest to the exit, the curve or the wear. */
const steepWithGivenRadius: readonly Changes[] = [
  { "bed.angle": 57, "ramp.radius": 8, "pin.height": 40 },
  { "bed.angle": 57, "ramp.radius": 60, "pin.height": 34 },
  { "bed.angle": 52, "ramp.radius": 60, "pin.height": 12, "ramp.wearHeight": 30 },
];

/** Both ways of placing, straight and curved ramps; no design is turned down for what the checks find. */
const plans = [...randomDesigns(41, 30).map(({ changes }) => changes), ...steepWithGivenRadius].flatMap((changes) =>
  placings.map((placing) => planWith({ ...changes, "hand.placing": placing })),
);

/** Irons that taper to either end: no derivative of theirs is worked out by hand. */
const tapered = taperedDesigns(43, 24).flatMap(({ changes }) =>
  placings.map((placing) => planWith({ ...changes, "hand.placing": placing })),
);

test("the plans tried have both placings and, nearest to the pin, the wear, the curve and the exit", () => {
  const partOf = (plan: TolerancePlan) => {
    const normalX = gradients(plan).pinToRamp!.pinHoleAlong!;
    if (!plan.curve) return "straight";
    if (Math.abs(normalX - sinDeg(plan.rampAngle)) < 1e-9) return "wear";
    return Math.abs(normalX - sinDeg(plan.curve.exitAngle)) < 1e-9 ? "exit" : "curve";
  };
  expect(new Set(plans.map(partOf))).toEqual(new Set(["straight", "wear", "curve", "exit"]));
  for (const placing of placings) expect(plans.filter((plan) => plan.placing === placing).length).toBeGreaterThan(10);
});

test("every derivative is the one worked out by hand", () => {
  let compared = 0;
  for (const plan of plans) {
    const [made, byHand] = [gradients(plan), gradientsByHand(plan)];
    for (const { key } of errorSources(plan))
      for (const result of RESULTS) {
        const [derivative, hand] = [made[result]?.[key] ?? 0, byHand[result]?.[key] ?? 0];
        expect(Math.abs(derivative - hand), `${result} by ${key}: ${derivative}, ${hand}`).toBeLessThan(
          1e-10 * Math.max(1, Math.abs(hand)),
        );
        compared++;
      }
  }
  expect(compared).toBeGreaterThan(3000);
});

test("every derivative is the one through whole elevations", () => {
  let compared = 0;
  for (const plan of [...plans, ...tapered]) {
    const made = gradients(plan);
    for (const { key } of errorSources(plan)) {
      const byDifferences = derivativesThroughElevation(plan, key);
      for (const result of RESULTS) {
        const [derivative, through] = [made[result]?.[key] ?? 0, byDifferences[result]];
        expect(Math.abs(derivative - through), `${result} by ${key}: ${derivative}, ${through}`).toBeLessThan(
          1e-5 * Math.max(1, Math.abs(derivative)),
        );
        compared++;
      }
    }
  }
  expect(compared).toBeGreaterThan(3000);
});

test("the plane as made is the elevation's, with every error at once and large", () => {
  const random = seeded(3);
  for (const plan of [...plans, ...tapered]) {
    const errors: Errors = { ...NO_ERRORS };
    for (const { key, tolerance } of errorSources(plan)) errors[key] = (random() * 4 - 2) * tolerance;
    const [closed, through] = [applyErrors(plan, errors), resultsThroughElevation(plan, errors)];
    for (const result of RESULTS) expect(closed[result], result).toBeCloseTo(through[result], 8);
  }
});

test("a sole beyond a curved ramp's wear is the elevation's too, and so is every derivative", () => {
  const wear = { "ramp.wearAngle": 85, "ramp.wearHeight": 0.5, "ramp.radius": 20, "pin.height": 36 };
  const curved = { ...wear, "bed.angle": 55, "body.length": 300, "sole.allowance": 2, "mouth.opening": 0.1 };
  for (const placing of placings) {
    const design = designWith({ ...curved, "hand.placing": placing });
    const plane = elevation(design);
    const rampTipFromEnd = fromToeEnd(plane, plane.points.rampTip.x) + 2.2;
    const plan = tolerancePlan(asBuiltPlane({ ...design, measured: { ...design.measured, rampTipFromEnd } }));
    expect(plan.curve!.wearHeight).toBeLessThan(-1);
    expect(applyErrors(plan, NO_ERRORS)).toMatchObject({ mouthOpening: expect.closeTo(0.1, 9) });
    const made = gradients(plan);
    for (const { key, tolerance } of errorSources(plan)) {
      const errors = { ...NO_ERRORS, [key]: 2 * tolerance };
      const [closed, through] = [applyErrors(plan, errors), resultsThroughElevation(plan, errors)];
      const byDifferences = derivativesThroughElevation(plan, key);
      for (const result of RESULTS) {
        expect(closed[result], `${result} by ${key}`).toBeCloseTo(through[result], 8);
        const derivative = made[result]?.[key] ?? 0;
        const allowed = 1e-5 * Math.max(1, Math.abs(derivative));
        expect(Math.abs(derivative - byDifferences[result]), `${result} by ${key}`).toBeLessThan(allowed);
      }
    }
    const growth = made.mouthOpening!.soleTaken!;
    expect(growth).toBeGreaterThan(cotDeg(55) + cotDeg(85) + 0.1);
    expect(applyErrors(plan, NO_ERRORS).mouthGrowth).toBeCloseTo(growth, 9);
  }
});

test("without errors the results are the design's figures", () => {
  for (const { design } of [...randomDesigns(42, 60), ...taperedDesigns(42, 60)]) {
    const plane = elevation(design);
    const made = applyErrors(tolerancePlan(plane), NO_ERRORS);
    expect(made.mouthOpening).toBeCloseTo(design.mouth.opening, 9);
    expect(made.glueGap).toBeCloseTo(figureValue(plane, "glueGap")!, 9);
    expect(made.roomAtTips).toBeCloseTo(tipGap(plane), 9);
    expect(made.pinToRamp).toBeCloseTo(figureValue(plane, "pinToRamp")!, 9);
    expect(made.wedgeAtPin).toBeCloseTo(figureValue(plane, "wedgeAtPin")!, 9);
    expect(made.wedgeTipFromEdge).toBeCloseTo(design.wedge.tipFromEdge, 9);
  }
});

describe("the worked set: plane geometry, typed from the formulas", () => {
  const [beta, rho, t, a, omega] = [47, 60, 3.6, 3, 6];
  const growth = cotDeg(beta) + cotDeg(rho);
  const degree = Math.PI / 180;
  const by = (placing: string, result: ResultKey, key: ErrorKey) =>
    gradients(planWith({ ...WORKED, "hand.placing": placing }))[result]![key] ?? 0;

  test("by contact, the mouth opens by its growth for each mm of the edge's height and of the sole, and no wood elsewhere moves it", () => {
    expect(by("contact", "mouthOpening", "edgeHeight")).toBeCloseTo(-growth, 9);
    expect(by("contact", "mouthOpening", "soleTaken")).toBeCloseTo(growth, 9);
    expect(growth).toBeCloseTo(1.5099, 4);
    for (const key of ["ironThickness", "bedPlace", "pinHoleUp"] as const)
      expect(by("contact", "mouthOpening", key)).toBeCloseTo(0, 12);
    expect(by("contact", "mouthOpening", "bedAngle")).toBeCloseTo(((-0.15 / growth) * degree) / sinDeg(beta) ** 2, 9);
  });
  test("by marks, a thicker iron shuts it by 1 / sin β, and the ramp's angle by a / sin² ρ", () => {
    expect(by("marks", "mouthOpening", "ironThickness")).toBeCloseTo(-1 / sinDeg(beta), 9);
    expect(by("marks", "mouthOpening", "rampAngle")).toBeCloseTo((-a * degree) / sinDeg(rho) ** 2, 9);
    expect(by("marks", "mouthOpening", "bedAngle")).toBeCloseTo(
      ((t * cosDeg(beta) - a) * degree) / sinDeg(beta) ** 2,
      9,
    );
    expect(by("marks", "glueGap", "ironThickness")).toBe(0);
  });
  test("the wedge is thinner by what the irons are thicker, and its tip slides by 1 / tan ω", () => {
    expect(by("contact", "wedgeAtPin", "ironThickness")).toBeCloseTo(-1, 9);
    expect(by("contact", "wedgeAtPin", "capIronThickness")).toBeCloseTo(-1, 9);
    expect(by("contact", "wedgeAtPin", "wedgeThickness")).toBe(0);
    expect(by("contact", "wedgeTipFromEdge", "wedgeThickness")).toBeCloseTo(1 / tanDeg(omega), 9);
    // The bed turns about its tip on the blank's sole, t·cot β − a / sin β up the iron; the lever is from there to the pin.
    const lever = 36.1056 - (t * cotDeg(beta) - a / sinDeg(beta));
    expect(by("contact", "wedgeAtPin", "bedAngle")).toBeCloseTo(-lever * degree, 5);
  });
});

test("the derivative of pin to ramp is undefined with the pin on the curve's centre, and so is told", () => {
  const plan = planWith({ "bed.angle": 57 });
  const { x, y } = applyErrors(plan, NO_ERRORS).ramp.curve!.centre;
  const lost = gradients({ ...plan, pinX: x, pinY: y });
  expect(lost.pinToRamp).toBeUndefined();
  expect(Object.values(lost.wedgeAtPin!).every(Number.isFinite)).toBe(true);
});

test("an edge that would stand below the blank's sole cannot be read: the block is set to its mark", () => {
  const plan = planWith({ "sole.allowance": 0, "mouth.opening": 0.3, "hand.placing": "contact" });
  expect(plan.edgeHeight).toBeLessThan(0);
  expect(plan.placing).toBe("marks");
});
