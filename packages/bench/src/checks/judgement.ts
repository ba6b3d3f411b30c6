// A check as a row of data, and the one function that evaluates it: plane and rows → judgements, passed ones too.

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
  /** Path of the parameter that `warn` is read off, where it is one. */
  readonly warnParameter?: string;
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

/** Judgements of a plane in the order of the rows, one for each code. */
export function judgeRows(plane: Elevation, rows: readonly CheckRow[]): Judgement[] {
  const byCode = new Map<string, Judgement>();
  for (const row of rows) {
    const judgement = judgeRow(plane, row);
    const known = byCode.get(row.code);
    if (judgement && (!known || RANK[judgement.severity] < RANK[known.severity])) byCode.set(row.code, judgement);
  }
  return [...byCode.values()];
}

/** No number at all lies beyond every limit. */
function judgeRow(plane: Elevation, row: CheckRow): Judgement | undefined {
  if (row.appliesTo?.(plane) === false) return undefined;
  const value = row.value(plane);
  if (value === undefined) return undefined;
  const [stop, warn] = [resolve(plane, row.stop), resolve(plane, row.warn)];
  const sense = row.relation === "at least" ? 1 : -1;
  const breaks = (limit: number | undefined) => limit !== undefined && !(sense * (value - limit) >= -EPSILON);
  const severity = breaks(stop) ? "stop" : breaks(warn) ? "warning" : "passed";
  const limit = (severity === "stop" ? stop : (warn ?? stop))!;
  const { code, relation, unit, place, advice, remedies, source } = row;
  const parameters = row.parameters.filter(isOfPlane(plane));
  const subject = resolve(plane, row.subject);
  return { code, subject, severity, relation, parameters, value, limit, unit, advice, place, remedies, source };
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
