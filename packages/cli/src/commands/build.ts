// `lamplane build`: the whole pack of a design, or nothing: a design with a failing check is not built.

import { asBuiltPlane, STRENGTH_CAUTION_BRIEF } from "@lamplane/bench";
import { checkPlane, checkWithoutCures, type Finding, formatFinding, mayBeBuilt } from "@lamplane/bench/checks";
import { preparePack, type WrittenPack, writePack } from "@lamplane/export";
import { type PackChoice, SECTIONS } from "@lamplane/export/content";
import { type JigName, jigPlans } from "@lamplane/parameters/jigs";
import type { Design } from "@lamplane/parameters/table";
import { findingsText, warningsText } from "../findings-text.ts";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { makePackOnThreads } from "../pack/pack-threads.ts";
import {
  type NestedReport,
  nestedReport,
  nestedText,
  type RouterReport,
  routerReport,
  routerText,
} from "../router-text.ts";
import { VERSION } from "../version.ts";
import { ARGUMENT_FAULT } from "../words/commands.ts";
import { BUILD } from "../words/reports.ts";

/** The sections, and single jigs, named in a list with commas. @throws InputRefused for any other word */
function parseChoices(list: string, jigs: readonly JigName[]): PackChoice[] {
  const known: readonly PackChoice[] = [...SECTIONS, ...jigs.map((jig) => `jigs/${jig}` as const)];
  const words = list.split(",").map((word) => word.trim());
  const unknown = words.find((word) => !known.some((choice) => choice === word));
  if (unknown !== undefined) throw new InputRefused(ARGUMENT_FAULT.sections({ list, word: unknown, known }));
  return known.filter((choice) => words.includes(choice));
}

export interface BuildOptions {
  /** Folder that the pack goes into. */
  readonly out: string;
  /** Sections and single jigs, with commas between them. */
  readonly only: string;
  readonly json: boolean;
}

export async function buildCommand(io: Io, design: Design, options: BuildOptions): Promise<Exit> {
  const plane = asBuiltPlane(design);
  const only = parseChoices(
    options.only,
    jigPlans(plane).map(({ name }) => name),
  );
  const findings = checkWithoutCures(plane);
  if (!mayBeBuilt(findings)) return reportStops(io, design, checkPlane(plane), options);
  const pack = { parent: options.out, name: design.name };
  await preparePack(pack);
  const files = await makePackOnThreads({ design, plane, findings, version: VERSION, only }, reportProgress(io));
  const router = only.includes("router") ? await routerReport(design) : undefined;
  const nested = only.includes("router") ? await nestedReport(design) : undefined;
  const carriesOthers = SECTIONS.some((section) => !only.includes(section));
  const written = await writePack({ ...pack, files, carriesOthers });
  const report: BuildReport = { design, findings, files: [...files.keys()], written, router, nested };
  if (options.json) io.out(jsonText(report));
  else {
    const warnings = warningsText(design, findings);
    if (warnings !== "") io.err(warnings);
    io.out(reportText(report));
  }
  return EXIT.done;
}

/** Nothing is built of a plane that a check stops. */
function reportStops(io: Io, design: Design, findings: readonly Finding[], { json }: BuildOptions): Exit {
  const formatted = findings.map((finding) => formatFinding(design, finding));
  if (json) io.out(`${JSON.stringify({ name: design.name, written: null, findings: formatted }, null, 2)}\n`);
  else io.err(`${findingsText(design, findings)}${BUILD.nothing}\n`);
  return EXIT.checkFailed;
}

interface BuildReport {
  readonly design: Design;
  readonly findings: readonly Finding[];
  /** Paths in the pack. */
  readonly files: readonly string[];
  readonly written: WrittenPack;
  readonly router: RouterReport | undefined;
  readonly nested: NestedReport | undefined;
}

function jsonText({ design, findings, files, written, router, nested }: BuildReport): string {
  const { path, replaced, kept, carried } = written;
  const report = {
    name: design.name,
    written: path,
    replaced,
    files,
    kept,
    carried,
    findings: findings.map((finding) => formatFinding(design, finding)),
    ...(router && { router }),
    ...(nested && { nested }),
  };
  return `${JSON.stringify(report, null, 2)}\n`;
}

function reportText({ files, written, router, nested }: BuildReport): string {
  const { path, replaced, kept, carried } = written;
  return [
    `${BUILD.written({ path, count: files.length, replaced })}\n`,
    keptText(kept) + carriedText(carried),
    router ? routerText(router) : "",
    nested ? nestedText(nested) : "",
    files.includes("traveller.pdf") ? `${BUILD.traveller}\n` : "",
    files.includes("jigs/fit-test.stl") ? `${BUILD.fitTest}\n` : "",
    `${STRENGTH_CAUTION_BRIEF}\n`,
  ].join("");
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
