// One design of a sweep as a line of the table: its values, the figures chosen, and what stops it or warns of it.

import { asBuiltPlane, figuresAsBuilt } from "@lamplane/bench";
import { checkWithoutCures } from "@lamplane/bench/checks";
import { csvLine } from "@lamplane/export/csv";
import { withValue } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { formatDecimal } from "@lamplane/parameters/units";
import { type Variation, variationValues } from "./variations.ts";

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
  const known = new Map(figuresAsBuilt(varied, plane, figures).map(({ key, value }) => [key, value]));
  const findings = checkWithoutCures(plane);
  const codes = (severity: string) =>
    findings
      .filter((finding) => finding.severity === severity)
      .map(({ code }) => code)
      .join(" ");
  const cells = figures.map((key) => {
    const value = known.get(key);
    return value === undefined ? "" : formatDecimal(value, DECIMALS);
  });
  return csvLine([...values.map(String), ...cells, codes("stop"), codes("warning")]);
}
