// Boxes, transforms and chains split where they meet, each with values worked by hand.
import { arc, boundsOf, line, type Point, point, splitAtIntersection, transformPoint } from "@lamplane/geometry";
import { expect, test } from "vitest";

const near = ({ x, y }: Point, expected: Point) => {
  expect(x).toBeCloseTo(expected.x, 9);
  expect(y).toBeCloseTo(expected.y, 9);
};

test("the box about points", () => {
  expect(boundsOf([point(3, 2), point(1, 5), point(2, 9)])).toEqual({ min: point(1, 2), max: point(3, 9) });
});
test("turned, then mirrored, then shifted", () => {
  near(transformPoint(point(1, 2), { turn: 90, mirrored: true, shift: point(10, 20) }), point(12, 21));
  near(transformPoint(point(1, 2), { turn: 90 }), point(-2, 1));
});
test("a chain is split where it meets another, and ends where it ended", () => {
  const straight = splitAtIntersection([line(point(0, 0), point(10, 0))], [line(point(4, -1), point(4, 1))])!;
  near(straight.at, point(4, 0));
  near(straight.before.at(-1)!.to, point(4, 0));
  near(straight.after[0]!.from, point(4, 0));
  near(straight.after[0]!.to, point(10, 0));
  const quarter = arc(point(10, 0), point(0, 10), point(0, 0));
  const curved = splitAtIntersection([quarter], [line(point(0, 0), point(20, 20))])!;
  near(curved.at, point(10 * Math.SQRT1_2, 10 * Math.SQRT1_2));
  near(curved.after[0]!.to, point(0, 10));
  expect(curved.after[0]).toMatchObject({ kind: "arc", sweep: expect.closeTo(45, 9) });
});
