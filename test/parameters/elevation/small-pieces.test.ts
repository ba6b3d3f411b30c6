// Small pieces that the whole elevation is made of, each with values worked by hand.

import { cosDeg, line, point, sinDeg } from "@lamplane/geometry";
import { blocksAt, cheekShape, elevation, figureValue, pegHoles, pegWaste } from "@lamplane/parameters/elevation";
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

describe("pegs", () => {
  const planes = [
    { "body.trim": 40 },
    { "body.trim": 60, "mouth.fromToe": 70 },
    { "body.trim": 25.4, "sole.allowance": 6 },
  ].map((changes) => elevation(designWith({ ...WORKED, "pegs.perEnd": 2, ...changes })));
  const reachOf = (corners: readonly { readonly x: number }[]) => corners.map(({ x }) => x);

  test("stand midway between the finished end and where both block and cheeks end, a quarter of the height from top and sole", () => {
    for (const plane of planes) {
      const { length, height } = plane.design.body;
      const blank = blocksAt(plane, "blank");
      const cheeks = reachOf(cheekShape(plane, "blank").boundary.map(({ from }) => from));
      const toe = Math.max(Math.min(...reachOf(blank.front.map(({ from }) => from))), Math.min(...cheeks));
      const heel = Math.min(Math.max(...reachOf(blank.bed.map(({ from }) => from))), Math.max(...cheeks));
      const sole = -plane.design.sole.allowance;
      const wanted = [toe / 2, (heel + length) / 2].flatMap((x) =>
        [0.25, 0.75].map((share) => [x, sole + share * (height - sole)]),
      );
      expect(pegHoles(plane).map(({ centre }) => [centre.x, centre.y])).toEqual(
        wanted.map((place) => place.map((v) => expect.closeTo(v, 9))),
      );
    }
  });
  test("must fit into the shorter of the two blocks' wastes", () => {
    for (const plane of planes) {
      const blank = blocksAt(plane, "blank");
      const [front, bed] = [blank.front, blank.bed].map((outline) => reachOf(outline.map(({ from }) => from)));
      expect(pegWaste(plane)).toBeCloseTo(
        Math.min(-Math.min(...front!), Math.max(...bed!) - plane.design.body.length),
        9,
      );
    }
  });
});
