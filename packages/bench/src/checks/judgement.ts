// How a check says what it found, before the search for a cure.

import { EPSILON } from "@lamplane/geometry";
import type { Elevation, Points } from "@lamplane/parameters/elevation";
import { formatValue } from "@lamplane/parameters/units";
import type { Finding, Severity } from "./finding.ts";

/** A change worth trying: one parameter, up or down from what it is. */
export interface Remedy {
  readonly parameter: string;
  readonly toward: "up" | "down";
}
export const increase = (parameter: string): Remedy => ({ parameter, toward: "up" });
export const decrease = (parameter: string): Remedy => ({ parameter, toward: "down" });

export interface Judgement extends Omit<Finding, "cure" | "severity"> {
  readonly severity: Severity | "passed";
  readonly place: keyof Points;
  /** In order of preference. */
  readonly remedies: readonly Remedy[];
}

export const TRADE = "common practice, no published source";
export const GEOMETRY = "plane geometry";

/** What a check tells of a value that must not be small, or not be large. */
interface JudgedValue {
  readonly code: string;
  readonly what: string;
  readonly value: number;
  /** Beyond this it will not work; absent where it merely may not. */
  readonly stop?: number;
  /** Beyond this it may not work; absent where there is nothing between. */
  readonly warn?: number;
  readonly unit: string;
  readonly parameters: readonly string[];
  readonly place: keyof Points;
  /** What to do, as a sentence. */
  readonly advice: string;
  readonly remedies?: readonly Remedy[];
  readonly source?: string;
}

/** Judges a value that must not lie under its limits; no number at all is under them. */
export const judgeAtLeast = (plane: Elevation, judged: JudgedValue): Judgement[] => judgeValue(plane, judged, 1);

/** Judges a value that must not lie over its limits. */
export const judgeAtMost = (plane: Elevation, judged: JudgedValue): Judgement[] => judgeValue(plane, judged, -1);

function judgeValue(plane: Elevation, judged: JudgedValue, sense: 1 | -1): Judgement[] {
  const { stop, warn, value } = judged;
  const breaks = (limit: number | undefined) => limit !== undefined && !(sense * (value - limit) >= -EPSILON);
  const severity = breaks(stop) ? "stop" : breaks(warn) ? "warning" : "passed";
  const limit = (severity === "stop" ? stop : (warn ?? stop))!;
  const { code, what, unit, parameters, place, advice, remedies = [], source = TRADE } = judged;
  const bound = sense > 0 ? "at least" : "at most";
  const message = `${what} is ${formatJudgedValue(plane, value, unit)}; ${bound} ${formatJudgedValue(plane, limit, unit)} is wanted.${severity === "passed" ? "" : ` ${advice}`}`;
  return [{ code, severity, parameters, value, limit, unit, message, place, remedies, source }];
}

/** What is worth knowing and neither passes nor fails; the message is a whole one, with its numbers. */
export const makeNote = (note: Omit<Judgement, "severity" | "remedies">): Judgement[] => [
  { ...note, severity: "note", remedies: [] },
];

/** A value in the maker's unit and ours. */
export const formatJudgedValue = ({ design }: Elevation, value: number, unit: string): string =>
  formatValue(value, unit, design.units, design.shop.smallestFraction);

const WORST_FIRST = { stop: 0, warning: 1, note: 2, passed: 3 } as const;

/** Worst first, otherwise in the order given. */
export const sortWorstFirst = (drafts: readonly Judgement[]): Judgement[] =>
  [...drafts].sort((a, b) => WORST_FIRST[a.severity] - WORST_FIRST[b.severity]);

/** The worst of several judgements that share one code. */
export const pickWorst = (...drafts: Judgement[]): Judgement[] => sortWorstFirst(drafts).slice(0, 1);
