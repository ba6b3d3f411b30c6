// The nearest point of lines and arcs, beside the least distance found by walking along them.
import {
  arc,
  distance,
  distanceToSegment,
  nearestOnSegment,
  point,
  pointAlong,
  type Segment,
  segmentBounds,
} from "@lamplane/geometry";
import fc from "fast-check";
import { expect, test } from "vitest";
import { arcs, lines, places } from "../support/segments.ts";

const STEPS = 720; // half a degree of a full turn: a point between two is off by no more than radius · (1 − cos ¼°) + a step
const walked = (s: Segment) => Array.from({ length: STEPS + 1 }, (_, i) => pointAlong(s, i / STEPS));

test("a segment is as far from a point as the nearest of all its points, also an arc of more than half a turn", () => {
  fc.assert(
    fc.property(fc.oneof(lines, arcs({ least: 1, most: 360 })), places, (segment, p) => {
      const points = walked(segment);
      const least = Math.min(...points.map((q) => distance(p, q)));
      const step = Math.max(...points.slice(1).map((q, i) => distance(q, points[i]!)));
      const found = distanceToSegment(p, segment);
      expect(found).toBeLessThan(least + 1e-6);
      expect(found).toBeGreaterThan(least - step / 2 - 1e-6);
      expect(distance(p, nearestOnSegment(p, segment).at)).toBeCloseTo(found, 6);
    }),
    { numRuns: 300 },
  );
});

test("beyond an arc's ends the nearer end is nearest, within them the circle", () => {
  const quarter = arc(point(10, 0), point(0, 10), point(0, 0));
  expect(distanceToSegment(point(-20, 0), quarter)).toBeCloseTo(Math.hypot(20, 10), 9);
  expect(distanceToSegment(point(3, 4), quarter)).toBeCloseTo(5, 9);
  const rest = arc(point(0, 10), point(10, 0), point(0, 0), 270);
  expect(distanceToSegment(point(-20, 0), rest)).toBeCloseTo(10, 9);
  expect(distanceToSegment(point(20, 20), rest)).toBeCloseTo(Math.hypot(20, 10), 9);
});

test("the box about segments holds every point of them and no more", () => {
  fc.assert(
    fc.property(
      fc.array(fc.oneof(lines, arcs({ least: 1, most: 360 })), { minLength: 1, maxLength: 3 }),
      (segments) => {
        const { min, max } = segmentBounds(segments);
        const points = segments.flatMap(walked);
        const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
        // A walk by half degrees on a radius of 60 at most misses an extreme by 60·(1 − cos ¼°) = 0.0006.
        expect(Math.min(...xs) - min.x).toBeCloseTo(0, 2);
        expect(Math.min(...ys) - min.y).toBeCloseTo(0, 2);
        expect(max.x - Math.max(...xs)).toBeCloseTo(0, 2);
        expect(max.y - Math.max(...ys)).toBeCloseTo(0, 2);
      },
    ),
    { numRuns: 300 },
  );
});
