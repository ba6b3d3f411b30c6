// Small pieces that the whole elevation is made of, each with values worked by hand.

import { cosDeg, line, point, sinDeg } from "@lamplane/geometry";
import { elevation, figureValue } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { planeToIron } from "../../../packages/parameters/src/elevation/frame.ts";
import { capIronOutline } from "../../../packages/parameters/src/elevation/iron-parts.ts";
import { bedLineTopS } from "../../../packages/parameters/src/elevation/stack.ts";
import { widthsOf } from "../../../packages/parameters/src/elevation/widths.ts";
import { designWith, WORKED } from "../../support/designs.ts";

test("each piece is sawn wider by the milling allowance on both faces; the billet holds them, two kerfs and four jointings", () => {
  const widths = widthsOf(
    designWith({
      "body.sideClearance": 1.6,
      "body.cheek": 8,
      "shop.millingAllowance": 1.5,
      "shop.kerf": 3.2,
      "shop.jointingPass": 0.5,
    }),
  );
  expect(
    [widths.core, widths.roughCheek, widths.roughCore, widths.body].map((mm) => Math.round(mm * 1e9) / 1e9),
  ).toEqual([49.6, 11, 52.6, 65.6]);
  expect(widths.billet).toBeCloseTo(2 * 11 + 52.6 + 2 * 3.2 + 4 * 0.5, 9);
});

describe("iron and wedge", () => {
  const { design, frame } = elevation(designWith({ ...WORKED, "capIron.hump": 1, "capIron.humpEnd": 12 }));
  test("the cap iron stands highest at its hump, as far from its edge as it is high", () => {
    const corners = capIronOutline(design, frame)!.map(({ from }) => planeToIron(frame, from));
    const peak = corners.reduce((a, b) => (a.v > b.v ? a : b));
    expect(peak.v).toBeCloseTo(3.2 + 1, 9);
    expect(peak.s).toBeCloseTo(design.capIron.setback + 3.2 + 1, 9);
  });
  test("a line along the iron that misses the top is as long as the full height gives", () => {
    const top = [line(point(5, 58), point(0, 58))];
    expect(bedLineTopS(design, frame, top, 3.2)).toBeCloseTo((58 - 3.2 * cosDeg(47)) / sinDeg(47), 9);
  });
});

describe("wood over the pin's hole", () => {
  const over = (changes: Parameters<typeof designWith>[0]) =>
    figureValue(elevation(designWith({ ...WORKED, "pin.section": "round", ...changes })), "woodOverPinHole")!;
  test("is what stands over it also near the heel, for the thrust goes to the toe", () => {
    // On a flat top: height, less the pin's, less the hole's radius.
    const changes = {
      "body.length": 125,
      "mouth.fromToe": 90,
      "pin.height": 39,
      "pin.tenon": 9.5,
      "pin.tenonClearance": 0.2,
      "body.outline": "flat",
    };
    expect(over(changes)).toBeCloseTo(58 - 39 - 9.7 / 2, 9);
  });
  test("is less than nothing for a pin over the top", () => {
    expect(over({ "pin.height": 70, "body.outline": "flat" })).toBeLessThan(-12);
  });
});
