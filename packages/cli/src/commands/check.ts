// `lamplane check`: every check with its figure, its limit and why; what fails comes last, where the eye is.
import { checkPlane, type Finding, mayBeBuilt, passedChecks } from "@lamplane/parameters/checks";
import type { Design } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import { EXIT, type Exit, type Io } from "../io.ts";
import { findingText } from "../words.ts";

export function check(io: Io, design: Design, json: boolean): Exit {
  const plane = elevation(design);
  const findings = checkPlane(plane);
  const passed = passedChecks(plane);
  if (json)
    io.out(`${JSON.stringify({ name: design.name, mayBeBuilt: mayBeBuilt(findings), findings, passed }, null, 2)}\n`);
  else {
    io.out(
      passed
        .map(({ code, message, source }) => `passed   ${code}\n         ${message}\n         source: ${source}\n`)
        .join(""),
    );
    io.out(`\n${findingsText(design, findings)}\n`);
  }
  return mayBeBuilt(findings) ? EXIT.done : EXIT.checkFailed;
}

/** Findings with the worst last, and one line that sums them up. */
export function findingsText(design: Design, findings: readonly Finding[]): string {
  const stops = findings.filter((f) => f.severity === "stop").length;
  const warnings = findings.filter((f) => f.severity === "warning").length;
  const rest = [counted(warnings, "warning"), counted(findings.length - stops - warnings, "note")].filter(Boolean);
  const sum =
    stops > 0
      ? `${design.name}: ${stops} ${stops === 1 ? "check fails" : "checks fail"}; this plane cannot be built as it is.`
      : rest.length > 0
        ? `${design.name}: nothing fails; ${rest.join(" and ")} to weigh before the first cut.`
        : `${design.name}: every check passes.`;
  return [...[...findings].reverse().map((f) => findingText(design, f)), sum].join("\n");
}

/** So many of a thing in words; nothing where there are none. */
const counted = (count: number, word: string): string =>
  count === 0 ? "" : `${count} ${count === 1 ? word : `${word}s`}`;
