// A sole that passes a curved ramp's wear: the mouth as built against a sole line cut through the blocks by polyclip-ts 0.16,
// and what every command says of that mouth against every other.
import { asBuiltPlane, buildState, expectedValue, mouthReading, plannedPlane } from "@lamplane/bench";
import { sinDeg, tessellate } from "@lamplane/geometry";
import {
  blocksAt,
  type Elevation,
  figureValue,
  fromToeEnd,
  mouthGrowth,
  mouthOpeningAt,
  rampPath,
  rampXAt,
} from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { intersection } from "polyclip-ts";
import { describe, expect, test } from "vitest";
import { designWith } from "../../support/designs.ts";

const CURVED = designWith({
  "bed.angle": 55,
  "ramp.shape": "curved",
  "ramp.wearAngle": 85,
  "ramp.wearHeight": 0.5,
  "ramp.exitAngle": 45,
  "ramp.radius": 12,
  "body.length": 300,
  "mouth.fromToe": 110,
  "mouth.opening": 0.1,
  "sole.allowance": 2,
  "bed.featherChamfer": 1,
  "body.height": 58,
  "pin.height": 36,
});
const planned = plannedPlane(CURVED);
const measuring = (values: Partial<Design["measured"]>, design = CURVED): Design => ({
  ...design,
  measured: { ...design.measured, ...values } as Design["measured"],
});
/** Glued `by` mm nearer to the heel than planned. */
const frontNearer = (by: number) => ({ rampTipFromEnd: fromToeEnd(planned, planned.points.rampTip.x) + by });

const FAR = 1000;
/**
 * Mouth of the planned blocks at a height over the planned sole, the front block `nearer` mm to the heel: both outlines are
 * clipped to a thin slice over that height, and the slices' nearest corners there are read.
 */
function clippedOpening(nearer: number, sole: number): number {
  const { front, bed } = blocksAt(planned, "glued");
  const slice = [
    [-FAR, sole],
    [FAR, sole],
    [FAR, sole + 1],
    [-FAR, sole + 1],
  ] as [number, number][];
  const cornersAtSole = (outline: typeof front, by: number) => {
    const ring = tessellate(outline, 1e-6).map(({ x, y }): [number, number] => [x + by, y]);
    const corners = intersection([ring], [slice]).flat(2);
    return corners.filter(([, y]) => Math.abs(y - sole) < 1e-9).map(([x]) => x);
  };
  const edge = Math.min(...cornersAtSole(bed, 0)) - CURVED.iron.thickness / sinDeg(CURVED.bed.angle);
  return edge - Math.max(...cornersAtSole(front, nearer));
}

/** How far the sole as built lies over the planned one, in the wood. */
const soleAt = (plane: Elevation) => CURVED.body.height - plane.design.body.height;

describe("the mouth of a plane whose sole passes the wear", () => {
  test("is the one wanted, at the depth at which the clipped outlines have it", () => {
    for (const nearer of [0.3, 0.5, 1, 2, 4, 12]) {
      const built = asBuiltPlane(measuring({ ...frontNearer(nearer), done: "mouth" }));
      const sole = soleAt(built);
      expect(sole > CURVED.ramp.wearHeight).toBe(nearer > 0.35);
      expect(built.design.mouth.opening).toBeCloseTo(0.1, 9);
      expect(clippedOpening(nearer, sole)).toBeCloseTo(0.1, 5);
      expect(built.frame.mouthX - rampXAt(built.ramp, 0)).toBeCloseTo(0.1, 9);
    }
  });

  test("is not told by the wear's slope alone, which would leave it at 0.232 where 0.1 is wanted", () => {
    const nearer = 1.775;
    expect(clippedOpening(nearer, nearer / mouthGrowth(planned))).toBeCloseTo(0.232, 3);
    const sole = soleAt(asBuiltPlane(measuring({ ...frontNearer(nearer), done: "mouth" })));
    expect(sole).toBeLessThan(nearer / mouthGrowth(planned) - 0.1);
    expect(clippedOpening(nearer, sole)).toBeCloseTo(0.1, 5);
  });

  test("grows by the curve's own slope there, and the sole still to take off follows the curve", () => {
    const design = measuring(frontNearer(2));
    const built = asBuiltPlane(design);
    const sole = soleAt(built);
    const step = 1e-3;
    const rise = (clippedOpening(2, sole + step) - clippedOpening(2, sole - step)) / (2 * step);
    expect(figureValue(built, "mouthGrowth")).toBeCloseTo(rise, 3);
    expect(mouthGrowth(built)).toBeGreaterThan(mouthGrowth(planned) + 0.1);
    expect(figureValue(built, "soleToTake")).toBeCloseTo(sole + CURVED.sole.allowance, 9);
    const opens = figureValue(built, "edgeHeightAtContact")! - CURVED.sole.allowance;
    expect(clippedOpening(2, opens)).toBeCloseTo(0, 5);
  });

  test("seen on its way is followed along the curve to the one wanted", () => {
    const glued = measuring(frontNearer(2));
    const state = buildState(measuring({ done: "sole", allowanceLeft: 0.4 }, glued));
    const before = asBuiltPlane(measuring({ allowanceLeft: 0.4 }, glued));
    const seen = mouthOpeningAt(before, -0.4);
    expect(clippedOpening(2, soleAt(before) - 0.4)).toBeCloseTo(seen, 5);
    expect(state.step).toBe("mouth");
    expect(expectedValue(measuring({ allowanceLeft: 0.4 }, glued), "mouthSeen")).toBe(Math.max(0, seen));
    for (const read of [0.02, 0.05, 0.09]) {
      const after = asBuiltPlane(measuring({ allowanceLeft: 0.2, mouthSeen: read }, glued));
      const { takeOff } = mouthReading(after, { seen: read });
      expect(takeOff).toBeCloseTo(after.design.sole.allowance, 9);
      expect(takeOff).toBeLessThan((0.1 - read) / mouthGrowth(planned));
      expect(after.design.mouth.opening).toBeCloseTo(0.1, 9);
      expect(mouthOpeningAt(after, -takeOff)).toBeCloseTo(read, 9);
    }
  });

  test("has a ramp whose outline begins on the curve at the sole", () => {
    const built = asBuiltPlane(measuring({ ...frontNearer(4), done: "mouth" }));
    const { begin, centre, radius } = built.ramp.curve!;
    expect(begin.y).toBeLessThan(-1);
    const [first, ...rest] = rampPath(built.ramp, 0, 2 * built.design.body.height);
    expect(first!.from.y).toBe(0);
    expect(Math.hypot(first!.from.x - centre.x, first!.from.y - centre.y)).toBeCloseTo(radius, 9);
    expect(rest.length).toBe(1);
    expect(built.points.rampFoot.x).toBeCloseTo(built.frame.mouthX - 0.1, 9);
  });
});
