// The bench's figures: each with its words, one key for each, none of them NaN, none made up.
import { allFigures, BENCH_FIGURES, STRENGTH_CAUTION } from "@lamplane/bench";
import { elevation, elevationFigures, FIGURES, type FigureRow } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { type Changes, designWith, randomDesigns, WORKED } from "../support/designs.ts";

const valuesWith = (changes: Changes = {}): Record<string, number> =>
  Object.fromEntries(
    allFigures(elevation(designWith({ ...WORKED, ...changes }))).map(({ key, value }) => [key, value]),
  );

test("keys are our own and apart from the elevation's; every row tells unit, formula, help and source", () => {
  expect(Object.keys(BENCH_FIGURES).filter((key) => key in FIGURES)).toEqual([]);
  for (const [key, { unit, formula, help, source }] of Object.entries<FigureRow>(BENCH_FIGURES)) {
    expect(key).toMatch(/^[a-z][A-Za-z]+$/);
    expect(unit).toMatch(/^(N|MPa|mm|°|×|%)$/);
    expect(Math.min(formula.length, help.length, source.length), key).toBeGreaterThan(4);
    if (unit !== "%" && source !== "plane geometry") expect(help, key).toMatch(/Indicative\.$/);
  }
  expect(STRENGTH_CAUTION).toMatch(/indicative.*manual, local rules and trained practice\.$/);
});

test("the worked set's figures, by hand (worked out beside the hold, the strength and the seasons)", () => {
  const expected = {
    mouthLeft: 0.15,
    mouthRight: 0.15,
    mouthUneven: 0.141, // 0.1·√2
    ironTilt: 0.079, // atan(0.1·cos 47 / 49.6)
    ironLean: 0.114, // (58 + 3.6·cos 47) / sin 47 · sin 0.0788
    roomAtTilt: 1.482, // 49.6 − 48·cos ψ − (82.663·cos 47 + 3.6·sin 47)·sin ψ, tan ψ = 0.1 / 49.6
    cuttingForce: 240,
    cuttingForceInCatch: 720,
    clampWanted: 246.394,
    clampWantedLeast: 120.578,
    clampWantedMost: 471.695,
    clampWantedInCatch: 739.182,
    drivingForce: 178.016,
    holdMargin: 13.29,
    holdMarginLeast: 8.036,
    lockingMargin: 27.326,
    lockingMarginLeast: 16.567,
    pinBendingStress: 8.467,
    pinBendingFactor: 12.165,
    pinSag: 0.0575,
    tenonShearStress: 2.317,
    tenonShearFactor: 5.998,
    tenonBendingStress: 6.22,
    tenonBendingFactor: 16.558,
    bearingStress: 1.729,
    tenonBearingFactor: 4.048,
    cheekBearingFactor: 8.978,
    shearOutStress: 0.243,
    shearOutFactor: 57.237,
    smallestFactorInCatch: 1.349,
    smallestFactorLeast: 2.115,
    smallestFactorInCatchLeast: 0.705,
    moistureDriest: 6.171,
    moistureDampest: 11.962,
    moistureAsCut: 9.067,
    coreWidthDriest: 49.022,
    coreWidthDampest: 50.178,
    sideGapLeast: 1.022,
    pinEndGapLeast: 0.211,
    wedgeGapLeast: 1.581,
    tenonGapLeast: 0.081,
    tenonProudMost: -0.117,
    heightChange: 0.733,
    bedAngleDriest: 46.819,
    bedAngleDampest: 47.18,
    rampAngleDriest: 59.843,
    rampAngleDampest: 60.156,
    mouthDriest: 0.1354,
    mouthDampest: 0.1643,
    edgeOutDriest: 0.065,
    edgeOutDampest: -0.0658,
    wedgeLoosens: 0.0384,
    wedgeLoosensTravel: 0.365,
    wedgeTightens: 0.0392,
    wedgeTightensTravel: 0.373,
    clampAtLoosest: 82.856,
    clampAtTightest: 413.572,
    soleCup: 0.0616,
    bedCup: 0.0241,
    sideClearanceToPlan: 0.668,
    endClearanceToPlan: 0.389,
    wedgeClearanceToPlan: 0.101,
  };
  const values = valuesWith();
  for (const [key, value] of Object.entries(expected)) expect(values[key], key).toBeCloseTo(value, 2);
  const kept = Object.keys(BENCH_FIGURES).filter((key) => key in values);
  expect(kept).toEqual(Object.keys(expected));
  expect(valuesWith({ "pin.section": "round" }).pinRollingFriction).toBeCloseTo(14.671, 3);
});

test("the elevation's figures come first, as they were", () => {
  const plane = elevation(designWith(WORKED));
  expect(allFigures(plane).slice(0, elevationFigures(plane).length)).toEqual(elevationFigures(plane));
});

test("every figure of random planes is a finite number, also at the ends: no clamp, no wood before the pin, unknown wood", () => {
  const designs = randomDesigns(53, 80).map(({ design }) => design);
  const odd: Changes[] = [
    { "bed.angle": 65, "hold.friction.steel": 0.9, "hold.friction.steelHigh": 1 },
    { "pin.height": 70 },
    { "wood.body": "unobtainium" },
    { "wood.body": "lignum vitae" },
    { "pin.tenonLength": 2, "pin.endClearance": 5 },
  ];
  for (const design of [...designs, ...odd.map((changes) => designWith({ ...WORKED, ...changes }))])
    for (const { key, value } of allFigures(elevation(design))) expect(Number.isFinite(value), key).toBe(true);
});

const FIT = [
  "wedgeLoosens",
  "wedgeLoosensTravel",
  "wedgeTightens",
  "wedgeTightensTravel",
  "clampAtLoosest",
  "clampAtTightest",
];

test("what rests on a property the tables lack is left out, and nothing else", () => {
  const all = Object.keys(valuesWith());
  const lost = (changes: Changes) => all.filter((key) => !Object.hasOwn(valuesWith(changes), key));
  expect(lost({ "wood.pin": "ipe" })).toEqual(["tenonBearingFactor"]);
  expect(lost({ "wood.pin": "unobtainium" })).toEqual([
    "pinBendingFactor",
    "pinSag",
    "tenonShearFactor",
    "tenonBendingFactor",
    "tenonBearingFactor",
    "tenonGapLeast",
    ...FIT,
  ]);
  expect(lost({ "wood.wedge": "unobtainium" })).toEqual(["wedgeGapLeast", ...FIT, "wedgeClearanceToPlan"]);
  expect(lost({ "hold.friction.steel": 1, "hold.friction.steelHigh": 1, "bed.angle": 60 })).toEqual([
    "pinBendingFactor",
    "tenonShearFactor",
    "tenonBendingFactor",
    "tenonBearingFactor",
    "cheekBearingFactor",
    "shearOutFactor",
    "smallestFactorInCatch",
    "clampAtLoosest",
    "clampAtTightest",
  ]);
});
