// `lamplane build`: the whole pack of a design, or nothing: a design with a failing check is not built.
import { writePack } from "@lamplane/export";
import { packContent } from "@lamplane/export/content";
import { planeOf, STRENGTH_CAUTION } from "@lamplane/parameters/bench";
import { checkPlane, findingsOf, mayBeBuilt } from "@lamplane/parameters/checks";
import type { Design } from "@lamplane/parameters/design";
import { EXIT, type Exit, type Io } from "../io.ts";
import { VERSION } from "../version.ts";
import { findingsText } from "./check.ts";

export async function build(io: Io, design: Design, parent: string, json: boolean): Promise<Exit> {
  const plane = planeOf(design);
  const findings = findingsOf(plane);
  if (!mayBeBuilt(findings)) {
    const cured = checkPlane(plane);
    if (json) io.out(`${JSON.stringify({ name: design.name, written: null, findings: cured }, null, 2)}\n`);
    else io.err(`${findingsText(design, cured)}\nNothing was written.\n`);
    return EXIT.checkFailed;
  }
  const files = await packContent({ design, plane, findings, version: VERSION }, progressTo(io));
  const { path, replaced } = await writePack({ parent, name: design.name, files });
  if (json)
    io.out(
      `${JSON.stringify({ name: design.name, written: path, replaced, files: [...files.keys()], findings }, null, 2)}\n`,
    );
  else {
    if (findings.length > 0) io.err(`${findingsText(design, findings)}\n`);
    io.out(`${replaced ? "Replaced" : "Wrote"} ${path} (${files.size} files).\n`);
    io.out(
      "Open body.stl first to see the plane, then parts/: each part's .stl lies as on the machine's table, its .dxf is the same in 2D; layout.pdf is printed at 100 % and glued on the wood.\n",
    );
    io.out(`${STRENGTH_CAUTION}\n`);
  }
  return EXIT.done;
}

/** Tells what is being made, by rewriting one line of a terminal; silent elsewhere. */
const progressTo = (io: Io) => (done: number, of: number, what: string) => {
  if (io.showsProgress) io.err(done === of ? "\r\u001b[K" : `\r\u001b[K${done + 1}/${of} ${what}`);
};
