// How far a sum of unknowns can go while every equation stays within its range. Exact but for rounding; no statistics.
import type { Interval } from "./interval.ts";

/** Columns of the dual: shares of the upper limits, then of the lower ones, then the artificial variables that start it. */
interface Tableau {
  /** One row for each unknown; last entry the right-hand side, never negative. */
  readonly rows: number[][];
  /** Column that each row's value stands for. */
  readonly basis: number[];
  /** Columns before this are limits, from it on artificial variables. */
  readonly limits: number;
}

const NOTHING = 1e-9; // shares and gains below this are rounding

/**
 * Least and greatest value of `aim · unknowns` over all unknowns with `low ≤ row · unknowns ≤ high` for every row.
 * @param aim must be a sum of multiples of the rows, or nothing limits it
 * @returns undefined where no unknowns keep within all ranges
 */
export function reachableRange(
  aim: readonly number[],
  rows: readonly (readonly number[])[],
  ranges: readonly Interval[],
): Interval | undefined {
  const high = maximize(aim, rows, ranges);
  const low = maximize(
    aim.map((part) => -part),
    rows,
    ranges,
  );
  return high === undefined || low === undefined ? undefined : { low: 0 - low, high };
}

/**
 * The dual: the cheapest way to write `aim` as a sum of rows, each share paid with the row's limit on its side.
 * @see G. B. Dantzig, Linear Programming and Extensions (1963), chapters 5 (simplex, two phases) and 6 (duality)
 */
function maximize(aim: readonly number[], rows: readonly (readonly number[])[], ranges: readonly Interval[]) {
  const table = initialTableau(aim, rows);
  const columns = table.limits + aim.length;
  const isArtificial = Array.from({ length: columns }, (_, column) => (column < table.limits ? 0 : 1));
  minimize(table, isArtificial);
  if (objectiveValue(table, isArtificial) > Math.sqrt(NOTHING)) return Number.POSITIVE_INFINITY;
  const prices = [...ranges.map(({ high }) => high), ...ranges.map(({ low }) => -low), ...aim.map(() => 0)];
  return minimize(table, prices) ? objectiveValue(table, prices) : undefined;
}

function initialTableau(aim: readonly number[], rows: readonly (readonly number[])[]): Tableau {
  const limits = 2 * rows.length;
  const tableRows = aim.map((need, k) => {
    const sign = need < 0 ? -1 : 1;
    const shares = rows.map((row) => sign * row[k]!);
    return [...shares, ...shares.map((share) => -share), ...aim.map((_, i) => (i === k ? 1 : 0)), sign * need];
  });
  return { rows: tableRows, basis: aim.map((_, k) => limits + k), limits };
}

const rightHandSide = (row: readonly number[]) => row[row.length - 1]!;

const objectiveValue = ({ rows, basis }: Tableau, prices: readonly number[]) =>
  rows.reduce((sum, row, k) => sum + prices[basis[k]!]! * rightHandSide(row), 0);

/** Exchanges columns until none lowers the sum; false where it falls without end. */
function minimize(table: Tableau, prices: readonly number[]): boolean {
  let stalled = false;
  for (;;) {
    const gains = reducedCosts(table, prices);
    const entering = stalled ? gains.findIndex((gain) => gain < -NOTHING) : enteringColumn(gains);
    if (entering < 0) return true;
    const leaving = leavingRow(table, entering);
    if (leaving === undefined) return false;
    stalled = rightHandSide(table.rows[leaving]!) <= NOTHING; // Bland's rule from here until the sum moves: no endless round
    pivotOn(table, leaving, entering);
  }
}

/** What the sum changes by for each unit of each limit's column. Artificial variables never come back. */
function reducedCosts({ rows, basis, limits }: Tableau, prices: readonly number[]): number[] {
  const gains = prices.slice(0, limits);
  rows.forEach((row, k) => {
    const price = prices[basis[k]!]!;
    if (price !== 0) for (let column = 0; column < limits; column++) gains[column]! -= price * row[column]!;
  });
  return gains;
}

function enteringColumn(gains: readonly number[]): number {
  const least = Math.min(...gains);
  return least < -NOTHING ? gains.indexOf(least) : -1;
}

/**
 * The row that first reaches 0 as the column grows. Artificial variables left over from the first phase are 0; their rows add up
 * to 0 in every column, so that where one would grow another stops it at once.
 */
function leavingRow({ rows, basis }: Tableau, entering: number): number | undefined {
  let leaving: number | undefined;
  let least = Number.POSITIVE_INFINITY;
  rows.forEach((row, k) => {
    const share = row[entering]!;
    if (share <= NOTHING) return;
    const ratio = rightHandSide(row) / share;
    const earlier = leaving === undefined || basis[k]! < basis[leaving]!;
    if (ratio < least || (ratio === least && earlier)) [leaving, least] = [k, ratio];
  });
  return leaving;
}

function pivotOn({ rows, basis }: Tableau, leaving: number, entering: number): void {
  const pivot = rows[leaving]!;
  const share = pivot[entering]!;
  for (let column = 0; column < pivot.length; column++) pivot[column]! /= share;
  pivot[pivot.length - 1] = Math.max(0, rightHandSide(pivot));
  rows.forEach((row, k) => {
    const times = row[entering]!;
    if (k === leaving || times === 0) return;
    for (let column = 0; column < row.length; column++) row[column]! -= times * pivot[column]!;
    row[row.length - 1] = Math.max(0, rightHandSide(row));
  });
  basis[leaving] = entering;
}
