// `lamplane check`: what fails, then the warnings, then one line for what passes; `all` lists that too, with every source.

import { asBuiltPlane } from "@lamplane/bench";
import { type Cure, checkPlane, findRepair, formatFinding, mayBeBuilt, passedChecks } from "@lamplane/bench/checks";
import type { Design } from "@lamplane/parameters/table";
import { checkedRows, findingsText, formatTypedValue } from "../findings-text.ts";
import { EXIT, type Exit, type Io } from "../io.ts";
import { type NestedReport, nestedText, type RouterReport, routerText } from "../router-text.ts";
import { CHECK } from "../words/check.ts";

export interface CheckOptions {
  readonly json: boolean;
  /** Passed checks and sources too. */
  readonly all: boolean;
}

/** What a router cuts of the plane and what lies on the shop's sheets, where there are such. */
export interface MachineReports {
  readonly router?: RouterReport | undefined;
  readonly nested?: NestedReport | undefined;
}

export function checkCommand(
  io: Io,
  design: Design,
  { json, all }: CheckOptions,
  { router, nested }: MachineReports = {},
): Exit {
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
      ...(router && { router }),
      ...(nested && { nested }),
    };
    io.out(`${JSON.stringify(formatted, null, 2)}\n`);
  } else {
    io.out(findingsText(design, findings, { sources: all }));
    io.out(repairText(design, repair));
    if (router) io.out(`${routerText(router)}\n`);
    if (nested) io.out(`${nestedText(nested)}\n`);
    io.out(
      all
        ? `${CHECK.passes}\n${checkedRows(design, passed, { sources: true })}`
        : `${CHECK.passed({ count: passed.length })}\n`,
    );
  }
  return mayBeBuilt(findings) ? EXIT.done : EXIT.checkFailed;
}

/** The fewest changes that leave nothing which stops the plane, as lines to type; nothing where one check's own fix does it. */
function repairText(design: Design, cures: readonly Cure[] | undefined): string {
  if (cures === undefined) return `${CHECK.noRepair}\n\n`;
  if (cures.length === 0) return "";
  const lines = cures.map(({ parameter, value }) => `  ${parameter}: ${formatTypedValue(design, parameter, value)}\n`);
  return `${CHECK.repair}\n${lines.join("")}\n`;
}
