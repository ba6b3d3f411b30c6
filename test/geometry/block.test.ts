// Blocks of runs against plain numbers: each run of a block is worked out to the last bit as it would be alone.
import {
  type Arithmetic,
  blockArithmetic,
  cotOver,
  maxOver,
  REAL,
  tanOver,
  uniformGenerator,
} from "@lamplane/geometry/numerics";
import { expect, test } from "vitest";

const LENGTH = 37;

/** A formula with every operation in it. */
function formula<N>(on: Arithmetic<N>, x: N, y: N): N {
  const root = on.sqrt(on.add(on.multiply(x, x), on.multiply(y, y)));
  const slope = on.subtract(cotOver(on, x), on.divide(on.sinDeg(y), on.cosDeg(x)));
  const either = on.choose(on.subtract(y, on.constant(10)), on.atanDeg(slope), tanOver(on, y));
  return on.multiply(maxOver(on, root, either), on.add(slope, on.constant(3)));
}

test("a block's runs are those of plain numbers, block after block", () => {
  const on = blockArithmetic(LENGTH);
  const uniform = uniformGenerator(1);
  const [x, y] = [new Float64Array(LENGTH), new Float64Array(LENGTH)];
  for (let block = 0; block < 5; block++) {
    for (const numbers of [x, y]) numbers.set(Array.from({ length: LENGTH }, () => 180 * uniform() - 90));
    x[3] = 0; // where the sine is exact
    const made = formula(on, x, y);
    for (let run = 0; run < LENGTH; run++) expect(made[run]).toBe(formula(REAL, x[run]!, y[run]!));
    on.reuse();
  }
});

test("what is not chosen may be no number", () => {
  const on = blockArithmetic(2);
  const [by, root] = [Float64Array.of(-1, 4), on.sqrt(Float64Array.of(-1, 4))];
  expect([...on.choose(by, root, by)]).toEqual([-1, 2]);
});

test("a constant outlives the blocks that are used again", () => {
  const on = blockArithmetic(2);
  const three = on.constant(3);
  on.reuse();
  on.add(on.constant(1), on.constant(1));
  expect([...three]).toEqual([3, 3]);
});
