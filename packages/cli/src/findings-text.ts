// Findings and passed checks as lines for a terminal: the worst first, each with its value, limit, verdict and fix.
import { asBuiltPlane, autoValue } from "@lamplane/bench";
import { type Cure, type Finding, findingWords, type PassedJudgement } from "@lamplane/bench/checks";
import { formatParameter, rowAt, valueAt } from "@lamplane/parameters/design";
import { type Design, UNIT_OF } from "@lamplane/parameters/table";
import { formatDecimal, fromMillimetres } from "@lamplane/parameters/units";
import { alignRows } from "./text.ts";
import { CHECK } from "./words/check.ts";

export interface FindingsOptions {
  /** Where each limit comes from, on a line below it. */
  readonly sources?: boolean;
}

/** One line that sums up, then what fails, the warnings and the notes, each with what to do below it. */
export function findingsText(design: Design, findings: readonly Finding[], options: FindingsOptions = {}): string {
  const of = (severity: Finding["severity"]) => findings.filter((finding) => finding.severity === severity);
  const [stops, warnings, notes] = [of("stop"), of("warning"), of("note")];
  const counts = { stops: stops.length, warnings: warnings.length, notes: notes.length };
  const groups = [stops, warnings, notes].filter((group) => group.length > 0);
  return [
    `${CHECK.verdict({ name: design.name, ...counts })}\n`,
    ...groups.map((group) => `\n${CHECK[group[0]!.severity]}\n${checkedRows(design, group, options)}`),
    "\n",
  ].join("");
}

/** The warnings' names in a line, where no more is asked for; empty without any. */
export function warningsText(design: Design, findings: readonly Finding[]): string {
  const warnings = findings.filter(({ severity }) => severity === "warning");
  const subjects = warnings.map((finding) => findingWords(design, finding).name);
  return subjects.length === 0 ? "" : `${CHECK.brief({ subjects })}\n`;
}

/** Judged values as aligned rows, and what to do or where a limit comes from below each. */
export function checkedRows(
  design: Design,
  judged: readonly (Finding | PassedJudgement)[],
  { sources = false }: FindingsOptions = {},
): string {
  const words = judged.map((each) => findingWords(design, each));
  const rows = alignRows(
    words.map(({ name, value, limit }) => [`  ${name}`, value, limit && `(${limit})`]),
    true,
  );
  return rows
    .map((row, i) => {
      const { verdict, advice } = words[i]!;
      const { source } = judged[i]!;
      const fix = "cure" in judged[i]! ? CHECK.fix({ changes: curesText(design, judged[i]!.cure ?? []) }) : "";
      const below = [advice, sources ? CHECK.source({ source }) : ""].filter(Boolean);
      return [`${row}  ${verdict}${fix}`, ...below.map((line) => `      ${line}`)].map((line) => `${line}\n`).join("");
    })
    .join("");
}

/** Changes, with what stands there now: "ramp.angle 57 → 55". */
const curesText = (design: Design, cures: readonly Cure[]): string =>
  cures
    .map(
      ({ parameter, value }) =>
        `${parameter} ${nowText(design, parameter)}${formatParameter(parameter, value, design)}`,
    )
    .join(", ");

function nowText(design: Design, parameter: string): string {
  const typed = valueAt(design, parameter);
  const now = typed === "auto" ? autoValue(asBuiltPlane(design), parameter) : typed;
  return now === undefined ? "" : `${formatParameter(parameter, now as number | string, design)} → `;
}

/** A cure's value as it can be typed back, in the maker's unit. */
export function formatTypedValue({ units }: Design, parameter: string, value: number | string): string {
  const row = rowAt(parameter);
  if (typeof value === "string" || row.kind !== "number") return String(value);
  if (UNIT_OF[row.quantity] !== "mm") return formatDecimal(value, 6);
  return `${formatDecimal(fromMillimetres(value, units), 6)} ${units}`;
}
