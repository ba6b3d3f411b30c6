// What a pack holds, by path. The same design and version give the same bytes.
import { dxfText, MANIFEST, manifestText, pictureSvg, stlBytes } from "@lamplane/export";
import { figuresAsBuilt, STRENGTH_CAUTION } from "@lamplane/parameters/bench";
import type { Finding } from "@lamplane/parameters/checks";
import type { Design } from "@lamplane/parameters/design";
import type { Elevation } from "@lamplane/parameters/elevation";
import { drawingPicture, layoutPictures } from "@lamplane/parameters/pictures";
import { bodyOf, partsOf } from "@lamplane/parameters/solids";
import { VERSION } from "./version.ts";

type Files = Map<string, Uint8Array | string>;
type Progress = (done: number, of: number, what: string) => void;

/** Every file of a pack by its path, the manifest last. */
export async function packContent(
  design: Design,
  plane: Elevation,
  findings: readonly Finding[],
  progress: Progress,
): Promise<Files> {
  const files: Files = new Map();
  const parts = partsOf(plane, design.stage);
  const steps = parts.length + 2;
  parts.forEach((part, i) => {
    progress(i, steps, part.name);
    files.set(`parts/${part.name}.stl`, stlBytes(part.lying, part.name, part.volume));
    files.set(`parts/${part.name}.dxf`, dxfText(part.drawing));
    files.set(`drawings/${part.name}.svg`, pictureSvg(drawingPicture(part.drawing)));
  });
  progress(parts.length, steps, "body");
  const body = bodyOf(plane, design.stage === "glued" ? "glued" : "trued");
  files.set("body.stl", stlBytes(body.solid, "body", body.volume));
  progress(parts.length + 1, steps, "layout");
  await addLayout(files, plane);
  files.set("figures.json", figuresJson(design, plane, findings));
  files.set(MANIFEST, manifestText(design.name, VERSION, files));
  progress(steps, steps, "");
  return files;
}

/** The layout as sheets and as single drawings. Who makes no PDF does not wait for its library to load. */
async function addLayout(files: Files, plane: Elevation): Promise<void> {
  const { name, units, shop } = plane.design;
  const pictures = layoutPictures(plane);
  for (const picture of pictures) files.set(`drawings/layout-${picture.name}.svg`, pictureSvg(picture));
  const { layoutPdf } = await import("@lamplane/export/sheets");
  files.set("layout.pdf", await layoutPdf(pictures, { paper: shop.paper, name, version: VERSION, units }));
}

function figuresJson(design: Design, plane: Elevation, findings: readonly Finding[]): string {
  const figures = Object.fromEntries(figuresAsBuilt(design, plane).map(({ key, ...figure }) => [key, figure]));
  const { name, stage } = design;
  return `${JSON.stringify({ name, stage, lengths: "mm", angles: "degrees", caution: STRENGTH_CAUTION, figures, findings }, null, 2)}\n`;
}
