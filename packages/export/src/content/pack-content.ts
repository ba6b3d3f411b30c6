// What a pack holds, by path. The same design and version give the same bytes, from the command and in a page alike.
import { asBuiltStockPlan, figuresAsBuilt, RUNS, STRENGTH_CAUTION, toleranceReport } from "@lamplane/bench";
import { type Finding, formatFinding } from "@lamplane/bench/checks";
import { valueAt } from "@lamplane/parameters/design";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { JigName } from "@lamplane/parameters/jigs";
import { bodySolid, layerParts, partsOf, planeJigs } from "@lamplane/parameters/solids";
import { type Design, LIST_NAMES, rowsOf, TABLE, WORK_AFTER } from "@lamplane/parameters/table";
import { boardSheet, drawingPicture, layoutPictures, pictureSvg, traveller } from "@lamplane/sheets";
import { dxfText } from "../dxf.ts";
import { MANIFEST, manifestText, toBytes } from "../manifest.ts";
import { nestedFiles } from "../nested/nested-files.ts";
import { routerFiles } from "../router/files.ts";
import { sha256Hex } from "../sha256.ts";
import { assemblyStep, partStep } from "../step/step.ts";
import { stlBytes } from "../stl.ts";
import { serializePlate, serializeThreeMf } from "../threemf.ts";
import { printPlates } from "./print-plates.ts";
import { stockCsv } from "./stock-csv.ts";

export type PackContent = Map<string, Uint8Array | string>;
export type Progress = (done: number, of: number, what: string) => void;

/** Whose pack it is. */
export interface PackInput {
  /** As the maker wrote it, with what was measured. */
  readonly design: Design;
  /** The plane as it stands: asBuiltPlane(design). */
  readonly plane: Elevation;
  readonly findings: readonly Finding[];
  readonly version: string;
  /** All of it, where not given. */
  readonly only?: readonly PackChoice[];
}

/** What a pack is made of; some of it may be asked for. */
export const SECTIONS = ["parts", "jigs", "sheets", "router"] as const;
export type PackSection = (typeof SECTIONS)[number];
/** A section, or one jig of them. */
export type PackChoice = PackSection | `jigs/${JigName}`;

/**
 * Every file of a pack by its path, the manifest last.
 * @param sheets the sheets' files where another thread makes them; else they are made here
 */
export async function makePackContent(
  of: PackInput,
  progress: Progress = () => undefined,
  sheets?: Promise<PackContent>,
): Promise<PackContent> {
  const { design, version, only = SECTIONS } = of;
  const files: PackContent = new Map();
  const makersOf = (section: PackSection, ...makers: [string, () => void | Promise<void>][]) =>
    only.includes(section) ? makers : [];
  const makers: (readonly [string, () => void | Promise<void>])[] = [
    ...makersOf("parts", ["parts and body", () => addSolids(files, of)]),
    ...(only.some((choice) => choice.startsWith("jigs")) ? [["jigs", () => addJigs(files, of)] as const] : []),
    ...(sheets
      ? makersOf("sheets", ["sheets", async () => addFiles(files, await sheets)])
      : makersOf("sheets", ["layout", () => addLayout(files, of)], ["traveller", () => addPapers(files, of)])),
    ...makersOf(
      "router",
      ["router programs", () => addRouter(files, of)],
      ["nested sheets", () => addNested(files, of)],
    ),
    ["figures", () => void files.set("figures.json", figuresJson(of))],
  ];
  for (const [i, [what, make]] of makers.entries()) {
    progress(i, makers.length, what);
    await make();
  }
  const made = SECTIONS.filter((section) => only.includes(section));
  files.set(MANIFEST, manifestText(design.name, version, files, designState(design), made));
  progress(makers.length, makers.length, "");
  return files;
}

/** The sheets of a pack by their paths; they need nothing of its other files. */
export async function makeSheets(of: SheetsInput): Promise<PackContent> {
  const files: PackContent = new Map();
  await addLayout(files, of);
  await addPapers(files, of);
  return files;
}
type SheetsInput = Pick<PackInput, "design" | "plane" | "version">;

function addFiles(files: PackContent, more: PackContent): void {
  for (const [path, content] of more) files.set(path, content);
}

/** What tells one state of a design from another: the first half of the SHA-256 of its values in the table's order. */
export function designState(design: Design): string {
  const values = rowsOf(TABLE).map(({ path }) => [path, valueAt(design, path)]);
  const lists = LIST_NAMES.map((name) => [name, design[name]]);
  return sha256Hex(toBytes(JSON.stringify([...values, ...lists]))).slice(0, 32);
}

function addSolids(files: PackContent, { design, plane, version }: PackInput): void {
  const stage = WORK_AFTER[design.stage].drawn;
  const parts = partsOf(plane, stage);
  const layers = layerParts(plane, stage);
  for (const part of [...parts, ...layers]) {
    files.set(`parts/${part.name}.stl`, stlBytes(part.lyingMesh, part.name, part.volume));
    files.set(`step/${part.name}.step`, partStep({ name: part.name, shells: [part.lyingFaces] }, version));
    files.set(`parts/${part.name}.dxf`, dxfText(part.drawing, design.shop.dxfUnit));
    files.set(`drawings/${part.name}.svg`, pictureSvg(drawingPicture(part.drawing)));
  }
  const body = bodySolid(plane, stage === "glued" ? "glued" : "trued");
  files.set("body.stl", stlBytes(body.onSoleMesh, "body", body.volume));
  const inPlace = layers.length > 0 ? [...layers, ...parts.filter(({ name }) => !name.endsWith("-block"))] : parts;
  files.set("body.3mf", serializeThreeMf(inPlace, { name: design.name, version }));
  const posed = inPlace.map(({ name, lyingFaces, pose }) => ({ name, shells: [lyingFaces], pose }));
  files.set("step/plane.step", assemblyStep(design.name, posed, version));
}

function addJigs(files: PackContent, { plane, version, only = SECTIONS }: PackInput): void {
  const { design } = plane;
  const wantsAll = only.includes("jigs");
  const jigs = planeJigs(plane, ({ name }) => wantsAll || only.includes(`jigs/${name}`));
  for (const jig of jigs) {
    files.set(`jigs/${jig.name}.stl`, stlBytes(jig.lyingMesh, jig.name, jig.volume));
    files.set(`step/jigs/${jig.name}.step`, partStep({ name: jig.name, shells: jig.plainFaces }, version));
    if (jig.drawing) files.set(`jigs/${jig.name}.dxf`, dxfText(jig.drawing, design.shop.dxfUnit));
  }
  if (!wantsAll) return;
  for (const [i, solids] of printPlates(jigs, design).entries())
    files.set(`jigs/plate-${i + 1}.3mf`, serializePlate(solids, { name: `${design.name} plate ${i + 1}`, version }));
}

/** The layout as sheets and as single drawings. Who makes no PDF does not wait for its library to load. */
async function addLayout(files: PackContent, { plane, version }: SheetsInput): Promise<void> {
  const { name, units, shop } = plane.design;
  const pictures = layoutPictures(plane);
  for (const picture of pictures) files.set(`drawings/layout-${picture.name}.svg`, pictureSvg(picture));
  const { layoutPdf } = await import("@lamplane/sheets/pages");
  files.set("layout.pdf", await layoutPdf(pictures, { paper: shop.paper, name, version, units }));
}

/** Card, traveller and appendix; the appendix's plots as single drawings; the stock list as a table. */
async function addPapers(files: PackContent, { design, version }: SheetsInput): Promise<void> {
  const content = traveller(design);
  files.set("stock.csv", stockCsv(asBuiltStockPlan(design), design));
  const boards = boardSheet(design);
  for (const { picture } of content.plots) files.set(`plots/${picture.name}.svg`, pictureSvg(picture));
  const { appendixPdf, boardsPdf, cardPdf, travellerPdf } = await import("@lamplane/sheets/pages");
  const options = { paper: design.shop.paper, version };
  if (boards) files.set("boards.pdf", await boardsPdf(boards, options));
  files.set("card.pdf", await cardPdf(content, options));
  files.set("traveller.pdf", await travellerPdf(content, options));
  files.set("appendix.pdf", await appendixPdf(content, options));
}

/** Programs and their sheets, where a router and cutters are given. */
async function addRouter(files: PackContent, { plane, version }: PackInput): Promise<void> {
  const router = routerFiles(plane, version);
  if (!router) return;
  for (const [path, text] of router.texts) files.set(path, text);
  const { routerPdf } = await import("@lamplane/sheets/pages");
  files.set("router.pdf", await routerPdf(router.sheets, { paper: plane.design.shop.paper, version }));
}

/** Drawings and programs of the shop's sheets, where it names any. */
async function addNested(files: PackContent, { plane, version }: PackInput): Promise<void> {
  const nested = nestedFiles(plane, version);
  if (!nested) return;
  for (const [path, text] of nested.texts) files.set(path, text);
  const { routerPdf } = await import("@lamplane/sheets/pages");
  files.set("nested.pdf", await routerPdf(nested.sheets, { paper: plane.design.shop.paper, version }));
}

function figuresJson({ design, findings }: PackInput): string {
  const figures = Object.fromEntries(figuresAsBuilt(design).map(({ key, ...figure }) => [key, figure]));
  const { name, stage } = design;
  const content = {
    name,
    stage,
    lengths: "mm",
    angles: "degrees",
    caution: STRENGTH_CAUTION,
    figures,
    findings: findings.map((finding) => formatFinding(design, finding)),
  };
  return `${JSON.stringify({ ...content, tolerances: toleranceReport(design, { runs: RUNS }) }, roundForJson, 2)}\n`;
}

/** Significant digits: engines' sines and logarithms differ in the sixteenth, and a hundred thousand runs add that up. */
const DIGITS = 12;

/** A number as every JavaScript engine comes to it, so that a page writes the same bytes as the command. */
const roundForJson = (_: string, value: unknown): unknown =>
  typeof value === "number" && Number.isFinite(value) ? Number(value.toPrecision(DIGITS)) : value;
