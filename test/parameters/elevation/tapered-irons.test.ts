// Tapered irons: a set worked apart, a solver that knows lines only, and what a taper of nothing leaves as it is.
import { allFigures } from "@lamplane/bench";
import { elevation, type FigureKey, figureValue } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, randomDesigns, taperedDesigns, WORKED } from "../../support/designs.ts";
import { planeByLines } from "../../support/plane-by-lines.ts";

const STRAIGHT = { "body.outline": "flat", "ramp.shape": "straight" } as const;
const byLines = (design: Design) => {
  const plane = elevation(design);
  return planeByLines(design, plane.pinSize, plane.pin.centre.y, plane.ramp.angle, plane.frame.mouthX);
};
const figureOf = (changes: Changes, key: FigureKey) => figureValue(elevation(designWith(changes)), key);

/** 4.2 at 12 from the edge and 3.0 at 150: 1.2 in 138 mm. The worked set beside it, and no cap iron. */
const TAPERED = {
  ...WORKED,
  ...STRAIGHT,
  "iron.thickness": 4.2,
  "iron.thicknessFromEdge": 12,
  "iron.thicknessAtTop": 3,
  "iron.topFromEdge": 150,
  "capIron.thickness": 0,
};

const WORKED_SET: readonly (readonly [FigureKey, number])[] = [
  ["edgeThickness", 4.304348],
  ["faceAngle", 46.501788],
  ["bedTipFromEnd", 93.787908],
  ["rampTipFromEnd", 92.282051],
  ["glueGap", 1.505857],
  ["unsupported", 3.914343],
  ["clearanceAngle", 18.501788],
  ["mouthGrowth", 1.509865],
  ["throatAtTop", 93.607644],
  ["pinS", 39.024682],
  ["pinV", 11.174344],
  ["pinFromEnd", 109.456112],
  ["wedgeAtPin", 4.789366],
  ["pinToRamp", 28.023173],
  ["shearOut", 31.290422],
];

describe("an iron of 4.2 at 12 and 3.0 at 150 mm from its edge, on a bed of 47°", () => {
  test.each(WORKED_SET)("%s is %d (worked apart)", (key, value) => {
    expect(figureOf(TAPERED, key)).toBeCloseTo(value, 4);
    expect(byLines(designWith(TAPERED))[key as keyof ReturnType<typeof planeByLines>]).toBeCloseTo(value, 4);
  });
});

describe("over random designs with tapered irons", () => {
  const some = taperedDesigns(21, 200, ({ bed }) => bed.angle <= 50).map(({ changes }) =>
    designWith({ ...changes, ...STRAIGHT, "body.length": 700, "mouth.fromToe": 350 }),
  );
  test("every figure of the stack, the blocks and the mouth is what joins and meets of lines give", () => {
    const seen = new Set<number>();
    for (const design of some) {
      const plane = elevation(design);
      seen.add(Math.sign(plane.frame.bedAngle - plane.frame.faceAngle));
      for (const [key, value] of Object.entries(byLines(design))) {
        const ours = figureValue(plane, key as FigureKey) ?? Number.NaN;
        expect(Math.abs(ours - value), `${key} of ${JSON.stringify(design.iron)}`).toBeLessThan(1e-8);
      }
    }
    expect([...seen].sort()).toEqual([-1, 1]);
  });
  test("wedge and cap iron lie on the iron: their corners stand off its face by no more and no less than they are thick", () => {
    for (const design of some) {
      const plane = elevation(design);
      const [edge, , , top] = plane.iron.map(({ from }) => from);
      const [dx, dy] = [top!.x - edge!.x, top!.y - edge!.y];
      const off = (p: { x: number; y: number }) => ((p.y - edge!.y) * dx - (p.x - edge!.x) * dy) / Math.hypot(dx, dy);
      const [tipLow, buttLow, , tipHigh] = plane.wedge.map(({ from }) => from);
      expect(off(tipLow!)).toBeCloseTo(design.capIron.thickness, 9);
      expect(off(buttLow!)).toBeCloseTo(design.capIron.thickness, 9);
      expect(off(tipHigh!)).toBeCloseTo(design.capIron.thickness + design.wedge.tip, 9);
    }
  });
  test("the iron's back lies on the bed, and a caliper reads what was entered at both places", () => {
    for (const design of some) {
      const { iron, frame, points } = elevation(design);
      const back = iron[1]!;
      const slope = (Math.atan2(back.to.y - back.from.y, back.to.x - back.from.x) * 180) / Math.PI;
      expect(slope).toBeCloseTo(frame.bedAngle, 9);
      expect(back.from.x).toBeCloseTo(points.bevelHeel.x, 9);
      expect(back.from.y).toBeCloseTo(points.bevelHeel.y, 9);
      const { thickness, thicknessAtTop, thicknessFromEdge, topFromEdge } = design.iron;
      const [edge, , , top] = iron.map(({ from }) => from);
      const along = (share: number) => ({
        x: edge!.x + share * (top!.x - edge!.x),
        y: edge!.y + share * (top!.y - edge!.y),
      });
      const offBack = (p: { x: number; y: number }) => {
        const [ux, uy] = [back.to.x - back.from.x, back.to.y - back.from.y];
        return ((p.y - back.from.y) * ux - (p.x - back.from.x) * uy) / Math.hypot(ux, uy);
      };
      expect(offBack(along(thicknessFromEdge / design.iron.length))).toBeCloseTo(thickness, 9);
      if (thicknessAtTop !== "auto")
        expect(offBack(along(Number(topFromEdge) / design.iron.length))).toBeCloseTo(thicknessAtTop, 9);
    }
  });
});

describe("a parallel iron", () => {
  test("is the same to the last digit whether its taper is left out, entered as 0, or measured twice as thick", () => {
    for (const { changes, design } of randomDesigns(22, 40)) {
      const plain = elevation(design);
      const thickness = Number(changes["iron.thickness"]);
      for (const entered of [
        { "iron.taper": 0 },
        { "iron.taper": 0, "iron.thicknessFromEdge": 15 },
        { "iron.thicknessAtTop": thickness },
        { "iron.thicknessAtTop": thickness, "iron.topFromEdge": 120, "iron.thicknessFromEdge": 9 },
      ]) {
        const plane = elevation(designWith({ ...changes, ...entered }));
        expect(allFigures(plane)).toEqual(allFigures(plain));
        const { points, iron, wedge, pinSection, throat } = plane;
        expect({ points, iron, wedge, pinSection, throat }).toEqual({
          points: plain.points,
          iron: plain.iron,
          wedge: plain.wedge,
          pinSection: plain.pinSection,
          throat: plain.throat,
        });
      }
    }
  });
  test("has neither taper nor face's angle among its figures", () => {
    const keys = allFigures(elevation(designWith(WORKED))).map(({ key }) => key);
    for (const key of ["ironTaper", "faceAngle", "edgeThickness", "thicknessAtTop"]) expect(keys).not.toContain(key);
  });
});
