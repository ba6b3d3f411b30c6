// Door: what will not work about a plane, or may not, with the cure where one is found.
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Finding, Relation } from "../finding.ts";
import { jigName } from "../words/findings.ts";
import { JIG_HELP, NOTE_HELP } from "../words/notes.ts";
import { SUBJECTS } from "../words/subjects.ts";
import { findCure } from "./cures.ts";
import { JIG_NOTES } from "./jigs.ts";
import type { Judgement } from "./judgement.ts";
import { CHECKS, findingJudgements, isFinding, judgeChecks } from "./judgements.ts";
import { CUP_NOTE } from "./seasons.ts";
import { MOISTURE_NOTE, WOOD_NOTES } from "./woods.ts";

export type { Cure, Finding, FindingData, Relation, Severity } from "../finding.ts";
export {
  type FindingWords,
  type FormattedFinding,
  findingSentence,
  findingWords,
  formatFinding,
} from "../words/findings.ts";
export { type FindingCodes, findingCodes } from "./judgements.ts";
export { findRepair } from "./repair-search.ts";

/** Findings without their cures. */
export const checkWithoutCures = (plane: Elevation): Finding[] =>
  findingJudgements(plane).map(({ remedies: _, ...finding }) => finding);

/** Findings, worst first, each with the smallest change of one parameter that ends it where there is one. */
export function checkPlane(plane: Elevation): Finding[] {
  const all = judgeChecks(plane);
  return all.filter(isFinding).map((judgement) => {
    const { remedies: _, ...finding } = judgement;
    const cure = findCure(plane, judgement, all);
    return cure ? { ...finding, cure } : finding;
  });
}

/** What a check is, without a plane: what it judges, how it must stand to its limits, and what decides it. */
export interface CheckDescription {
  readonly code: string;
  /** What is judged; absent where that follows from the plane. */
  readonly name?: string;
  readonly relation: Relation;
  /** Beyond this it stops the plane, and beyond this it warns; absent where there is none, or it follows from the plane. */
  readonly stop?: number;
  readonly warn?: number;
  readonly unit: string;
  readonly parameters: readonly string[];
  readonly source: string;
}

/** Every check of a plane by rows, in the order of the work; a code stands for each of its rows. */
export const checkDescriptions = (): CheckDescription[] =>
  CHECKS.map(({ code, subject, relation, stop, warn, unit, parameters, source }) => ({
    code,
    ...(typeof subject === "string" ? { name: SUBJECTS[subject][0] } : {}),
    relation,
    ...(typeof stop === "number" ? { stop } : {}),
    ...(typeof warn === "number" ? { warn } : {}),
    unit,
    parameters,
    source,
  }));

/** What a note or a judgement of a jig is, without a plane. */
export interface NoteDescription {
  readonly code: string;
  /** What is judged, in a sentence. */
  readonly help: string;
  /** Empty where that follows from the whole plane. */
  readonly parameters: readonly string[];
  readonly source: string;
}

/** Everything else that is judged of a plane: woods, moisture, cupping and jigs. */
export const noteDescriptions = (): NoteDescription[] => [
  ...[...WOOD_NOTES, MOISTURE_NOTE, CUP_NOTE].map((note) => ({ ...note, help: NOTE_HELP[note.code] })),
  ...JIG_NOTES.map(({ kind, jig, ...note }) => ({ ...note, help: JIG_HELP[kind]({ jig: jigName(jig) }) })),
];

/** Whether a plane may be built: nothing found that stops it. */
export const mayBeBuilt = (findings: readonly Finding[]): boolean => findings.every((f) => f.severity !== "stop");

/** A check that a plane has passed: what was judged, its value and its limit. */
export type PassedJudgement = Omit<Finding, "severity" | "cure">;

/** Checks that a plane has passed. */
export const passedChecks = (plane: Elevation): PassedJudgement[] => passedJudgements(judgeChecks(plane));

/** Findings without their cures and passed checks, judged once: for who shows both while a number is on the move. */
export function judgePlane(plane: Elevation): { findings: Finding[]; passed: PassedJudgement[] } {
  const all = judgeChecks(plane);
  return {
    findings: all.filter(isFinding).map(({ remedies: _, ...finding }) => finding),
    passed: passedJudgements(all),
  };
}

const passedJudgements = (all: readonly Judgement[]): PassedJudgement[] =>
  all.filter((judgement) => !isFinding(judgement)).map(({ remedies: _, severity: __, ...passed }) => passed);
