// `lamplane check`: every check with its figure, its limit and why; what fails comes last, where the eye is.

import { asBuiltPlane, stepsDone } from "@lamplane/bench";
import {
  type Cure,
  checkPlane,
  type Finding,
  findingSentence,
  findRepair,
  formatFinding,
  mayBeBuilt,
  passedChecks,
} from "@lamplane/bench/checks";
import type { Design } from "@lamplane/parameters/table";
import { EXIT, type Exit, type Io } from "../io.ts";
import { findingText, formatTypedValue } from "../text.ts";

export function checkCommand(io: Io, design: Design, json: boolean): Exit {
  const plane = asBuiltPlane(design);
  const findings = checkPlane(plane);
  const passed = passedChecks(plane);
  const repair = findRepair(plane);
  if (json) {
    const formatted = {
      name: design.name,
      mayBeBuilt: mayBeBuilt(findings),
      findings: findings.map((finding) => formatFinding(design, finding)),
      mended: repair ?? null,
      passed: passed.map((judgement) => formatFinding(design, judgement)),
    };
    io.out(`${JSON.stringify(formatted, null, 2)}\n`);
  } else {
    io.out(
      passed
        .map(
          (judgement) =>
            `passed   ${judgement.code}\n         ${findingSentence(design, judgement)}\n         source: ${judgement.source}\n`,
        )
        .join(""),
    );
    io.out(`\n${findingsText(design, findings)}\n${repairText(design, repair)}`);
  }
  return mayBeBuilt(findings) ? EXIT.done : EXIT.checkFailed;
}

/** Findings with the worst last, and one line that sums them up. */
export function findingsText(design: Design, findings: readonly Finding[]): string {
  const stops = findings.filter((f) => f.severity === "stop").length;
  const warnings = findings.filter((f) => f.severity === "warning").length;
  const rest = [countText(warnings, "warning"), countText(findings.length - stops - warnings, "note")].filter(Boolean);
  const sum =
    stops > 0
      ? `${design.name}: ${stops} ${stops === 1 ? "check fails" : "checks fail"}; this plane cannot be built as it is.`
      : rest.length > 0
        ? `${design.name}: nothing fails; ${rest.join(" and ")} to weigh before ${stepsDone(design) === 0 ? "the first cut" : "you go on"}.`
        : `${design.name}: every check passes.`;
  return [...[...findings].reverse().map((f) => findingText(design, f)), sum].join("\n");
}

/** The fewest changes that leave nothing which stops the plane, as a line to type. */
function repairText(design: Design, cures: readonly Cure[] | undefined): string {
  if (cures === undefined)
    return "No small set of changes was found that mends it all: it wants another iron or another plan.\n";
  if (cures.length === 0) return "";
  return `All that stops it is mended together by:\n${cures.map(({ parameter, value }) => `  ${parameter}: ${formatTypedValue(design, parameter, value)}\n`).join("")}`;
}
/** So many of a thing in words; nothing where there are none. */
const countText = (count: number, word: string): string =>
  count === 0 ? "" : `${count} ${count === 1 ? word : `${word}s`}`;
