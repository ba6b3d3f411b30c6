// Rows of figures that rest on estimates or tables: each says that it is indicative, and a number that is none is no figure.
import type { FigureRow } from "@lamplane/parameters/elevation";

export type Evaluate = FigureRow["of"];

/** A number that is none (no load, no wood left) is no figure. */
export const finiteOrUndefined = (value: number | undefined): number | undefined =>
  Number.isFinite(value) ? value : undefined;

export const indicative =
  (unit: string, source: string) =>
  (formula: string, help: string, of: Evaluate): FigureRow => ({
    unit,
    formula,
    help: `${help} Indicative.`,
    source,
    of: (e) => finiteOrUndefined(of(e)),
  });
