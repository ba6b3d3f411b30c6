// `lamplane build`: the whole pack of a design, or nothing: a design with a failing check is not built.
import { dxfText, MANIFEST, manifestText, stlBytes, threeMf, writePack } from "@lamplane/export";
import { figuresAsBuilt, planeOf, STRENGTH_CAUTION } from "@lamplane/parameters/bench";
import { checkPlane, type Finding, findingsOf, mayBeBuilt } from "@lamplane/parameters/checks";
import type { Design } from "@lamplane/parameters/design";
import type { Elevation } from "@lamplane/parameters/elevation";
import { bodyOf, partsOf } from "@lamplane/parameters/solids";
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
  const files = packFiles(design, plane, findings, progressTo(io));
  const { path, replaced } = await writePack({ parent, name: design.name, files });
  if (json)
    io.out(
      `${JSON.stringify({ name: design.name, written: path, replaced, files: [...files.keys()], findings }, null, 2)}\n`,
    );
  else {
    if (findings.length > 0) io.err(`${findingsText(design, findings)}\n`);
    io.out(`${replaced ? "Replaced" : "Wrote"} ${path} (${files.size} files).\n`);
    io.out(
      "Open body.stl first to see the plane, then parts/: each part's .stl lies as on the machine's table, its .dxf is the same in 2D.\n",
    );
    io.out(`${STRENGTH_CAUTION}\n`);
  }
  return EXIT.done;
}

/** Tells what is being made, by rewriting one line of a terminal; silent elsewhere. */
const progressTo = (io: Io) => (done: number, of: number, what: string) => {
  if (io.showsProgress) io.err(done === of ? "\r\u001b[K" : `\r\u001b[K${done + 1}/${of} ${what}`);
};

/** Every file of a pack by its path; the same design and version give the same bytes. */
function packFiles(
  design: Design,
  plane: Elevation,
  findings: readonly Finding[],
  progress: (done: number, of: number, what: string) => void,
) {
  const files = new Map<string, Uint8Array | string>();
  const parts = partsOf(plane, design.stage);
  const steps = parts.length + 1;
  parts.forEach((part, i) => {
    progress(i, steps, part.name);
    files.set(`parts/${part.name}.stl`, stlBytes(part.lying, part.name, part.volume));
    files.set(`parts/${part.name}.dxf`, dxfText(part.drawing));
  });
  progress(parts.length, steps, "body");
  const body = bodyOf(plane, design.stage === "glued" ? "glued" : "trued");
  files.set("body.stl", stlBytes(body.solid, "body", body.volume));
  files.set("body.3mf", threeMf(parts, { name: design.name, version: VERSION }));
  files.set("figures.json", figuresJson(design, findings));
  files.set(MANIFEST, manifestText(design.name, VERSION, files));
  progress(steps, steps, "");
  return files;
}

function figuresJson(design: Design, findings: readonly Finding[]): string {
  const figures = Object.fromEntries(figuresAsBuilt(design).map(({ key, ...figure }) => [key, figure]));
  const { name, stage } = design;
  return `${JSON.stringify({ name, stage, lengths: "mm", angles: "degrees", caution: STRENGTH_CAUTION, figures, findings }, null, 2)}\n`;
}
