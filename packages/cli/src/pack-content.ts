// What a pack holds, by path. The same design and version give the same bytes.
import { dxfText, MANIFEST, manifestText, pictureSvg, stlBytes } from "@lamplane/export";
import { figuresAsBuilt, STRENGTH_CAUTION } from "@lamplane/parameters/bench";
import type { Finding } from "@lamplane/parameters/checks";
import type { Design } from "@lamplane/parameters/design";
import type { Elevation } from "@lamplane/parameters/elevation";
import { jigPlans } from "@lamplane/parameters/jigs";
import { drawingPicture, layoutPictures, traveller } from "@lamplane/parameters/pictures";
import { bodyOf, jigOf, partsOf } from "@lamplane/parameters/solids";
import { VERSION } from "./version.ts";

/** What a pack is made of; `--only` asks for some of it. */
export const SECTIONS = ["parts", "jigs", "sheets"] as const;
export type Section = (typeof SECTIONS)[number];

type Files = Map<string, Uint8Array | string>;
interface Wanted {
  /** planeOf(design). */
  readonly plane: Elevation;
  readonly findings: readonly Finding[];
  readonly only: readonly Section[];
  readonly progress: (done: number, of: number, what: string) => void;
}
/** One thing to be made, as its progress is told. */
interface Task {
  readonly what: string;
  readonly make: (files: Files) => void | Promise<void>;
}

/** Every file of a pack by its path, the manifest last. */
export async function packContent(design: Design, { plane, findings, only, progress }: Wanted): Promise<Files> {
  const files: Files = new Map();
  const tasks = [
    ...(only.includes("parts") ? partTasks(design, plane) : []),
    ...(only.includes("jigs") ? jigTasks(plane) : []),
    ...(only.includes("sheets") ? [layoutTask(plane), travellerTask(design)] : []),
  ];
  for (const [i, { what, make }] of tasks.entries()) {
    progress(i, tasks.length, what);
    await make(files);
  }
  files.set("figures.json", figuresJson(design, plane, findings));
  files.set(MANIFEST, manifestText(design.name, VERSION, files));
  progress(tasks.length, tasks.length, "");
  return files;
}

function partTasks({ stage }: Design, plane: Elevation): Task[] {
  const parts = partsOf(plane, stage).map((part) => ({
    what: part.name,
    make: (files: Files) => {
      files.set(`parts/${part.name}.stl`, stlBytes(part.lying, part.name, part.volume));
      files.set(`parts/${part.name}.dxf`, dxfText(part.drawing));
      files.set(`drawings/${part.name}.svg`, pictureSvg(drawingPicture(part.drawing)));
    },
  }));
  const makeBody = (files: Files) => {
    const body = bodyOf(plane, stage === "glued" ? "glued" : "trued");
    files.set("body.stl", stlBytes(body.solid, "body", body.volume));
  };
  return [...parts, { what: "body", make: makeBody }];
}

const jigTasks = (plane: Elevation): Task[] =>
  jigPlans(plane).map((plan) => ({
    what: plan.name,
    make: (files) => {
      const jig = jigOf(plan);
      files.set(`jigs/${jig.name}.stl`, stlBytes(jig.lying, jig.name, jig.volume));
      if (jig.drawing) files.set(`jigs/${jig.name}.dxf`, dxfText(jig.drawing));
    },
  }));

/** The layout as sheets and as single drawings. Who makes no PDF does not wait for its library to load. */
const layoutTask = (plane: Elevation): Task => ({
  what: "layout",
  make: async (files) => {
    const { name, units, shop } = plane.design;
    const pictures = layoutPictures(plane);
    for (const picture of pictures) files.set(`drawings/layout-${picture.name}.svg`, pictureSvg(picture));
    const { layoutPdf } = await import("@lamplane/export/sheets");
    files.set("layout.pdf", await layoutPdf(pictures, { paper: shop.paper, name, version: VERSION, units }));
  },
});

/** The steps to take to the bench, and the plots in them as single drawings. */
const travellerTask = (design: Design): Task => ({
  what: "traveller",
  make: async (files) => {
    const told = traveller(design);
    for (const { picture } of told.plots) files.set(`plots/${picture.name}.svg`, pictureSvg(picture));
    const { travellerPdf } = await import("@lamplane/export/sheets");
    files.set("traveller.pdf", await travellerPdf(told, { paper: design.shop.paper, version: VERSION }));
  },
});

function figuresJson(design: Design, plane: Elevation, findings: readonly Finding[]): string {
  const figures = Object.fromEntries(figuresAsBuilt(design, plane).map(({ key, ...figure }) => [key, figure]));
  const { name, stage } = design;
  return `${JSON.stringify({ name, stage, lengths: "mm", angles: "degrees", caution: STRENGTH_CAUTION, figures, findings }, null, 2)}\n`;
}
