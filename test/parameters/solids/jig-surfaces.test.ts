// What jigs' solids are finished with: the chamfer at the printer's table, level lines round letters, and room for them on a face.
import {
  arc,
  circleOutline,
  distance,
  distanceToSegment,
  type Outline,
  outlineArea,
  type Point,
  point,
  polygon,
  polygonArea,
  polygonHolds,
  reverseOutline,
  segmentLength,
} from "@lamplane/geometry";
import {
  countOpenEdges,
  facesVolume,
  levelFace,
  meshVolume,
  tessellateFaces,
  triangleAt,
  triangleCount,
  unitNormal,
} from "@lamplane/geometry/mesh";
import { describe, expect, test } from "vitest";
import { corneredOutline } from "../../../packages/parameters/src/jigs/cornered-outline.ts";
import { findFreeMiddle, makeFreeGrid } from "../../../packages/parameters/src/solids/jigs/free-grid.ts";
import { distanceToSide, strokeRings } from "../../../packages/parameters/src/solids/jigs/level-lines.ts";
import { chamferRing } from "../../../packages/parameters/src/solids/jigs/table-chamfer.ts";
import { chordArea } from "../../../packages/parameters/src/solids/part-faces.ts";

const box = (x: number, y: number, w: number, d: number): Outline =>
  polygon(point(x, y), point(x + w, y), point(x + w, y + d), point(x, y + d));

describe("the chamfer at the table", () => {
  /** Exact volume under rings, walls and chamfers with the floor and the top that they leave. */
  const volumeOf = (rings: readonly Outline[], size: number, top: number) => {
    const made = rings.map((ring) => chamferRing(ring, size, top));
    return facesVolume([
      ...made.flatMap(({ faces }) => faces),
      levelFace(
        made.map(({ ring }) => ring),
        top,
        "above",
      ),
      levelFace(
        made.map(({ low }) => low),
        0,
        "below",
      ),
    ]);
  };
  const [c, top] = [0.6, 10];

  test("under a box of 30 by 20: ½·c² along each side, less what the four corners have twice, ⅓·c³ each", () => {
    // At t under the chamfer's upper edge the section is (30 − 2t)(20 − 2t).
    const off = (2 * (30 + 20) * c ** 2) / 2 - (4 * c ** 3) / 3;
    expect(volumeOf([box(3, -4, 30, 20)], c, top)).toBeCloseTo(30 * 20 * top - off, 9);
    expect(chamferRing(box(3, -4, 30, 20), c, top).removed).toBeCloseTo(off, 9);
  });
  test("under a round bar of radius 8: a cone's rim, π·(r·c² − ⅓·c³)", () => {
    const bar = circleOutline({ centre: point(50, 50), radius: 8 });
    expect(volumeOf([bar], c, top)).toBeCloseTo(64 * Math.PI * top - Math.PI * (8 * c ** 2 - c ** 3 / 3), 9);
  });
  test("about a hole it goes outward: π·(r·c² + ⅓·c³)", () => {
    const rings = [box(0, 0, 40, 40), reverseOutline(circleOutline({ centre: point(20, 20), radius: 5 }))];
    const off = 80 * c ** 2 - (4 * c ** 3) / 3 + Math.PI * (5 * c ** 2 + c ** 3 / 3);
    expect(volumeOf(rings, c, top)).toBeCloseTo((1600 - 25 * Math.PI) * top - off, 9);
  });
  test("at an inner corner the two slopes part: it takes ⅓·c³ more instead of less", () => {
    const ell = polygon(point(0, 0), point(40, 0), point(40, 15), point(20, 15), point(20, 30), point(0, 30));
    // Sides of 140 in all; five outer corners and one inner one.
    const off = 140 * (c ** 2 / 2) - (5 - 1) * (c ** 3 / 3);
    expect(volumeOf([ell], c, top)).toBeCloseTo(900 * top - off, 9);
  });
  test("its edge at the table lies c inside the wall, and as much outside a hole's", () => {
    expect(outlineArea(chamferRing(box(0, 0, 30, 20), 1, 5).low)).toBeCloseTo(28 * 18, 9);
    const hole = chamferRing(reverseOutline(box(0, 0, 30, 20)), 1, 5).low;
    expect(Math.abs(outlineArea(hole))).toBeCloseTo(32 * 22, 9);
  });
  test("closes whatever the corners are, holds its ring's prism less what it takes off, and leans out no more than 45°", () => {
    const ell = [point(0, 0), point(40, 0), point(40, 15), point(20, 15), point(20, 30), point(0, 30)];
    const relieved = (into: "before" | "after", radius: number) =>
      corneredOutline(ell.map((at, i) => (i === 3 ? { at, relief: { radius, into } } : { at })));
    const outlines: readonly Outline[] = [
      relieved("after", 3),
      relieved("before", 3),
      relieved("after", 6.75), // the largest that `reliefRadius` allows at a stop of 15
      corneredOutline(ell.map((at, i) => (i === 3 ? { at, round: 4 } : { at, round: 2 }))),
      corneredOutline(ell.map((at, i) => (i === 1 ? { at, round: 3 } : { at }))),
      // A step lower than the chamfer is wide, a chip off a corner, and a side that would turn round.
      polygon(point(0, 0), point(40, 0), point(40, 15), point(20, 15), point(20, 15.4), point(0, 15.4)),
      polygon(point(0, 0), point(40, 0), point(40, 19.7), point(39.7, 20), point(0, 20)),
      polygon(
        point(0, 0),
        point(40, 0),
        point(40, 20),
        point(20.2, 20),
        point(20, 19.8),
        point(19.8, 20),
        point(0, 20),
      ),
      [{ kind: "line", from: point(0, 0), to: point(20, 0) }, arc(point(20, 0), point(0, 0), point(10, 0), 180)],
    ];
    for (const [i, outline] of outlines.entries()) {
      const { ring, low, faces, removed } = chamferRing(outline, c, top);
      const mesh = tessellateFaces([...faces, levelFace([ring], top, "above"), levelFace([low], 0, "below")]);
      expect([i, countOpenEdges(mesh)]).toEqual([i, 0]);
      expect(outlineArea(ring)).toBeCloseTo(outlineArea(outline), 9);
      expect(meshVolume(mesh) / (chordArea(ring) * top - removed)).toBeCloseTo(1, 9);
      expect(removed).toBeGreaterThan(0);
      for (let t = 0; t < triangleCount(mesh); t++) {
        const corners = triangleAt(mesh, t);
        if (corners.every(([, , z]) => z < 1e-9)) continue;
        expect(unitNormal(...corners)[2]).toBeGreaterThan(-Math.SQRT1_2 - 1e-3);
      }
    }
  });
  test("where an arc makes a corner, the wall there goes down to the table on both sides, and nowhere else", () => {
    const ell = [point(0, 0), point(40, 0), point(40, 15), point(20, 15), point(20, 30), point(0, 30)];
    const outline = corneredOutline(
      ell.map((at, i) => (i === 3 ? { at, relief: { radius: 3, into: "after" as const } } : { at })),
    );
    const { low } = chamferRing(outline, c, top);
    const upright = low.filter(({ from, to }) =>
      [from, to].every((p) => outline.some((s) => distanceToSegment(p, s) < 1e-9)),
    );
    const length = (segments: Outline) => segments.reduce((sum, s) => sum + segmentLength(s), 0);
    expect(length(upright)).toBeGreaterThan(2 * c);
    expect(length(upright)).toBeLessThan(12 * c);
    const near = (p: Point) => Math.min(distance(p, point(20, 15)), distance(p, point(20, 21)));
    for (const { from, to } of upright) expect(Math.max(near(from), near(to))).toBeLessThan(6 * c);
  });
  test("an arc without room for it is our bug, never a solid inside out", () => {
    const thin = circleOutline({ centre: point(0, 0), radius: 0.5 });
    expect(() => chamferRing(thin, 0.6, 5)).toThrow(/no room for a chamfer of 0\.6 mm/);
  });
});

describe("level lines round strokes", () => {
  const area = (rings: readonly (readonly Point[])[]) => rings.reduce((sum, ring) => sum + polygonArea(ring), 0);
  /** What a ring may be off its true line, mm. */
  const OFF = 0.05;

  test("round a straight stroke of 10: two sides and two half circles", () => {
    const rings = strokeRings([[point(3, 4), point(9, 12)]], 1);
    expect(rings).toHaveLength(1);
    expect(Math.abs(area(rings) - (20 + Math.PI))).toBeLessThan(OFF * (20 + 2 * Math.PI));
    for (const p of rings[0]!) expect(Math.abs(distanceToSide(p, point(3, 4), point(9, 12)) - 1)).toBeLessThan(OFF);
  });
  test("round a closed stroke: a boundary, and inside it a hole that runs the other way", () => {
    const square = [point(0, 0), point(8, 0), point(8, 8), point(0, 8), point(0, 0)];
    const rings = strokeRings([square], 1).sort((a, b) => polygonArea(b) - polygonArea(a));
    expect(rings).toHaveLength(2);
    // Without: 10 by 10 with corners rounded by 1; within: 6 by 6.
    expect(Math.abs(polygonArea(rings[0]!) - (100 - 4 + Math.PI))).toBeLessThan(OFF * 40);
    expect(Math.abs(polygonArea(rings[1]!) + 36)).toBeLessThan(OFF * 24);
  });
  test("round two strokes apart two rings, close together one", () => {
    const strokes = (apart: number) => [
      [point(0, 0), point(5, 0)],
      [point(0, apart), point(5, apart)],
    ];
    expect(strokeRings(strokes(2.4), 1)).toHaveLength(2);
    const met = strokeRings(strokes(1.6), 1);
    expect(met).toHaveLength(1);
    // Each 10 + π, less what both have: 0.4 by 5 and the lens of two circles of 1 whose middles stand 1.6 apart.
    const lens = 2 * Math.acos(0.8) - 0.8 * Math.sqrt(4 - 1.6 ** 2);
    expect(Math.abs(area(met) - (2 * (10 + Math.PI) - 5 * 0.4 - lens))).toBeLessThan(OFF * 30);
  });
  test("distance from a side: square to it, or from its nearer end", () => {
    const [a, b] = [point(1, 1), point(5, 4)];
    expect(distanceToSide(point(3 - 0.6, 2.5 + 0.8), a, b)).toBeCloseTo(1, 12);
    expect(distanceToSide(point(1, -2), a, b)).toBeCloseTo(3, 12);
    expect(distanceToSide(point(8, 8), a, b)).toBeCloseTo(5, 12);
    expect(distanceToSide(point(4, 5), a, a)).toBeCloseTo(5, 12);
  });
});

describe("room on a face", () => {
  const ring = (x: number, y: number, w: number, d: number) => box(x, y, w, d).map(({ from }) => from);

  test("a rectangle goes in where the face holds it clear of its edges, as near as can be to where it is wanted", () => {
    const room = makeFreeGrid([ring(10, 20, 40, 30)], 2);
    const at = findFreeMiddle(room, 10, 6, point(0, 0))!;
    // Its lower left corner is 2 and at most a cell's reach off both edges.
    expect(at.x - 5 - 10).toBeGreaterThanOrEqual(2);
    expect(at.x - 5 - 10).toBeLessThan(2 + 2);
    expect(at.y - 3 - 20).toBeGreaterThanOrEqual(2);
    expect(at.y - 3 - 20).toBeLessThan(2 + 2);
    const middle = findFreeMiddle(room, 10, 6, point(30, 35))!;
    expect(distance(middle, point(30, 35))).toBeLessThan(1);
    const far = findFreeMiddle(room, 10, 6, point(90, 90))!;
    expect(50 - far.x - 5).toBeGreaterThanOrEqual(2);
    expect(50 - far.x - 5).toBeLessThan(2 + 2);
    expect(50 - far.y - 3).toBeGreaterThanOrEqual(2);
  });
  test("and not at all where it is larger than what is left", () => {
    const room = makeFreeGrid([ring(0, 0, 40, 30)], 2);
    expect(findFreeMiddle(room, 33, 23, point(20, 15))).toBeDefined();
    expect(findFreeMiddle(room, 37, 10, point(20, 15))).toBeUndefined();
    expect(findFreeMiddle(room, 10, 27, point(20, 15))).toBeUndefined();
  });
  test("a face of 13 by 9 whole cells, 1 clear of its edges, holds what is left of it and nothing larger", () => {
    // Cells whose middle lies within 1 mm and half a cell's diagonal of an edge are taken: two on each side.
    const room = makeFreeGrid([ring(3, 5, 13, 9)], 1);
    const free = [...room.taken].filter((taken) => taken === 0).length;
    expect([room.columns, room.rows, free]).toEqual([13, 9, 9 * 5]);
    expect(findFreeMiddle(room, 9, 5, point(0, 0))).toEqual(point(3 + 13 / 2, 5 + 9 / 2));
    expect(findFreeMiddle(room, 8.5, 4.5, point(0, 0))).toEqual(point(3 + 13 / 2, 5 + 9 / 2));
    expect(findFreeMiddle(room, 9.1, 5, point(0, 0))).toBeUndefined();
    expect(findFreeMiddle(room, 9, 5.1, point(0, 0))).toBeUndefined();
    expect(findFreeMiddle(room, 2, 3, point(0, 0))).toEqual(point(3 + 2 + 1, 5 + 2 + 1.5));
  });
  test("every free cell lies inside, clear of every edge, and every cell that does is free", () => {
    const rings = [
      [point(0.3, 0.2), point(31, 4), point(24, 27.5), point(8, 22), point(3, 26)],
      [point(11, 9), point(12, 16), point(18, 13)],
    ];
    const clear = 1.5;
    const { min, columns, taken } = makeFreeGrid(rings, clear);
    const sides = rings.flatMap((corners) => corners.map((a, i) => [a, corners[(i + 1) % corners.length]!] as const));
    for (const [k, isTaken] of taken.entries()) {
      const p = point(min.x + (k % columns) + 0.5, min.y + Math.floor(k / columns) + 0.5);
      const off = Math.min(...sides.map(([a, b]) => distanceToSide(p, a, b)));
      const isInside = polygonHolds(rings[0]!, p) && !polygonHolds(rings[1]!, p);
      expect(isTaken === 0, `${p.x} ${p.y}`).toBe(isInside && off >= clear + Math.SQRT1_2);
    }
  });
  test("a hole is kept clear of like an edge, on all its sides", () => {
    const room = makeFreeGrid([ring(0, 0, 60, 60), ring(25, 25, 10, 10).reverse()], 1);
    for (const near of [point(30, 30), point(20, 30), point(40, 30), point(30, 20), point(30, 40)]) {
      const at = findFreeMiddle(room, 8, 8, near)!;
      const off = Math.max(Math.abs(at.x - 30), Math.abs(at.y - 30));
      expect(off).toBeGreaterThanOrEqual(4 + 5 + 1);
      expect(off).toBeLessThan(4 + 5 + 1 + 2);
    }
    // Under a slope nothing goes in beyond it.
    const triangle = makeFreeGrid([[point(0, 0), point(40, 0), point(0, 40)]], 1);
    const at = findFreeMiddle(triangle, 10, 10, point(40, 40))!;
    expect((at.x + 5 + at.y + 5 - 40) / Math.SQRT2).toBeLessThanOrEqual(-1);
    expect((at.x + 5 + at.y + 5 - 40) / Math.SQRT2).toBeGreaterThan(-4);
  });
});
