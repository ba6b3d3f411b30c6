// The named places of the elevation lie on the lines that they are named for: by distances and slopes alone, over random designs.
import { distance, type Point } from "@lamplane/geometry";
import { type Elevation, elevation } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, randomDesigns, taperedDesigns } from "../../support/designs.ts";
import { readIron } from "../../support/plane-by-lines.ts";

const NO_HEAD: Changes = { "capIron.screwHead.height": 0 };
const planes: Elevation[] = [
  ...randomDesigns(71, 40),
  ...taperedDesigns(72, 20),
  ...randomDesigns(73, 5).map(({ changes }) => ({ design: designWith({ ...changes, ...NO_HEAD }) })),
].map(({ design }) => elevation(design));

const radians = (degrees: number) => (degrees * Math.PI) / 180;
/** How far a point lies to the left of the line through `through` that rises at an angle. */
const offLine = (p: Point, through: Point, degrees: number) =>
  (p.y - through.y) * Math.cos(radians(degrees)) - (p.x - through.x) * Math.sin(radians(degrees));
/** How far it lies along that line. */
const alongLine = (p: Point, through: Point, degrees: number) =>
  (p.x - through.x) * Math.cos(radians(degrees)) + (p.y - through.y) * Math.sin(radians(degrees));

describe("over random designs, tapered irons and single ones among them,", () => {
  test("foot, tip, chamfer and top of the bed, the recess's end and the bevel's heel lie on the bed", () => {
    for (const { points, design } of planes) {
      const { bedFoot, bedTip, bedChamfer, bedTop, recessLow, bevelHeel } = points;
      for (const p of [bedTip, bedChamfer, bedTop, recessLow, bevelHeel])
        expect(Math.abs(offLine(p, bedFoot, design.bed.angle))).toBeLessThan(1e-6);
    }
  });

  test("each at its height: foot on the trued sole, tip on the blank's, the chamfer over that by its height", () => {
    for (const { points, design } of planes) {
      const { allowance } = design.sole;
      expect([points.edge.y, points.bedFoot.y, points.rampFoot.y]).toEqual([0, 0, 0]);
      expect(points.bedTip.y).toBeCloseTo(-allowance, 9);
      expect(points.rampTip.y).toBeCloseTo(-allowance, 9);
      expect(points.bedChamfer.y).toBeCloseTo(design.bed.featherChamfer - allowance, 9);
    }
  });

  test("the edge stands off the bed by the iron's thickness there, the mouth's opening from the ramp", () => {
    for (const { points, design } of planes) {
      const { thickness } = readIron(design);
      expect(offLine(points.edge, points.bedFoot, design.bed.angle)).toBeCloseTo(thickness, 6);
      expect(points.edge.x - points.rampFoot.x).toBeCloseTo(design.mouth.opening, 9);
      const { fromToe } = design.mouth;
      if (fromToe !== "auto") expect(points.edge.x).toBeCloseTo(fromToe, 9);
    }
  });

  test("the recess begins below the screw's head and the travel under it; without one the place is the bed's top", () => {
    let [routed, none] = [0, 0];
    for (const { points, design, recess } of planes) {
      const { diameter, fromEdge, height } = design.capIron.screwHead;
      if (design.capIron.thickness === 0 || height === 0) {
        none++;
        expect(recess).toBeUndefined();
        expect(distance(points.recessLow, points.bedTop)).toBeLessThan(1e-9);
        continue;
      }
      routed++;
      const up = alongLine(points.recessLow, points.edge, design.bed.angle);
      expect(up).toBeCloseTo(fromEdge - diameter / 2 - design.recess.travel, 6);
    }
    expect(Math.min(routed, none)).toBeGreaterThan(5);
  });

  test("the bevel's heel lies where the bevel, its angle off the iron's face, runs into the bed", () => {
    for (const { points, design } of planes) {
      const { slope } = readIron(design);
      const face = design.bed.angle + (Math.atan(slope) * 180) / Math.PI;
      expect(Math.abs(offLine(points.bevelHeel, points.edge, face - design.iron.bevel))).toBeLessThan(1e-6);
    }
  });

  test("the wedge's tip lies on the cap iron, so far up the iron's face from the edge", () => {
    for (const { points, design } of planes) {
      const { slope } = readIron(design);
      const face = design.bed.angle + (Math.atan(slope) * 180) / Math.PI;
      expect(offLine(points.wedgeTip, points.edge, face)).toBeCloseTo(design.capIron.thickness, 6);
      expect(alongLine(points.wedgeTip, points.edge, face)).toBeCloseTo(design.wedge.tipFromEdge, 6);
    }
  });

  test("toe and heel are the body's length apart; nothing of the finished top stands over the crown", () => {
    for (const { points, design, topChain } of planes) {
      expect([points.toe, points.heel]).toEqual([
        { x: 0, y: 0 },
        { x: design.body.length, y: 0 },
      ]);
      const highest = Math.max(...topChain.flatMap(({ from, to }) => [from.y, to.y]));
      expect(points.crown.y).toBeGreaterThanOrEqual(highest - 1e-9);
      expect(points.crown.y).toBeCloseTo(design.body.height, 9);
    }
  });
});
