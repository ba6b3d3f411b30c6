// `lamplane build`: the whole pack of a design, or nothing: a design with a failing check is not built.

import { asBuiltPlane, STRENGTH_CAUTION_BRIEF } from "@lamplane/bench";
import { checkPlane, checkWithoutCures, formatFinding, mayBeBuilt } from "@lamplane/bench/checks";
import { preparePack, type WrittenPack, writePack } from "@lamplane/export";
import { type PackChoice, SECTIONS } from "@lamplane/export/content";
import { type JigName, jigPlans } from "@lamplane/parameters/jigs";
import type { Design } from "@lamplane/parameters/table";
import { findingsText, warningsText } from "../findings-text.ts";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { makePackOnThreads } from "../pack/pack-threads.ts";
import { nestedReport, nestedText, routerReport, routerText } from "../router-text.ts";
import { VERSION } from "../version.ts";
import { ARGUMENT_FAULT } from "../words/commands.ts";
import { BUILD } from "../words/reports.ts";

/** The sections, and single jigs, named in a list with commas. @throws InputRefused for any other word */
export function parseChoices(list: string, jigs: readonly JigName[]): PackChoice[] {
  const known: readonly PackChoice[] = [...SECTIONS, ...jigs.map((jig) => `jigs/${jig}` as const)];
  const words = list.split(",").map((word) => word.trim());
  const unknown = words.find((word) => !known.some((choice) => choice === word));
  if (unknown !== undefined) throw new InputRefused(ARGUMENT_FAULT.sections({ list, word: unknown, known }));
  return known.filter((choice) => words.includes(choice));
}

export async function buildCommand(
  io: Io,
  design: Design,
  parent: string,
  json: boolean,
  list: string = SECTIONS.join(","),
): Promise<Exit> {
  const plane = asBuiltPlane(design);
  const only = parseChoices(
    list,
    jigPlans(plane).map(({ name }) => name),
  );
  const findings = checkWithoutCures(plane);
  if (!mayBeBuilt(findings)) {
    const cured = checkPlane(plane);
    if (json)
      io.out(
        `${JSON.stringify({ name: design.name, written: null, findings: cured.map((finding) => formatFinding(design, finding)) }, null, 2)}\n`,
      );
    else io.err(`${findingsText(design, cured)}${BUILD.nothing}\n`);
    return EXIT.checkFailed;
  }
  await preparePack({ parent, name: design.name });
  const files = await makePackOnThreads({ design, plane, findings, version: VERSION, only }, reportProgress(io));
  const carriesOthers = SECTIONS.some((section) => !only.includes(section));
  const router = only.includes("router") ? await routerReport(design) : undefined;
  const nested = only.includes("router") ? await nestedReport(design) : undefined;
  const { path, replaced, kept, carried } = await writePack({ parent, name: design.name, files, carriesOthers });
  if (json)
    io.out(
      `${JSON.stringify({ name: design.name, written: path, replaced, files: [...files.keys()], kept, carried, findings: findings.map((finding) => formatFinding(design, finding)), ...(router && { router }), ...(nested && { nested }) }, null, 2)}\n`,
    );
  else {
    const warnings = warningsText(design, findings);
    if (warnings !== "") io.err(warnings);
    io.out(`${BUILD.written({ path, count: files.size, replaced })}\n`);
    io.out(keptText(kept) + carriedText(carried));
    if (router) io.out(routerText(router));
    if (nested) io.out(nestedText(nested));
    if (files.has("traveller.pdf")) io.out(`${BUILD.traveller}\n`);
    if (files.has("jigs/fit-test.stl")) io.out(`${BUILD.fitTest}\n`);
    io.out(`${STRENGTH_CAUTION_BRIEF}\n`);
  }
  return EXIT.done;
}

/** Files in the pack's folder that lamplane did not write, or that were changed since. */
function keptText(kept: WrittenPack["kept"]): string {
  if (kept.length === 0) return "";
  const names = kept.map(({ from, to }) => (from === to ? to : BUILD.keptAs({ from, to })));
  return `${BUILD.kept({ names })}\n`;
}

/** Files that an earlier run made and this one left, and those among them that the design has moved on from. */
function carriedText(carried: WrittenPack["carried"]): string {
  if (carried.length === 0) return "";
  const older = carried.filter(({ isOlder }) => isOlder).map(({ path }) => path);
  return `${BUILD.carried({ count: carried.length, older })}\n`;
}

/** Tells what is being made, by rewriting one line of a terminal; silent elsewhere. */
const reportProgress = (io: Io) => (done: number, of: number, what: string) => {
  if (io.showsProgress) io.err(done === of ? "\r\u001b[K" : `\r\u001b[K${done + 1}/${of} ${what}`);
};
