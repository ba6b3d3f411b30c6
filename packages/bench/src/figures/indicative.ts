// Rows of figures that rest on estimates or tables: each says that it is indicative, and a number that is none is no figure.
import type { FigureFormula } from "@lamplane/parameters/elevation";

export type Evaluate = FigureFormula["of"];

/** A number that is none (no load, no wood left) is no figure. */
export const finiteOrUndefined = (value: number | undefined): number | undefined =>
  Number.isFinite(value) ? value : undefined;

export const indicative =
  (unit: string, source: string) =>
  (formula: string, of: Evaluate): FigureFormula & { readonly isIndicative: true } => ({
    unit,
    formula,
    isIndicative: true,
    source,
    of: (e) => finiteOrUndefined(of(e)),
  });
