// Figures of the elevation: the worked set by its outlines, the thin iron, the trade's rules, the core's cuts.
import { blocksAt, elevation, type FigureKey, figure, outlineArea } from "@lamplane/parameters/elevation";
import { cotDeg, sinDeg } from "@lamplane/parameters/trig";
import { describe, expect, test } from "vitest";
import { buildable } from "../../support/buildable.ts";
import { type Changes, designWith, randomDesigns, WORKED } from "../../support/designs.ts";

const figureOf = (changes: Changes, key: FigureKey): number => figure(elevation(designWith(changes)), key)!;

describe("worked set, computed apart from the project", () => {
  test.each([
    ["mouthGrowth", 1.5099],
    ["bedTipX", 80.1248],
    ["rampTipX", 79.5821],
    ["glueGap", 0.5428],
    ["edgeHeightAtContact", 2.9007],
    ["unsupported", 3.4136],
    ["pinS", 36.1056],
    ["pinV", 14.0675],
    ["pinX", 92.3356],
    ["wedgeAtPin", 4.4826],
    ["pinToRamp", 24.1949],
    ["coreWidth", 49.6],
  ] as const)("%s is %d", (key, value) => expect(figureOf(WORKED, key).toFixed(4)).toBe(value.toFixed(4)));

  test("finished blocks hold 175 792 and 345 316 mm³ by the area of their outlines", () => {
    const plane = elevation(designWith({ ...WORKED, "capIron.screwHead.diameter": 0 }));
    const { front, bed } = blocksAt(plane, "trued");
    const volumes = [front, bed].map((outline) => Math.round(outlineArea(outline) * plane.widths.core));
    expect(volumes).toEqual([175_792, 345_316]);
  });
});

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

  test("lets the blocks' tips collide by 0.22", () => expect(figure(plane, "glueGap")).toBeCloseTo(-0.22, 2));
  test("but for a chamfer as high as the allowance, which wins back 3.175", () => {
    const { bed, front } = blocksAt(plane, "glued");
    const left = Math.min(...bed.map(({ from }) => from.x));
    const right = Math.max(...front.map(({ from }) => from.x));
    expect(left - plane.points.bedTip.x).toBeCloseTo(3.175, 9);
    expect(left - right).toBeCloseTo(figure(plane, "glueGap")! + 3.175, 9);
  });
  test("and is gone once the sole is trued", () => {
    const chamfered = blocksAt(plane, "trued");
    const plain = blocksAt(elevation(designWith({ ...thin, "bed.featherChamfer": 0 })), "trued");
    expect(chamfered.bed).toEqual(plain.bed);
    expect(chamfered.bedChain).toHaveLength(1);
    expect(chamfered.bedChain[0]!.from).toEqual(plane.points.bedFoot);
  });
});

describe("trade rules: common practice, no published source", () => {
  test.each([
    [45, 62],
    [47, 60],
    [50, 57],
  ])("common practice, no published source: a bed of %d takes a ramp of %d", (bed, ramp) =>
    expect(figureOf({ "bed.angle": bed }, "rampAngle")).toBe(ramp),
  );
  test.each([
    [50, 40],
    [57, 33],
  ])("common practice, no published source: a saw that reads from square stands at %2$d for %1$d", (angle, reading) => {
    expect(figureOf({ "bed.angle": angle }, "sawBed")).toBe(reading);
    expect(figureOf({ "bed.angle": 47, "ramp.angle": angle }, "sawRamp")).toBe(reading);
  });
  test("common practice, no published source: a core 1/16 in wider than the iron, 1.6 mm in whole tenths", () =>
    expect(figureOf({ "iron.width": 50.8 }, "coreWidth")).toBeCloseTo(50.8 + 25.4 / 16, 1));
  test("common practice, no published source: a blank 1 in longer than the plane", () =>
    expect(figureOf({ "body.length": 260 }, "blankLength")).toBeCloseTo(285.4, 9));
  test("common practice, no published source: a billet 1 1/2 in wider than the iron", () =>
    expect(figureOf({ "iron.width": 50.8 }, "billetWidthByRule")).toBeCloseTo(88.9, 9));
  test("common practice, no published source: the mouth a third of the length from the toe", () =>
    expect(figureOf({ "body.length": 270 }, "mouthX")).toBeCloseTo(90, 9));
  test.each([
    [45, "straight"],
    [50, "straight"],
    [50.5, "curved"],
    [57, "curved"],
  ])("common practice, no published source: above 50 the ramp is curved; a bed of %d takes a %s one", (bed, shape) =>
    expect(elevation(designWith({ "bed.angle": bed })).ramp.shape).toBe(shape),
  );
});

describe("over random designs", () => {
  const designs = randomDesigns(7, 200, buildable);

  test("the greatest allowance just brings the tips together", () => {
    for (const { changes } of designs) {
      const most = figureOf(changes, "greatestAllowance");
      const chamfer = changes["bed.featherChamfer"] as number;
      if (most > 20 || chamfer > most) continue;
      const { bed, front } = blocksAt(elevation(designWith({ ...changes, "sole.allowance": most })), "glued");
      const gap = Math.min(...bed.map(({ from }) => from.x)) - Math.max(...front.map(({ from }) => from.x));
      expect(gap).toBeCloseTo(0, 6);
    }
  });

  test("the edge stands over the blank's sole where the iron, let down, touches the front block", () => {
    for (const { design } of designs) {
      const plane = elevation(design);
      // Let down along the bed by this much, the edge meets the ramp's line on the way.
      const down = design.sole.allowance - figure(plane, "edgeHeightAtContact")!;
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
