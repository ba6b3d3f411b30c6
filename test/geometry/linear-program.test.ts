// The linear programs behind the certain ranges, against trying every corner of the region by hand.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { certainRanges } from "../../packages/bench/src/survey/certain-range.ts";
import { type Direction, sagittaWeights } from "../../packages/bench/src/survey/direction.ts";
import { feasibleCurves, rangeOf } from "../../packages/bench/src/survey/feasible-curves.ts";
import { reachableRange } from "../../packages/geometry/src/numerics/linear-program.ts";
import { BED, gapsOf, seededUniform } from "../bench/survey/beds.ts";

type Pair = readonly [number, number];
interface Limit {
  readonly row: Pair;
  readonly low: number;
  readonly high: number;
}

/** Least and greatest of aim · point over the corners, where two limits meet, that keep within every limit. */
function overCorners(aim: Pair, limits: readonly Limit[]) {
  const edges = limits.flatMap(({ row, low, high }) => [
    { row, at: low },
    { row, at: high },
  ]);
  const values = edges.flatMap((one, i) =>
    edges.slice(i + 1).flatMap((two) => {
      const area = one.row[0] * two.row[1] - one.row[1] * two.row[0];
      if (Math.abs(area) < 1e-6) return [];
      const x = (one.at * two.row[1] - one.row[1] * two.at) / area;
      const y = (one.row[0] * two.at - one.at * two.row[0]) / area;
      const inside = limits.every(({ row, low, high }) => {
        const value = row[0] * x + row[1] * y;
        return value > low - 1e-7 && value < high + 1e-7;
      });
      return inside ? [aim[0] * x + aim[1] * y] : [];
    }),
  );
  return values.length === 0 ? undefined : { low: Math.min(...values), high: Math.max(...values) };
}

const tenth = fc.integer({ min: -20, max: 20 }).map((n) => n / 10);
const limit = fc
  .tuple(fc.tuple(tenth, tenth), tenth, fc.integer({ min: 1, max: 20 }))
  .map(([row, low, width]): Limit => ({ row, low, high: low + width / 10 }));
/** The first two limits box the region in, so that its corners say everything. */
const boxes: readonly Limit[] = [
  { row: [1, 0], low: -3, high: 3 },
  { row: [0, 1], low: -3, high: 3 },
];

const solved = (aim: Pair, limits: readonly Limit[]) =>
  reachableRange(
    aim,
    limits.map(({ row }) => row),
    limits,
  );

describe("the reach of a sum within ranges", () => {
  it("agrees with the best and worst corner, or both find none", () => {
    let empty = 0;
    fc.assert(
      fc.property(fc.tuple(tenth, tenth), fc.array(limit, { maxLength: 8 }), (aim, more) => {
        const limits = [...boxes, ...more];
        const [got, corners] = [solved(aim, limits), overCorners(aim, limits)];
        if (corners === undefined) empty++;
        if (got === undefined || corners === undefined) return got === corners;
        return Math.abs(got.low - corners.low) < 1e-6 && Math.abs(got.high - corners.high) < 1e-6;
      }),
      { numRuns: 500, seed: 7 },
    );
    expect(empty).toBeGreaterThan(20); // both kinds were tried
  });

  it("agrees where the aim asks for one unknown only, so that the program starts on an edge", () => {
    const axes = fc.constantFrom<Pair>([1, 0], [0, 1], [-1, 0], [0, -1]);
    fc.assert(
      fc.property(axes, fc.array(limit, { minLength: 2, maxLength: 8 }), (aim, more) => {
        const limits = [...more, ...boxes];
        const [got, corners] = [solved(aim, limits), overCorners(aim, limits)];
        if (got === undefined || corners === undefined) return got === corners;
        return Math.abs(got.low - corners.low) < 1e-6 && Math.abs(got.high - corners.high) < 1e-6;
      }),
      { numRuns: 2000, seed: 11 },
    );
  });

  it("adds up two ranges", () => {
    expect(
      solved(
        [1, 1],
        [
          { row: [1, 0], low: 1, high: 2 },
          { row: [0, 1], low: -3, high: 5 },
        ],
      ),
    ).toEqual({ low: -2, high: 7 });
  });

  it("finds nothing where readings contradict each other", () => {
    expect(
      solved(
        [1, 0],
        [
          { row: [1, 0], low: 0, high: 1 },
          { row: [1, 0], low: 2, high: 3 },
          { row: [0, 1], low: 0, high: 1 },
        ],
      ),
    ).toBeUndefined();
  });

  it("takes readings that all touch their limits", () => {
    const limits = Array.from({ length: 12 }, (_, i): Limit => ({ row: [1, i], low: 0, high: i % 2 === 0 ? 0.5 : 1 }));
    expect(solved([0, 1], limits)).toEqual(overCorners([0, 1], limits));
  });

  it("leaves alone what no reading fixes, as long as the aim does not ask for it", () => {
    const rows = [
      [1, 1, 0],
      [1, 1, 1],
    ];
    const reach = reachableRange([2, 2, 1], rows, [
      { low: 0, high: 1 },
      { low: 0, high: 1 },
    ]);
    expect(reach).toEqual({ low: 0, high: 2 });
  });
});

describe("oblique directions", () => {
  it("are never told narrower than a program of their own says", () => {
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const random = seededUniform(seed);
      const shape = { along: 0.2 * random() - 0.1, across: 0.2 * random() - 0.1, twist: 0.2 * random() - 0.1 };
      const curves = feasibleCurves(gapsOf(shape, 0.03, random), BED, 0.005);
      const certainRange = certainRanges(curves, () => true);
      for (const direction of [
        [1, 0.3],
        [1, -0.6],
        [0.5, 1],
        [-0.2, 1],
      ] satisfies Direction[]) {
        const own = rangeOf(curves, sagittaWeights(direction))!;
        const told = certainRange(direction)!;
        expect(told.low).toBeLessThanOrEqual(own.low + 1e-9);
        expect(told.high).toBeGreaterThanOrEqual(own.high - 1e-9);
      }
    }
  });
});
