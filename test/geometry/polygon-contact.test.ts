// Straight-sided shapes against each other: how far one slides, what overlaps and what a shape holds.
import { point, polygonHolds } from "@lamplane/geometry";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  boxedPolygon,
  extremeCorners,
  movePolygon,
  notchCorners,
  polygonsOverlap,
  slideRoom,
} from "../../packages/geometry/src/polygon-contact.ts";

const shape = (...corners: readonly (readonly [number, number])[]) =>
  boxedPolygon(corners.map(([x, y]) => point(x, y)));
const box = (x: number, y: number, w: number, d: number) => shape([x, y], [x + w, y], [x + w, y + d], [x, y + d]);
const NOWHERE = point(0, 0);

describe("how far a shape slides", () => {
  test("left to a box, to a slope and to a corner, by hand", () => {
    expect(slideRoom(box(10, 2, 3, 3), box(0, 0, 4, 9), "left")).toBe(6);
    // The slope from (8, 0) to (0, 8): at the box's lower left corner, y = 2, it stands at x = 6.
    const slope = shape([0, 0], [8, 0], [0, 8]);
    expect(slideRoom(box(10, 2, 3, 3), slope, "left")).toBeCloseTo(4, 12);
    // Its own corner at (6, 4) meets the slope of another from (0, 0) to (4, 8) at x = 2.
    expect(slideRoom(shape([6, 4], [9, 2], [9, 6]), shape([0, 0], [4, 8], [0, 8]), "left")).toBeCloseTo(4, 12);
    // A corner of the one that stands, (4, 5), meets the sloping side of the one that moves, x = 9 + (y − 2) / 2.
    expect(slideRoom(shape([9, 2], [15, 2], [12, 8]), shape([0, 5], [4, 5], [0, 5.5]), "left")).toBeCloseTo(6.5, 9);
  });
  test("down as left, with x and y exchanged", () => {
    expect(slideRoom(box(2, 10, 3, 3), box(0, 0, 9, 4), "down")).toBe(6);
    expect(slideRoom(box(2, 10, 3, 3), shape([0, 0], [8, 0], [0, 8]), "down")).toBeCloseTo(4, 12);
  });
  test("for ever past one that lies beside its way, or behind it", () => {
    for (const other of [box(0, 5, 4, 9), box(0, -7, 4, 9), box(13, 0, 4, 9)])
      expect(slideRoom(box(10, 2, 3, 3), other, "left")).toBe(Number.POSITIVE_INFINITY);
    expect(slideRoom(box(10, 2, 3, 3), box(10, 5, 4, 9), "down")).toBe(Number.POSITIVE_INFINITY);
  });
});

const corner = fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }));
/** Triangles and quadrangles that turn left at every corner, or have a notch. */
const shapes = fc
  .tuple(corner, fc.integer({ min: 4, max: 20 }), fc.integer({ min: 4, max: 20 }), fc.integer({ min: 0, max: 2 }))
  .map(([[x, y], w, d, kind]) =>
    kind === 0
      ? shape([x, y], [x + w, y + 1], [x + 2, y + d])
      : kind === 1
        ? shape([x, y], [x + w, y + 1], [x + w + 1, y + d], [x + 1, y + d - 1])
        : shape([x, y], [x + w, y], [x + w / 3, y + d / 3], [x, y + d]),
  );

/** Whether two shapes have a point in common that lies well within both, found by trying a fine grid. */
function sharesGround(a: ReturnType<typeof shape>, b: ReturnType<typeof shape>): boolean {
  const [left, right] = [Math.max(a.min.x, b.min.x), Math.min(a.max.x, b.max.x)];
  const [low, high] = [Math.max(a.min.y, b.min.y), Math.min(a.max.y, b.max.y)];
  const steps = 60;
  for (let i = 1; i < steps; i++)
    for (let j = 1; j < steps; j++) {
      const p = point(left + ((right - left) * i) / steps, low + ((high - low) * j) / steps);
      if (right > left && high > low && polygonHolds(a.corners, p) && polygonHolds(b.corners, p)) return true;
    }
  return false;
}

test("what slides as far as it has room touches; a little further it overlaps, a little less it does not", () => {
  let met = 0;
  fc.assert(
    fc.property(shapes, shapes, fc.constantFrom("left" as const, "down" as const), (one, fixed, way) => {
      // Set down beyond the other, so that it has its way before it, and with no corner level with one of the other's: of two tips
      // that only graze each other neither rule holds.
      const moving = movePolygon(one, way === "left" ? point(60, 0.37) : point(0.37, 60));
      const room = slideRoom(moving, fixed, way);
      if (room === Number.POSITIVE_INFINITY) return;
      met++;
      const slid = (by: number) => (way === "left" ? point(-by, 0) : point(0, -by));
      expect(polygonsOverlap(moving, fixed, slid(room - 1e-3))).toBe(false);
      expect(polygonsOverlap(moving, fixed, slid(room + 0.05)) || room === 0).toBe(true);
    }),
    { numRuns: 200, seed: 3 },
  );
  expect(met).toBeGreaterThan(50);
});

test("two shapes overlap where some point lies within both, and not where they only touch", () => {
  let [together, apart] = [0, 0];
  fc.assert(
    fc.property(shapes, shapes, (a, b) => {
      const overlap = polygonsOverlap(a, b, NOWHERE);
      expect(polygonsOverlap(b, a, NOWHERE)).toBe(overlap);
      if (sharesGround(a, b)) {
        together++;
        // The same shape upon itself has no sides that cross: it is asked of shapes at different places alone.
        const isSame = JSON.stringify(a) === JSON.stringify(b);
        if (!isSame && !touchesAlong(a, b)) expect(overlap).toBe(true);
      } else {
        apart++;
        // A grid can miss a sliver.
        if (overlap) expect(Math.min(a.max.x, b.max.x) - Math.max(a.min.x, b.min.x)).toBeGreaterThan(0);
      }
    }),
    { numRuns: 80, seed: 8 },
  );
  expect(Math.min(together, apart)).toBeGreaterThan(10);
  expect(polygonsOverlap(box(0, 0, 4, 4), box(4, 0, 4, 4), NOWHERE)).toBe(false);
  expect(polygonsOverlap(box(0, 0, 4, 4), box(1, 1, 2, 2), NOWHERE)).toBe(true);
  expect(polygonsOverlap(box(1, 1, 2, 2), box(0, 0, 4, 4), NOWHERE)).toBe(true);
  expect(polygonsOverlap(box(0, 0, 4, 4), box(9, 9, 4, 4), point(7, 7))).toBe(true);
});

/** Whether corners of the one lie on the other's corners, where crossing is a matter of touching. */
const touchesAlong = (a: ReturnType<typeof shape>, b: ReturnType<typeof shape>) =>
  a.corners.some((p) => b.corners.some((q) => Math.hypot(p.x - q.x, p.y - q.y) < 1));

test("the farthest corners in four directions, and the notch of an L", () => {
  const ell = shape([0, 0], [9, 0], [9, 3], [4, 3], [4, 7], [0, 7]);
  const extremes = extremeCorners(ell.corners, 4);
  // To the right, up, to the left, down: among equals the first.
  expect([extremes[0]!.x, extremes[1]!.y, extremes[2]!.x, extremes[3]!.y]).toEqual([9, 7, 0, 0]);
  expect(extremeCorners(ell.corners, 8)[1]).toEqual(point(9, 3));
  expect(notchCorners(ell.corners)).toEqual([point(4, 3)]);
  expect(notchCorners(box(0, 0, 1, 1).corners)).toEqual([]);
});

test("moved, corners and box go together", () => {
  const moved = movePolygon(box(1, 2, 3, 4), point(10, -20));
  expect(moved).toEqual(box(11, -18, 3, 4));
});
