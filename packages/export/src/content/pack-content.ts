// What a pack holds, by path. The same design and version give the same bytes, from the command and in a page alike.
import { figuresAsBuilt, STRENGTH_CAUTION } from "@lamplane/parameters/bench";
import type { Finding } from "@lamplane/parameters/checks";
import type { Design } from "@lamplane/parameters/design";
import type { Elevation } from "@lamplane/parameters/elevation";
import { drawingPicture, layoutPictures } from "@lamplane/parameters/pictures";
import { bodyOf, partsOf } from "@lamplane/parameters/solids";
import { dxfText } from "../dxf.ts";
import { MANIFEST, manifestText } from "../manifest.ts";
import { stlBytes } from "../stl.ts";
import { pictureSvg } from "../svg.ts";
import { threeMf } from "../threemf.ts";

export type Content = Map<string, Uint8Array | string>;
export type Progress = (done: number, of: number, what: string) => void;

/** Whose pack it is. */
export interface PackOf {
  /** As the maker wrote it, with what was measured. */
  readonly design: Design;
  /** The plane as it stands: planeOf(design). */
  readonly plane: Elevation;
  readonly findings: readonly Finding[];
  readonly version: string;
}

/** Every file of a pack by its path, the manifest last. */
export async function packContent(of: PackOf, progress: Progress = () => undefined): Promise<Content> {
  const { design, version } = of;
  const files: Content = new Map();
  const makers: [string, () => void | Promise<void>][] = [
    ["parts and body", () => addSolids(files, of)],
    ["layout", () => addLayout(files, of)],
    ["figures", () => void files.set("figures.json", figuresJson(of))],
  ];
  for (const [i, [what, make]] of makers.entries()) {
    progress(i, makers.length, what);
    await make();
  }
  files.set(MANIFEST, manifestText(design.name, version, files));
  progress(makers.length, makers.length, "");
  return files;
}

function addSolids(files: Content, { design, plane, version }: PackOf): void {
  const parts = partsOf(plane, design.stage);
  for (const part of parts) {
    files.set(`parts/${part.name}.stl`, stlBytes(part.lying, part.name, part.volume));
    files.set(`parts/${part.name}.dxf`, dxfText(part.drawing));
    files.set(`drawings/${part.name}.svg`, pictureSvg(drawingPicture(part.drawing)));
  }
  const body = bodyOf(plane, design.stage === "glued" ? "glued" : "trued");
  files.set("body.stl", stlBytes(body.solid, "body", body.volume));
  files.set("body.3mf", threeMf(parts, { name: design.name, version }));
}

/** The layout as sheets and as single drawings. Who makes no PDF does not wait for its library to load. */
async function addLayout(files: Content, { plane, version }: PackOf): Promise<void> {
  const { name, units, shop } = plane.design;
  const pictures = layoutPictures(plane);
  for (const picture of pictures) files.set(`drawings/layout-${picture.name}.svg`, pictureSvg(picture));
  const { layoutPdf } = await import("../sheets/index.ts");
  files.set("layout.pdf", await layoutPdf(pictures, { paper: shop.paper, name, version, units }));
}

function figuresJson({ design, findings }: PackOf): string {
  const figures = Object.fromEntries(figuresAsBuilt(design).map(({ key, ...figure }) => [key, figure]));
  const { name, stage } = design;
  const told = { name, stage, lengths: "mm", angles: "degrees", caution: STRENGTH_CAUTION, figures, findings };
  return `${JSON.stringify(told, null, 2)}\n`;
}
