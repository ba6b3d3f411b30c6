// Numbers with their derivatives against derivatives of the textbooks, and against differences of plain numbers.
import { type Arithmetic, cotOver, dualArithmetic, dualVariable, REAL, tanOver } from "@lamplane/geometry/numerics";
import { expect, test } from "vitest";

const on = dualArithmetic(2);
const degree = Math.PI / 180;

// M. Abramowitz, I. Stegun, "Handbook of Mathematical Functions" (1964), 3.3 and 4.3: rules of differentiation, derivatives
// of the circular functions; one degree is π/180. From memory.
test("each operation has the derivatives of the tables", () => {
  const [x, y] = [dualVariable(30, 0, 2), dualVariable(4, 1, 2)];
  const near = (dual: { partials: readonly number[] }, byX: number, byY: number) => {
    expect(dual.partials[0]).toBeCloseTo(byX, 12);
    expect(dual.partials[1]).toBeCloseTo(byY, 12);
  };
  near(on.add(x, y), 1, 1);
  near(on.subtract(x, y), 1, -1);
  near(on.multiply(x, y), 4, 30);
  near(on.divide(x, y), 1 / 4, -30 / 16);
  near(on.sqrt(y), 0, 1 / 4);
  near(on.sinDeg(x), (Math.sqrt(3) / 2) * degree, 0);
  near(on.cosDeg(x), -degree / 2, 0);
  near(tanOver(on, x), (4 / 3) * degree, 0);
  near(cotOver(on, x), -4 * degree, 0);
  near(on.constant(7), 0, 0);
});

/** A formula with every operation in it. */
function formula<N>(a: Arithmetic<N>, x: N, y: N): N {
  const root = a.sqrt(a.add(a.multiply(x, x), a.multiply(y, y)));
  const slope = a.subtract(cotOver(a, x), a.divide(a.sinDeg(y), a.cosDeg(x)));
  return a.divide(a.multiply(root, slope), a.add(tanOver(a, y), a.constant(3)));
}

test("a formula's value is that of plain numbers, its derivatives those of central differences", () => {
  const step = 1e-4;
  for (const [x, y] of [
    [47, 60],
    [12, 75],
    [63, 5],
  ] as const) {
    const dual = formula(on, dualVariable(x, 0, 2), dualVariable(y, 1, 2));
    expect(dual.value).toBe(formula(REAL, x, y));
    const byX = (formula(REAL, x + step, y) - formula(REAL, x - step, y)) / (2 * step);
    const byY = (formula(REAL, x, y + step) - formula(REAL, x, y - step)) / (2 * step);
    expect(dual.partials[0]).toBeCloseTo(byX, 7);
    expect(dual.partials[1]).toBeCloseTo(byY, 7);
  }
});
