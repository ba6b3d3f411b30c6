// One design of a sweep as a line of the table: its values, the figures chosen, and what stops it or warns of it.

import { figuresAsBuilt, planeOf } from "@lamplane/bench";
import { findingsOf } from "@lamplane/bench/checks";
import { csvLine } from "@lamplane/export/csv";
import { withValue } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { trimmed } from "@lamplane/parameters/units";
import { type Variation, valuesAt } from "./variations.ts";

export interface Sweep {
  readonly design: Design;
  readonly variations: readonly Variation[];
  readonly figures: readonly string[];
}

const DECIMALS = 6;

export const headerLine = ({ variations, figures }: Sweep): string =>
  csvLine([...variations.map(({ path }) => path), ...figures, "stops", "warnings"]);

/** Lines of the designs from one index up to another. */
export function sweepLines(sweep: Sweep, from: number, to: number): string {
  return Array.from({ length: to - from }, (_, i) => sweepLine(sweep, from + i)).join("");
}

/** What the line of one design begins with, whatever comes out of it. */
export const lineBeginning = ({ variations }: Sweep, index: number): string =>
  csvLine([...valuesAt(variations, index).map(String), ""]).trimEnd();

function sweepLine({ design, variations, figures }: Sweep, index: number): string {
  const values = valuesAt(variations, index);
  const varied = variations.reduce((d, { path }, k) => withValue(d, path, values[k]!), design);
  const plane = planeOf(varied);
  const known = new Map(figuresAsBuilt(varied, plane).map(({ key, value }) => [key, value]));
  const findings = findingsOf(plane);
  const codes = (severity: string) =>
    findings
      .filter((finding) => finding.severity === severity)
      .map(({ code }) => code)
      .join(" ");
  const shown = figures.map((key) => {
    const value = known.get(key);
    return value === undefined ? "" : trimmed(value, DECIMALS);
  });
  return csvLine([...values.map(String), ...shown, codes("stop"), codes("warning")]);
}
