// Hold and strength of a whole plane: the worked set by hand, laws that any plane keeps, and woods of which little is known.
import {
  planeHold,
  planePinStrength,
  planeWoods,
  smallestFactorInCatch,
  WEAK_PLACES,
  weakestPlace,
} from "@lamplane/bench";
import { checkPlane } from "@lamplane/bench/checks";
import { cosDeg, sinDeg } from "@lamplane/geometry";
import { withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, randomDesigns, WORKED } from "../support/designs.ts";

const planeWith = (changes: Changes = {}) => elevation(designWith({ ...WORKED, ...changes }));
const LOADS = ["fine", "inCatch", "fineAtLowest", "inCatchAtLowest"] as const;

describe("the worked set in American beech", () => {
  // By hand: F 5·48 = 240 N; N = 240·(cos 47 − 0.25·sin 47)/(0.25 + tan 13.29); φ = atan 0.25, atan 0.35; lowest 0.15, 0.25;
  // highest 0.4, 0.5: there tan 20.565 lets less pass than 0.4.
  const { fine, inCatch, fineAtLowest, fineAtHighest, inCatchAtLowest } = planeHold(planeWith());
  test("hold", () => {
    expect(fine.cutting).toBe(240);
    expect(inCatch.cutting).toBe(720);
    expect(fine.clamp).toBeCloseTo(246.394, 4);
    expect(inCatch.clamp).toBeCloseTo(739.182, 4);
    expect(fineAtHighest.clamp).toBeCloseTo(120.5781, 4);
    expect(fineAtLowest.clamp).toBeCloseTo(471.6947, 4);
    expect(inCatchAtLowest.clamp).toBeCloseTo(1415.0841, 4);
    expect(fine.holdMargin).toBeCloseTo(19.29005 - 6, 4);
    expect(fineAtLowest.holdMargin).toBeCloseTo(14.03624 - 6, 4);
    expect(fine.lockingMargin).toBeCloseTo(14.03624 + 19.29005 - 6, 4);
    expect(fineAtLowest.lockingMargin).toBeCloseTo(16.567, 4);
    expect(fineAtHighest.lockingMargin).toBeCloseTo(42.36646, 4);
    expect(fine.driving).toBeCloseTo(178.0161, 4); // N·(tan(6 + 19.29005) + 0.25)
  });

  // American beech (Wood Handbook, tables 5-3, read in a quoting page): 103 MPa, 11.9 GPa, 50.3, 7.0, 13.9 MPa.
  // Flatted 12.7: A 143.983, centroid 0.5928 toward the flat, I 1671.83, farther fibre 6.9428, W 240.802 (by hand).
  const strength = planePinStrength(planeWith(), "fine");
  test("bending: 57.1 between mid-bearings, 48 of wedge: 246.394·(114.2 − 48)/8 = 2038.91 N·mm over 240.802", () => {
    expect(strength.bending.stress).toBeCloseTo(8.46717, 4);
    expect(strength.bending.factor).toBeCloseTo(12.1646, 3);
  });
  test("sag: N·(8·L³ − 4·b²·L + b³)/(384·E·I) = 0.034630, and shear 1.2·M/(E/16·A) = 0.022848", () => {
    expect(strength.sag!.bending).toBeCloseTo(0.0346297, 6);
    expect(strength.sag!.shear).toBeCloseTo(0.0228476, 6);
  });
  test("tenon 9.5: shear 4·123.20/(3·70.882); it bears over 7.5 mm, half a mm short of the cheek's 8", () => {
    expect(strength.tenonShear.stress).toBeCloseTo(2.3174, 4);
    expect(strength.tenonShear.factor).toBeCloseTo(5.99809, 4);
    expect(strength.tenonCrushing.stress).toBeCloseTo(1.72908, 4);
    expect(strength.tenonCrushing.factor).toBeCloseTo(4.04839, 4);
  });
  test("tenon at its shoulder: 123.197·(0.5 + 7.5/2) over π·9.5³/32 = 84.173", () => {
    expect(strength.tenonBending.stress).toBeCloseTo(6.2204, 4);
    expect(strength.tenonBending.factor).toBeCloseTo(16.5584, 3);
  });
  test("cheek: 15.523 MPa at 90 − 47 − 6 = 37° to its grain by Hankinson's formula", () => {
    expect(strength.cheekBearing.strength).toBeCloseTo(15.52301, 4);
    expect(strength.cheekBearing.factor).toBeCloseTo(8.97761, 4);
  });
  test("shear-out: (58 − 36)/cos 53 − 4.85 = 31.706 mm to the flat top, in the line of the thrust, on two planes 8 mm thick", () => {
    expect(strength.cheekShearOut.stress).toBeCloseTo(0.24285, 5);
    expect(strength.cheekShearOut.factor).toBeCloseTo(57.237, 3);
  });
  test("in a catch the weakest place is the tenon across its grain: 4.04839/3, and half of that at the lowest frictions", () => {
    expect(smallestFactorInCatch(planeWith())).toBeCloseTo(4.04839 / 3, 4);
    const weakest = (load: (typeof LOADS)[number]) => weakestPlace(planePinStrength(planeWith(), load));
    expect(weakest("fineAtLowest")).toEqual({ place: "tenonCrushing", factor: expect.closeTo(2.11472, 4) });
    expect(weakest("inCatchAtLowest")!.factor).toBeCloseTo(2.11472 / 3, 4);
  });
});

test("a tenon bears over what of it lies in the cheek: no more than the cheek, and nothing where it does not reach it", () => {
  const bearing = (changes: Changes) => planePinStrength(planeWith(changes), "fine").cheekBearing;
  const flush = bearing({ "pin.tenonLength": 8.5 }); // half a mm of gap, 8 mm in the cheek
  expect(flush.stress).toBeCloseTo(246.394 / 2 / (9.5 * 8), 5);
  expect(bearing({ "pin.tenonLength": 20 }).stress).toBeCloseTo(flush.stress, 9);
  expect(bearing({ "pin.tenonLength": 2, "pin.endClearance": 5 })).toMatchObject({
    stress: Number.POSITIVE_INFINITY,
    factor: 0,
  });
});

test("a round pin rolls on its tenons: atan(0.35·9.5/12.7) = 14.671°", () => {
  const plane = planeWith({ "pin.section": "round" });
  expect(planeHold(plane).angleAtPin).toBeCloseTo(14.67137, 4);
  expect(planeHold(plane).fine.lockingMargin).toBeCloseTo(14.03624 + 14.67137 - 6, 4);
});

describe("the nearest edge in the thrust's line", () => {
  test("is the toe's end where the mouth stands near it: x / sin(β + ω) less the hole's radius", () => {
    const plane = planeWith({ "mouth.fromToe": 22, "bed.angle": 60, "body.height": 75, "ramp.angle": 70 });
    const { x, y } = plane.pin.centre;
    expect((75 - y) / cosDeg(66)).toBeGreaterThan(x / sinDeg(66));
    expect(plane.pinMargins.shearOut).toBeCloseTo(x / sinDeg(66) - 4.85, 9);
  });
});

test("where the pin cannot hold the wedge no clamp is enough, and no place has a factor", () => {
  const plane = planeWith({ "pin.section": "round", "pin.tenon": 8, "wedge.angle": 14 });
  expect(planeHold(plane).fine.clamp).toBe(Number.POSITIVE_INFINITY);
  expect(weakestPlace(planePinStrength(plane, "fine"))).toBeUndefined();
  expect(checkPlane(plane).map(({ code, severity }) => [code, severity])).toContainEqual([
    "wedge-self-locking",
    "stop",
  ]);
});

describe("any plane", () => {
  const planes = randomDesigns(31, 60).map(({ design }) => design);
  const stressesOf = (design: (typeof planes)[number]) => {
    const fine = planePinStrength(elevation(design), "fine");
    return Object.fromEntries(WEAK_PLACES.map((place) => [place, fine[place].stress]));
  };
  const grown = (design: (typeof planes)[number], path: string, now: number) => withValue(design, path, now * 1.2);

  test("a thicker pin is bent less and sags less; a thicker tenon shears less and presses less", () => {
    for (const design of planes) {
      const thicker = grown(design, "pin.diameter", elevation(design).pinSize.diameter);
      expect(stressesOf(thicker).bending!).toBeLessThan(stressesOf(design).bending!);
      const sag = (d: typeof design) => planePinStrength(elevation(d), "fine").sag!.total;
      expect(sag(thicker)).toBeLessThan(sag(design));
      const stout = grown(design, "pin.tenon", elevation(design).pinSize.tenon);
      expect(stressesOf(stout).tenonShear!).toBeLessThan(stressesOf(design).tenonShear!);
      expect(stressesOf(stout).cheekBearing!).toBeLessThan(stressesOf(design).cheekBearing!);
    }
  });
  test("a thicker cheek is pressed and sheared less; a wider iron or a heavier shaving strains everything more", () => {
    for (const design of planes) {
      const thick = stressesOf(grown(design, "body.cheek", design.body.cheek));
      const now = stressesOf(design);
      expect(thick.cheekBearing!).toBeLessThan(now.cheekBearing!);
      if (Number.isFinite(now.cheekShearOut)) expect(thick.cheekShearOut!).toBeLessThan(now.cheekShearOut!);
      for (const more of [
        grown(design, "iron.width", design.iron.width),
        grown(design, "hold.forcePerMm", design.hold.forcePerMm),
      ])
        for (const place of WEAK_PLACES)
          if (Number.isFinite(now[place])) expect(stressesOf(more)[place]!).toBeGreaterThan(now[place]!);
    }
  });
  test("the clamp at the given frictions lies within its range, and a steeper wedge locks less", () => {
    for (const design of planes) {
      const { fine, fineAtLowest, fineAtHighest } = planeHold(elevation(design));
      expect(fine.clamp).toBeGreaterThanOrEqual(fineAtHighest.clamp);
      expect(fine.clamp).toBeLessThanOrEqual(fineAtLowest.clamp);
      const steeper = planeHold(elevation(withValue(design, "wedge.angle", design.wedge.angle + 1)));
      expect(steeper.fine.lockingMargin).toBeCloseTo(fine.lockingMargin - 1, 9);
    }
  });
});

test("each input that is named decides something: changed, the strength changes", () => {
  const strengthsOf = (changes: Changes) =>
    JSON.stringify(LOADS.map((load) => planePinStrength(planeWith(changes), load)));
  const before = strengthsOf({});
  const changes: Changes[] = [
    { "hold.forcePerMm": 6 },
    { "hold.catchPerMm": 16 },
    { "hold.friction.steel": 0.3 },
    { "iron.width": 49 },
    { "body.cheek": 9 },
    { "body.sideClearance": 1.7 },
    { "pin.tenonLength": 6 },
    { "pin.section": "round" },
    { "pin.height": 34 },
    { "pin.tenonClearance": 0.3 },
    { "wedge.angle": 7 },
    { "wood.pin": "maple, sugar" },
    { "wood.body": "maple, sugar", "wood.pin": "beech, american" },
  ];
  for (const change of changes) expect(strengthsOf(change), JSON.stringify(change)).not.toBe(before);
  expect(strengthsOf({ "wood.wedge": "maple, sugar" })).toBe(before);
});

test("`same` is the body's wood, however it is written; the pin's own wood bends and the body's bears", () => {
  expect(planeWoods(planeWith({ "wood.pin": " Same" })).pin.lookUp.found?.name).toBe("Beech, American");
  const fine = planePinStrength(planeWith({ "wood.pin": "maple, sugar" }), "fine");
  expect([fine.bending.strength, fine.cheekShearOut.strength]).toEqual([109, 13.9]);
});

test("a wood the tables lack leaves its factors open, never guessed and never NaN", () => {
  const unknown = planePinStrength(planeWith({ "wood.body": "unobtainium" }), "fine");
  for (const place of WEAK_PLACES) {
    expect(unknown[place].factor).toBeUndefined();
    expect(unknown[place].stress).toBeGreaterThan(0);
  }
  expect(unknown.sag).toBeUndefined();
  const ipe = planePinStrength(planeWith({ "wood.pin": "ipe" }), "fine"); // compression across the grain is not tabulated
  expect(ipe.tenonCrushing.factor).toBeUndefined();
  expect(ipe.bending.strength).toBe(175);
});
