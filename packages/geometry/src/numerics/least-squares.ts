// Least squares by Householder reflections. An unknown that the equations do not determine is named, never guessed at.

type Matrix = readonly (readonly number[])[];

/** The least-squares answer to `equations · unknowns = rightHand`, every right-hand side having the same error. */
export interface Solution {
  /** 0 for each unknown that depends on the ones before it; see `unseen`. */
  readonly unknowns: readonly number[];
  /** `unknowns = sensitivity · rightHand`; a row's sum of squares is its unknown's variance at unit error. */
  readonly sensitivity: Matrix;
  /** `rightHand − equations · unknowns`. */
  readonly residuals: readonly number[];
  /** Directions in which the unknowns can move without any equation noticing; none when all are determined. */
  readonly unseen: Matrix;
}

/** Part of a column left over by those before it, below which it says nothing of its own: far over rounding, far under a reading. */
const DEPENDENT = 1e-9;

/**
 * @param equations one row each, as many columns as unknowns, the columns of like size
 * @param rightHand one value to a row
 * @see A. S. Householder, "Unitary triangularization of a nonsymmetric matrix", J. ACM 5 (1958) 339–342
 */
export function solveLeastSquares(equations: Matrix, rightHand: readonly number[]): Solution {
  const columns = equations[0]?.length ?? 0;
  const rows = equations.map((row, i) => [...row, rightHand[i]!, ...unitEntry(equations.length, i)]);
  const pivots = triangularize(rows, columns);
  const solved = (column: number) => backSubstitute(rows, pivots, column, columns);
  const unknowns = solved(columns);
  const perReading = rightHand.map((_, i) => solved(columns + 1 + i));
  return {
    unknowns,
    sensitivity: unknowns.map((_, k) => perReading.map((answer) => answer[k]!)),
    residuals: equations.map((row, i) => rightHand[i]! - dotProduct(row, unknowns)),
    unseen: dependentColumns(pivots, columns).map((column) =>
      solved(column).map((part, k) => (k === column ? 1 : -part)),
    ),
  };
}

/** Sum of products, term by term. */
export function dotProduct(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, term, i) => sum + term * b[i]!, 0);
}

const unitEntry = (size: number, one: number) => Array.from({ length: size }, (_, i) => (i === one ? 1 : 0));

const dependentColumns = (pivots: readonly number[], columns: number) =>
  Array.from({ length: columns }, (_, column) => column).filter((column) => !pivots.includes(column));

/** Makes the first `columns` columns upper triangular in place, leaving out the dependent ones; returns the column of each row's pivot. */
function triangularize(rows: number[][], columns: number): number[] {
  const pivots: number[] = [];
  for (let column = 0; column < columns && pivots.length < rows.length; column++) {
    const entries = rows.map((row) => row[column]!);
    const own = entries.slice(pivots.length);
    if (Math.sqrt(dotProduct(own, own)) <= DEPENDENT * Math.sqrt(dotProduct(entries, entries))) continue;
    reflect(rows.slice(pivots.length), column, own);
    pivots.push(column);
  }
  return pivots;
}

/** Turns the column's `entries` onto the first row by one reflection, applied to the whole of every row. */
function reflect(rows: number[][], column: number, entries: readonly number[]): void {
  const length = Math.sqrt(dotProduct(entries, entries));
  const first = entries[0]! + (entries[0]! < 0 ? -length : length);
  const mirror = [first, ...entries.slice(1)];
  const along = new Array<number>(rows[0]!.length).fill(0);
  rows.forEach((row, i) => {
    for (let k = column; k < row.length; k++) along[k]! += mirror[i]! * row[k]!;
  });
  const scale = 2 / dotProduct(mirror, mirror);
  rows.forEach((row, i) => {
    for (let k = column; k < row.length; k++) row[k]! -= scale * mirror[i]! * along[k]!;
  });
}

/** The unknowns that make the triangular rows equal `column`; 0 for the dependent ones. */
function backSubstitute(rows: Matrix, pivots: readonly number[], column: number, columns: number): number[] {
  const unknowns = new Array<number>(columns).fill(0);
  for (let k = pivots.length - 1; k >= 0; k--) {
    const row = rows[k]!;
    const known = pivots.slice(k + 1).reduce((sum, pivot) => sum + row[pivot]! * unknowns[pivot]!, 0);
    unknowns[pivots[k]!] = (row[column]! - known) / row[pivots[k]!]!;
  }
  return unknowns;
}
