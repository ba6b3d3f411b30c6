// The two cuts on the core, and marks that outlast every cut: checked against every kerf as a polygon and against what is left.
import { CLEAR_OF_CUTS, stockPlan } from "@lamplane/bench";
import { type Point, point, tessellate } from "@lamplane/geometry";
import { blocksAt, type Elevation, elevation, mouthGrowth } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../../support/buildable.ts";
import { type Changes, designWith, randomDesigns, WORKED } from "../../support/designs.ts";
import { areaOutside, areaShared } from "../../support/flat.ts";

const planOf = (changes: Changes) => stockPlan(elevation(designWith({ ...WORKED, ...changes })));

/** A stroke as a sliver of the top, from `y - 2` up to the top: what a kerf shares with it, it takes away. */
const stroke = (x: number, top: number, half: number): Point[] => [
  point(x - half, top - 2),
  point(x + half, top - 2),
  point(x + half, top),
  point(x - half, top),
];

const strip = (from: number, to: number, height: number): Point[] => [
  point(from, 0),
  point(to, 0),
  point(to, height),
  point(from, height),
];

/** Everything that is cut off a core before the top is shaped, as polygons on the core. */
function cutOff({ design, widths }: Elevation, plan: ReturnType<typeof stockPlan>): Point[][] {
  const { setInToe, setInHeel, cuts, offcut, height } = plan.core;
  const { trim, length } = design.body;
  const [toe, heel] = [trim / 2 - setInToe, trim / 2 + length + setInHeel];
  return [
    ...cuts.map(({ kerf }) => tessellate(kerf)),
    [...offcut],
    strip(-1, Math.max(toe, trim / 2), height),
    strip(Math.min(heel, trim / 2 + length), widths.blankLength + 1, height),
  ].filter((corners) => corners.length > 2);
}

describe("worked by hand: bed 47, ramp 60, kerf 3.2, trim 25.4", () => {
  // Horizontal kerfs 3.2 / sin 47 = 4.3754 and 3.2 / sin 60 = 3.6950; tips 79.5821 and 80.1248 apart by 0.5428; the marks
  // stand 4.3754 + 1 = 5.3754 apart, so each block is set in by (5.3754 - 0.5428) / 2 = 2.4163.
  const { core } = planOf({ "bed.featherChamfer": 3 });
  const [ramp, bed] = core.cuts;

  test("marks, set-in and kerfs on the waste side", () => {
    expect(core.roomBetweenMarks).toBeCloseTo(5.3754, 3);
    expect(core.setInToe).toBeCloseTo(2.4163, 3);
    expect(ramp.markAtSole).toBeCloseTo(79.5821 + 12.7 - 2.4163, 3);
    expect(ramp.kerfAtSole.to - ramp.markAtSole).toBeCloseTo(3.695, 3);
    expect(bed.kerfAtSole.from - bed.markAtSole).toBeCloseTo(-4.3754, 3);
    expect([ramp.saw, bed.saw, ramp.wasteTo, bed.wasteTo]).toEqual([30, 43, "heel", "toe"]);
    // Up 61: the ramp's mark goes 61 · cot 60 = 35.2184 to the toe, the bed's 61 · cot 47 = 56.8834 to the heel.
    expect(ramp.markAtTop).toBeCloseTo(ramp.markAtSole - 35.2184, 3);
    expect(bed.markAtTop).toBeCloseTo(bed.markAtSole + 56.8834, 3);
  });

  test("the offcut is a triangle: its top, and where the kerfs meet above the sole", () => {
    // Between the kerfs on the sole 5.3754 - 3.6950 - 4.3754 = -2.6950; it opens by 1.5099 a mm, so from 1.7849 up.
    expect(core.offcut).toHaveLength(3);
    expect(core.roomBetweenKerfs).toBeCloseTo(-2.695, 3);
    const [ys, xs] = [core.offcut.map((p) => p.y), core.offcut.map((p) => p.x)];
    expect(Math.min(...ys)).toBeCloseTo(2.695 / 1.5099, 3);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(61 * 1.5099 - 2.695, 2);
  });
});

describe("over random designs that may be built", () => {
  const cases = randomDesigns(29, 80, isBuildable).map(({ design }) => {
    const plane = elevation(design);
    return { plane, plan: stockPlan(plane) };
  });

  test("the kerfs cut neither block, and blocks, kerfs and offcut overlap nowhere but where the kerfs cross", () => {
    for (const { plane, plan } of cases) {
      const { front, bed } = blocksAt(plane, "blank");
      const { trim } = plane.design.body;
      const allowance = plane.design.sole.allowance;
      const onCore = (corners: readonly Point[], shift: number) =>
        corners.map((p) => point(p.x + trim / 2 + shift, p.y + allowance));
      const blocks = [onCore(tessellate(front), -plan.core.setInToe), onCore(tessellate(bed), plan.core.setInHeel)];
      for (const block of blocks)
        for (const { kerf } of plan.core.cuts) expect(areaShared(block, tessellate(kerf))).toBeLessThan(1e-3);
      for (const block of blocks)
        expect(areaOutside(block, strip(0, plane.widths.blankLength, plan.core.height))).toBeLessThan(1e-3);
      for (const { kerf } of plan.core.cuts)
        if (plan.core.offcut.length > 0) expect(areaShared(plan.core.offcut, tessellate(kerf))).toBeLessThan(1e-3);
      expect(plan.core.roomBetweenMarks - plan.core.setInToe - plan.core.setInHeel).toBeCloseTo(
        plane.points.bedTip.x - plane.points.rampTip.x,
        9,
      );
      expect(mouthGrowth(plane)).toBeGreaterThan(0);
    }
  });

  test("no stroke, with its clearance, lies in a kerf, in the throat or in a trim; each lies on its own block's top", () => {
    let strokes = 0;
    for (const { plane, plan } of cases) {
      const lost = cutOff(plane, plan);
      const blank = blocksAt(plane, "blank");
      const allowance = plane.design.sole.allowance;
      const { trim } = plane.design.body;
      for (const { over, at } of plan.marks.marks)
        for (const x of at) {
          strokes++;
          const drawn = stroke(x, plan.core.height, CLEAR_OF_CUTS * 0.9);
          // Two below the top a cut is nearer by 2 / tan of its angle: look at the top itself for the clearance.
          const onTop = drawn.map((p) => point(p.x, p.y < plan.core.height ? plan.core.height - 0.001 : p.y));
          for (const cut of lost) expect(areaShared(onTop, cut)).toBe(0);
          const shift = trim / 2 + (over === "front block" ? -plan.core.setInToe : plan.core.setInHeel);
          const block = tessellate(over === "front block" ? blank.front : blank.bed).map((p) =>
            point(p.x + shift, p.y + allowance),
          );
          expect(areaOutside(onTop, block)).toBeLessThan(1e-5);
        }
    }
    expect(strokes).toBeGreaterThan(80 * 3);
  });

  test("no kerf across the width, pass or milling reaches the part of a stroke that a piece keeps", () => {
    for (const { plane, plan } of cases) {
      for (const { keeps, piece, marks } of plan.marks.pieces) {
        const finished = piece.endsWith("cheek") ? plane.widths.cheek : plane.widths.core;
        expect(keeps.to - keeps.from).toBeCloseTo(finished, 9);
        for (const { kerf } of plan.rip.sawLines) expect(keeps.to < kerf.from || keeps.from > kerf.to).toBe(true);
        if (piece.endsWith("cheek")) expect(marks).toEqual(plan.marks.marks);
      }
    }
  });

  test("every piece carries two marks, one stroke toward the toe and two toward the heel, unless it is said to lack them", () => {
    for (const { plan } of cases)
      for (const block of ["front block", "bed block"] as const) {
        const marks = plan.marks.marks.filter(({ over }) => over === block);
        expect(plan.marks.lacking.includes(block)).toBe(marks.length < 2);
        if (marks.length < 2) continue;
        expect(marks.map(({ strokes, at }) => [strokes, at.length])).toEqual([
          [1, 1],
          [2, 2],
        ]);
        expect(marks[1]!.at[0]! - marks[0]!.at[0]!).toBeGreaterThanOrEqual(4);
      }
  });
});

test("a block without a top of its own gets no mark and is named; one with little gets a single stroke", () => {
  const none = planOf({ "mouth.fromToe": 34 }).marks;
  expect(none).toMatchObject({ room: { "front block": undefined }, lacking: ["front block"] });
  expect(none.marks.every(({ over }) => over === "bed block")).toBe(true);
  const little = planOf({ "mouth.fromToe": 45 }).marks;
  expect(little.marks.filter(({ over }) => over === "front block")).toMatchObject([{ strokes: 1 }]);
});

test("strokes stand on a rule's divisions: whole mm, or sixteenths of an inch", () => {
  for (const { at } of planOf({}).marks.marks) for (const x of at) expect(Number.isInteger(x)).toBe(true);
  for (const { at } of planOf({ units: "in" }).marks.marks)
    for (const x of at) expect((x / 25.4) * 16).toBeCloseTo(Math.round((x / 25.4) * 16), 9);
});
