// Door: what will not work about a plane, or may not, with the cure where one parameter can mend it.
import type { Elevation } from "../elevation/elevation.ts";
import { cureOf } from "./cures.ts";
import { drafts, judgements } from "./drafts.ts";
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

/** Checks that a plane has passed: what was judged, its value and its limit. */
export const passedChecks = (plane: Elevation): Omit<Finding, "severity" | "cure">[] =>
  judgements(plane)
    .filter((d) => d.severity === "passed")
    .map(({ mends: _, severity: __, ...passed }) => passed);
