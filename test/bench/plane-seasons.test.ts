// A whole plane through the year: the worked set by hand, laws that any plane keeps, and woods of which little is known.
import { planeSeasonSeries, planeSeasons, yearlyMaximum, yearlyMinimum } from "@lamplane/bench";
import { withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, randomDesigns, WORKED } from "../support/designs.ts";

const planeWith = (changes: Changes = {}) => elevation(designWith({ ...WORKED, ...changes }));

describe("the worked set in American beech, rings at 20°, 21 °C with 30 and 65 %", () => {
  // Eq. 4-5 by hand: 6.1715 and 11.9620 %, cut midway at 9.0667; C_R 0.00190, C_T 0.00431 (table 13-5, read):
  // across C_T·cos² 20 + C_R·sin² 20 = 0.0040281, up 0.0021819; ΔM ± 2.8953.
  const plane = planeWith();
  const { driest, planned, dampest, clearance, valid } = planeSeasons(plane);
  test("moistures", () => {
    expect(driest.moisture).toBeCloseTo(6.1715, 4);
    expect(planned.moisture).toBeCloseTo(9.0667, 4);
    expect(dampest.moisture).toBeCloseTo(11.962, 4);
    expect(valid).toBe(true);
  });
  test("core 49.6·(1 ∓ 0.011662)", () => {
    expect(driest.coreWidth).toBeCloseTo(49.02155, 4);
    expect(planned.coreWidth).toBeCloseTo(49.6, 12);
    expect(dampest.coreWidth).toBeCloseTo(50.17845, 4);
  });
  test("dry: iron, pin of 48.6 between its shoulders, and wedge of 48 keep their room", () => {
    expect(yearlyMinimum(plane, "sideGap")).toBeCloseTo(1.02155, 4);
    expect(yearlyMinimum(plane, "pinEndGap")).toBeCloseTo(0.21077, 4);
    expect(yearlyMinimum(plane, "wedgeGap")).toBeCloseTo(1.6 * (1 - 0.0116626), 4);
  });
  test("the body of 65.6 shrinks by 0.7650 about a pin half a mm short at each end", () =>
    expect(yearlyMaximum(plane, "tenonProud")).toBeCloseTo(0.765 / 2 - 0.5, 4));
  test("damp: the tenon swells by 9.5·0.00431·2.8953, and the body is 0.7328 higher than when dry", () => {
    expect(yearlyMinimum(plane, "tenonGap")).toBeCloseTo(0.2 - 0.118546, 4);
    expect(dampest.bodyHeight! - driest.bodyHeight!).toBeCloseTo(0.7328, 4);
  });
  test("clearances that leave 0.1 mm", () => {
    expect(clearance().sideClearance).toBeCloseTo(0.66758, 4);
    expect(clearance().endClearance).toBeCloseTo(0.38923, 4);
    expect(clearance().wedgeClearance).toBeCloseTo(0.10118, 4);
  });
});

describe("any plane", () => {
  const designs = randomDesigns(47, 60).map(({ design }) => design);
  test("planned with the clearances to plan, it keeps 0.1 mm at the worst of the year", () => {
    for (const design of designs) {
      const { sideClearance, wedgeClearance } = planeSeasons(elevation(design)).clearance();
      const replanned = elevation(withValue(design, "body.sideClearance", sideClearance!));
      expect(yearlyMinimum(replanned, "sideGap")).toBeCloseTo(0.1, 9);
      const { endClearance } = planeSeasons(replanned).clearance();
      const shouldered = elevation(withValue(replanned.design, "pin.endClearance", endClearance!));
      expect(yearlyMinimum(shouldered, "pinEndGap")).toBeCloseTo(0.1, 9);
      const wedged = elevation(withValue(design, "wedge.clearance", wedgeClearance!));
      expect(yearlyMinimum(wedged, "wedgeGap")).toBeCloseTo(0.1, 9);
    }
  });
  test("a wider year moves the core more; a core cut dry does not close on the iron", () => {
    for (const design of designs) {
      const change = (d: typeof design) => {
        const { driest, dampest } = planeSeasons(elevation(d));
        return dampest.coreWidth! - driest.coreWidth!;
      };
      expect(change(withValue(design, "wood.driest.humidity", 20))).toBeGreaterThan(change(design));
      const { driest } = planeSeasons(elevation(design));
      const cutDry = elevation(withValue(design, "wood.moisture", driest.moisture));
      expect(yearlyMinimum(cutDry, "sideGap")).toBeCloseTo(design.body.sideClearance, 9);
    }
  });
});

test.each(["birch, sweet", "apple", "teak", "beech, american"])(
  "%s: a drier winter never leaves a wider core, wherever the year ends",
  (wood) => {
    const widths = [...Array(40).keys()].map((i) => {
      const plane = planeWith({ "wood.body": wood, "wood.moisture": 9, "wood.driest.humidity": 15 + i });
      return planeSeasons(plane).driest.coreWidth!;
    });
    expect(widths.slice(1).every((width, i) => width > widths[i]!)).toBe(true);
  },
);

test("the wedge moves with its own wood and rings, the tenons with theirs", () => {
  const wedge = (changes: Changes) => planeSeasons(planeWith(changes)).driest.wedgeWidth!;
  expect(wedge({ "wood.wedgeRings": 90 })).toBeGreaterThan(wedge({}));
  expect(wedge({ "wood.wedgeRings": 20 })).toBe(wedge({}));
  expect(wedge({ "wood.wedge": "cherry, black" })).toBeGreaterThan(wedge({}));
  const tenon = (changes: Changes) => yearlyMinimum(planeWith(changes), "tenonGap")!;
  expect(tenon({ "wood.pin": "purpleheart" })).toBeGreaterThan(tenon({}));
});

test("the series runs from the driest to the dampest", () => {
  const plane = planeWith();
  const series = planeSeasonSeries(plane, 9);
  expect(series).toHaveLength(9);
  expect(series[0]).toEqual(planeSeasons(plane).driest);
  expect(series[8]).toEqual(planeSeasons(plane).dampest);
});

test("an unknown body leaves the year open, never guessed and never NaN; the pin's tenon is still known", () => {
  const plane = planeWith({ "wood.body": "unobtainium", "wood.pin": "maple, sugar" });
  const { driest, clearance } = planeSeasons(plane);
  expect(driest.moisture).toBeCloseTo(6.1715, 4);
  expect([driest.coreWidth, driest.sideGap, driest.pinEndGap, driest.wedgeGap, driest.tenonProud]).toEqual(
    Array(5).fill(undefined),
  );
  expect(Object.values(clearance())).toEqual(Array(3).fill(undefined));
  expect(yearlyMinimum(plane, "sideGap")).toBeUndefined();
});
