// What is in a pack: every file of a design by its path. The command writes it to a disk, the page hands it out; the bytes are the same.
import { figuresAsBuilt, planeOf, STRENGTH_CAUTION } from "@lamplane/parameters/bench";
import { type Finding, findingsOf } from "@lamplane/parameters/checks";
import type { Design } from "@lamplane/parameters/design";
import { bodyOf, partsOf } from "@lamplane/parameters/solids";
import { dxfText } from "./dxf.ts";
import { MANIFEST, manifestText } from "./manifest.ts";
import { stlBytes } from "./stl.ts";
import { threeMf } from "./threemf.ts";

/**
 * Every file of a pack by its path; the same design and version give the same bytes.
 * @param design one that may be built
 * @param progress told before each piece of the work, and once more when all is done
 */
export function packFiles(
  design: Design,
  version: string,
  progress: (done: number, of: number, what: string) => void = () => {},
): Map<string, Uint8Array | string> {
  const plane = planeOf(design);
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
  files.set("body.3mf", threeMf(parts, { name: design.name, version }));
  files.set("figures.json", figuresJson(design, findingsOf(plane)));
  files.set(MANIFEST, manifestText(design.name, version, files));
  progress(steps, steps, "");
  return files;
}

function figuresJson(design: Design, findings: readonly Finding[]): string {
  const figures = Object.fromEntries(figuresAsBuilt(design).map(({ key, ...figure }) => [key, figure]));
  const { name, stage } = design;
  return `${JSON.stringify({ name, stage, lengths: "mm", angles: "degrees", caution: STRENGTH_CAUTION, figures, findings }, null, 2)}\n`;
}
