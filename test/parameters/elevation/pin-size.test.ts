// The cross pin that `auto` comes out as: the usual one where it fits, else one in proportion. Common practice, no published source.
import { checkWithoutCures } from "@lamplane/bench/checks";
import { withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { designWith, randomDesigns } from "../../support/designs.ts";

const SMALL = { "iron.width": 32, "iron.thickness": 3, "body.length": 120, "body.height": 36 };

const withPin = (design: Design, diameter: number | "auto", tenon: number | "auto"): Design =>
  withValue(withValue(design, "pin.diameter", diameter), "pin.tenon", tenon);
const stopsOf = (design: Design) =>
  checkWithoutCures(elevation(design))
    .filter(({ severity }) => severity === "stop")
    .map(({ code }) => code);

describe("sizes worked by hand", () => {
  test.each([
    ["a body of 58: 12.7 and 9.5", {}, 12.7, 9.5],
    ["a body of 36: 2/9 of it, and 3/4 of that", SMALL, 8, 6],
    ["a body of 34 in steps of 0.5: 7.56 down, 5.63 to the nearest", { ...SMALL, "body.height": 34 }, 7.5, 5.5],
    [
      "a body of 36 in inches: 0.315 down to 10/32, 0.234 to the nearest, 8/32",
      { ...SMALL, units: "in" },
      7.9375,
      6.35,
    ],
    ["a body of 58 in inches: 1/2 and 3/8", { units: "in" }, 12.7, 9.525],
    ["a thin pin that is entered: 3/4 of it", { "pin.diameter": 8 }, 8, 6],
    ["a stout pin that is entered keeps the usual tenon", { "pin.diameter": 16 }, 16, 9.5],
    ["a tenon that is entered stays", { ...SMALL, "pin.tenon": 5 }, 8, 5],
    ["both entered stay, fit or not", { ...SMALL, "pin.diameter": 12.7, "pin.tenon": 9.5 }, 12.7, 9.5],
  ] as const)("%s", (_, changes, diameter, tenon) => {
    const { pinSize } = elevation(designWith(changes));
    expect(pinSize.diameter).toBeCloseTo(diameter, 9);
    expect(pinSize.tenon).toBeCloseTo(tenon, 9);
  });
});

test("a plane that can be built with 12.7 and 9.5 keeps them; one that cannot gets none larger", () => {
  const [kept, smaller] = [[], []] as [string[], number[]];
  for (const { design } of randomDesigns(907, 150)) {
    const low = withValue(design, "body.height", 25 + (design.body.height - 45));
    for (const each of [design, low]) {
      const { pinSize } = elevation(withPin(each, "auto", "auto"));
      const stops = stopsOf(withPin(each, 12.7, 9.5));
      if (stops.length === 0) {
        expect(pinSize).toEqual({ diameter: 12.7, tenon: 9.5 });
        kept.push(each.name);
      } else {
        expect(pinSize.diameter).toBeLessThanOrEqual(12.7);
        expect(pinSize.tenon).toBeLessThanOrEqual(9.5);
        if (pinSize.diameter < 12.7) smaller.push(pinSize.diameter);
      }
    }
  }
  expect(kept.length).toBeGreaterThan(30);
  expect(smaller.length).toBeGreaterThan(10);
});

test("a bare small plane that the usual pin stops can be built with the pin that auto gives it", () => {
  const small = designWith(SMALL);
  expect(stopsOf(withPin(small, 12.7, 9.5))).toContain("pin-hole-wood");
  expect(stopsOf(small)).toEqual([]);
});
