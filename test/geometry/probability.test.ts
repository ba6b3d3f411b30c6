// Critical values towards many readings; those of printed tables stand in test/outside.
import { describe, expect, it } from "vitest";
import {
  NORMAL_95,
  NORMAL_95_ALL_DIRECTIONS,
  student95,
  student95AllDirections,
} from "../../packages/geometry/src/numerics/probability.ts";

describe("critical values", () => {
  it("approaches the normal values with many readings to spare", () => {
    expect(student95(400)).toBeGreaterThan(NORMAL_95);
    expect(student95(400)).toBeCloseTo(NORMAL_95, 1);
    expect(student95AllDirections(400)).toBeCloseTo(NORMAL_95_ALL_DIRECTIONS, 1);
  });
});
