// The solver against the reference data of NIST (StRD, linear regression); certified values are typed in, never computed.
import { describe, expect, it } from "vitest";
import { dot, leastSquares } from "../../../../packages/parameters/src/bench/survey/least-squares.ts";

/** Digits that agree, as NIST counts them: the log relative error. */
const digits = (got: number, certified: number) => -Math.log10(Math.abs((got - certified) / certified) || 1e-16);

// y, then six regressors: deflator, gnp, unemployed, armed forces, population, year.
// J. W. Longley, JASA 62 (1967) 819–841, as NIST StRD Longley; both read from a library's copy of it, not off NIST's page.
const LONGLEY = [
  [60323, 83.0, 234289, 2356, 1590, 107608, 1947],
  [61122, 88.5, 259426, 2325, 1456, 108632, 1948],
  [60171, 88.2, 258054, 3682, 1616, 109773, 1949],
  [61187, 89.5, 284599, 3351, 1650, 110929, 1950],
  [63221, 96.2, 328975, 2099, 3099, 112075, 1951],
  [63639, 98.1, 346999, 1932, 3594, 113270, 1952],
  [64989, 99.0, 365385, 1870, 3547, 115094, 1953],
  [63761, 100.0, 363112, 3578, 3350, 116219, 1954],
  [66019, 101.2, 397469, 2904, 3048, 117388, 1955],
  [67857, 104.6, 419180, 2822, 2857, 118734, 1956],
  [68169, 108.4, 442769, 2936, 2798, 120445, 1957],
  [66513, 110.8, 444546, 4681, 2637, 121950, 1958],
  [68655, 112.6, 482704, 3813, 2552, 123366, 1959],
  [69564, 114.2, 502601, 3931, 2514, 125368, 1960],
  [69331, 115.7, 518173, 4806, 2572, 127852, 1961],
  [70551, 116.9, 554894, 4007, 2827, 130081, 1962],
];
const LONGLEY_CERTIFIED = [
  -3482258.63459582, 15.0618722713733, -0.035819179292591, -2.02022980381683, -1.03322686717359, -0.0511041056535807,
  1829.15146461355,
];
const LONGLEY_ERRORS = [
  890420.383607373, 84.9149257747669, 0.0334910077722432, 0.488399681651699, 0.214274163161675, 0.22607320006937,
  455.478499142212,
];
const LONGLEY_RESIDUAL_SQUARES = 836424.055505915;

const powers = (x: number) => [0, 1, 2, 3, 4, 5].map((n) => x ** n);
const x21 = Array.from({ length: 21 }, (_, x) => x);

describe("least squares against NIST StRD", () => {
  it("Longley: coefficients, standard errors and residuals", () => {
    const equations = LONGLEY.map(([, ...regressors]) => [1, ...regressors]);
    const { unknowns, sensitivity, residuals, unseen } = leastSquares(
      equations,
      LONGLEY.map(([y]) => y!),
    );
    const squares = dot(residuals, residuals);
    expect(unseen).toEqual([]);
    expect(digits(squares, LONGLEY_RESIDUAL_SQUARES)).toBeGreaterThan(9);
    LONGLEY_CERTIFIED.forEach((certified, k) => {
      expect(digits(unknowns[k]!, certified)).toBeGreaterThan(9);
      const error = Math.sqrt(dot(sensitivity[k]!, sensitivity[k]!) * (squares / (16 - 7)));
      expect(digits(error, LONGLEY_ERRORS[k]!)).toBeGreaterThan(9);
    });
  });

  it("Wampler1: y = 1 + x + … + x⁵ at x = 0 … 20; every coefficient is 1", () => {
    const y = x21.map((x) => powers(x).reduce((sum, power) => sum + power, 0));
    leastSquares(x21.map(powers), y).unknowns.forEach((got) => {
      expect(digits(got, 1)).toBeGreaterThan(8);
    });
  });

  it("Wampler2: y = 1 + 0.1 x + … + 0.1⁵ x⁵; the coefficients are the powers of 0.1", () => {
    const y = x21.map((x) => powers(x / 10).reduce((sum, power) => sum + power, 0));
    leastSquares(x21.map(powers), y).unknowns.forEach((got, n) => {
      expect(digits(got, 0.1 ** n)).toBeGreaterThan(8);
    });
  });
});

describe("unknowns that cannot be told", () => {
  it("names the direction, and leaves the others right", () => {
    const equations = [
      [1, 2, 0],
      [1, 2, 1],
      [1, 2, 2],
    ];
    const { unknowns, unseen } = leastSquares(equations, [3, 5, 7]);
    expect(unknowns[0]! + 2 * unknowns[1]!).toBeCloseTo(3, 12);
    expect(unknowns[2]).toBeCloseTo(2, 12);
    expect(unseen).toHaveLength(1);
    for (const row of equations) expect(dot(row, unseen[0]!)).toBeCloseTo(0, 12);
  });

  it("says so where there are fewer equations than unknowns", () => {
    const { unseen } = leastSquares([[1, 1, 1]], [2]);
    expect(unseen).toHaveLength(2);
  });
});
