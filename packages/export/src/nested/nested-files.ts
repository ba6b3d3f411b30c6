// The files of the shop's sheets: a drawing and a program for each, a page each, a list with what lies on none.
import { circleOutline, transformCircle } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { formatDecimal, formatValue } from "@lamplane/parameters/units";
import type { RouterSheets, SetUpPage } from "@lamplane/sheets/pages";
import { dxfText } from "../dxf.ts";
import { setUpPage } from "../router/files.ts";
import { programFiles } from "../router/program-files.ts";
import { NESTED } from "../words/nested.ts";
import type { ClassNesting } from "./class-nesting.ts";
import { cutOf, type FlatItem } from "./flat-items.ts";
import type { NestedSheet } from "./nested-sheets.ts";
import { notNested, notNestedRows } from "./not-nested.ts";
import { placedOutlines, placeOfName, sheetDrawing } from "./sheet-drawing.ts";
import { NESTED_FOLDER, type SheetProgram, type SheetPrograms, sheetPrograms } from "./sheet-programs.ts";

export interface NestedFiles {
  /** Drawings, programs and their list by path. */
  readonly texts: ReadonlyMap<string, string>;
  readonly sheets: RouterSheets;
}

/** Whose sheets they are, and where their files go. */
interface SheetsOwner {
  /** Of the plane, or the class. */
  readonly name: string;
  /** Whose shop and unit count. */
  readonly design: Design;
  readonly folder: string;
  readonly version: string;
  /** What lies on no sheet, and why. */
  readonly notCut: readonly (readonly [what: string, why: string])[];
}

/** Undefined where the shop names no sheet that anything could be cut from. */
export function nestedFiles(plane: Elevation, version: string): NestedFiles | undefined {
  const planned = sheetPrograms(plane);
  if (!planned) return undefined;
  const { design } = plane;
  const notCut = notNested(planned, design).map(({ what, text }) => [what, text] as const);
  return filesOf(planned, { name: design.name, design, folder: NESTED_FOLDER, version, notCut });
}

/** Name of the folder that a class's sheets unpack into. */
const CLASS_SHEETS = "class-sheets";

/** The sheets of a class. @param name of the class */
export const classNestedFiles = ({ planned, design }: ClassNesting, name: string, version: string): NestedFiles =>
  filesOf(planned, { name, design, folder: CLASS_SHEETS, version, notCut: notNestedRows(planned, design) });

function filesOf(planned: SheetPrograms, owner: SheetsOwner): NestedFiles {
  const { name, folder, notCut } = owner;
  const made = planned.sheets.map((sheet) => sheetFiles(sheet, owner, stacksOf(planned)));
  const list = [
    NESTED.list({ plane: name }),
    ...made.map(({ texts, page }, i) => {
      const names = planned.sheets[i]!.sheet.items.map(({ item }) => item.name);
      return `${[...texts.keys()].join(", ")}: ${page.title}: ${names.join(", ")}`;
    }),
    ...(notCut.length > 0 ? ["", NESTED.noPlace, ...notCut.map(([what, text]) => `${what}: ${text}`)] : []),
    "",
  ].join("\n");
  return {
    texts: new Map([...made.flatMap(({ texts }) => [...texts]), [`${folder}/sheets.txt`, list]]),
    sheets: {
      plane: name,
      title: NESTED.title({ plane: name }),
      subject: NESTED.subject,
      pages: made.map(({ page }) => page),
      notCut: { heading: NESTED.noPlace, rows: notCut },
    },
  };
}

interface SheetFiles {
  readonly texts: ReadonlyMap<string, string>;
  readonly page: SetUpPage;
}

/** Its drawing, its program where there is a router, its page. */
function sheetFiles(
  { sheet, name, title, program }: SheetProgram,
  { design, folder, version }: SheetsOwner,
  stacks: readonly Stack[],
): SheetFiles {
  const texts = new Map([[`${folder}/${name}.dxf`, dxfText(sheetDrawing(sheet, title), design.shop.dxfUnit)]]);
  if (!program) return { texts, page: plainPage(sheet, title, [...texts.keys()], design, stacks) };
  for (const { path, text } of programFiles(program, design, version, folder)) texts.set(path, text);
  const page = setUpPage(program, [...texts.keys()], design);
  return {
    texts,
    page: {
      ...page,
      steps: [...sheetLines(sheet, design, stacks), ...page.steps],
      drawing: { ...page.drawing, ...namesAndSizes(sheet, design) },
      drawingKey: NESTED.draws,
    },
  };
}

/** What is done with the sheet before it is cut. */
function sheetLines({ piece, items, used, end }: NestedSheet, design: Design, stacks: readonly Stack[]): string[] {
  const mm = (value: number) => formatValue(value, "mm", design);
  const { width, depth, thickness, sawnFrom, material } = piece;
  const layers = stacks.filter((plates) => plates.some(({ item }) => items.some((on) => on.item === item)));
  return [
    ...(sawnFrom
      ? [NESTED.sawn({ width: mm(width), depth: mm(depth), from: `${mm(sawnFrom.width)} × ${mm(sawnFrom.depth)}` })]
      : []),
    NESTED.caliper({ thickness: mm(thickness) }),
    NESTED.grain[material],
    NESTED.used({ count: items.length, share: `${formatDecimal(100 * used, 0)} %`, end: mm(Math.ceil(end)) }),
    ...(layers.length > 0 ? [NESTED.stack({ jigs: layers.map((plates) => plateNames(plates, items)) })] : []),
  ];
}

/** Plates of one jig that are glued together, each with the number of the sheet that it lies on; undefined on none. */
type Stack = readonly { readonly item: FlatItem; readonly sheet: number | undefined }[];

function stacksOf({ sheets, noPlace }: SheetPrograms): Stack[] {
  const laid = sheets.flatMap(({ sheet }, i) => sheet.items.map(({ item }) => ({ item, sheet: i + 1 })));
  const left = noPlace.map(({ item }) => ({ item, sheet: undefined }));
  const stacks = new Map<string, Stack>();
  for (const plate of [...laid, ...left]) {
    const [, jig] = plate.item.material === "ply" ? (/^(.*)-\d+$/.exec(plate.item.name) ?? []) : [];
    if (jig !== undefined) stacks.set(jig, [...(stacks.get(jig) ?? []), plate]);
  }
  return [...stacks.values()];
}

/** By their names; those that lie elsewhere with their sheet. */
const plateNames = (plates: Stack, items: NestedSheet["items"]): string[] =>
  plates.map(({ item, sheet }) =>
    items.some((on) => on.item === item) ? item.name : NESTED.plateElsewhere({ name: item.name, sheet }),
  );

function namesAndSizes(sheet: NestedSheet, design: Design) {
  const { piece, items } = sheet;
  const mm = (value: number) => formatValue(value, "mm", design);
  return {
    names: items.map((nested) => ({ text: nested.item.name.replaceAll("-", " "), ...placeOfName(nested) })),
    sizes: {
      width: mm(piece.width),
      depth: mm(piece.depth),
      ...(piece.material === "wood" ? { grain: NESTED.grainArrow } : {}),
    },
    keepOuts: piece.keepOuts,
  };
}

/** The page of a sheet without a program. */
function plainPage(
  sheet: NestedSheet,
  title: string,
  files: readonly string[],
  design: Design,
  stacks: readonly Stack[],
): SetUpPage {
  const { piece, items } = sheet;
  const circles = items.flatMap(({ item, transform }) =>
    cutOf(item.drawing).circles.map((circle) => circleOutline(transformCircle(circle, transform))),
  );
  return {
    title,
    files,
    steps: [...sheetLines(sheet, design, stacks), NESTED.noRouter],
    cutters: [],
    caution: "",
    drawing: {
      name: files[0]!,
      title,
      stock: { min: { x: 0, y: 0 }, max: { x: piece.width, y: piece.depth } },
      outlines: [...items.flatMap(placedOutlines), ...circles],
      ways: [],
      tabs: [],
      ...namesAndSizes(sheet, design),
    },
    drawingKey: NESTED.drawsPlain,
  };
}
