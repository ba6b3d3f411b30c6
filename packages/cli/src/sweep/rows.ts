// One design of a sweep as a line of the table: its values, the figures chosen, and what stops it or warns of it.

import { asBuiltPlane, figureAsBuilt } from "@lamplane/bench";
import { findingCodes } from "@lamplane/bench/checks";
import { csvLine } from "@lamplane/export/csv";
import { withValue } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { formatDecimal } from "@lamplane/parameters/units";
import { type Variation, variationValues } from "./variation.ts";

export interface Sweep {
  readonly design: Design;
  readonly variations: readonly Variation[];
  readonly figures: readonly string[];
}

const DECIMALS = 6;

export const headerLine = ({ variations, figures }: Sweep): string =>
  csvLine([...variations.map(({ path }) => path), ...figures, "stops", "warnings"]);

/** Lines of the designs from one index up to another. */
export function computeSweepLines(sweep: Sweep, from: number, to: number): string {
  return Array.from({ length: to - from }, (_, i) => computeSweepLine(sweep, from + i)).join("");
}

/** What the line of one design begins with, whatever comes out of it. */
export const sweepLinePrefix = ({ variations }: Sweep, index: number): string =>
  csvLine([...variationValues(variations, index).map(String), ""]).trimEnd();

function computeSweepLine({ design, variations, figures }: Sweep, index: number): string {
  const values = variationValues(variations, index);
  const varied = variations.reduce((d, { path }, k) => withValue(d, path, values[k]!), design);
  const plane = asBuiltPlane(varied);
  const { stops, warnings } = findingCodes(plane);
  const cells = figures.map((key) => {
    const value = figureAsBuilt(varied, plane, key);
    return value === undefined ? "" : formatDecimal(value, DECIMALS);
  });
  return csvLine([...values.map(String), ...cells, stops.join(" "), warnings.join(" ")]);
}
