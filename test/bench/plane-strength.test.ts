// Hold and strength of a whole plane: the worked set by hand, laws that any plane keeps, and woods of which little is known.
import { planeHold, planePinStrength, planeWoods, smallestFactorInCatch, WEAK_PLACES } from "@lamplane/bench";
import { withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, randomDesigns, WORKED } from "../support/designs.ts";

const planeWith = (changes: Changes = {}) => elevation(designWith({ ...WORKED, ...changes }));

describe("the worked set in American beech", () => {
  // By hand: F 5·48 = 240 N; N = 240·(cos 47 − 0.25·sin 47)/0.5; φ = atan 0.25, atan 0.35; lowest 0.15, 0.25; highest 0.4, 0.5.
  const { fine, inCatch, range } = planeHold(planeWith());
  test("hold", () => {
    expect(fine.cutting).toBe(240);
    expect(inCatch.cutting).toBe(720);
    expect(fine.clamp).toBeCloseTo(239.5968, 4);
    expect(inCatch.clamp).toBeCloseTo(718.7903, 4);
    expect(range.clamp.least).toBeCloseTo(116.8371, 4);
    expect(range.clamp.most).toBeCloseTo(457.8362, 4);
    expect(fine.lockingMargin).toBeCloseTo(14.03624 + 19.29005 - 6, 4);
    expect(range.lockingMargin.least).toBeCloseTo(16.567, 4);
    expect(range.lockingMargin.most).toBeCloseTo(42.36646, 4);
    expect(fine.driving).toBeCloseTo(173.1051, 4); // N·(tan(6 + 19.29005) + 0.25)
  });

  // American beech (Wood Handbook, tables 5-3, read in a quoting page): 103 MPa, 11.9 GPa, 50.3, 7.0, 13.9 MPa.
  // Flatted 12.7: A 143.983, centroid 0.5928 toward the flat, I 1671.83, farther fibre 6.9428, W 240.802 (by hand).
  const { fine: strength } = planePinStrength(planeWith());
  test("bending: 239.597·49.6/8 = 1485.50 N·mm over 240.802", () => {
    expect(strength.bending.stress).toBeCloseTo(6.16896, 4);
    expect(strength.bending.factor).toBeCloseTo(16.6965, 3);
  });
  test("sag: 5·N·L³/(384·E·I) = 0.019135, and shear 1.2·M/(E/16·A) = 0.016646", () => {
    expect(strength.sag!.bending).toBeCloseTo(0.0191348, 6);
    expect(strength.sag!.shear).toBeCloseTo(0.0166462, 6);
  });
  test("tenon 9.5: shear 4·119.80/(3·70.882); it bears over 7.5 mm, half a mm short of the cheek's 8", () => {
    expect(strength.tenonShear.stress).toBeCloseTo(2.25347, 4);
    expect(strength.tenonShear.factor).toBeCloseTo(6.16825, 4);
    expect(strength.tenonCrushing.stress).toBeCloseTo(1.68138, 4);
    expect(strength.tenonCrushing.factor).toBeCloseTo(4.16324, 4);
  });
  test("cheek: 15.523 MPa at 90 − 47 − 6 = 37° to its grain by Hankinson's formula", () => {
    expect(strength.cheekBearing.strength).toBeCloseTo(15.52301, 4);
    expect(strength.cheekBearing.factor).toBeCloseTo(9.2323, 4);
  });
  test("shear-out: (58 − 36)/cos 47 − 4.85 = 27.408 mm to the flat top, on two planes 8 mm thick", () => {
    expect(strength.cheekShearOut.stress).toBeCloseTo(0.273182, 5);
    expect(strength.cheekShearOut.factor).toBeCloseTo(50.8819, 3);
  });
  test("in a catch the weakest place is the tenon across its grain: 4.16324/3", () =>
    expect(smallestFactorInCatch(planeWith())).toBeCloseTo(4.16324 / 3, 4));
});

test("a tenon bears over what of it lies in the cheek: no more than the cheek, and nothing where it does not reach it", () => {
  const bearing = (changes: Changes) => planePinStrength(planeWith(changes)).fine.cheekBearing;
  const flush = bearing({ "pin.tenonLength": 8.5 }); // half a mm of gap, 8 mm in the cheek
  expect(flush.stress).toBeCloseTo(239.5968 / 2 / (9.5 * 8), 5);
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

describe("any plane", () => {
  const planes = randomDesigns(31, 60).map(({ design }) => design);
  const stressesOf = (design: (typeof planes)[number]) => {
    const { fine } = planePinStrength(elevation(design));
    return Object.fromEntries(WEAK_PLACES.map((place) => [place, fine[place].stress]));
  };
  const grown = (design: (typeof planes)[number], path: string, now: number) => withValue(design, path, now * 1.2);

  test("a thicker pin is bent less and sags less; a thicker tenon shears less and presses less", () => {
    for (const design of planes) {
      const thicker = grown(design, "pin.diameter", design.pin.diameter);
      expect(stressesOf(thicker).bending!).toBeLessThan(stressesOf(design).bending!);
      const sag = (d: typeof design) => planePinStrength(elevation(d)).fine.sag!.total;
      expect(sag(thicker)).toBeLessThan(sag(design));
      const stout = grown(design, "pin.tenon", design.pin.tenon);
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
      const { fine, range } = planeHold(elevation(design));
      expect(fine.clamp).toBeGreaterThanOrEqual(range.clamp.least);
      expect(fine.clamp).toBeLessThanOrEqual(range.clamp.most);
      const steeper = planeHold(elevation(withValue(design, "wedge.angle", design.wedge.angle + 1)));
      expect(steeper.fine.lockingMargin).toBeCloseTo(fine.lockingMargin - 1, 9);
    }
  });
});

test("each input that is named decides something: changed, the strength changes", () => {
  const before = JSON.stringify(planePinStrength(planeWith()));
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
  for (const change of changes)
    expect(JSON.stringify(planePinStrength(planeWith(change))), JSON.stringify(change)).not.toBe(before);
  expect(JSON.stringify(planePinStrength(planeWith({ "wood.wedge": "maple, sugar" })))).toBe(before);
});

test("`same` is the body's wood, however it is written; the pin's own wood bends and the body's bears", () => {
  expect(planeWoods(planeWith({ "wood.pin": " Same" })).pin.lookUp.found?.name).toBe("Beech, American");
  const { fine } = planePinStrength(planeWith({ "wood.pin": "maple, sugar" }));
  expect([fine.bending.strength, fine.cheekShearOut.strength]).toEqual([109, 13.9]);
});

test("a wood the tables lack leaves its factors open, never guessed and never NaN", () => {
  const unknown = planePinStrength(planeWith({ "wood.body": "unobtainium" })).fine;
  for (const place of WEAK_PLACES) {
    expect(unknown[place].factor).toBeUndefined();
    expect(unknown[place].stress).toBeGreaterThan(0);
  }
  expect(unknown.sag).toBeUndefined();
  const ipe = planePinStrength(planeWith({ "wood.pin": "ipe" })).fine; // compression across the grain is not tabulated
  expect(ipe.tenonCrushing.factor).toBeUndefined();
  expect(ipe.bending.strength).toBe(175);
});
