// Door: what will not work about a plane, or may not, with the cure where one parameter can mend it.
import type { Elevation } from "@lamplane/parameters/elevation";
import { cureOf } from "./cures.ts";
import type { Draft } from "./draft.ts";
import { drafts, isFound, judgements } from "./drafts.ts";
import type { Finding } from "./finding.ts";

export type { Cure, Finding, Severity } from "./finding.ts";
export { wholeCure } from "./whole-cure.ts";

/** Findings without their cures: for many designs at once. */
export const findingsOf = (plane: Elevation): Finding[] => drafts(plane).map(({ mends: _, ...finding }) => finding);

/** Findings, worst first, each with the smallest change of one parameter that mends it where there is one. */
export function checkPlane(plane: Elevation): Finding[] {
  const found = drafts(plane);
  return found.map((draft) => {
    const { mends: _, ...finding } = draft;
    const cure = cureOf(plane, draft, found);
    return cure ? { ...finding, cure } : finding;
  });
}

/** Whether a plane may be built: nothing found that stops it. */
export const mayBeBuilt = (findings: readonly Finding[]): boolean => findings.every((f) => f.severity !== "stop");

/** A check that a plane has passed: what was judged, its value and its limit. */
export type Passed = Omit<Finding, "severity" | "cure">;

/** Checks that a plane has passed. */
export const passedChecks = (plane: Elevation): Passed[] => passedOf(judgements(plane));

/** Findings without their cures and passed checks, judged once: for who shows both while a number is on the move. */
export function judged(plane: Elevation): { findings: Finding[]; passed: Passed[] } {
  const all = judgements(plane);
  return { findings: all.filter(isFound).map(({ mends: _, ...finding }) => finding), passed: passedOf(all) };
}

const passedOf = (all: readonly Draft[]): Passed[] =>
  all.filter((draft) => !isFound(draft)).map(({ mends: _, severity: __, ...passed }) => passed);
