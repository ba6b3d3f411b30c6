// Two holes as far from every edge and from each other as can be, beside a search over a fine grid that knows nothing of insets.
import {
  arc,
  distance,
  distanceToSegment,
  line,
  type Outline,
  type Point,
  point,
  polygon,
  widestHolePair,
} from "@lamplane/geometry";
import { describe, expect, test } from "vitest";
import { seeded } from "../support/designs.ts";

/** Least wood about two holes, seen on their own. */
const woodOf = (outline: Outline, radius: number, [a, b]: readonly [Point, Point]): number =>
  Math.min(...[a, b].flatMap((p) => outline.map((s) => distanceToSegment(p, s) - radius)), distance(a, b) - 2 * radius);

const contains = (outline: Outline, p: Point): boolean => {
  // winding by angles, over points along the outline
  const along = outline.flatMap((s) =>
    s.kind === "line"
      ? [s.from]
      : Array.from({ length: 40 }, (_, i) => {
          const turn = (s.sweep * (i / 40) * Math.PI) / 180;
          const [dx, dy] = [s.from.x - s.centre.x, s.from.y - s.centre.y];
          return point(
            s.centre.x + dx * Math.cos(turn) - dy * Math.sin(turn),
            s.centre.y + dx * Math.sin(turn) + dy * Math.cos(turn),
          );
        }),
  );
  let turned = 0;
  along.forEach((a, i) => {
    const b = along[(i + 1) % along.length]!;
    turned += Math.atan2(
      (a.x - p.x) * (b.y - p.y) - (a.y - p.y) * (b.x - p.x),
      (a.x - p.x) * (b.x - p.x) + (a.y - p.y) * (b.y - p.y),
    );
  });
  return Math.abs(turned) > Math.PI;
};

/** Best of all pairs on a grid of so many points each way, about the places given: never better than the best of all. */
function bestOnGrid(outline: Outline, radius: number, cells: number): number {
  const xs = outline.flatMap((s) => [s.from.x, s.to.x]);
  const ys = outline.flatMap((s) => [s.from.y, s.to.y]);
  const [left, low] = [Math.min(...xs), Math.min(...ys)];
  const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - low];
  const step = Math.max(wide, high) / cells;
  const places: { p: Point; wood: number }[] = [];
  for (let x = left; x <= left + wide; x += step)
    for (let y = low; y <= low + high; y += step) {
      const p = point(x, y);
      if (contains(outline, p))
        places.push({ p, wood: Math.min(...outline.map((s) => distanceToSegment(p, s))) - radius });
    }
  let best = Number.NEGATIVE_INFINITY;
  places.sort((a, b) => b.wood - a.wood);
  for (const [i, a] of places.entries()) {
    if (a.wood <= best) break;
    for (const b of places.slice(0, i)) best = Math.max(best, Math.min(a.wood, distance(a.p, b.p) - 2 * radius));
  }
  return best;
}

/** A block with a notch in a slope, a round corner in it, and an arched top, of random sizes. */
function block(random: () => number): Outline {
  const between = (low: number, high: number) => low + (high - low) * random();
  const [long, high, lean] = [between(60, 160), between(35, 70), between(15, 60)];
  const drop = between(0.1, 0.5) * high;
  const at = (share: number, into: number) => point(lean * share + into, high * share);
  const [r, into] = [2, between(3, 8)];
  const corner = at(0.4, into);
  const [onFloor, onEnd] = [at(0.4 + (2 * r) / high, into), at(0.4, into - 2 * r)];
  const crown = point(lean + between(0.1, 0.3) * long, high);
  const run = long - crown.x;
  const fall = Math.min(drop, 0.9 * run);
  const radius = (run * run + fall * fall) / (2 * fall);
  return [
    line(point(0, 0), point(long, 0)),
    line(point(long, 0), point(long, high - fall)),
    arc(point(long, high - fall), crown, point(crown.x, high - radius)),
    line(crown, at(1, into)),
    line(at(1, into), onFloor),
    line(onFloor, corner),
    line(corner, onEnd),
    line(onEnd, at(0.4, 0)),
    line(at(0.4, 0), point(0, 0)),
  ];
}

describe("two holes in a plate", () => {
  test("in a square stand on its diagonal: 20 by 20, no radius, inset and distance are one", () => {
    // worked by hand: (20 − 2m)·√2 = m gives m = 20·√2 / (1 + 2·√2)
    const { wood, holes } = widestHolePair(polygon(point(0, 0), point(20, 0), point(20, 20), point(0, 20)), 0);
    expect(wood).toBeCloseTo((20 * Math.SQRT2) / (1 + 2 * Math.SQRT2), 8);
    expect(distance(holes[0].centre, holes[1].centre)).toBeCloseTo(wood, 8);
  });

  test("in a disc stand on a diameter", () => {
    // worked by hand: 2·(10 − m − r) = m + 2·r with r = 1 gives m = 16 / 3
    const disc: Outline = [
      arc(point(10, 0), point(-10, 0), point(0, 0), 180),
      arc(point(-10, 0), point(10, 0), point(0, 0), 180),
    ];
    expect(widestHolePair(disc, 1).wood).toBeCloseTo(16 / 3, 8);
  });

  test("of 12 random blocks have the wood that they say, and no pair on a grid has more", () => {
    const random = seeded(7);
    for (let i = 0; i < 12; i++) {
      const outline = block(random);
      const radius = 1 + 3 * random();
      const { holes, wood } = widestHolePair(outline, radius);
      const centres = [holes[0].centre, holes[1].centre] as const;
      for (const p of centres) expect(contains(outline, p), `block ${i}`).toBe(true);
      expect(woodOf(outline, radius, centres), `block ${i}`).toBeCloseTo(wood, 6);
      const grid = bestOnGrid(outline, radius, 40);
      expect(grid, `block ${i}`).toBeLessThanOrEqual(wood + 1e-6);
      // a grid's nearest points are off by less than a cell's diagonal, at both ends
      expect(wood - grid, `block ${i}`).toBeLessThan((2 * 1.5 * 160) / 40);
    }
  });
});
