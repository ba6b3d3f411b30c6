// `lamplane build`: the whole pack of a design, or nothing: a design with a failing check is not built.
import { dxfText, MANIFEST, manifestText, stlBytes, writePack } from "@lamplane/export";
import { checkPlane, type Finding, findingsOf, mayBeBuilt } from "@lamplane/parameters/checks";
import type { Design } from "@lamplane/parameters/design";
import { type Elevation, elevation, figuresOf } from "@lamplane/parameters/elevation";
import { jigPlans } from "@lamplane/parameters/jigs";
import { bodyOf, jigOf, partsOf } from "@lamplane/parameters/solids";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { VERSION } from "../version.ts";
import { findingsText } from "./check.ts";

/** What a pack is made of; `--only` asks for some of it. */
export const SECTIONS = ["parts", "jigs", "sheets"] as const;
export type Section = (typeof SECTIONS)[number];

/** The sections named in a list with commas. @throws InputRefused for any other word */
export function sectionsIn(list: string): Section[] {
  const words = list.split(",").map((word) => word.trim());
  const unknown = words.find((word) => !SECTIONS.some((section) => section === word));
  if (unknown !== undefined)
    throw new InputRefused(
      `--only ${list}: "${unknown}" is none of ${SECTIONS.join(", ")}; write some of them with commas`,
    );
  return SECTIONS.filter((section) => words.includes(section));
}

export async function build(
  io: Io,
  design: Design,
  parent: string,
  json: boolean,
  only: readonly Section[] = SECTIONS,
): Promise<Exit> {
  const plane = elevation(design);
  const findings = findingsOf(plane);
  if (!mayBeBuilt(findings)) {
    const cured = checkPlane(plane);
    if (json) io.out(`${JSON.stringify({ name: design.name, written: null, findings: cured }, null, 2)}\n`);
    else io.err(`${findingsText(design, cured)}\nNothing was written.\n`);
    return EXIT.checkFailed;
  }
  const files = packFiles(plane, findings, only, progressTo(io));
  const { path, replaced } = await writePack({ parent, name: design.name, files });
  if (json)
    io.out(
      `${JSON.stringify({ name: design.name, written: path, replaced, files: [...files.keys()], findings }, null, 2)}\n`,
    );
  else {
    if (findings.length > 0) io.err(`${findingsText(design, findings)}\n`);
    io.out(`${replaced ? "Replaced" : "Wrote"} ${path} (${files.size} files).\n`);
    if (files.has("body.stl"))
      io.out(
        "Open body.stl first to see the plane, then parts/: each part's .stl lies as on the machine's table, its .dxf is the same in 2D.\n",
      );
    if (files.has("jigs/fit-test.stl")) io.out("Print jigs/fit-test.stl before the other jigs.\n");
    io.out("Strength is not judged here. Follow each machine's manual, local rules and trained practice.\n");
  }
  return EXIT.done;
}

/** Tells what is being made, by rewriting one line of a terminal; silent elsewhere. */
const progressTo = (io: Io) => (done: number, of: number, what: string) => {
  if (io.showsProgress) io.err(done === of ? "\r\u001b[K" : `\r\u001b[K${done + 1}/${of} ${what}`);
};

/** Every file of a pack by its path; the same design and version give the same bytes. */
function packFiles(
  plane: Elevation,
  findings: readonly Finding[],
  only: readonly Section[],
  progress: (done: number, of: number, what: string) => void,
) {
  const { design } = plane;
  const files = new Map<string, Uint8Array | string>();
  const parts = only.includes("parts") ? partsOf(plane, design.stage) : [];
  const plans = only.includes("jigs") ? jigPlans(plane) : [];
  const steps = parts.length + plans.length + 1;
  parts.forEach((part, i) => {
    progress(i, steps, part.name);
    files.set(`parts/${part.name}.stl`, stlBytes(part.lying, part.name, part.volume));
    files.set(`parts/${part.name}.dxf`, dxfText(part.drawing));
  });
  plans.forEach((plan, i) => {
    progress(parts.length + i, steps, plan.name);
    const jig = jigOf(plan);
    files.set(`jigs/${jig.name}.stl`, stlBytes(jig.lying, jig.name, jig.volume));
    if (jig.drawing) files.set(`jigs/${jig.name}.dxf`, dxfText(jig.drawing));
  });
  progress(parts.length + plans.length, steps, "body");
  if (only.includes("parts")) {
    const body = bodyOf(plane, design.stage === "glued" ? "glued" : "trued");
    files.set("body.stl", stlBytes(body.solid, "body", body.volume));
  }
  files.set("figures.json", figuresJson(plane, findings));
  files.set(MANIFEST, manifestText(design.name, VERSION, files));
  progress(steps, steps, "");
  return files;
}

function figuresJson(plane: Elevation, findings: readonly Finding[]): string {
  const figures = Object.fromEntries(figuresOf(plane).map(({ key, ...figure }) => [key, figure]));
  const { name, stage } = plane.design;
  return `${JSON.stringify({ name, stage, lengths: "mm", angles: "degrees", figures, findings }, null, 2)}\n`;
}
