// Where lines and arcs meet: on both of them, as often as their distances say, and nowhere else.
import { arc, distance, line, type Point, point, pointAlong, type Segment, segmentLength } from "@lamplane/geometry";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  distanceAlongRay,
  intersections,
  splitAtIntersection,
  subsegment,
} from "../../packages/geometry/src/intersection.ts";
import { arcs, lines, places } from "../support/segments.ts";

const segments = fc.oneof(lines, arcs({ least: 6, most: 350 }));

/** Signed side of a point: left of a line, outside a circle. */
const sideOf = (s: Segment, p: Point): number =>
  s.kind === "line"
    ? ((s.to.x - s.from.x) * (p.y - s.from.y) - (s.to.y - s.from.y) * (p.x - s.from.x)) / distance(s.from, s.to)
    : distance(p, s.centre) - s.radius;

/** Shares along `a` where it changes over from one side of `b`'s line or circle to the other, by walking it. */
function changesOver(a: Segment, b: Segment): number[] {
  const steps = 4000;
  const sides = Array.from({ length: steps + 1 }, (_, i) => sideOf(b, pointAlong(a, i / steps)));
  return sides.flatMap((side, i) => (i > 0 && side * sides[i - 1]! < 0 ? [(i - 0.5) / steps] : []));
}

/** Distance from a point to a segment by walking it. */
const fromWalked = (p: Point, s: Segment): number =>
  Math.min(...Array.from({ length: 2001 }, (_, i) => distance(p, pointAlong(s, i / 2000))));

describe("crossings", () => {
  test("lie on both, at the shares that they tell, in order along the first", () => {
    fc.assert(
      fc.property(segments, segments, (a, b) => {
        const met = intersections(a, b);
        for (const { at, shareOfFirst, shareOfSecond } of met) {
          expect(distance(pointAlong(a, shareOfFirst), at)).toBeLessThan(1e-5);
          expect(distance(pointAlong(b, shareOfSecond), at)).toBeLessThan(1e-5);
        }
        const shares = met.map(({ shareOfFirst }) => shareOfFirst);
        expect(shares).toEqual([...shares].sort((x, y) => x - y));
      }),
      { numRuns: 500 },
    );
  });
  test("are found wherever a walk along the first goes through the second", () => {
    let found = 0;
    fc.assert(
      fc.property(segments, segments, (a, b) => {
        for (const share of changesOver(a, b)) {
          const place = pointAlong(a, share);
          const step = segmentLength(a) / 4000 + segmentLength(b) / 2000;
          // Near an end of the second, walking cannot tell.
          const ends = Math.min(distance(place, b.from), distance(place, b.to));
          if (ends < 4 * step || fromWalked(place, b) > 2 * step) continue;
          found++;
          expect(intersections(a, b).some(({ at }) => distance(at, place) < 4 * step)).toBe(true);
        }
      }),
      { numRuns: 150, seed: 5 },
    );
    expect(found).toBeGreaterThan(15);
  });
  test("two circles with room between them meet nowhere; two lines side by side neither", () => {
    const circle = (x: number, radius: number) => arc(point(x + radius, 0), point(x + radius, 0), point(x, 0), 360);
    expect(intersections(circle(0, 3), circle(10, 3))).toEqual([]);
    expect(intersections(circle(0, 9), circle(1, 3))).toEqual([]);
    expect(intersections(line(point(0, 0), point(9, 3)), line(point(0, 1), point(9, 4)))).toEqual([]);
  });
});

test("a part of a segment begins and ends where its shares lie, and is so much of its length", () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(segments, share, share, (s, a, b) => {
      fc.pre(Math.abs(a - b) > 0.01);
      const [first, last] = [Math.min(a, b), Math.max(a, b)];
      const part = subsegment(s, first, last);
      expect(distance(part.from, pointAlong(s, first))).toBeLessThan(1e-9);
      expect(distance(part.to, pointAlong(s, last))).toBeLessThan(1e-9);
      expect(segmentLength(part)).toBeCloseTo(segmentLength(s) * (last - first), 6);
      expect(distance(pointAlong(part, 0.5), pointAlong(s, (first + last) / 2))).toBeLessThan(1e-6);
    }),
  );
});

test("a chain split where it first meets another loses nothing, and both halves end there", () => {
  const chain = [
    line(point(0, 0), point(10, 0)),
    arc(point(10, 0), point(20, 10), point(10, 10), 90),
    line(point(20, 10), point(20, 30)),
  ];
  const length = (some: readonly Segment[]) => some.reduce((sum, s) => sum + segmentLength(s), 0);
  for (const y of [2, 5, 9, 15, 29]) {
    const split = splitAtIntersection(chain, [line(point(-50, y), point(50, y))])!;
    expect(split.at.y).toBeCloseTo(y, 9);
    expect(length(split.before) + length(split.after)).toBeCloseTo(length(chain), 6);
    expect(split.before.at(-1)!.to).toBe(split.at);
    expect(split.after[0]!.from).toBe(split.at);
  }
  expect(splitAtIntersection(chain, [line(point(-5, 50), point(5, 50))])).toBeUndefined();
});

test("a ray meets a segment first where a long line in its direction does", () => {
  let met = 0;
  fc.assert(
    fc.property(places, fc.integer({ min: 0, max: 359 }), segments, (from, turn, segment) => {
      const direction = point(Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180));
      const far = line(from, point(from.x + 1e3 * direction.x, from.y + 1e3 * direction.y));
      fc.pre(segment.kind === "arc" || Math.abs(sideOf(far, segment.to) - sideOf(far, segment.from)) > 1e-3); // not along it
      const first = intersections(far, segment)[0];
      const along = distanceAlongRay(from, direction, segment);
      if (first) expect(along).toBeCloseTo(distance(from, first.at), 6);
      else expect(along).toBe(Infinity);
      if (first) met++;
    }),
    { numRuns: 1000 },
  );
  expect(met).toBeGreaterThan(100);
});
