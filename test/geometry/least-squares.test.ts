// The solver where unknowns cannot be told; NIST's reference data stand in test/outside.
import { describe, expect, it } from "vitest";
import { dotProduct, solveLeastSquares } from "../../packages/geometry/src/numerics/least-squares.ts";

describe("unknowns that cannot be told", () => {
  it("names the direction, and leaves the others right", () => {
    const equations = [
      [1, 2, 0],
      [1, 2, 1],
      [1, 2, 2],
    ];
    const { unknowns, unseen } = solveLeastSquares(equations, [3, 5, 7]);
    expect(unknowns[0]! + 2 * unknowns[1]!).toBeCloseTo(3, 12);
    expect(unknowns[2]).toBeCloseTo(2, 12);
    expect(unseen).toHaveLength(1);
    for (const row of equations) expect(dotProduct(row, unseen[0]!)).toBeCloseTo(0, 12);
  });

  it("says so where there are fewer equations than unknowns", () => {
    const { unseen } = solveLeastSquares([[1, 1, 1]], [2]);
    expect(unseen).toHaveLength(2);
  });
});
