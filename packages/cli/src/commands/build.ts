// `lamplane build`: the whole pack of a design, or nothing: a design with a failing check is not built.

import { asBuiltPlane, STRENGTH_CAUTION } from "@lamplane/bench";
import { checkPlane, checkWithoutCures, formatFinding, mayBeBuilt } from "@lamplane/bench/checks";
import { preparePack, type WrittenPack, writePack } from "@lamplane/export";
import { makePackContent, type PackSection, SECTIONS } from "@lamplane/export/content";
import type { Design } from "@lamplane/parameters/table";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { VERSION } from "../version.ts";
import { findingsText } from "./check.ts";

/** The sections named in a list with commas. @throws InputRefused for any other word */
export function parseSections(list: string): PackSection[] {
  const words = list.split(",").map((word) => word.trim());
  const unknown = words.find((word) => !SECTIONS.some((section) => section === word));
  if (unknown !== undefined)
    throw new InputRefused(
      `--only ${list}: "${unknown}" is none of ${SECTIONS.join(", ")}; write some of them with commas`,
    );
  return SECTIONS.filter((section) => words.includes(section));
}

export async function buildCommand(
  io: Io,
  design: Design,
  parent: string,
  json: boolean,
  only: readonly PackSection[] = SECTIONS,
): Promise<Exit> {
  const plane = asBuiltPlane(design);
  const findings = checkWithoutCures(plane);
  if (!mayBeBuilt(findings)) {
    const cured = checkPlane(plane);
    if (json)
      io.out(
        `${JSON.stringify({ name: design.name, written: null, findings: cured.map((finding) => formatFinding(design, finding)) }, null, 2)}\n`,
      );
    else io.err(`${findingsText(design, cured)}\nNothing was written.\n`);
    return EXIT.checkFailed;
  }
  await preparePack({ parent, name: design.name });
  const files = await makePackContent({ design, plane, findings, version: VERSION, only }, reportProgress(io));
  const carriesOthers = only.length < SECTIONS.length;
  const { path, replaced, kept, carried } = await writePack({ parent, name: design.name, files, carriesOthers });
  if (json)
    io.out(
      `${JSON.stringify({ name: design.name, written: path, replaced, files: [...files.keys()], kept, carried, findings: findings.map((finding) => formatFinding(design, finding)) }, null, 2)}\n`,
    );
  else {
    if (findings.length > 0) io.err(`${findingsText(design, findings)}\n`);
    io.out(`${replaced ? "Replaced" : "Wrote"} ${path} (${files.size} files).\n`);
    io.out(keptText(kept) + carriedText(carried));
    if (files.has("body.stl"))
      io.out(
        "Open body.stl first to see the plane, then parts/: each part's .stl lies as on the machine's table, its .dxf is the same in 2D.\n",
      );
    if (files.has("traveller.pdf"))
      io.out(
        "traveller.pdf goes to the bench: every step with this plane's numbers; layout.pdf is printed at 100 % and glued on the wood.\n",
      );
    if (files.has("jigs/fit-test.stl")) io.out("Print jigs/fit-test.stl before the other jigs.\n");
    io.out(`${STRENGTH_CAUTION}\n`);
  }
  return EXIT.done;
}

/** Files in the pack's folder that lamplane did not write, or that were changed since. */
function keptText(kept: WrittenPack["kept"]): string {
  if (kept.length === 0) return "";
  const names = kept.map(({ from, to }) => (from === to ? to : `${to} (was ${from})`));
  return `Kept your own files: ${names.join(", ")}.\n`;
}

/** Files that an earlier run made and this one left, and those among them that the design has moved on from. */
function carriedText(carried: WrittenPack["carried"]): string {
  if (carried.length === 0) return "";
  const older = carried.filter(({ isOlder }) => isOlder).map(({ path }) => path);
  const stale =
    older.length === 0 ? "" : ` From an earlier state of the design, build them again: ${older.join(", ")}.`;
  return `Left ${carried.length} files of earlier runs in place.${stale}\n`;
}

/** Tells what is being made, by rewriting one line of a terminal; silent elsewhere. */
const reportProgress = (io: Io) => (done: number, of: number, what: string) => {
  if (io.showsProgress) io.err(done === of ? "\r\u001b[K" : `\r\u001b[K${done + 1}/${of} ${what}`);
};
