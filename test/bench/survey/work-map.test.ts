// Laws of the map: wood is only taken off, and what is left has no hump and no more hollow than allowed.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { workMap } from "../../../packages/bench/src/survey/work-map.ts";
import { BED, heightOf } from "./beds.ts";

const LIMIT = 0.1;
const sagitta = fc.double({ min: -0.4, max: 0.4, noNaN: true });
const shapes = fc.record({ along: sagitta, across: sagitta, twist: sagitta });
type Shape = { along: number; across: number; twist: number };

const mapOf = ({ along, across, twist }: Shape, limit = LIMIT) =>
  workMap([4 * along, 4 * twist, 4 * across], BED, limit);
const leftBy = (shape: Shape, limit = LIMIT) => {
  const map = mapOf(shape, limit);
  return map.along.map((along, i) =>
    map.across.map((across, j) => heightOf(shape, { along, across }) - map.takeOff[i]![j]!),
  );
};

/** The bend at every inner crossing in the four directions of the grid; below 0 for a hump. */
const bends = (z: number[][]) =>
  z.flatMap((row, i) =>
    row.flatMap((middle, j) =>
      [
        [1, 0],
        [0, 1],
        [1, 1],
        [1, -1],
      ].flatMap(([di, dj]) => {
        const [before, after] = [z[i - di!]?.[j - dj!], z[i + di!]?.[j + dj!]];
        return before === undefined || after === undefined ? [] : [before + after - 2 * middle];
      }),
    ),
  );

describe("the map of what to take off", () => {
  it("takes nothing off a flat bed or one slightly hollow", () => {
    expect(
      mapOf({ along: 0, across: 0, twist: 0 })
        .takeOff.flat()
        .every((off) => off === 0),
    ).toBe(true);
    expect(
      mapOf({ along: 0.05, across: 0.04, twist: 0 })
        .takeOff.flat()
        .every((off) => off === 0),
    ).toBe(true);
  });

  it("takes a dome down to its corners, most at the centre", () => {
    const { takeOff } = mapOf({ along: -0.1, across: -0.05, twist: 0 });
    expect(takeOff[4]![2]).toBeCloseTo(0.15, 9);
    expect([takeOff[0]![0], takeOff[0]![4], takeOff[8]![0], takeOff[8]![4]]).toEqual([0, 0, 0, 0]);
  });

  it("takes a hump that runs up the bed off the middle column alone when the hump is across", () => {
    const { takeOff } = mapOf({ along: 0, across: -0.08, twist: 0 });
    for (const row of takeOff) row.forEach((off, j) => void expect(off).toBeCloseTo([0, 0.06, 0.08, 0.06, 0][j]!, 9));
  });

  it("takes the rim off a bed too hollow, down to the limit", () => {
    const { takeOff } = mapOf({ along: 0.3, across: 0, twist: 0 });
    expect(takeOff[0]!.every((off) => Math.abs(off - 0.2) < 1e-9)).toBe(true);
    expect(takeOff[4]!.every((off) => off === 0)).toBe(true);
  });

  it("takes the two high corners off a bed in wind", () => {
    const { takeOff } = mapOf({ along: 0, across: 0, twist: 0.2 });
    expect(takeOff[0]![0]).toBeCloseTo(0.3, 9);
    expect(takeOff[8]![4]).toBeCloseTo(0.3, 9);
    expect([takeOff[0]![4], takeOff[8]![0]]).toEqual([0, 0]);
  });

  it("never adds wood", () => {
    fc.assert(
      fc.property(shapes, (shape) =>
        mapOf(shape)
          .takeOff.flat()
          .every((off) => off >= 0),
      ),
      { numRuns: 40 },
    );
  });

  it("leaves no hump where the hollow is within its limit, and no hollow over the limit ever", () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const free = leftBy(shape, 100);
        const limited = leftBy(shape).flat();
        return bends(free).every((bend) => bend > -1e-8) && Math.max(...limited) - Math.min(...limited) <= LIMIT + 1e-8;
      }),
      { numRuns: 40 },
    );
  });
});
