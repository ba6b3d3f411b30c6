// How a check says what it found, before the search for a cure.

import { SAME_POINT } from "@lamplane/geometry";
import type { Elevation, Points } from "@lamplane/parameters/elevation";
import { valueText } from "@lamplane/parameters/units";
import type { Finding, Severity } from "./finding.ts";

/** A change worth trying: one parameter, up or down from what it is. */
export interface Mend {
  readonly parameter: string;
  readonly toward: "up" | "down";
}
export const up = (parameter: string): Mend => ({ parameter, toward: "up" });
export const down = (parameter: string): Mend => ({ parameter, toward: "down" });

export interface Draft extends Omit<Finding, "cure" | "severity"> {
  readonly severity: Severity | "passed";
  readonly place: keyof Points;
  /** In order of preference. */
  readonly mends: readonly Mend[];
}

export const TRADE = "common practice, no published source";
export const GEOMETRY = "plane geometry";

/** What a check tells of a value that must not be small, or not be large. */
interface Judged {
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
  readonly mends?: readonly Mend[];
  readonly source?: string;
}

/** Judges a value that must not lie under its limits; no number at all is under them. */
export const atLeast = (plane: Elevation, judged: Judged): Draft[] => judgedBy(plane, judged, 1);

/** Judges a value that must not lie over its limits. */
export const atMost = (plane: Elevation, judged: Judged): Draft[] => judgedBy(plane, judged, -1);

function judgedBy(plane: Elevation, judged: Judged, sense: 1 | -1): Draft[] {
  const { stop, warn, value } = judged;
  const breaks = (limit: number | undefined) => limit !== undefined && !(sense * (value - limit) >= -SAME_POINT);
  const severity = breaks(stop) ? "stop" : breaks(warn) ? "warning" : "passed";
  const limit = (severity === "stop" ? stop : (warn ?? stop))!;
  const { code, what, unit, parameters, place, advice, mends = [], source = TRADE } = judged;
  const bound = sense > 0 ? "at least" : "at most";
  const message = `${what} is ${shown(plane, value, unit)}; ${bound} ${shown(plane, limit, unit)} is wanted.${severity === "passed" ? "" : ` ${advice}`}`;
  return [{ code, severity, parameters, value, limit, unit, message, place, mends, source }];
}

/** What is worth knowing and neither passes nor fails; the message is a whole one, with its numbers. */
export const noted = (told: Omit<Draft, "severity" | "mends">): Draft[] => [{ ...told, severity: "note", mends: [] }];

/** A value in the maker's unit and ours. */
export const shown = ({ design }: Elevation, value: number, unit: string): string =>
  valueText(value, unit, design.units, design.shop.smallestFraction);

const WORST_FIRST = { stop: 0, warning: 1, note: 2, passed: 3 } as const;

/** Worst first, otherwise in the order given. */
export const worstFirst = (drafts: readonly Draft[]): Draft[] =>
  [...drafts].sort((a, b) => WORST_FIRST[a.severity] - WORST_FIRST[b.severity]);

/** The worst of several judgements that share one code. */
export const worstOf = (...drafts: Draft[]): Draft[] => worstFirst(drafts).slice(0, 1);
