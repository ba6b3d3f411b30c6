// Parts within an offcut: against manifold-3d (Clipper2), against hand-worked triangles, and against trying every turn and shift.
import { findPlacement, innerFitPolygon, offsetPolygon, type PartByLength, stockPlan } from "@lamplane/bench";
import { outlineArea, type Point, point, tessellate, transformOutline, transformPoint } from "@lamplane/geometry";
import { elevation } from "@lamplane/parameters/elevation";
import { describe, expect, test } from "vitest";
import { designWith, randomDesigns, seeded, WORKED } from "../../support/designs.ts";
import { areaOf, areaOutside, erosionArea } from "../../support/flat.ts";

/** Right-angled and isosceles: 100 long along its top, 50 deep. */
const NOTCH = [point(50, 0), point(100, 50), point(0, 50)];
const box = (length: number, height: number): Point[] => [
  point(0, 0),
  point(length, 0),
  point(length, height),
  point(0, height),
];
const boxPart = (length: number, height: number, runOut: number): PartByLength => ({
  corners: (l) => box(l, height),
  lies: 0,
  length,
  runOut,
});

describe("inner fit", () => {
  test("worked by hand: a box 60 x 10 slides 20 along under the top of a notch 100 x 50", () => {
    // At depth d the notch is 100 - 2d wide. The box's lower side may lie at most (100 - 60) / 2 = 20 deep, its upper side at 0:
    // its lower left corner moves in a triangle from y 30 to y 40; at y 40 the notch runs from x 10 to x 90, so x from 10 to 30.
    const shifts = innerFitPolygon(NOTCH, box(60, 10));
    expect(areaOf(shifts)).toBeCloseTo((20 * 10) / 2, 6);
    expect(Math.min(...shifts.map((s) => s.y))).toBeCloseTo(30, 6);
    expect([Math.min(...shifts.map((s) => s.x)), Math.max(...shifts.map((s) => s.x))]).toEqual([
      expect.closeTo(10, 5),
      expect.closeTo(30, 5),
    ]);
    expect(innerFitPolygon(NOTCH, box(81, 10))).toEqual([]);
  });

  test("has the area of the erosion that manifold-3d makes, for random convex shapes", () => {
    const random = seeded(7);
    const convex = (size: number, corners: number) => {
      const angles = Array.from({ length: corners }, () => random() * 2 * Math.PI).sort((a, b) => a - b);
      return angles.map((a) => point(size * Math.cos(a), size * 0.7 * Math.sin(a)));
    };
    let some = 0;
    for (let i = 0; i < 200; i++) {
      const [container, part] = [convex(50, 3 + (i % 4)), convex(9, 3 + (i % 3))];
      const shifts = innerFitPolygon(container, part);
      const area = shifts.length < 3 ? 0 : areaOf(shifts);
      expect(Math.abs(area - erosionArea(container, part))).toBeLessThan(1e-3);
      if (area > 1) some++;
    }
    expect(some).toBeGreaterThan(50);
  });
});

test("grown moves every edge out: a box by 2 on all sides", () => {
  expect(offsetPolygon(box(30, 10), 2)).toEqual([point(-2, -2), point(32, -2), point(32, 12), point(-2, 12)]);
});

describe("the longest part", () => {
  test("worked by hand: under the top of the notch a stick 10 high is 80 long, and a turn makes it no longer", () => {
    expect(findPlacement(NOTCH, boxPart(79, 10, 0))).toMatchObject({ fromGrain: 0, tooLongBy: 0 });
    const missed = findPlacement(NOTCH, boxPart(85, 10, 5));
    expect(missed.place).toBeUndefined();
    expect(missed.longest).toBeCloseTo(80, 2);
    expect(missed.tooLongBy).toBeCloseTo(5, 2);
  });

  test("is found between the steps of the turn: a slot that leans by 3.1 degrees", () => {
    const lean = box(100, 10).map((p) => transformPoint(p, { turn: 3.1 }));
    const found = findPlacement(lean, boxPart(99, 9.9, 5));
    expect(found.place).toBeDefined();
    expect(found.fromGrain).toBeCloseTo(3.1, 1);
    expect(findPlacement(lean, boxPart(99, 9.9, 2)).place).toBeUndefined();
  });

  test("turns end for end and over: a taper that stands on its side goes into its own hole four ways", () => {
    const taper = (length: number) => [point(0, 0), point(length, 0), point(length, 12), point(0, 6)];
    for (const turn of [0, 180])
      for (const mirrored of [false, true]) {
        const corners = offsetPolygon(taper(60), 0.01).map((p) => transformPoint(p, { turn, mirrored }));
        const hole = mirrored ? corners.reverse() : corners;
        const part: PartByLength = { corners: taper, lies: 0, length: 60, runOut: 5 };
        const { place } = findPlacement(hole, part);
        expect(place).toBeDefined();
        const placed = taper(60).map((p) => transformPoint(p, place!));
        expect(areaOutside(place!.mirrored ? placed.reverse() : placed, hole)).toBeLessThan(1e-6);
      }
  });

  test("an empty offcut and a part too thick yield nothing", () => {
    expect(findPlacement([], boxPart(20, 5, 0))).toMatchObject({ place: undefined, longest: 0, tooLongBy: 20 });
    expect(findPlacement(NOTCH, boxPart(20, 60, 5))).toMatchObject({ place: undefined, longest: 0 });
  });
});

/** Whether all corners lie in a convex polygon, written apart from the search: signed areas, corner by corner. */
const inside = (corners: readonly Point[], container: readonly Point[], slack: number): boolean =>
  corners.every((p) =>
    container.every((a, i) => {
      const b = container[(i + 1) % container.length]!;
      return ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y) >= -slack;
    }),
  );

/** Tries turns and shifts on a grid: true where one puts the corners inside. */
function gridFinds(container: readonly Point[], corners: readonly Point[], lies: number, runOut: number): boolean {
  const xs = container.map((p) => p.x);
  const top = Math.max(...container.map((p) => p.y));
  for (let off = -runOut; off <= runOut; off += 1)
    for (const end of [0, 180])
      for (const mirrored of [false, true]) {
        const turned = corners.map((p) => transformPoint(p, { turn: off + end - lies, mirrored }));
        const [left, high] = [Math.min(...turned.map((p) => p.x)), Math.max(...turned.map((p) => p.y))];
        for (let x = Math.min(...xs); x < Math.max(...xs); x += 1)
          for (let down = 0; down < 24; down += 1) {
            const shift = { x: x - left, y: top - down - high };
            if (
              inside(
                turned.map((p) => point(p.x + shift.x, p.y + shift.y)),
                container,
                0,
              )
            )
              return true;
          }
      }
  return false;
}

describe("over random designs", () => {
  const plans = randomDesigns(41, 60).map(({ design }) => {
    const plane = elevation({ ...design, wedge: { ...design.wedge, length: 20 + (design.iron.width % 60) } });
    return { plane, plan: stockPlan(plane) };
  });

  test("a wedge or pin that is placed lies wholly within the offcut, says manifold-3d, and keeps its size", () => {
    let placed = 0;
    for (const { plane, plan } of plans)
      for (const part of [plan.offcut.wedge, plan.offcut.pin]) {
        if (!part.sawn) continue;
        placed++;
        expect(areaOutside(tessellate(part.sawn), plan.offcut.outline)).toBeLessThan(1e-4);
        expect(outlineArea(part.sawn)).toBeGreaterThan(0);
        expect(part.longest).toBeGreaterThanOrEqual((part === plan.offcut.wedge ? plane.wedgeLength : 0) - 1e-9);
      }
    expect(placed).toBeGreaterThan(20);
  });

  test("the finished wedge laid by the same place lies within its sawn outline, the allowance away, near the grain", () => {
    let placed = 0;
    for (const { plane, plan } of plans) {
      const { place, sawn } = plan.offcut.wedge;
      if (!place || !sawn) continue;
      placed++;
      const finished = transformOutline(plane.wedge, place);
      const corners = tessellate(finished);
      expect(areaOutside(offsetPolygon(corners, plan.offcut.allowance), tessellate(sawn))).toBeLessThan(1e-4);
      // The lower side of the wedge is its first segment; a mirrored outline is run backwards.
      const lower = finished[place.mirrored ? finished.length - 1 : 0]!;
      const slope = Math.abs((lower.to.y - lower.from.y) / (lower.to.x - lower.from.x));
      expect((Math.atan(slope) * 180) / Math.PI).toBeCloseTo(plan.offcut.wedge.fromGrain, 6);
      expect(plan.offcut.wedge.fromGrain).toBeLessThanOrEqual(5);
    }
    expect(placed).toBeGreaterThan(10);
  });

  test("a grid of turns and shifts never finds a place for a wedge that the search turns down, nor a longer one", () => {
    let turnedDown = 0;
    let found = 0;
    for (const { plane, plan } of plans.slice(0, 40)) {
      const { wedge, allowance, outline } = plan.offcut;
      const { tip, angle } = plane.design.wedge;
      const finds = (length: number) => {
        const butt = tip + length * Math.tan((angle * Math.PI) / 180);
        const corners = [point(0, 0), point(length, 0), point(length, butt), point(0, tip)];
        return gridFinds(outline, offsetPolygon(corners, allowance), 0, 5);
      };
      if (!wedge.place) {
        turnedDown++;
        expect(finds(plane.wedgeLength)).toBe(false);
      }
      if (wedge.longest === 0) continue;
      expect(finds(wedge.longest + 0.05)).toBe(false);
      if (wedge.longest > 8 && finds(wedge.longest - 4)) found++;
    }
    expect(turnedDown).toBeGreaterThan(5);
    expect(found).toBeGreaterThan(10); // the grid does find what is there, so its silence tells something
  });
});

test("the wedge of the worked set does not come out of its own offcut, one a little shorter does", () => {
  const { wedge } = stockPlan(elevation(designWith(WORKED))).offcut;
  expect(wedge.fits).toBe(false);
  const length = Math.floor(wedge.longest);
  const { wedge: shorter } = stockPlan(elevation(designWith({ ...WORKED, "wedge.length": length }))).offcut;
  expect(shorter.fits).toBe(true);
  expect(shorter.longest).toBeCloseTo(wedge.longest, 2);
  const { wedge: longer } = stockPlan(elevation(designWith({ ...WORKED, "wedge.length": length + 2 }))).offcut;
  expect(longer.fits).toBe(false);
});
