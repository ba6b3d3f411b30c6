// Statistics: least squares, critical values, the sampler and the budget of errors, against NIST, JCGM and printed tables.
import { errorBudget, summarizeValues, type ToleratedError } from "@lamplane/bench";
import { normalGenerator, uniformGenerator } from "@lamplane/geometry/numerics";
import { dotProduct, solveLeastSquares } from "../../packages/geometry/src/numerics/least-squares.ts";
import {
  chiSquare99,
  NORMAL_95,
  student95,
  student95AllDirections,
} from "../../packages/geometry/src/numerics/probability.ts";
import type { OutsideCheck } from "./check.ts";
import { LONGLEY, LONGLEY_COEFFICIENTS, LONGLEY_ERRORS, LONGLEY_RESIDUAL_SQUARES } from "./longley.ts";

const STRD = "NIST StRD, linear regression";
/** NIST counts digits by the log relative error. */
const NINE_DIGITS = { within: 1e-9, relative: true } as const;

const longley = once(() => {
  const equations = LONGLEY.map(([, ...regressors]) => [1, ...regressors]);
  const { unknowns, sensitivity, residuals } = solveLeastSquares(
    equations,
    LONGLEY.map(([y]) => y!),
  );
  const squares = dotProduct(residuals, residuals);
  const errors = sensitivity.map((row) =>
    Math.sqrt((dotProduct(row, row) * squares) / (LONGLEY.length - unknowns.length)),
  );
  return { unknowns, errors, squares };
});

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

const powers = (x: number) => [0, 1, 2, 3, 4, 5].map((n) => x ** n);
const x21 = Array.from({ length: 21 }, (_, x) => x);
const wampler = (scale: number) => {
  const y = x21.map((x) => powers(x * scale).reduce((sum, power) => sum + power, 0));
  return solveLeastSquares(x21.map(powers), y).unknowns;
};

const regressions: readonly OutsideCheck[] = [
  ...LONGLEY_COEFFICIENTS.flatMap((theirs, k): OutsideCheck[] => [
    {
      what: `Longley: coefficient ${k}`,
      from: `${STRD}, Longley (read in a library's copy)`,
      told: "quoted",
      theirs,
      ours: () => longley().unknowns[k]!,
      ...NINE_DIGITS,
    },
    {
      what: `Longley: standard error of coefficient ${k}`,
      from: `${STRD}, Longley (read in a library's copy)`,
      told: "quoted",
      theirs: LONGLEY_ERRORS[k]!,
      ours: () => longley().errors[k]!,
      ...NINE_DIGITS,
    },
  ]),
  {
    what: "Longley: residual sum of squares",
    from: `${STRD}, Longley (read in a library's copy)`,
    told: "quoted",
    theirs: LONGLEY_RESIDUAL_SQUARES,
    ours: () => longley().squares,
    ...NINE_DIGITS,
  },
  ...[1, 0.1].map((scale, k) => ({
    what: `Wampler${k + 1}, powers to the fifth at 0 … 20: coefficient furthest from ${scale}ⁿ, in shares of it`,
    from: `${STRD}, Wampler${k + 1}: the data are the powers' own sum, so the coefficients are exact`,
    told: "worked apart" as const,
    theirs: 0,
    ours: () => Math.max(...wampler(scale).map((got, n) => Math.abs(got / scale ** n - 1))),
    within: 1e-8,
  })),
];

const row = (what: string, from: string, theirs: number, ours: () => number, within: number) => ({
  what,
  from,
  told: "read" as const,
  theirs,
  ours,
  within,
});

const CHI_TABLE = "chi-square distribution, table (exampapers.nust.na)";
const T_TABLE = "NIST TN 1297, table B.1 and NIST/SEMATECH e-Handbook, 1.3.6.7.2 (copy)";
const critical: readonly OutsideCheck[] = [
  ...(
    [
      [1, 12.706],
      [2, 4.303],
      [5, 2.571],
      [10, 2.228],
      [30, 2.042],
      [100, 1.984],
    ] as const
  ).map(([freedom, theirs]) =>
    row(`Student's t, two-sided 95 %, ${freedom} degrees`, T_TABLE, theirs, () => student95(freedom), 5e-4),
  ),
  row("Normal, two-sided 95 %", T_TABLE, 1.96, () => NORMAL_95, 5e-4),
  ...(
    [
      [1, 215.7073],
      [2, 19.1643],
      [3, 9.2766],
    ] as const
  ).map(([freedom, theirs]) =>
    row(
      `F, 95 %, 3 and ${freedom} degrees`,
      "atozmath.com, F table",
      theirs,
      () => student95AllDirections(freedom) ** 2 / 3,
      5e-5,
    ),
  ),
  ...([[10, 3.708]] as const).map(([freedom, theirs]) => ({
    ...row(
      `F, 95 %, 3 and ${freedom} degrees`,
      "NIST/SEMATECH e-Handbook, 1.3.6.7.3 (from memory)",
      theirs,
      () => student95AllDirections(freedom) ** 2 / 3,
      5e-4,
    ),
    told: "from memory" as const,
  })),
  ...(
    [
      [1, 6.6349, 0.05, CHI_TABLE, "quoted"],
      [2, 9.21034, 0.02, CHI_TABLE, "quoted"],
      [10, 23.20925, 0.005, CHI_TABLE, "quoted"],
      [40, 63.691, 0.005, "NIST/SEMATECH e-Handbook, 1.3.6.7.4", "from memory"],
    ] as const
  ).map(([freedom, theirs, within, from, told]) => ({
    ...row(`Chi-square, 99 %, ${freedom} degrees`, from, theirs, () => chiSquare99(freedom), within),
    told,
    relative: true as const,
  })),
];

const RUNS = 400_000;
/** Standard errors that an honest figure keeps within but once in sixteen thousand. */
const FAR = 4;
const sampled = once(() => Float64Array.from({ length: RUNS }, normalGenerator(uniformGenerator(11))).sort());
const densityAt = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
const sumOfFour = once(() => {
  const normal = normalGenerator(uniformGenerator(5));
  return summarizeValues(Float64Array.from({ length: RUNS }, () => normal() + normal() + normal() + normal()));
});

const NORMAL_TABLE = "statistical tables, A.1, cumulative normal distribution (scribd.com, 36788424)";
const SUM_OF_FOUR = "variances add: normal with deviation 2, whose 95 % lie within 2 × 1.96";
const sampler: readonly OutsideCheck[] = [
  ...(
    [
      [-1.96, 0.025],
      [-1.28, 0.1003],
      [-0.67, 0.2514],
      [0, 0.5],
      [1, 0.8413],
      [1.96, 0.975],
      [2.576, 0.995],
      [3.09, 0.999],
    ] as const
  ).map(([theirs, share]) => ({
    what: `${RUNS} numbers of the sampler: under which ${share} of all lie`,
    from: NORMAL_TABLE,
    told: "quoted" as const,
    theirs,
    ours: () => sampled()[Math.floor(RUNS * share)]!,
    within: (FAR * Math.sqrt((share * (1 - share)) / RUNS)) / densityAt(theirs),
  })),
  ...(
    [
      ["mean", 0, () => sumOfFour().mean, (FAR * 2) / Math.sqrt(RUNS)],
      ["standard deviation", 2, () => sumOfFour().deviation, (FAR * 2) / Math.sqrt(2 * RUNS)],
      ["2.5 % point", -3.92, () => sumOfFour().low, 0.05],
      ["97.5 % point", 3.92, () => sumOfFour().high, 0.05],
    ] as const
  ).map(([what, theirs, ours, within]) => ({
    what: `Sum of four normal numbers: ${what}`,
    from: SUM_OF_FOUR,
    told: "worked apart" as const,
    theirs,
    ours,
    within,
  })),
  {
    what: "2.5 % point of 1, 2, 3, 4, 5",
    from: "Hyndman and Fan, The American Statistician 50 (1996), no. 7",
    told: "worked apart",
    theirs: 1.1,
    ours: () => summarizeValues(Float64Array.of(5, 3, 1, 2, 4)).low,
    within: 1e-12,
  },
];

const error = (key: string, tolerance: number, derivative = 1): ToleratedError & { derivative: number } => ({
  key,
  label: key,
  step: "glue-up",
  parameter: `hand.${key}`,
  unit: "mm",
  tolerance,
  derivative,
});

/** Gauge of 50 mm in nm, and its six errors, as the documentation of GTC (MSL, New Zealand) gives them. */
const GAUGE = 50000623;
export const END_GAUGE = errorBudget([
  error("standard", 25),
  error("scatter", 5.8),
  error("comparator random", 3.9),
  error("comparator systematic", 6.7),
  error("difference of expansion", 1e-6 / Math.sqrt(3), 0.1 * GAUGE),
  error("difference of temperature", 0.05 / Math.sqrt(3), -11.5e-6 * GAUGE),
]);

const H1 = "JCGM 100:2008, example H.1 (read in the documentation of GTC)";
const gauge: readonly OutsideCheck[] = (
  [
    ["combined", 32, () => END_GAUGE.within, 0.5],
    ["standard", 25, () => END_GAUGE.lines[0]!.effect, 0],
    ["comparator's scatter", 5.8, () => END_GAUGE.lines[1]!.effect, 0],
    ["difference of expansion", 2.88679, () => END_GAUGE.lines[4]!.effect, 5e-5],
    ["difference of temperature", 16.599, () => END_GAUGE.lines[5]!.effect, 5e-4],
    ["plain sum of the parts", 25 + 5.8 + 3.9 + 6.7 + 2.88679 + 16.599, () => END_GAUGE.worst, 5e-4],
  ] as const
).map(([what, theirs, ours, within]) => ({
  what: `End gauge of 50 mm: ${what}`,
  from: H1,
  told: "quoted",
  unit: "nm",
  theirs,
  ours,
  within,
}));

export const STATISTICS_CHECKS: readonly OutsideCheck[] = [...regressions, ...critical, ...sampler, ...gauge];
