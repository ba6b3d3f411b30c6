// Figures of the elevation: a chamfer on a thin iron, the core's cuts; the worked set and the trade's rules stand in test/outside.

import { checkWithoutCures } from "@lamplane/bench/checks";
import { cotDeg, sinDeg } from "@lamplane/geometry";
import { blocksAt, elevation, type FigureKey, figureValue, tipGap } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../../support/buildable.ts";
import { type Changes, designWith, randomDesigns, WORKED } from "../../support/designs.ts";

const figureOf = (changes: Changes, key: FigureKey): number => figureValue(elevation(designWith(changes)), key)!;

describe("a thin iron", () => {
  const thin = {
    "iron.thickness": 3.175,
    "bed.angle": 45,
    "ramp.angle": 62,
    "mouth.opening": 0.15,
    "sole.allowance": 3.175,
    "bed.featherChamfer": 3.175,
  };
  const plane = elevation(designWith(thin));

  test("has its tips held apart by a chamfer as high as the allowance, which wins back 3.175", () => {
    const { bed, front } = blocksAt(plane, "glued");
    const left = Math.min(...bed.map(({ from }) => from.x));
    const right = Math.max(...front.map(({ from }) => from.x));
    expect(left - plane.points.bedTip.x).toBeCloseTo(3.175, 9);
    expect(left - right).toBeCloseTo(figureValue(plane, "glueGap")! + 3.175, 9);
  });
  test("and is gone once the sole is trued", () => {
    const chamfered = blocksAt(plane, "trued");
    const plain = blocksAt(elevation(designWith({ ...thin, "bed.featherChamfer": 0 })), "trued");
    expect(chamfered.bed).toEqual(plain.bed);
    expect(chamfered.bedChain).toHaveLength(1);
    expect(chamfered.bedChain[0]!.from).toEqual(plane.points.bedFoot);
  });
});

test("a recess begins so far up the bed from its tip: the head's lowest place less its travel, less t·cot β (by hand)", () => {
  const head = { "capIron.screwHead.diameter": 16, "capIron.screwHead.height": 3.4, "capIron.screwHead.fromEdge": 48 };
  const low = 48 - 16 / 2 - 6;
  expect(figureOf({ ...head, "recess.travel": 6, "bed.angle": 47 }, "recessFromBedEdge")).toBeCloseTo(
    low - 3.6 * 0.932515, // cot 47
    5,
  );
});

test("a bed that runs out behind the heel ends where it would come out of a longer body of full height (by hand)", () => {
  const { bedTopS, points } = elevation(designWith({ "mouth.fromToe": 200, "bed.angle": 45 }));
  expect(bedTopS).toBeCloseTo((58 + 3.6 * Math.SQRT1_2) / Math.SQRT1_2, 9);
  expect(points.bedTop.y).toBeCloseTo(58, 9);
  expect(points.bedTop.x).toBeCloseTo(200 + 3.6 * Math.SQRT2 + 58, 9);
});

test("a chamfer of 5.767 over 5 of allowance keeps a thin iron's blocks apart by 0.439: 2.611 − 7.549 + 5.378 (by hand)", () => {
  const plane = elevation(
    designWith({
      ...WORKED,
      "iron.thickness": 1.8,
      "sole.allowance": 5,
      "bed.featherChamfer": 5.767,
    }),
  );
  expect(tipGap(plane)).toBeCloseTo(1.8 / 0.7313537 + 0.15 - 5 * 1.5098653 + 5.767 * 0.9325151, 5);
  expect(figureValue(plane, "greatestAllowance")).toBeCloseTo(5 + tipGap(plane) / 1.5098653, 5);
  expect(checkWithoutCures(plane).map(({ code }) => code)).not.toContain("block-tip-gap");
});

describe("over random designs", () => {
  const designs = randomDesigns(7, 200, isBuildable);

  test("the greatest allowance just brings the tips together", () => {
    for (const { changes } of designs) {
      const most = figureOf(changes, "greatestAllowance");
      if (most > 20 || most < 0) continue;
      const { bed, front } = blocksAt(elevation(designWith({ ...changes, "sole.allowance": most })), "glued");
      const gap = Math.min(...bed.map(({ from }) => from.x)) - Math.max(...front.map(({ from }) => from.x));
      expect(gap).toBeCloseTo(0, 6);
    }
  });

  test("the gap between the tips is what the blocks' outlines leave between them, chamfer and all", () => {
    for (const { design } of designs) {
      const plane = elevation(design);
      const { bed, front } = blocksAt(plane, "glued");
      const corners = (outline: typeof bed) => outline.flatMap(({ from, to }) => [from.x, to.x]);
      expect(tipGap(plane)).toBeCloseTo(Math.min(...corners(bed)) - Math.max(...corners(front)), 9);
    }
  });

  test("the edge stands over the blank's sole where the iron, let down, touches the front block", () => {
    for (const { design } of designs) {
      const plane = elevation(design);
      // Let down along the bed by this much, the edge meets the ramp's line on the way.
      const down = design.sole.allowance - figureValue(plane, "edgeHeightAtContact")!;
      const edgeX = plane.points.edge.x - down * cotDeg(design.bed.angle);
      const rampX = plane.points.rampFoot.x + down * cotDeg(plane.ramp.angle);
      expect(edgeX).toBeCloseTo(rampX, 9);
    }
  });

  test("neither kerf on the core touches the other block, whatever the saw's width", () => {
    for (const { design } of designs) {
      const { cuts, ramp, widths } = elevation(design);
      for (let y = 0; y <= widths.blankHeight; y += widths.blankHeight / 20) {
        const frontBlock = cuts.rampMark - y * cotDeg(ramp.angle);
        const bedBlock = cuts.bedMark + y * cotDeg(design.bed.angle);
        expect(bedBlock - (frontBlock + design.shop.kerf / sinDeg(ramp.angle))).toBeGreaterThan(0.5);
        expect(bedBlock - design.shop.kerf / sinDeg(design.bed.angle) - frontBlock).toBeGreaterThan(0.5);
      }
    }
  });

  test("what the blocks are set in by brings their tips to their places at glue-up", () => {
    for (const { design } of designs) {
      const { cuts, points } = elevation(design);
      const toe = -design.body.trim / 2;
      expect(cuts.setInToe).toBeGreaterThanOrEqual(0);
      expect(cuts.setInHeel).toBeGreaterThanOrEqual(0);
      expect(toe + cuts.rampMark + cuts.setInToe).toBeCloseTo(points.rampTip.x, 9);
      expect(toe + cuts.bedMark - cuts.setInHeel).toBeCloseTo(points.bedTip.x, 9);
    }
  });
});
