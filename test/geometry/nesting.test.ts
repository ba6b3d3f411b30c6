// Outlines laid on a sheet, judged by Clipper2: none on another, none over the edge, none turned as it may not be, none lost.
import {
  nestOutlines,
  type Outline,
  outlineArea,
  packRectangles,
  point,
  polygon,
  transformOutline,
} from "@lamplane/geometry";
import fc from "fast-check";
import { expect, test } from "vitest";
import { faultsOfPlaces } from "../support/nested.ts";

const side = fc.integer({ min: 8, max: 120 });
const shape = fc.tuple(side, side, fc.integer({ min: 0, max: 3 })).map(([w, d, kind]): Outline => {
  if (kind === 0) return polygon(point(0, 0), point(w, 0), point(w, d), point(0, d));
  if (kind === 1) return polygon(point(0, 0), point(w, 0), point(w / 3, d));
  if (kind === 2)
    return polygon(
      point(5, 5),
      point(w + 5, 5),
      point(w + 5, d / 3 + 5),
      point(w / 3 + 5, d / 3 + 5),
      point(w / 3 + 5, d + 5),
      point(5, d + 5),
    );
  return polygon(point(0, 0), point(w, 0), point(0.6 * w, d), point(0.2 * w, d));
});
const TURNS = [
  [0, 180],
  [0, 90, 180, 270],
] as const;
const knot = polygon(point(100, 20), point(130, 20), point(130, 70), point(100, 70));

test("outlines keep their gap, stay on the sheet, turn only as they may, and none is lost", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(shape, fc.boolean()), { maxLength: 12 }), fc.boolean(), (outlines, hasKnot) => {
      const sheet = { width: 300, depth: 160, edge: 6, gap: 5, keepOuts: hasKnot ? [knot] : [] };
      const shapes = outlines.map(([outline, isFree], item) => ({ item, outline, turns: TURNS[isFree ? 1 : 0] }));
      const { placed, left } = nestOutlines(shapes, sheet);
      expect([...placed.map(({ item }) => item), ...left].toSorted((a, b) => a - b)).toEqual(shapes.map((_, i) => i));
      const lying = placed.map(({ item, transform }) => ({
        name: `${item}`,
        outline: transformOutline(shapes[item]!.outline, transform),
      }));
      expect(faultsOfPlaces(lying, sheet)).toEqual([]);
      for (const { item, transform } of placed) expect(shapes[item]!.turns).toContain(transform.turn);
    }),
    { numRuns: 40 },
  );
});

test("copies of one outline lie beside each other, not on each other", () => {
  const triangle = polygon(point(0, 0), point(60, 0), point(0, 40));
  const shapes = Array.from({ length: 6 }, (_, item) => ({ item, outline: triangle, turns: [0, 90, 180, 270] }));
  const sheet = { width: 220, depth: 110, edge: 5, gap: 4 };
  const { placed, left } = nestOutlines(shapes, sheet);
  expect(left).toEqual([]);
  const lying = placed.map(({ item, transform }) => ({
    name: `${item}`,
    outline: transformOutline(triangle, transform),
  }));
  expect(faultsOfPlaces(lying, sheet)).toEqual([]);
  // In as much of the sheet's length the boxes about them do not go: another library's packing of rectangles.
  const right = Math.max(...lying.flatMap(({ outline }) => outline.map(({ from }) => from.x)));
  const { sheets } = packRectangles(
    shapes.map(({ item }) => ({ item, width: 60, depth: 40 })),
    { width: right + 5, depth: 110, margin: 5, gap: 4, mayTurn: true },
  );
  expect(sheets.length).toBeGreaterThan(1);
});

test("what no turn brings onto the sheet is left, and no less than all of an empty sheet's room is used", () => {
  const bar = polygon(point(0, 0), point(150, 0), point(150, 30), point(0, 30));
  const upright = { width: 60, depth: 200, edge: 10, gap: 4 };
  expect(nestOutlines([{ item: "grain", outline: bar, turns: [0, 180] }], upright).left).toEqual(["grain"]);
  expect(nestOutlines([{ item: "free", outline: bar, turns: [0, 90] }], upright).left).toEqual([]);
  const whole = polygon(point(3, 3), point(43, 3), point(43, 183), point(3, 183));
  const { placed } = nestOutlines([{ item: "whole", outline: whole, turns: [0] }], upright);
  expect(placed[0]!.transform.shift).toEqual({ x: 7, y: 7 });
  expect(outlineArea(whole)).toBe(40 * 180);
});
