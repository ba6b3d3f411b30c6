// A check as a row of data, and what evaluates it: plane and rows → verdicts, of which judgements are made where they are read.

import { EPSILON } from "@lamplane/geometry";
import type { Elevation, Points } from "@lamplane/parameters/elevation";
import type { Finding, Relation, Severity } from "../finding.ts";
import type { AdviceCode } from "../words/advice.ts";
import type { SubjectCode } from "../words/subjects.ts";
import type { Remedy } from "./remedy.ts";

export interface Judgement extends Omit<Finding, "cure" | "severity"> {
  readonly severity: Severity | "passed";
  readonly place: keyof Points;
  /** In order of preference. */
  readonly remedies: readonly Remedy[];
}

type OfPlane<T> = T | ((plane: Elevation) => T);

/** A value that must not be small, or not be large. Of rows that share a code the worst is reported. */
export interface CheckRow {
  readonly code: string;
  readonly subject: OfPlane<SubjectCode>;
  readonly relation: Relation;
  /** Undefined where the plane has no such value, or none is known: then nothing is judged. */
  readonly value: (plane: Elevation) => number | undefined;
  /** Beyond this it will not work; absent where it merely may not. */
  readonly stop?: OfPlane<number | undefined>;
  /** Beyond this it may not work; absent where there is nothing between. */
  readonly warn?: OfPlane<number | undefined>;
  readonly unit: string;
  /** Dotted paths of the parameters that decide it. */
  readonly parameters: readonly string[];
  readonly place: keyof Points;
  readonly advice: AdviceCode;
  /** In order of preference. */
  readonly remedies: readonly Remedy[];
  readonly source: string;
  /** Whether a plane is judged at all; every plane where absent. */
  readonly appliesTo?: (plane: Elevation) => boolean;
}

/** How a plane stands to a row's limits. */
export interface Verdict {
  readonly row: CheckRow;
  readonly severity: "stop" | "warning" | "passed";
  readonly value: number;
  readonly limit: number;
}

/** Verdicts of a plane in the order of the rows, one for each code. */
export function rowVerdicts(plane: Elevation, rows: readonly CheckRow[]): Verdict[] {
  const byCode = new Map<string, Verdict>();
  for (const row of rows) {
    const verdict = rowVerdict(plane, row);
    if (!verdict) continue;
    const known = byCode.get(row.code);
    if (!known || RANK[verdict.severity] < RANK[known.severity]) byCode.set(row.code, verdict);
  }
  return [...byCode.values()];
}

/** No number at all lies beyond every limit. */
function rowVerdict(plane: Elevation, row: CheckRow): Verdict | undefined {
  if (row.appliesTo?.(plane) === false) return undefined;
  const value = row.value(plane);
  if (value === undefined) return undefined;
  const stop = resolve(plane, row.stop);
  const warn = resolve(plane, row.warn);
  if (breaks(row, value, stop)) return { row, severity: "stop", value, limit: stop! };
  return { row, severity: breaks(row, value, warn) ? "warning" : "passed", value, limit: (warn ?? stop)! };
}

function breaks({ relation }: CheckRow, value: number, limit: number | undefined): boolean {
  if (limit === undefined) return false;
  return !((relation === "at least" ? value - limit : limit - value) >= -EPSILON);
}

/** A verdict with what its row says of it. */
export function judgementOf(plane: Elevation, { row, ...verdict }: Verdict): Judgement {
  const { code, relation, unit, place, advice, remedies, source } = row;
  const parameters = row.parameters.filter(isOfPlane(plane));
  const subject = resolve(plane, row.subject);
  return { code, subject, relation, parameters, unit, advice, place, remedies, source, ...verdict };
}

/** Whether a plane has what a parameter is of: a single iron has no cap iron. */
const isOfPlane =
  ({ design }: Elevation) =>
  (path: string): boolean =>
    design.capIron.thickness > 0 || !path.startsWith("capIron.");

const resolve = <T extends string | number | undefined>(plane: Elevation, of: OfPlane<T>): T =>
  typeof of === "function" ? of(plane) : of;

const RANK = { stop: 0, warning: 1, note: 2, passed: 3 } as const;

/** Worst first, otherwise in the order given. */
export const sortWorstFirst = (judgements: readonly Judgement[]): Judgement[] =>
  [...judgements].sort((a, b) => RANK[a.severity] - RANK[b.severity]);
